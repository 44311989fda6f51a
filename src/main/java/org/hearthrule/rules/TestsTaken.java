package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hearthrule.law.Evidence;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.TestTaken;

/** The tests a child has taken, in the order of their days. */
final class TestsTaken {

    private TestsTaken() {
    }

    /** @return all of them up to today, whatever the year */
    static List<TestTaken> all(Situation situation) {
        List<TestTaken> tests = new ArrayList<>();
        for (YearRecords year : situation.book().years().values()) {
            for (TestTaken test : year.tests()) {
                if (test.student().equals(situation.studentId())
                        && (test.date() == null || !test.date().isAfter(situation.today()))) {
                    tests.add(test);
                }
            }
        }
        tests.sort(Comparator.comparing(TestTaken::date, Comparator.nullsFirst(Comparator.naturalOrder())));
        return tests;
    }

    /** @return those with scores that are by a method of this requirement; all with scores when it has none */
    static List<TestTaken> of(String localId, Situation situation) {
        Set<String> methods = new HashSet<>();
        situation.requirement(localId).ifPresent(asked ->
                Evidence.leaves(asked.shows(), Evidence.Test.class).forEach(test -> methods.add(test.method())));
        return all(situation).stream().filter(test -> !test.scores().isEmpty()
                && (methods.isEmpty() || methods.contains(test.method()))).toList();
    }

    static boolean inYear(TestTaken test, Situation situation) {
        for (Map.Entry<String, YearRecords> year : situation.book().years().entrySet()) {
            if (year.getValue().tests().contains(test)) {
                return situation.holds(year.getKey(), test.date());
            }
        }
        return false;
    }

    /** @return the last one in this school year or in an earlier one */
    static Optional<TestTaken> lastUpTo(List<TestTaken> tests, Situation situation) {
        Optional<TestTaken> here = lastIn(tests, situation);
        if (here.isPresent()) {
            return here;
        }
        return tests.stream().filter(test -> test.date() != null && test.date().isBefore(situation.year().start()))
                .reduce((first, second) -> second);
    }

    static Optional<TestTaken> lastIn(List<TestTaken> tests, Situation situation) {
        return tests.stream().filter(test -> inYear(test, situation)).reduce((first, second) -> second);
    }

    /** @return the test with scores that came before this one, by whatever method */
    static Optional<TestTaken> before(TestTaken test, Situation situation) {
        return all(situation).stream().filter(other -> other != test && !other.scores().isEmpty() && other.date() != null
                && test.date() != null && other.date().isBefore(test.date())).reduce((first, second) -> second);
    }
}
