package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.records.Book;

/**
 * How the time that one line asks for came together. Worked out when somebody wants to see it, by the very road on which
 * the line was judged, so that the last point of a course is the number that the line counted.
 *
 * @param finding the line
 * @param student id of the child whose records were counted, also where the family owes it
 * @param year    the school year it is counted in
 * @param begun   day from which a pace is reckoned
 * @param today   day of the judgement
 * @param either  true where one amount of several is enough
 * @param chosen  of those, the amounts that the family chose to count by; empty while it has not chosen
 * @param courses one for each amount, at least one; where an amount is asked in each quarter, one for each of them
 */
public record Progress(Finding finding, String student, ProgramYear year, LocalDate begun, LocalDate today,
                       boolean either, List<Evidence.Time> chosen, List<TimeCourse> courses) {

    /** @return one for each finding that counted time, child by child in the order of the law */
    public static List<Progress> of(Book book, Judgement judgement) {
        Map<String, Finding> counted = new LinkedHashMap<>();
        judgement.findings().stream().filter(finding -> !finding.counted().isEmpty())
                .forEach(finding -> counted.put(finding.id(), finding));
        Map<String, Profile> profiles = new HashMap<>();
        judgement.profiles().forEach(profile -> profiles.put(profile.slug(), profile));
        List<Progress> found = new ArrayList<>();
        Map<String, ChildRecords> records = ChildRecords.of(book);
        for (Situation situation : Situations.of(book, profiles, judgement.asOf())) {
            addAll(situation, records.get(situation.studentId()), counted, found);
        }
        return List.copyOf(found);
    }

    private static void addAll(Situation situation, ChildRecords records, Map<String, Finding> counted, List<Progress> found) {
        for (Requirement requirement : situation.pathway().asks()) {
            if (Evidence.leaves(requirement.shows(), Evidence.Time.class).isEmpty()) {
                continue;
            }
            for (Occasion occasion : situation.occasions(requirement)) {
                String own = Findings.id(requirement, situation, occasion);
                String id = requirement.owedFor() == Requirement.OwedFor.CHILD ? own : FamilyDuties.id(requirement.id(), own);
                if (counted.containsKey(id)) {
                    of(counted.get(id), requirement, situation, occasion, records).ifPresent(progress -> {
                        found.add(progress);
                        counted.remove(id);
                    });
                }
            }
        }
    }

    /**
     * Of a duty of the family the child is taken whose numbers the line tells.
     *
     * @param records of the situation's child, or null when it has none
     */
    private static Optional<Progress> of(Finding finding, Requirement requirement, Situation situation, Occasion occasion,
                                         ChildRecords records) {
        List<RecordFact> facts = records == null ? List.of() : FactsNeeded.by(requirement).of(records, situation);
        Shown shown = Claim.of(requirement, situation, occasion, facts).shown();
        boolean told = shown != null && !shown.courses().isEmpty() && shown.counted().equals(finding.counted());
        return told ? Optional.of(new Progress(finding, situation.studentId(), situation.year(),
                Pace.begun(situation), situation.today(), requirement.shows() instanceof Evidence.AnyOf,
                chosen(requirement.shows(), situation), shown.courses())) : Optional.empty();
    }

    private static List<Evidence.Time> chosen(Evidence evidence, Situation situation) {
        List<Evidence> parts = evidence instanceof Evidence.AnyOf any ? any.parts() : List.of();
        return parts.stream().filter(part -> part instanceof Evidence.Option option && option.name() != null
                && situation.isChosen(option.name())).flatMap(part -> Evidence.leaves(part, Evidence.Time.class).stream()).toList();
    }

    /** @return the pace of one amount; empty once it is reached, while nothing says by when, and after that day */
    public Optional<Pace> pace(TimeCourse course) {
        LocalDate due = due(course);
        if (due == null || due.isBefore(today) || course.lack().signum() == 0) {
            return Optional.empty();
        }
        LocalDate own = course.overYears() ? course.minutes().keySet().stream().min(Comparator.naturalOrder()).orElse(begun)
                : begun;
        return Optional.of(Pace.of(course.reached(), course.asked(), course.overYears() || own.isAfter(course.from()) ? own
                : course.from(), today, due));
    }

    /** @return the day by which the amount is asked, or null */
    public LocalDate due(TimeCourse course) {
        return course.part() > 0 ? course.to() : finding.due();
    }
}
