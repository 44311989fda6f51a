package org.hearthrule.tables;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Spreadsheets as a family's program would write them, made by another library than the one that reads them. */
final class Sheets {

    private Sheets() { }

    /** Returns the bytes of a spreadsheet. */
    static byte[] workbook(Consumer<XSSFWorkbook> fill) {
        try (XSSFWorkbook book = new XSSFWorkbook(); ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            fill.accept(book);
            book.write(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the bytes of a spreadsheet with one sheet of these rows. */
    static byte[] sheet(String name, Object[]... rows) {
        return workbook(book -> fill(book.createSheet(name), rows));
    }

    /** Writes texts, numbers, days, times (as a {@link Formatted} number) and formulas (texts that begin with =). */
    static void fill(XSSFSheet sheet, Object[]... rows) {
        for (int i = 0; i < rows.length; i++) {
            Row row = sheet.createRow(i);
            for (int j = 0; j < rows[i].length; j++) {
                if (rows[i][j] != null) {
                    put(row.createCell(j), rows[i][j]);
                }
            }
        }
    }

    private static void put(Cell cell, Object value) {
        if (value instanceof LocalDate day) {
            put(cell, new Formatted(DateUtil.getExcelDate(day), "m/d/yyyy"));
        } else if (value instanceof LocalDateTime time) {
            put(cell, new Formatted(DateUtil.getExcelDate(time), "m/d/yyyy h:mm"));
        } else if (value instanceof Formatted number) {
            CellStyle style = cell.getSheet().getWorkbook().createCellStyle();
            style.setDataFormat(cell.getSheet().getWorkbook().createDataFormat().getFormat(number.format()));
            cell.setCellValue(number.value());
            cell.setCellStyle(style);
        } else if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof Boolean yes) {
            cell.setCellValue(yes);
        } else if (value.toString().startsWith("=")) {
            cell.setCellFormula(value.toString().substring(1));
        } else {
            cell.setCellValue(value.toString());
        }
    }

    /** A number and how it is shown. */
    record Formatted(double value, String format) { }

    static Object[] row(Object... cells) {
        return cells;
    }

    /** Returns the parts of an archive, by name. */
    static Map<String, byte[]> parts(byte[] archive) {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return parts;
    }

    static byte[] archive(Map<String, byte[]> parts) {
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
            try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
                for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                    zip.putNextEntry(new ZipEntry(part.getKey()));
                    zip.write(part.getValue());
                }
            }
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns an archive with one part written anew. */
    static byte[] changed(byte[] archive, String part, String from, String to) {
        Map<String, byte[]> parts = parts(archive);
        String text = new String(parts.get(part), StandardCharsets.UTF_8);
        if (!text.contains(from)) {
            throw new IllegalArgumentException(part + " does not contain " + from + ": " + text);
        }
        parts.put(part, text.replace(from, to).getBytes(StandardCharsets.UTF_8));
        return archive(parts);
    }
}
