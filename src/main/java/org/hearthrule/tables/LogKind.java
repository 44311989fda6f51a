package org.hearthrule.tables;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.LogEntry;

/** The log. When an entry was written is taken over where a column says it, never guessed. */
final class LogKind extends ListKind<LogEntry> {

    @Override
    public List<ImportColumn> columns() {
        return List.of(ImportColumn.DATE, ImportColumn.MINUTES, ImportColumn.STUDENTS, ImportColumn.SUBJECTS,
                ImportColumn.DID, ImportColumn.MATERIALS, ImportColumn.PLACE, ImportColumn.CORE, ImportColumn.BY,
                ImportColumn.WRITTEN);
    }

    @Override
    public ImportColumn required() {
        return ImportColumn.DATE;
    }

    @Override
    List<ImportColumn> days() {
        return List.of(ImportColumn.DATE);
    }

    @Override
    LogEntry read(RowReader row) {
        LocalDate date = row.day(ImportColumn.DATE, true);
        int minutes = row.minutes();
        String did = row.text(ImportColumn.DID);
        return new LogEntry("", date, minutes, row.students(), row.subjects(), did == null ? "" : did,
                row.texts(ImportColumn.MATERIALS), row.text(ImportColumn.PLACE), row.yesOrNo(ImportColumn.CORE),
                row.person(ImportColumn.BY), row.time(ImportColumn.WRITTEN));
    }

    @Override
    Object key(LogEntry entry) {
        return new Key(entry.date(), Set.copyOf(entry.students()), entry.minutes(), words(entry.did()));
    }

    @Override
    RecordKind list() {
        return RecordKind.LOG;
    }

    @Override
    Class<LogEntry> type() {
        return LogEntry.class;
    }

    @Override
    LogEntry withId(LogEntry entry, String id) {
        return new LogEntry(id, entry.date(), entry.minutes(), entry.students(), entry.subjects(), entry.did(),
                entry.materials(), entry.place(), entry.core(), entry.by(), entry.written());
    }

    private record Key(LocalDate date, Set<String> students, int minutes, String words) { }
}
