package org.hearthrule.tables;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Place;

/** Knows where in a text the cells of a table begin, which its reader does not tell. */
final class CsvPlaces {

    private final String file;
    private final String text;
    private final char separator;
    private final List<Integer> lineStarts = new ArrayList<>();

    CsvPlaces(String file, String text, char separator) {
        this.file = file;
        this.text = text;
        this.separator = separator;
        lineStarts.add(0);
        for (int i = 0; i < text.length(); i++) {
            if (isLineEnd(i)) {
                lineStarts.add(i + 1);
            }
        }
    }

    /** Returns where each cell of the row begins that begins on a line. */
    List<Place> of(long firstLine, int cells) {
        List<Place> places = new ArrayList<>(cells);
        int line = (int) firstLine;
        int at = lineStarts.get(line - 1);
        while (places.size() < cells) {
            int begin = at;
            while (begin < text.length() && text.charAt(begin) == ' ' && separator != ' ') {
                begin++;
            }
            places.add(new Place(file, line, begin - lineStarts.get(line - 1) + 1));
            boolean quoted = begin < text.length() && text.charAt(begin) == '"';
            int end = quoted ? afterQuotes(begin) : begin;
            while (end < text.length() && text.charAt(end) != separator && text.charAt(end) != '\n'
                    && text.charAt(end) != '\r') {
                end++;
            }
            at = Math.min(end + 1, text.length());
            while (line < lineStarts.size() && lineStarts.get(line) <= end) {
                line++;
            }
        }
        return places;
    }

    private int afterQuotes(int begin) {
        int i = begin + 1;
        while (i < text.length()) {
            if (text.charAt(i) != '"') {
                i++;
            } else if (i + 1 < text.length() && text.charAt(i + 1) == '"') {
                i += 2;
            } else {
                return i + 1;
            }
        }
        return i;
    }

    private boolean isLineEnd(int i) {
        char c = text.charAt(i);
        return c == '\n' || c == '\r' && !(i + 1 < text.length() && text.charAt(i + 1) == '\n');
    }
}
