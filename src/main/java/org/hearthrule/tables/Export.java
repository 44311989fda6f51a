package org.hearthrule.tables;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookText;
import org.hearthrule.records.YearRecords;

/**
 * Takes a book out of the program, or a part of it: as tables for people, or as one document with nothing lost. The
 * same book always gives the same bytes. Photos and scans stay where they are; the lists name them.
 */
public final class Export {

    private Export() { }

    /**
     * Writes a book.
     *
     * @param book   whole
     * @param choice how much of it
     * @param format in which form
     * @param out    takes the bytes; is not closed
     */
    public static void write(Book book, ExportChoice choice, ExportFormat format, OutputStream out) throws IOException {
        Book part = BookPart.of(book, choice);
        switch (format) {
            case CSV -> CsvExport.write(BookLists.of(part), out);
            case XLSX -> XlsxExport.write(BookLists.of(part), out);
            case JSON -> out.write(json(part).getBytes(StandardCharsets.UTF_8));
            default -> throw new IllegalArgumentException("a format of no kind");
        }
    }

    /** Returns the text that {@code shared/schema/book.schema.json} describes. */
    private static String json(Book book) {
        StringBuilder text = new StringBuilder("{\n  \"hearthrule\": ").append(Book.VERSION).append(",\n  \"family\": ")
                .append(indented(BookText.family(book), "  ")).append(",\n  \"years\": [");
        String before = "\n    ";
        for (YearRecords year : book.years().values()) {
            text.append(before).append(indented(BookText.year(year), "    "));
            before = ",\n    ";
        }
        return text.append(book.years().isEmpty() ? "]\n}\n" : "\n  ]\n}\n").toString();
    }

    /** Moves a file's text to the right. In JSON a line end never stands within a text. */
    private static String indented(String file, String by) {
        return file.strip().replace("\n", "\n" + by);
    }
}
