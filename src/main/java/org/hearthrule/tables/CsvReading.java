package org.hearthrule.tables;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/** Reads a table as text (CSV, RFC 4180), also one parted by semicolons or tabs. */
final class CsvReading {

    private static final char[] SEPARATORS = {',', ';', '\t'};

    private final String file;
    private final String text;
    private final Place top;
    private final Problems problems;

    private CsvReading(String file, String text, Problems problems) {
        this.file = file;
        this.text = text;
        this.top = new Place(file, 1, 1);
        this.problems = problems;
    }

    /**
     * Reads a table.
     *
     * @param separator     what parts the cells, or null to find out
     * @param byteOrderMark whether the text began with one
     * @return the table, or empty after recording why there is none
     */
    static Optional<Table> read(String file, String text, Character separator, boolean byteOrderMark, Problems problems) {
        CsvReading reading = new CsvReading(file, text, problems);
        Character found = separator == null ? reading.separator() : separator;
        return found == null ? Optional.empty()
                : reading.table(new Layout.Text(found, byteOrderMark, text.contains("\r\n")));
    }

    private Optional<Table> table(Layout.Text layout) {
        CsvPlaces places = new CsvPlaces(file, text, layout.separator());
        Cells cells = new Cells();
        List<Table.Row> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder().fieldSeparator(layout.separator())
                .allowUnclosedQuote(false).extraFieldStrategy(FieldMismatchStrategy.IGNORE)
                .missingFieldStrategy(FieldMismatchStrategy.IGNORE).trimWhitespacesAroundQuotes(true).ofCsvRecord(text)) {
            for (CsvRecord record : reader) {
                Table.Row row = row(record, places, cells);
                if (!row.isBlank()) {
                    rows.add(row);
                }
            }
        } catch (CsvParseException e) {
            wrong(e);
            return Optional.empty();
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail to be read", e);
        }
        return Table.of(rows, layout, top, problems);
    }

    private static Table.Row row(CsvRecord record, CsvPlaces places, Cells cells) {
        List<Cell> row = new ArrayList<>(record.getFieldCount());
        List<Place> begins = places.of(record.getStartingLineNumber(), record.getFieldCount());
        for (int i = 0; i < record.getFieldCount(); i++) {
            row.add(cells.text(begins.get(i), CsvGuard.taken(record.getField(i))));
        }
        return new Table.Row(begins.get(0), row);
    }

    /** Finds the separator that parts the first row into most cells. */
    private Character separator() {
        int[] counts = new int[SEPARATORS.length];
        boolean any = count(counts);
        int best = counts[1] > counts[0] ? 1 : 0;
        best = counts[2] > counts[best] ? 2 : best;
        boolean tie = false;
        for (int s = 0; s < counts.length; s++) {
            tie |= s != best && counts[s] > 0 && counts[s] == counts[best];
        }
        if (counts[best] > 0 && !tie) {
            return SEPARATORS[best];
        }
        if (!any) {
            problems.error(top, "EMPTY-TABLE", "nothing", "a row of headers and rows below it", null);
        } else {
            problems.error(top, "UNKNOWN-SEPARATOR", tie ? "two signs that could part the cells" : "one column",
                    "cells parted by commas, semicolons or tabs", tie ? "say which sign it is" : null);
        }
        return null;
    }

    /** Counts the signs that stand outside quotes in the first line that has one; returns whether there is any text. */
    private boolean count(int[] counts) {
        boolean quoted = false;
        boolean any = false;
        boolean found = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == '\n' || c == '\r') && found) {
                break;
            } else if (!quoted) {
                for (int s = 0; s < SEPARATORS.length; s++) {
                    counts[s] += c == SEPARATORS[s] ? 1 : 0;
                    found |= c == SEPARATORS[s];
                }
            }
            any |= !Character.isWhitespace(c);
        }
        return any;
    }

    private void wrong(CsvParseException e) {
        String words = e.getMessage() + (e.getCause() == null ? "" : " " + e.getCause().getMessage());
        Matcher line = Pattern.compile("line (\\d+)").matcher(words);
        Place place = new Place(file, line.find() ? Integer.parseInt(line.group(1)) : 1, 1);
        boolean open = words.contains("Unclosed");
        problems.error(place, "WRONG-CSV", open ? "a double quote that is never closed" : "text after a closing quote",
                open ? "a quote at the end of the cell" : "the end of the cell",
                "a quote within the text must be written twice");
    }
}
