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

/**
 * A table as text (CSV, RFC 4180), also parted by semicolons or tabs: headers, then rows. Rows without any text are
 * left out.
 *
 * @param headers   the cells of the first row
 * @param rows      the cells of each further row
 * @param separator what parts the cells
 */
record CsvTable(List<Cell> headers, List<List<Cell>> rows, char separator) {

    private static final char[] SEPARATORS = {',', ';', '\t'};

    /** A cell: its text without space around it, and where it begins. */
    record Cell(Place place, String text) {
        boolean isEmpty() {
            return text.isEmpty();
        }
    }

    /**
     * Reads a table.
     *
     * @param separator what parts the cells, or null to find out
     * @return the table, or empty after recording why there is none
     */
    static Optional<CsvTable> read(String file, String text, Character separator, Problems problems) {
        Place top = new Place(file, 1, 1);
        Character found = separator == null ? separatorOf(text, top, problems) : separator;
        if (found == null) {
            return Optional.empty();
        }
        CsvPlaces places = new CsvPlaces(file, text, found);
        List<List<Cell>> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder().fieldSeparator(found).allowUnclosedQuote(false)
                .extraFieldStrategy(FieldMismatchStrategy.IGNORE).missingFieldStrategy(FieldMismatchStrategy.IGNORE)
                .trimWhitespacesAroundQuotes(true).ofCsvRecord(text)) {
            for (CsvRecord record : reader) {
                List<Cell> row = row(record, places);
                if (row.stream().anyMatch(cell -> !cell.isEmpty())) {
                    rows.add(row);
                }
            }
        } catch (CsvParseException e) {
            wrong(file, e, problems);
            return Optional.empty();
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail to be read", e);
        }
        if (rows.size() < 2) {
            problems.error(top, "EMPTY-TABLE", rows.isEmpty() ? "nothing" : "only one row",
                    "a row of headers and rows below it", null);
            return Optional.empty();
        }
        CsvTable table = new CsvTable(rows.get(0), rows.subList(1, rows.size()), found);
        table.checkLengths(problems);
        return Optional.of(table);
    }

    private static List<Cell> row(CsvRecord record, CsvPlaces places) {
        List<Cell> cells = new ArrayList<>(record.getFieldCount());
        List<Place> begins = places.of(record.getStartingLineNumber(), record.getFieldCount());
        for (int i = 0; i < record.getFieldCount(); i++) {
            String text = record.getField(i).replace("\r\n", "\n").replace('\r', '\n').replace('\t', ' ').strip();
            cells.add(new Cell(begins.get(i), text));
        }
        return cells;
    }

    /** Text with a separator in it that should stand in quotes makes a row too long, and shifts its cells. */
    private void checkLengths(Problems problems) {
        for (List<Cell> row : rows) {
            for (int i = headers.size(); i < row.size(); i++) {
                if (!row.get(i).isEmpty()) {
                    problems.error(row.get(i).place(), "ROW-TOO-LONG", "a cell without a header",
                            headers.size() + " cells, as the first row has",
                            "text with " + name(separator) + " in it needs double quotes round it");
                    break;
                }
            }
        }
    }

    /** Finds the separator that parts the first row into most cells. */
    private static Character separatorOf(String text, Place top, Problems problems) {
        int[] counts = new int[SEPARATORS.length];
        boolean quoted = false;
        boolean any = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == '\n' || c == '\r') && any) {
                break;
            } else if (!quoted) {
                for (int s = 0; s < SEPARATORS.length; s++) {
                    counts[s] += c == SEPARATORS[s] ? 1 : 0;
                }
            }
            any |= !Character.isWhitespace(c);
        }
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

    private static String name(char separator) {
        return separator == ',' ? "a comma" : separator == ';' ? "a semicolon" : "a tab";
    }

    private static void wrong(String file, CsvParseException e, Problems problems) {
        String words = e.getMessage() + (e.getCause() == null ? "" : " " + e.getCause().getMessage());
        Matcher line = Pattern.compile("line (\\d+)").matcher(words);
        Place place = new Place(file, line.find() ? Integer.parseInt(line.group(1)) : 1, 1);
        boolean open = words.contains("Unclosed");
        problems.error(place, "WRONG-CSV", open ? "a double quote that is never closed" : "text after a closing quote",
                open ? "a quote at the end of the cell" : "the end of the cell",
                "a quote within the text must be written twice");
    }
}
