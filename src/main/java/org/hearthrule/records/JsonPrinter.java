package org.hearthrule.records;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * Writes JSON that a person can read: two spaces, one entry of a list on one line where it fits, longer ones filled
 * like a paragraph. The same values always give the same text.
 */
final class JsonPrinter {

    private static final int WIDTH = 120;

    private final StringBuilder out = new StringBuilder();
    private int lineStart;

    private JsonPrinter() { }

    /**
     * Returns the text of an object, with a line end after it.
     *
     * @param root values by key: maps, lists, texts, numbers and booleans
     */
    static String print(Map<String, ?> root) {
        JsonPrinter printer = new JsonPrinter();
        printer.root(root);
        return printer.out.toString();
    }

    private void root(Map<String, ?> root) {
        out.append('{');
        boolean first = true;
        for (Map.Entry<String, ?> entry : root.entrySet()) {
            out.append(first ? "" : ",");
            newLine(2);
            first = false;
            key(out, entry.getKey());
            if (entry.getValue() instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof Map) {
                lines(list);
            } else {
                value(entry.getValue(), 1);
            }
        }
        newLine(0);
        out.append("}\n");
    }

    private void lines(List<?> list) {
        out.append('[');
        boolean first = true;
        for (Object entry : list) {
            out.append(first ? "" : ",");
            newLine(4);
            first = false;
            value(entry, 1);
        }
        newLine(2);
        out.append(']');
    }

    /** Writes a value; {@code after} characters must find room behind it on the line. */
    private void value(Object value, int after) {
        StringBuilder inline = new StringBuilder();
        inline(inline, value);
        boolean fits = column() + inline.length() + after <= WIDTH;
        if (!fits && value instanceof Map<?, ?> map) {
            fill(map);
        } else if (!fits && value instanceof List<?> list) {
            fill(list);
        } else {
            out.append(inline);
        }
    }

    private void fill(Map<?, ?> map) {
        out.append('{');
        int hang = column();
        boolean first = true;
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            StringBuilder member = new StringBuilder();
            key(member, entry.getKey());
            inline(member, entry.getValue());
            next(first, member.length(), hang);
            first = false;
            key(out, entry.getKey());
            value(entry.getValue(), 1);
        }
        out.append('}');
    }

    private void fill(List<?> list) {
        out.append('[');
        int hang = column();
        boolean first = true;
        for (Object entry : list) {
            StringBuilder member = new StringBuilder();
            inline(member, entry);
            next(first, member.length(), hang);
            first = false;
            value(entry, 1);
        }
        out.append(']');
    }

    /** Goes on to the next member: on this line when it has room for it, else on a new one. */
    private void next(boolean first, int length, int hang) {
        if (first) {
            return;
        }
        out.append(',');
        if (column() + 1 + length + 1 <= WIDTH) {
            out.append(' ');
        } else {
            newLine(hang);
        }
    }

    private void newLine(int indent) {
        out.append('\n');
        lineStart = out.length();
        out.append(" ".repeat(indent));
    }

    private int column() {
        return out.length() - lineStart;
    }

    private static void key(StringBuilder to, Object key) {
        text(to, (String) key);
        to.append(": ");
    }

    private static void inline(StringBuilder to, Object value) {
        if (value instanceof Map<?, ?> map) {
            String gap = "{";
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                to.append(gap);
                gap = ", ";
                key(to, entry.getKey());
                inline(to, entry.getValue());
            }
            to.append(map.isEmpty() ? "{}" : "}");
        } else if (value instanceof List<?> list) {
            String gap = "[";
            for (Object entry : list) {
                to.append(gap);
                gap = ", ";
                inline(to, entry);
            }
            to.append(list.isEmpty() ? "[]" : "]");
        } else if (value instanceof String text) {
            text(to, text);
        } else {
            to.append(value instanceof BigDecimal number ? number.toPlainString() : value.toString());
        }
    }

    private static void text(StringBuilder to, String text) {
        to.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                to.append('\\').append(c);
            } else if (c == '\n') {
                to.append("\\n");
            } else if (c < ' ' || c >= 0x7F && c <= 0x9F || c == 0x2028 || c == 0x2029) {
                to.append(String.format("\\u%04X", (int) c));
            } else {
                to.append(c);
            }
        }
        to.append('"');
    }
}
