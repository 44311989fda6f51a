package org.hearthrule.tables;

import java.util.Locale;

/**
 * What a number in a spreadsheet stands for: days and times are numbers that only their format tells from others. The
 * formats that have a number and no text are those of ECMA-376 part 1, 18.8.30.
 */
enum CellFormat {
    NUMBER, DAY, TIME_OF_DAY, SPAN;

    /** Returns what a format stands for. */
    static CellFormat of(Integer id, String code) {
        if (id == null) {
            return NUMBER;
        }
        if (id >= 14 && id <= 17 || id == 22 || id >= 27 && id <= 31 || id == 36 || id >= 50 && id <= 58) {
            return DAY;
        }
        if (id == 18 || id == 19) {
            return TIME_OF_DAY;
        }
        if (id == 20 || id == 21 || id >= 32 && id <= 35 || id >= 45 && id <= 47) {
            return SPAN;
        }
        return code == null ? NUMBER : of(code);
    }

    /** Reads the letters of a format, without words in quotes, marks in brackets and signs taken as they are. */
    private static CellFormat of(String code) {
        String first = code.replaceAll("\"[^\"]*\"|\\\\.|_.|\\*.", "").split(";", 2)[0].toLowerCase(Locale.ROOT);
        if (first.matches(".*\\[(h+|m+|s+)].*")) {
            return SPAN;
        }
        String letters = first.replaceAll("\\[[^]]*]", "").replace("general", "");
        boolean ofDay = letters.contains("am/pm") || letters.contains("a/p");
        String plain = letters.replace("am/pm", "").replace("a/p", "");
        boolean clock = plain.indexOf('h') >= 0 || plain.indexOf('s') >= 0;
        if (plain.indexOf('y') >= 0 || plain.indexOf('d') >= 0 || plain.indexOf('m') >= 0 && !clock) {
            return DAY;
        }
        return clock ? ofDay ? TIME_OF_DAY : SPAN : NUMBER;
    }
}
