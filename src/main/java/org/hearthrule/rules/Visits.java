package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthrule.law.Evidence;
import org.hearthrule.records.Person;
import org.hearthrule.records.Placement;
import org.hearthrule.records.YearRecords;

/**
 * The visits a rule looks at, parted by whether the right person made them.
 *
 * @param certain by a person of the role asked for
 * @param perhaps by somebody who is not named, or of whom the book does not give this role
 */
record Visits(List<RecordFact.Visited> certain, List<RecordFact.Visited> perhaps) {

    static Visits of(Evidence.Visits rule, Situation situation, List<RecordFact> facts) {
        List<RecordFact.Visited> certain = new ArrayList<>();
        List<RecordFact.Visited> perhaps = new ArrayList<>();
        for (RecordFact.Visited visited : rule.further() == null ? own(facts) : ofTheFamily(situation)) {
            boolean inTime = !visited.date().isBefore(situation.firstDay()) && !visited.date().isAfter(situation.lastDay())
                    && !visited.date().isAfter(situation.today());
            Truth right = inTime ? by(visited.visit().by(), rule.by(), situation) : Truth.no("");
            if (right.isYes()) {
                certain.add(visited);
            } else if (right.isUnknown()) {
                perhaps.add(visited);
            }
        }
        return new Visits(certain, perhaps);
    }

    List<RecordFact.Visited> all() {
        List<RecordFact.Visited> all = new ArrayList<>(certain);
        all.addAll(perhaps);
        return all;
    }

    private static List<RecordFact.Visited> own(List<RecordFact> facts) {
        return facts.stream().filter(RecordFact.Visited.class::isInstance).map(RecordFact.Visited.class::cast).toList();
    }

    /** One visit to two children is one visit. */
    private static List<RecordFact.Visited> ofTheFamily(Situation situation) {
        Set<String> children = children(situation);
        List<RecordFact.Visited> visits = new ArrayList<>();
        for (Map.Entry<String, YearRecords> year : situation.book().years().entrySet()) {
            for (YearRecords.Visit visit : year.getValue().visits()) {
                if (visit.date() != null && !Collections.disjoint(visit.students(), children)) {
                    visits.add(new RecordFact.Visited(situation.studentId(), year.getKey(), visit));
                }
            }
        }
        return visits;
    }

    /** @return ids of the children on the same pathway at some time of the situation's year up to today, this one too */
    static Set<String> children(Situation situation) {
        LocalDate last = situation.today().isBefore(situation.lastDay()) ? situation.today() : situation.lastDay();
        Set<String> children = new LinkedHashSet<>();
        children.add(situation.studentId());
        for (Placement placement : situation.book().placements()) {
            if (placement.jurisdiction().equals(situation.placement().jurisdiction())
                    && placement.pathway().equals(situation.placement().pathway()) && !placement.from().isAfter(last)
                    && (placement.to() == null || !placement.to().isBefore(situation.year().start()))) {
                children.add(placement.student());
            }
        }
        return children;
    }

    /** A role written down is an answer; a person's papers may only not have been entered, and nobody may be named. */
    private static Truth by(String named, String role, Situation situation) {
        if (named == null) {
            return Truth.unknown("", "");
        }
        if (named.equals(role)) {
            return Truth.yes("");
        }
        for (Person person : situation.book().persons()) {
            if (named.equals(person.id()) || named.equals(person.name())) {
                boolean has = person.roles().contains(role)
                        || person.credentials().stream().anyMatch(held -> held.kind().equals(role));
                return has ? Truth.yes("") : Truth.unknown("", "");
            }
        }
        return Truth.no("");
    }
}
