package org.hearthrule.tables;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.hearthrule.terms.Wording;

/**
 * Writes one spreadsheet (XLSX) with a sheet for each list. Text is written as text, never as a formula, whatever sign
 * it begins with.
 */
final class XlsxExport {

    private static final String DAY = "yyyy-mm-dd";
    private static final String TIME = "yyyy-mm-dd hh:mm";
    private static final int ROWS_AT_ONCE = 500;
    private static final int SAMPLED = 200;
    private static final int NARROWEST = 9;
    private static final int WIDEST = 60;
    private static final int DAY_WIDTH = 12;
    private static final int TIME_WIDTH = 17;
    private static final String CORE = "docProps/core.xml";

    /** Before this day spreadsheets count wrongly: they hold 1900 for a leap year (ECMA-376 part 1, 18.17.4.1). */
    private static final LocalDate FIRST_DAY = LocalDate.of(1900, 3, 1);

    private XlsxExport() { }

    static void write(List<ListTable> lists, OutputStream out) throws IOException {
        ByteArrayOutputStream first = new ByteArrayOutputStream();
        Workbook book = new Workbook(first, "Hearthrule", null);
        book.setCompressionLevel(Deflater.BEST_SPEED);
        for (ListTable list : lists) {
            Worksheet sheet = book.newWorksheet(Wording.english().say("export.list." + list.name()));
            write(list, sheet);
            sheet.finish();
        }
        if (lists.isEmpty()) {
            book.newWorksheet(Wording.english().say("export.list.log")).value(0, 0, CsvExport.header("date"));
        }
        book.finish();
        timeless(first.toByteArray(), out);
    }

    private static void write(ListTable list, Worksheet sheet) throws IOException {
        int[] widths = widths(list);
        for (int i = 0; i < widths.length; i++) {
            sheet.width(i, widths[i]);
            sheet.value(0, i, CsvExport.header(list.columns().get(i)));
            sheet.style(0, i).bold().set();
        }
        sheet.freezePane(0, 1);
        int number = 1;
        for (Iterator<Object[]> rows = list.rows().get().iterator(); rows.hasNext(); number++) {
            Object[] row = rows.next();
            for (int i = 0; i < row.length; i++) {
                put(sheet, number, i, row[i], widths[i]);
            }
            if (number % ROWS_AT_ONCE == 0) {
                sheet.flush();
            }
        }
    }

    private static void put(Worksheet sheet, int row, int column, Object value, int width) {
        if (value instanceof LocalDate day && !day.isBefore(FIRST_DAY)) {
            sheet.value(row, column, day);
            sheet.style(row, column).format(DAY).verticalAlignment("top").set();
        } else if (value instanceof LocalDateTime time) {
            sheet.value(row, column, time);
            sheet.style(row, column).format(TIME).verticalAlignment("top").set();
        } else if (value instanceof Number number) {
            sheet.value(row, column, number);
            sheet.style(row, column).verticalAlignment("top").set();
        } else if (value != null && !value.toString().isEmpty()) {
            sheet.value(row, column, XlsxCells.escaped(value.toString()));
            sheet.style(row, column).verticalAlignment("top").wrapText(value.toString().length() >= width).set();
        }
    }

    /** Returns how wide each column should be, in characters, by its header and its first rows. */
    private static int[] widths(ListTable list) {
        int[] widths = list.columns().stream().mapToInt(column -> Math.max(NARROWEST,
                CsvExport.header(column).length() + 2)).toArray();
        list.rows().get().limit(SAMPLED).forEach(row -> {
            for (int i = 0; i < row.length; i++) {
                int width = row[i] instanceof LocalDate ? DAY_WIDTH : row[i] instanceof LocalDateTime ? TIME_WIDTH
                        : row[i] == null ? 0 : row[i].toString().length() + 2;
                widths[i] = Math.max(widths[i], Math.min(WIDEST, width));
            }
        });
        return widths;
    }

    /** Copies the archive without any word of when it was made, so that the same book gives the same bytes. */
    static void timeless(byte[] archive, OutputStream out) throws IOException {
        Pattern created = Pattern.compile("<dcterms:created.*?</dcterms:created>");
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        try (XlsxParts parts = new XlsxParts(archive)) {
            for (String name : parts.names()) {
                ZipEntry entry = new ZipEntry(name);
                entry.setTimeLocal(CsvExport.NO_TIME);
                zip.putNextEntry(entry);
                try (InputStream part = parts.open(name)) {
                    if (name.equals(CORE)) {
                        String text = new String(part.readAllBytes(), StandardCharsets.UTF_8);
                        zip.write(created.matcher(text).replaceAll("").getBytes(StandardCharsets.UTF_8));
                    } else {
                        part.transferTo(zip);
                    }
                }
                zip.closeEntry();
            }
        }
        zip.finish();
    }
}
