package org.hearthrule.tables;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problem;
import org.hearthrule.input.Problems;

/**
 * A file with a table, as it was read: a spreadsheet (XLSX) or text (CSV). What it is, is told by its bytes, not by its
 * name. Nothing in it is ever run.
 *
 * @param name     as it is to be shown
 * @param sheets   sheets of a spreadsheet; none in a table as text
 * @param table    empty when it could not be read
 * @param problems what is wrong with the file as a whole
 * @param text     the text of a table as text, so that lines of it can be shown; empty for a spreadsheet
 */
public record TableFile(String name, List<TableSheet> sheets, Optional<Table> table, List<Problem> problems,
                        String text) {

    /** The most bytes of a file. */
    public static final int MOST_BYTES = 20_000_000;

    /** The most bytes that a spreadsheet may be unpacked: far above any family's log, far below a machine's memory. */
    static final long MOST_UNPACKED = 100_000_000;

    /** The most cells of a sheet. */
    static final int MOST_CELLS = 1_000_000;

    /**
     * Which of several readings is meant.
     *
     * @param sheet     name of a sheet; null: the first one that is not hidden and has headers
     * @param separator what parts the cells of a table as text; null: find out
     */
    public record Choice(String sheet, Character separator) {

        /** Nothing was said. */
        public static final Choice NONE = new Choice(null, null);

        /** @return a sheet by its name */
        public static Choice ofSheet(String name) {
            return new Choice(name, null);
        }
    }

    /** @return the bytes of a file, or of its beginning when it is too large to be read; the stream is not closed */
    public static byte[] bytes(InputStream in) throws IOException {
        return in.readNBytes(MOST_BYTES + 1);
    }

    /**
     * Reads a file.
     *
     * @param name    as it is to be shown
     * @param content the bytes
     * @param choice  what was said about it
     * @return the table, or every reason why there is none
     */
    public static TableFile read(String name, byte[] content, Choice choice) {
        Problems problems = new Problems();
        Place top = new Place(name, 1, 1);
        if (content.length > MOST_BYTES) {
            problems.error(top, "TOO-BIG", content.length + " bytes", "at most " + MOST_BYTES, "split the table");
            return new TableFile(name, List.of(), Optional.empty(), problems.all(), "");
        }
        if (OtherKind.isArchive(content)) {
            XlsxReading reading = new XlsxReading(name, content, problems);
            Optional<Table> table = reading.read(choice.sheet());
            return new TableFile(name, reading.sheets(), table, problems.all(), "");
        }
        String other = OtherKind.of(content);
        if (other != null) {
            refuse(top, other, problems);
            return new TableFile(name, List.of(), Optional.empty(), problems.all(), "");
        }
        if (choice.sheet() != null) {
            problems.error(top, "UNKNOWN-SHEET", "a table as text, which has no sheets", "a spreadsheet (XLSX)", null);
            return new TableFile(name, List.of(), Optional.empty(), problems.all(), "");
        }
        Optional<String> text = CsvText.decode(name, content, problems);
        Optional<Table> table = text.flatMap(read -> CsvReading.read(name, read, choice.separator(),
                CsvText.hasMark(content), problems));
        return new TableFile(name, List.of(), table, problems.all(), text.orElse(""));
    }

    static void refuse(Place top, String found, Problems problems) {
        problems.error(top, "NOT-A-TABLE", found, "a spreadsheet (XLSX), or a table as text (CSV) in UTF-8",
                "in the spreadsheet program, save it as XLSX or as \"CSV UTF-8\"");
    }
}
