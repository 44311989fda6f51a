package org.hearthrule.tables;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.Row;
import org.hearthrule.input.Place;

/** Turns the cells of a sheet into ours. */
final class XlsxCells {

    /** The errors a formula can come to: ECMA-376 part 1, 18.18.11 and 18.17.2; the last two are newer. */
    private static final Set<String> ERRORS = Set.of("#DIV/0!", "#N/A", "#NAME?", "#NULL!", "#NUM!", "#REF!", "#VALUE!",
            "#GETTING_DATA", "#SPILL!", "#CALC!");

    /** A sign that XML cannot hold, or an underscore that would begin such an escape: ECMA-376 part 1, 22.9.2.19. */
    private static final Pattern ESCAPE = Pattern.compile("_x([0-9A-Fa-f]{4})_");

    private static final BigDecimal MINUTES_OF_A_DAY = BigDecimal.valueOf(24 * 60);
    private static final BigDecimal FIRST_DAY = BigDecimal.ONE;
    private static final BigDecimal AFTER_LAST_DAY = BigDecimal.valueOf(2_958_466);

    /** Spreadsheets keep 15 digits; what stands behind them is noise of binary fractions. */
    private static final MathContext DIGITS = new MathContext(15);

    private static final long HALF_A_SECOND = 500_000_000;

    private final String file;
    private final String sheet;
    private final Cells cells = new Cells();

    XlsxCells(String file, String sheet) {
        this.file = file;
        this.sheet = sheet;
    }

    Table.Row row(Row row) {
        List<Cell> ours = new ArrayList<>();
        for (org.dhatim.fastexcel.reader.Cell cell : row) {
            CellValue value = cell == null ? null : value(cell);
            if (value != null && !value.shown().isEmpty()) {
                while (ours.size() < cell.getColumnIndex()) {
                    ours.add(null);
                }
                ours.add(new Cell(new Place(file, row.getRowNum(), cell.getColumnIndex() + 1, sheet), value));
            }
        }
        return new Table.Row(new Place(file, row.getRowNum(), 1, sheet), ours);
    }

    /** Returns what a cell holds, or null when that is nothing. */
    private CellValue value(org.dhatim.fastexcel.reader.Cell cell) {
        Object value = cell.getValue();
        if (cell.getType() == CellType.ERROR || value instanceof String text && ERRORS.contains(text)) {
            return new CellValue.Fault(cell.getRawValue(), "the formula of this cell, or one it uses, must be mended");
        }
        if (value instanceof BigDecimal number) {
            return number(cell, number);
        }
        if (value == null) {
            return cell.getType() == CellType.FORMULA ? new CellValue.Fault("a formula that was never computed",
                    "open the table in the spreadsheet program and save it again") : null;
        }
        return value instanceof Boolean yes ? cells.text(yes ? "yes" : "no") : cells.text(unescaped(value.toString()));
    }

    private CellValue number(org.dhatim.fastexcel.reader.Cell cell, BigDecimal number) {
        CellFormat format = CellFormat.of(cell.getDataFormatId(), cell.getDataFormatString());
        boolean day = number.compareTo(FIRST_DAY) >= 0 && number.compareTo(AFTER_LAST_DAY) < 0;
        if (format == CellFormat.DAY && day) {
            return new CellValue.Moment(cell.asDate().plusNanos(HALF_A_SECOND).truncatedTo(ChronoUnit.SECONDS));
        }
        if (format == CellFormat.SPAN || format == CellFormat.TIME_OF_DAY) {
            return new CellValue.Span(number.multiply(MINUTES_OF_A_DAY), format == CellFormat.TIME_OF_DAY);
        }
        BigDecimal rounded = number.round(DIGITS).stripTrailingZeros();
        return new CellValue.Figure(rounded.scale() < 0 ? rounded.setScale(0) : rounded);
    }

    /** Returns a text as it is written: what looks like an escape begins with one. */
    static String escaped(String text) {
        return text.contains("_x") ? ESCAPE.matcher(text).replaceAll("_x005F_x$1_") : text;
    }

    private static String unescaped(String text) {
        if (!text.contains("_x")) {
            return text;
        }
        Matcher escapes = ESCAPE.matcher(text);
        return escapes.replaceAll(found -> Matcher.quoteReplacement(
                Character.toString((char) Integer.parseInt(found.group(1), 16))));
    }
}
