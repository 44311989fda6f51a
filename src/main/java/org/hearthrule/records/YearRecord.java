package org.hearthrule.records;

import java.time.LocalDate;

/** One record of a school year's file. Its id is unique in that file. */
public sealed interface YearRecord permits YearRecords.LogEntry, YearRecords.Reading, YearRecords.Sample,
        YearRecords.TestTaken, YearRecords.Evaluation, YearRecords.Filing, YearRecords.Request, YearRecords.HealthPaper,
        YearRecords.KeptDocument, YearRecords.Visit {

    /** @return short name in its file, for example {@code log-12} */
    String id();

    /** @return the day that says which school year's file it belongs to, or null while there is none */
    LocalDate day();
}
