package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Profile;
import org.hearthrule.law.ProfileReader;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;
import org.hearthrule.terms.Subjects;

/** A test kit for one rule: a law of an invented state, one child, these records, this day; what line comes out? */
final class Kit {

    private static final String LAW = """
            format: 1
            jurisdiction: US-XX
            name: Example
            law-calls-it: home instruction
            agency: Example Agency
            confirm-with: the superintendent
            sources:
              code: {title: Example Code § 22-5, address: "https://law.example", read: "2026-11-25", basis: text, binding: statute}
              habit: {title: Agency page, address: "https://agency.example", read: "2026-11-25", basis: agency, binding: agency}
            year: {from: "07-01", to: "06-30", given: by-law}
            levels: {elementary: "K-6", secondary: "7-12"}
            attendance-age:
              - {%s, cite: "code (A)"}
            facts:
              diploma: {about: parent, question: "Do you hold a diploma?"}
              tuition: {about: family, question: "Do you take pay?", presume: no}
            pathways:
              home:
                name: Home instruction
                in-short: A parent teaches.
                usual: yes
                open-to: a parent
                cite: "code (B)"
                choices:
                  count: {question: "Days or hours?", options: {days: days, hours: hours}}
                  report-dates: {question: "On which days?", dates: yes}
                asks:
            %s
                does-not-ask:
                  - {what: Approval., cite: "habit 1"}
            """;
    private static final String AGES = "starts: {age: 6, on: birthday, mid-year: owed}, ends: {age: 18, on: birthday}";

    private final Map<String, String> files = new LinkedHashMap<>();
    private String asks = "";
    private String ages = AGES;
    private String child = "\"born\": \"2016-03-02\"";
    private String placement = "\"from\": \"2024-08-26\"";
    private String family = "";

    /** @param asks requirements in YAML, each at the left margin */
    static Kit law(String asks) {
        Kit kit = new Kit();
        kit.asks = asks;
        return kit;
    }

    /** @param rule {@code starts: …, ends: …} of the compulsory age */
    Kit ages(String rule) {
        ages = rule;
        return this;
    }

    /** @param json further keys of the student */
    Kit child(String json) {
        child = json;
        return this;
    }

    /** @param json keys of the placement beside student, jurisdiction and pathway */
    Kit placed(String json) {
        placement = json;
        return this;
    }

    /** @param json further lists of family.json */
    Kit family(String json) {
        family = json;
        return this;
    }

    /** @param json lists of the year's file */
    Kit year(String label, String json) {
        files.put(label + ".json", "{\"hearthrule\": 1, \"year\": \"" + label + "\", " + json + "}");
        return this;
    }

    Judgement judged(String asOf) {
        Problems problems = new Problems();
        String text = LAW.formatted(ages, asks.stripTrailing().indent(6).stripTrailing());
        Profile profile = new ProfileReader(Subjects::known, Subjects.ids()).read("us-xx.yaml", text, problems)
                .orElseThrow(() -> new AssertionError(problems.all() + "\n" + text));
        files.put("family.json", "{\"hearthrule\": 1, \"students\": [{\"id\": \"ada\", \"name\": \"Ada\""
                + (child.isEmpty() ? "" : ", " + child) + "}], \"placements\": [{\"student\": \"ada\", \"jurisdiction\": \"us-xx\", "
                + "\"pathway\": \"home\", " + placement + "}]" + (family.isEmpty() ? "" : ", " + family) + "}");
        Book book = BookReader.read(files, problems).orElseThrow(() -> new AssertionError(problems.all().toString()));
        if (problems.hasErrors()) {
            throw new AssertionError(problems.all() + "\n" + text);
        }
        return new Judge(List.of(profile)).judge(book, LocalDate.parse(asOf));
    }

    /** @return the line of this requirement in the school year of the day */
    Finding line(String localId, String asOf) {
        String year = LawCase.label(LocalDate.parse(asOf));
        return judged(asOf).findings().stream().filter(finding -> finding.requirement().equals("us-xx/home/" + localId)
                && (finding.year() == null || finding.year().equals(year))).findFirst()
                .orElseThrow(() -> new AssertionError("no line " + localId + " in " + year));
    }

    /** @return log entries on so many weekdays from a day on, as a list of the year's file */
    static String taught(String from, int days, int minutes, String more) {
        StringBuilder log = new StringBuilder("\"log\": [");
        LocalDate day = LocalDate.parse(from);
        for (int left = days; left > 0; day = day.plusDays(1)) {
            if (day.getDayOfWeek().getValue() < 6) {
                log.append(left == days ? "" : ", ").append("{\"date\": \"").append(day).append("\", \"minutes\": ").append(minutes)
                        .append(", \"students\": [\"ada\"], \"did\": \"Lesson ").append(left).append("\"").append(more).append('}');
                left--;
            }
        }
        return log.append(']').toString();
    }
}
