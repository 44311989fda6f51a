package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.checklist.Readiness.Scan;
import org.hearthrule.records.YearRecord;
import org.hearthrule.records.YearRecords.Evaluation;
import org.hearthrule.records.YearRecords.TestTaken;
import org.hearthrule.terms.Wording;

/** Names tests and evaluations with their day, and finds the scans of their results. */
final class Scans {

    private final Wording wording;

    Scans(Wording wording) {
        this.wording = wording;
    }

    String words(TestTaken test) {
        return dated(test.label(), test.date());
    }

    String words(Evaluation evaluation) {
        return dated(ConditionWords.slug(evaluation.method()), evaluation.date());
    }

    /** @return those that name a file; nothing of a record that is neither test nor evaluation */
    List<Scan> of(List<? extends YearRecord> records) {
        List<Scan> scans = new ArrayList<>();
        for (YearRecord record : records) {
            if (record instanceof TestTaken test && test.file() != null) {
                scans.add(new Scan(words(test), test.file()));
            } else if (record instanceof Evaluation evaluation && evaluation.file() != null) {
                scans.add(new Scan(words(evaluation), evaluation.file()));
            }
        }
        return List.copyOf(scans);
    }

    private String dated(String what, LocalDate day) {
        return day == null ? what : what + ", " + wording.date(day);
    }
}
