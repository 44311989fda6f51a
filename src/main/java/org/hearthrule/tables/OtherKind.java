package org.hearthrule.tables;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** Says what a file is that is no table, by its first bytes or by what an archive holds. */
final class OtherKind {

    private static final int LOOKED_AT = 512;
    private static final String LOCKED = "EncryptedPackage";

    private OtherKind() { }

    /** Returns whether the file is an archive (ZIP), as a spreadsheet is. */
    static boolean isArchive(byte[] bytes) {
        return startsWith(bytes, 'P', 'K', 3, 4) || startsWith(bytes, 'P', 'K', 5, 6);
    }

    /** Returns what a file is that is neither an archive nor text, as a phrase; null for all others. */
    static String of(byte[] bytes) {
        if (startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
            // old spreadsheets and locked ones are both "compound files"; the names of their streams are in UTF-16
            return contains(bytes, LOCKED) ? "a spreadsheet locked with a password" : "an old spreadsheet (.xls)";
        }
        if (startsWith(bytes, '%', 'P', 'D', 'F')) {
            return "a PDF";
        }
        if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
            return "text in UTF-16";
        }
        String start = new String(bytes, 0, Math.min(bytes.length, LOOKED_AT), StandardCharsets.ISO_8859_1)
                .toLowerCase(Locale.ROOT).strip();
        return start.startsWith("<!doctype html") || start.startsWith("<html") || start.startsWith("<table")
                ? "a web page, whatever its name says" : null;
    }

    /** Returns what an archive is, as a phrase, by the names of its parts; null for a spreadsheet (XLSX). */
    static String ofArchive(List<String> names) {
        Predicate<String> any = end -> names.stream().anyMatch(name -> name.toLowerCase(Locale.ROOT).endsWith(end));
        if (any.test(".iwa") || names.contains("Index.zip")) {
            return "a Numbers document (.numbers)";
        }
        if (names.contains("mimetype") && names.contains("content.xml")) {
            return "an OpenDocument file (.ods)";
        }
        if (any.test("workbook.bin")) {
            return "a binary spreadsheet (.xlsb)";
        }
        boolean office = names.contains("[Content_Types].xml");
        if (office && names.stream().anyMatch(name -> name.startsWith("xl/"))) {
            return null;
        }
        return office ? "an office document without sheets" : "an archive (ZIP)";
    }

    static boolean startsWith(byte[] bytes, int... start) {
        for (int i = 0; i < start.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean contains(byte[] bytes, String name) {
        byte[] wanted = name.getBytes(StandardCharsets.UTF_16LE);
        for (int i = 0; i + wanted.length <= bytes.length; i++) {
            int same = 0;
            while (same < wanted.length && bytes[i + same] == wanted[same]) {
                same++;
            }
            if (same == wanted.length) {
                return true;
            }
        }
        return false;
    }
}
