package org.hearthrule.tables;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.Reading;

/** Readings. One that was not finished belongs to the year in which it was begun. */
final class ReadingKind extends ListKind<Reading> {

    @Override
    public List<ImportColumn> columns() {
        return List.of(ImportColumn.TITLE, ImportColumn.AUTHOR, ImportColumn.STARTED, ImportColumn.FINISHED,
                ImportColumn.STUDENTS, ImportColumn.SUBJECTS, ImportColumn.IDEA);
    }

    @Override
    public ImportColumn required() {
        return ImportColumn.TITLE;
    }

    @Override
    List<ImportColumn> days() {
        return List.of(ImportColumn.STARTED, ImportColumn.FINISHED);
    }

    @Override
    Reading read(RowReader row) {
        String title = row.requiredText(ImportColumn.TITLE);
        LocalDate started = row.day(ImportColumn.STARTED, false);
        LocalDate finished = row.day(ImportColumn.FINISHED, false);
        if (started != null && finished != null && finished.isBefore(started)) {
            row.error(ImportColumn.FINISHED, "BACKWARDS", finished + ", which lies before the day it was begun",
                    started + " or a later day", null);
        }
        return new Reading("", row.students(), title, row.text(ImportColumn.AUTHOR), started, finished, row.subjects(),
                row.text(ImportColumn.IDEA));
    }

    @Override
    Object key(Reading reading) {
        String author = reading.author() == null ? "" : reading.author();
        return new Key(words(reading.title()).toLowerCase(Locale.ROOT), words(author).toLowerCase(Locale.ROOT),
                Set.copyOf(reading.students()), reading.started(), reading.finished());
    }

    @Override
    RecordKind list() {
        return RecordKind.READINGS;
    }

    @Override
    Class<Reading> type() {
        return Reading.class;
    }

    @Override
    Reading withId(Reading reading, String id) {
        return new Reading(id, reading.students(), reading.title(), reading.author(), reading.started(),
                reading.finished(), reading.subjects(), reading.idea());
    }

    private record Key(String title, String author, Set<String> students, LocalDate started, LocalDate finished) { }
}
