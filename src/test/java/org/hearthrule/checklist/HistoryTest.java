package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Profile;
import org.hearthrule.law.ProfileReader;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.rules.Judge;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Subjects;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;

/**
 * A book that spans a move, a change of pathway or a change of law is judged by the rules in force on each day, and the
 * checklist says which. The two laws are invented; in the first the yearly paper was due in September until the end of
 * 2026 and is due in August since.
 */
class HistoryTest {

    private static final String LAW = """
            format: 1
            jurisdiction: US-%s
            name: %s
            law-calls-it: home instruction
            agency: Example Agency
            confirm-with: the superintendent
            sources:
              code: {title: %s Code § 1, address: "https://law.example", read: "2026-11-25", basis: text, binding: statute}
            year: {from: "07-01", to: "06-30", given: by-law}
            attendance-age:
              - {starts: {age: 6, on: birthday, mid-year: owed}, ends: {age: 18, on: birthday}, cite: code}
            pathways:
              home:
                name: Home instruction
                in-short: A parent teaches.
                usual: yes
                open-to: a parent
                cite: code
                asks:
                  %s
              school-at-home:
                name: School at home
                in-short: A parent keeps a school.
                open-to: a parent
                cite: code
                asks:
                  register: {kind: file, title: Register, recurs: once, due: {after: program-start, days: 10}, next: Send it., cite: code}
            """;
    private static final Profile FIRST = law("XX", "Firstland", """
            old-paper: {kind: file, title: September paper, paper: paper, due: {by: "09-30"}, until: "2026-12-31", next: Send it., cite: code}
                  new-paper: {kind: file, title: August paper, paper: paper, due: {by: "08-15"}, from: "2027-01-01", next: Send it., cite: code}
                  report: {kind: file, title: Report, due: {by: "06-15"}, next: Send it., cite: code}""");
    private static final Profile SECOND = law("YY", "Secondland", """
            move-in: {kind: file, title: Paper after a move, recurs: {each: [moved-in]}, due: {after: moved-in, days: 14}, next: Send it., cite: code}""");

    private static Profile law(String code, String name, String asks) {
        Problems problems = new Problems();
        return new ProfileReader(Subjects::known, Subjects.ids()).read("us-" + code.toLowerCase() + ".yaml",
                LAW.formatted(code, name, name, asks), problems).orElseThrow(() -> new AssertionError(problems.all().toString()));
    }

    private static Checklist on(String day, String placements) {
        String family = "{\"hearthrule\": 1, \"family\": {\"name\": \"Example\"}, \"students\": [{\"id\": \"ada\", \"name\": \"Ada\", "
                + "\"born\": \"2016-03-02\"}], \"placements\": [" + placements + "]}";
        String year = "{\"hearthrule\": 1, \"year\": \"%s\"}";
        Problems problems = new Problems();
        Book book = BookReader.read(Map.of("family.json", family, "2025-26.json", year.formatted("2025-26"),
                "2026-27.json", year.formatted("2026-27")), problems).orElseThrow(() -> new AssertionError(problems.all().toString()));
        return Checklist.of(new Judge(List.of(FIRST, SECOND)).judge(book, LocalDate.parse(day)), book);
    }

    private static String placed(String state, String pathway, String days) {
        return "{\"student\": \"ada\", \"jurisdiction\": \"us-" + state + "\", \"pathway\": \"" + pathway + "\", " + days + "}";
    }

    private static List<String> lines(Checklist checklist, Status status) {
        return checklist.lines().stream().filter(line -> line.finding().status() == status && line.asked() != null)
                .map(line -> line.finding().title() + " " + line.finding().due()).toList();
    }

    private static String text(Checklist checklist) {
        return String.join(" ", TextWriter.write(checklist, false, Wording.english(), Style.PLAIN).split("\\s+"));
    }

    @Test
    void afterAMoveInMarchEachStateSpeaksOfItsOwnDays() {
        Checklist checklist = on("2027-03-20", placed("xx", "home", "\"from\": \"2025-09-01\", \"to\": \"2027-03-12\", \"ended\": \"moved\"")
                + ", " + placed("yy", "home", "\"from\": \"2027-03-15\""));

        assertThat(lines(checklist, Status.LATE)).contains("September paper 2026-09-30");
        assertThat(lines(checklist, Status.OPEN)).containsExactly("Paper after a move 2027-03-29");
        assertThat(text(checklist)).contains("Ada: Secondland, home instruction",
                "Ada: Firstland, home instruction, until March 12, 2027", "The law of Firstland, which held for you until March 12, 2027.");
    }

    @Test
    void afterAChangeOfPathwayEachSpeaksOfItsOwnDays() {
        Checklist checklist = on("2027-01-05", placed("xx", "home", "\"from\": \"2025-09-01\", \"to\": \"2026-12-31\", \"ended\": \"changed-pathway\"")
                + ", " + placed("xx", "school-at-home", "\"from\": \"2027-01-01\""));

        assertThat(lines(checklist, Status.OPEN)).containsExactly("Register 2027-01-11");
        assertThat(lines(checklist, Status.LATE)).contains("September paper 2026-09-30");
        assertThat(text(checklist)).contains("Ada: Firstland, home instruction, until December 31, 2026");
    }

    @Test
    void afterAChangeOfLawEachDutyIsJudgedByTheRuleOfItsDay() {
        Checklist checklist = on("2027-06-20", placed("xx", "home", "\"from\": \"2025-09-01\""));

        assertThat(lines(checklist, Status.LATE)).contains("September paper 2026-09-30", "Report 2027-06-15")
                .doesNotContain("August paper 2026-08-15");
        assertThat(lines(checklist, Status.OPEN)).contains("August paper 2027-08-15");
        assertThat(text(checklist)).contains("The law as it stood until December 31, 2026.");
    }
}
