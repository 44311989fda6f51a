package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.hearthrule.input.BadInputException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenBookTest {

    private static final String FAMILY = """
            {"hearthrule": 1, "family": {"name": "Harbourers"}, "students": [{"id": "ada", "name": "Ada"}]}
            """;
    private static final String YEAR = """
            {"hearthrule": 1, "year": "2026-27", "log": [
             {"id": "log-1", "date": "2026-09-01", "students": ["ada"], "did": "tarred the boat"},
             {"id": "log-2", "date": "2026-09-03", "students": ["ada"], "did": "read of whales"}]}
            """;

    @TempDir
    private Path folder;
    private OpenBook book;

    @BeforeEach
    void aBook() throws Exception {
        Files.writeString(folder.resolve("family.json"), FAMILY);
        Files.writeString(folder.resolve("2026-27.json"), YEAR);
        book = new OpenBook(folder, Clock.systemDefaultZone());
    }

    private static YearRecords.LogEntry entry(String id, String day, String did) {
        return new YearRecords.LogEntry(id, LocalDate.parse(day), 30, List.of("ada"), List.of(), did, List.of(), null,
                null, null, null);
    }

    private List<String> did() {
        return book.book().years().get("2026-27").log().stream().map(YearRecords.LogEntry::did).toList();
    }

    private void add(String id, String day, String did) throws Exception {
        book.edit(did, now -> BookEdits.put(now, "2026-27", entry(id, day, did)));
    }

    private void changeOutside(String from, String to) throws Exception {
        Path file = folder.resolve("2026-27.json");
        Files.writeString(file, Files.readString(file).replace(from, to));
    }

    @Test
    void anEntryComesInTheOrderOfItsDay() throws Exception {
        add("log-3", "2026-09-02", "sorted shells");

        assertThat(did()).containsExactly("tarred the boat", "sorted shells", "read of whales");
    }

    @Test
    void undoAndRedoGoBackAndForth() throws Exception {
        add("log-3", "2026-09-02", "sorted shells");

        assertThat(book.undo()).contains("sorted shells");
        assertThat(did()).containsExactly("tarred the boat", "read of whales");
        assertThat(book.redo()).contains("sorted shells");
        assertThat(did()).containsExactly("tarred the boat", "sorted shells", "read of whales");
        assertThat(book.redo()).isEmpty();
    }

    /** An edit that was made to what was read long ago would take a change from outside back without a word. */
    @Test
    void aChangeFromOutsideIsKeptByTheNextEdit() throws Exception {
        book.book();
        changeOutside("read of whales", "read of whales and seals");

        add("log-3", "2026-09-02", "sorted shells");

        assertThat(did()).containsExactly("tarred the boat", "sorted shells", "read of whales and seals");
    }

    @Test
    void anUndoLeavesAChangeFromOutsideToAnotherRecord() throws Exception {
        add("log-3", "2026-09-02", "sorted shells");
        changeOutside("read of whales", "read of whales and seals");

        book.undo();

        assertThat(did()).containsExactly("tarred the boat", "read of whales and seals");
    }

    @Test
    void anUndoOfWhatWasChangedSinceIsRefused() throws Exception {
        add("log-3", "2026-09-02", "sorted shells");
        changeOutside("sorted shells", "sorted shells by size");

        assertThatThrownBy(() -> book.undo()).isInstanceOf(UndoRefusedException.class);
        assertThat(did()).contains("sorted shells by size");
        assertThat(book.undoable()).contains("sorted shells");
    }

    @Test
    void filesThatCannotBeReadLeaveTheLastBookToLookAtAndRefuseEdits() throws Exception {
        book.book();
        changeOutside("]}", "");
        String broken = Files.readString(folder.resolve("2026-27.json"));

        assertThat(did()).containsExactly("tarred the boat", "read of whales");
        assertThat(book.problems()).isNotEmpty();
        assertThatThrownBy(() -> add("log-3", "2026-09-02", "sorted shells")).isInstanceOf(BadInputException.class);
        assertThat(Files.readString(folder.resolve("2026-27.json"))).isEqualTo(broken);
    }

    @Test
    void twoSidesThatChangeDifferentRecordsAreBroughtTogether() {
        Book base = book.book();
        Book ours = BookEdits.put(base, "2026-27", entry("log-1", "2026-09-01", "tarred the boat twice"));
        Book theirs = BookEdits.remove(base, "2026-27", "log-2");

        Book merged = BookMerge.merge(base, ours, theirs).orElseThrow();

        assertThat(merged.years().get("2026-27").log()).extracting(YearRecords.LogEntry::did)
                .containsExactly("tarred the boat twice");
    }

    @Test
    void twoSidesThatChangeOneRecordDifferentlyAreAConflict() {
        Book base = book.book();
        Book ours = BookEdits.put(base, "2026-27", entry("log-1", "2026-09-01", "tarred the boat twice"));
        Book theirs = BookEdits.remove(base, "2026-27", "log-1");

        assertThat(BookMerge.merge(base, ours, theirs)).isEmpty();
    }

    @Test
    void aRecordMovesToTheYearOfItsNewDay() {
        Book moved = BookEdits.move(book.book(), "2026-27", "log-2", "2027-28", entry("log-2", "2027-08-01", "swam"));

        assertThat(moved.years().get("2026-27").log()).hasSize(1);
        assertThat(moved.years().get("2027-28").log()).extracting(YearRecords.LogEntry::did).containsExactly("swam");
    }
}
