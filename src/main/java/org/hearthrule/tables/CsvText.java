package org.hearthrule.tables;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Optional;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/** Turns the bytes of a table into text, or says where they are none. */
final class CsvText {

    private static final String SAVE_AGAIN = "in the spreadsheet program, save it as \"CSV UTF-8\"";

    private CsvText() { }

    /** Returns the text without a byte-order mark. */
    static Optional<String> decode(String file, byte[] bytes, Problems problems) {
        CharBuffer text = CharBuffer.allocate(bytes.length);
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer rest = ByteBuffer.wrap(bytes);
        boolean wrong = decoder.decode(rest, text, true).isError();
        String read = text.flip().toString();
        if (wrong) {
            problems.register(file, read);
            notUtf8(file, read, bytes[rest.position()], problems);
            return Optional.empty();
        }
        String content = hasMark(bytes) ? read.substring(1) : read;
        problems.register(file, content);
        return Optional.of(content);
    }

    static boolean hasMark(byte[] bytes) {
        return OtherKind.startsWith(bytes, 0xEF, 0xBB, 0xBF);
    }

    private static void notUtf8(String file, String before, byte wrong, Problems problems) {
        int line = 1;
        int start = before.startsWith("\uFEFF") ? 1 : 0;
        for (int i = 0; i < before.length(); i++) {
            boolean pair = before.charAt(i) == '\r' && i + 1 < before.length() && before.charAt(i + 1) == '\n';
            if (before.charAt(i) == '\n' || before.charAt(i) == '\r' && !pair) {
                line++;
                start = i + 1;
            }
        }
        String windows = new String(new byte[] {wrong}, Charset.forName("windows-1252"));
        boolean likely = windows.charAt(0) > 0x9F && windows.charAt(0) != '\uFFFD';
        problems.error(new Place(file, line, before.length() - start + 1), "NOT-UTF-8",
                "the byte " + HexFormat.of().withUpperCase().toHexDigits(wrong) + ", which is not UTF-8",
                "a table as text (CSV) in UTF-8",
                (likely ? "it is Windows-1252, where this byte is `" + windows + "`: " : "") + SAVE_AGAIN);
    }
}
