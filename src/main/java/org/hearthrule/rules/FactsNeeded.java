package org.hearthrule.rules;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Evidence.Subjects.Interval;
import org.hearthrule.law.Period;
import org.hearthrule.law.Requirement;

/** The kinds of record a requirement has to look at, so that its rule leaves the others alone. */
final class FactsNeeded {

    private final Set<Class<? extends RecordFact>> types = new LinkedHashSet<>();
    private boolean wholeLog;

    private FactsNeeded() {
    }

    static FactsNeeded by(Requirement requirement) {
        FactsNeeded needed = new FactsNeeded();
        Evidence.leaves(requirement.shows(), Evidence.class).forEach(leaf -> {
            needed.types.addAll(leaf(leaf));
            needed.wholeLog |= looksBeyondTheYear(leaf);
        });
        if (requirement.countsFrom() != null) {
            needed.types.add(RecordFact.Filed.class);
        }
        return needed;
    }

    boolean none() {
        return types.isEmpty();
    }

    /** @return the records that a requirement looks at; of the log, where one year is enough, those about that year */
    List<RecordFact> of(ChildRecords records, Situation situation) {
        List<RecordFact> found = new ArrayList<>();
        for (Class<? extends RecordFact> type : types) {
            boolean oneYear = type == RecordFact.Logged.class && !wholeLog;
            found.addAll(oneYear ? records.loggedAbout(situation.year()) : records.of(type));
        }
        return found;
    }

    /** Months and weeks reach a little over a year's ends; its other parts have whatever days the family entered. */
    private static boolean looksBeyondTheYear(Evidence leaf) {
        if (leaf instanceof Evidence.Time time) {
            return time.over() != null || time.per() != null && time.per() != Period.YEAR && time.per() != Period.MONTH
                    && time.per() != Period.WEEK;
        }
        return leaf instanceof Evidence.Subjects subjects && subjects.interval() != Interval.EACH_YEAR
                && subjects.interval() != Interval.AS_FITS;
    }

    private static List<Class<? extends RecordFact>> leaf(Evidence leaf) {
        if (leaf instanceof Evidence.Time || leaf instanceof Evidence.Log) {
            return List.of(RecordFact.Logged.class);
        }
        if (leaf instanceof Evidence.Subjects) {
            return List.of(RecordFact.Logged.class, RecordFact.Read.class, RecordFact.Worked.class);
        }
        if (leaf instanceof Evidence.Filing || leaf instanceof Evidence.Approval) {
            return List.of(RecordFact.Filed.class);
        }
        if (leaf instanceof Evidence.Document) {
            return List.of(RecordFact.Kept.class);
        }
        if (leaf instanceof Evidence.Samples) {
            return List.of(RecordFact.Worked.class);
        }
        if (leaf instanceof Evidence.Readings) {
            return List.of(RecordFact.Read.class);
        }
        if (leaf instanceof Evidence.Test) {
            return List.of(RecordFact.Tested.class);
        }
        if (leaf instanceof Evidence.Evaluation) {
            return List.of(RecordFact.Evaluated.class);
        }
        if (leaf instanceof Evidence.HealthPaper) {
            return List.of(RecordFact.Healthy.class);
        }
        if (leaf instanceof Evidence.Visits) {
            return List.of(RecordFact.Visited.class, RecordFact.Logged.class);
        }
        return List.of();
    }
}
