package org.hearthrule.tables;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.hearthrule.terms.Wording;

/**
 * Writes each list as text (CSV, RFC 4180, UTF-8) into one archive. A byte-order mark goes first, by which spreadsheet
 * programs know UTF-8 when somebody opens the file by a double click.
 */
final class CsvExport {

    /** No file of a book is so old: it stands for no time, since the archive must not tell when it was made. */
    static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private CsvExport() { }

    static void write(List<ListTable> lists, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        for (ListTable list : lists) {
            ZipEntry entry = new ZipEntry(list.name() + ".csv");
            entry.setTimeLocal(NO_TIME);
            zip.putNextEntry(entry);
            write(list, zip);
            zip.closeEntry();
        }
        zip.finish();
    }

    private static void write(ListTable list, OutputStream out) throws IOException {
        Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        text.write(BYTE_ORDER_MARK);
        CsvWriter writer = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text);
        try {
            writer.writeRecord(list.columns().stream().map(CsvExport::header).toList());
            list.rows().get().forEach(row -> writer.writeRecord(cells(row)));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        writer.flush();
        text.flush();
    }

    static String header(String column) {
        return Wording.english().say("export.head." + column);
    }

    private static String[] cells(Object[] row) {
        String[] cells = new String[row.length];
        for (int i = 0; i < row.length; i++) {
            cells[i] = row[i] == null ? "" : row[i] instanceof String text ? CsvGuard.given(text)
                    : row[i] instanceof LocalDateTime time ? time.toString().replace('T', ' ') : row[i].toString();
        }
        return cells;
    }
}
