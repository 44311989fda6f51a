package org.hearthrule.records;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** A list of a school year's file. */
public enum RecordKind {
    LOG("log", YearRecords.LogEntry.class, YearRecords::log),
    READINGS("reading", YearRecords.Reading.class, YearRecords::readings),
    SAMPLES("sample", YearRecords.Sample.class, YearRecords::samples),
    TESTS("test", YearRecords.TestTaken.class, YearRecords::tests),
    EVALUATIONS("evaluation", YearRecords.Evaluation.class, YearRecords::evaluations),
    FILINGS("filing", YearRecords.Filing.class, YearRecords::filings),
    REQUESTS("request", YearRecords.Request.class, YearRecords::requests),
    HEALTH("health", YearRecords.HealthPaper.class, YearRecords::health),
    DOCUMENTS("document", YearRecords.KeptDocument.class, YearRecords::documents),
    VISITS("visit", YearRecords.Visit.class, YearRecords::visits);

    private final String stem;
    private final Class<? extends YearRecord> type;
    private final Function<YearRecords, List<? extends YearRecord>> list;

    RecordKind(String stem, Class<? extends YearRecord> type, Function<YearRecords, List<? extends YearRecord>> list) {
        this.stem = stem;
        this.type = type;
        this.list = list;
    }

    /** @return the kind of a record */
    public static RecordKind of(YearRecord record) {
        for (RecordKind kind : values()) {
            if (kind.type.isInstance(record)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("a record of no kind");
    }

    /** @return the start of ids made for it, for example {@code log} */
    public String stem() {
        return stem;
    }

    /** @return the records of this kind, in the order of the file */
    public List<? extends YearRecord> in(YearRecords year) {
        return list.apply(year);
    }

    /** @return the year with another list of this kind */
    public YearRecords replaced(YearRecords year, List<? extends YearRecord> records) {
        return new YearRecords(year.label(), year.grades(), year.calendar(), year.choices(),
                pick(LOG, YearRecords.LogEntry.class, year, records), pick(READINGS, YearRecords.Reading.class, year, records),
                pick(SAMPLES, YearRecords.Sample.class, year, records), pick(TESTS, YearRecords.TestTaken.class, year, records),
                pick(EVALUATIONS, YearRecords.Evaluation.class, year, records),
                pick(FILINGS, YearRecords.Filing.class, year, records), pick(REQUESTS, YearRecords.Request.class, year, records),
                pick(HEALTH, YearRecords.HealthPaper.class, year, records),
                pick(DOCUMENTS, YearRecords.KeptDocument.class, year, records), pick(VISITS, YearRecords.Visit.class, year, records));
    }

    @SuppressWarnings("unchecked") // the list of a year's own kind holds nothing else
    private <T extends YearRecord> List<T> pick(RecordKind kind, Class<T> type, YearRecords year,
                                                List<? extends YearRecord> records) {
        if (kind != this) {
            return (List<T>) kind.in(year);
        }
        List<T> typed = new ArrayList<>(records.size());
        records.forEach(record -> typed.add(type.cast(record)));
        return List.copyOf(typed);
    }
}
