package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.records.YearRecords;

/**
 * One record seen from one child. What a requirement's rule accumulates.
 *
 * <p>{@code student} is an id; {@code year} the label of the file the record lies in, or the year it is meant for.
 */
public sealed interface RecordFact {

    String student();

    String year();

    /** @return the record's day, or null */
    LocalDate date();

    /** @return reference for the reader */
    RecordRef ref();

    private static int hash(RecordFact fact, String id) {
        return (31 * id.hashCode() + fact.year().hashCode()) * 31 + fact.student().hashCode();
    }

    /** A log entry. */
    record Logged(String student, String year, YearRecords.LogEntry entry) implements RecordFact {
        @Override
        public LocalDate date() {
            return entry.date();
        }

        @Override
        public RecordRef ref() {
            return new RecordRef(year, entry.id(), entry.date(), entry.did());
        }

        /** The id is enough, and the engine asks often. */
        @Override
        public int hashCode() {
            return RecordFact.hash(this, entry.id());
        }

        /** @return days between the day and the writing; 0 when it was not noted */
        public long getWrittenDaysLater() {
            return entry.written() == null ? 0
                    : java.time.temporal.ChronoUnit.DAYS.between(entry.date(), entry.written().toLocalDate());
        }
    }

    record Read(String student, String year, YearRecords.Reading reading) implements RecordFact {
        @Override
        public LocalDate date() {
            return reading.finished() != null ? reading.finished() : reading.started();
        }

        @Override
        public RecordRef ref() {
            return new RecordRef(year, reading.id(), date(), reading.title());
        }

        @Override
        public int hashCode() {
            return RecordFact.hash(this, reading.id());
        }
    }

    record Worked(String student, String year, YearRecords.Sample sample) implements RecordFact {
        @Override
        public LocalDate date() {
            return sample.date();
        }

        @Override
        public RecordRef ref() {
            return new RecordRef(year, sample.id(), sample.date(), sample.title());
        }

        @Override
        public int hashCode() {
            return RecordFact.hash(this, sample.id());
        }
    }

    record Tested(String student, String year, YearRecords.TestTaken test) implements RecordFact {
        @Override
        public LocalDate date() {
            return test.date();
        }

        @Override
        public RecordRef ref() {
            return new RecordRef(year, test.id(), test.date(), test.label());
        }
    }

    record Evaluated(String student, String year, YearRecords.Evaluation evaluation) implements RecordFact {
        @Override
        public LocalDate date() {
            return evaluation.date();
        }

        @Override
        public RecordRef ref() {
            return new RecordRef(year, evaluation.id(), evaluation.date(), evaluation.method());
        }
    }

    record Filed(String student, String year, YearRecords.Filing filing) implements RecordFact {
        @Override
        public LocalDate date() {
            return filing.sent();
        }

        @Override
        public RecordRef ref() {
            return new RecordRef(year, filing.id(), filing.sent(), filing.paper());
        }
    }

    record Healthy(String student, String year, YearRecords.HealthPaper paper) implements RecordFact {
        @Override
        public LocalDate date() {
            return paper.date();
        }

        @Override
        public RecordRef ref() {
            return new RecordRef(year, paper.id(), paper.date(), paper.kind());
        }
    }

    record Kept(String student, String year, YearRecords.KeptDocument document) implements RecordFact {
        @Override
        public LocalDate date() {
            return document.date();
        }

        @Override
        public RecordRef ref() {
            return new RecordRef(year, document.id(), document.date(), document.kind());
        }
    }

    record Visited(String student, String year, YearRecords.Visit visit) implements RecordFact {
        @Override
        public LocalDate date() {
            return visit.date();
        }

        @Override
        public RecordRef ref() {
            return new RecordRef(year, visit.id(), visit.date(), visit.by());
        }
    }

    record Requested(String student, String year, YearRecords.Request request) implements RecordFact {
        @Override
        public LocalDate date() {
            return request.date();
        }

        @Override
        public RecordRef ref() {
            return new RecordRef(year, request.id(), request.date(), request.by());
        }
    }

    /** @return subjects the record is tagged with; empty for records without subjects */
    default List<String> subjects() {
        if (this instanceof Logged logged) {
            return logged.entry.subjects();
        }
        if (this instanceof Read read) {
            return read.reading.subjects();
        }
        return this instanceof Worked worked ? worked.sample.subjects() : List.of();
    }
}
