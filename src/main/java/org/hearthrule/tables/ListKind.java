package org.hearthrule.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecord;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.records.YearRecords.Reading;

/**
 * A list of the record book that a table can be taken over into. A further list needs its columns, its record and what
 * makes two of its records the same; all else is shared.
 */
public abstract sealed class ListKind<T extends YearRecord> permits LogKind, ReadingKind {

    private static final Pattern SPACES = Pattern.compile("\\s+");

    /** What was done on each day. */
    public static final ListKind<LogEntry> LOG = new LogKind();

    /** Books and other readings. */
    public static final ListKind<Reading> READINGS = new ReadingKind();

    /** @return the columns that are looked for, in the order in which they are asked about */
    public abstract List<ImportColumn> columns();

    /** @return the column without which there is no record */
    public abstract ImportColumn required();

    /** Returns those columns that hold days. */
    abstract List<ImportColumn> days();

    /** Returns the record of a row, without an id; what is wrong is recorded, and missing in the record. */
    abstract T read(RowReader row);

    /** Returns what makes two records the same. */
    abstract Object key(T record);

    /** Returns the list of a year's file. */
    abstract RecordKind list();

    /** Returns the records of this list in a year. */
    List<T> in(YearRecords year) {
        List<T> records = new ArrayList<>();
        list().in(year).forEach(record -> records.add(type().cast(record)));
        return records;
    }

    abstract Class<T> type();

    abstract T withId(T record, String id);

    /** Returns words without the accidents of spacing. */
    static String words(String text) {
        return SPACES.matcher(text.strip()).replaceAll(" ");
    }
}
