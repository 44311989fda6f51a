package org.hearthrule.checklist;

import java.text.Normalizer;

/** Text for a terminal that shows only ASCII: the nearest plain letters, {@code ?} where there are none. */
final class Ascii {

    private Ascii() { }

    static String of(String text) {
        int i = 0;
        while (i < text.length() && text.charAt(i) < 0x7F) {
            i++;
        }
        return i == text.length() ? text : convert(text);
    }

    private static String convert(String text) {
        String parts = Normalizer.normalize(text, Normalizer.Form.NFKD);
        StringBuilder out = new StringBuilder(parts.length() + 8);
        for (int i = 0; i < parts.length(); ) {
            int c = parts.codePointAt(i);
            i += Character.charCount(c);
            append(out, c);
        }
        return out.toString();
    }

    private static void append(StringBuilder out, int c) {
        if (c < 0x7F) {
            out.append((char) c);
            return;
        }
        switch (c) {
            case '§' -> out.append("Sec.");
            case '‐', '‑', '–', '—', '−', '─', '·' -> out.append('-');
            case '‘', '’', '‚' -> out.append('\'');
            case '“', '”', '„', '«', '»' -> out.append('"');
            case '…' -> out.append("...");
            case '×' -> out.append('x');
            case 'ß' -> out.append("ss");
            case 'æ' -> out.append("ae");
            case 'Æ' -> out.append("AE");
            case 'ø', 'Ø' -> out.append(c == 'ø' ? 'o' : 'O');
            case 'ł', 'Ł' -> out.append(c == 'ł' ? 'l' : 'L');
            default -> {
                if (Character.getType(c) != Character.NON_SPACING_MARK) {
                    out.append('?');
                }
            }
        }
    }
}
