package org.hearthrule.input;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Finds where a file stops being UTF-8. */
final class Utf8 {

    private Utf8() {}

    static Place firstWrong(Path path, String shownName) {
        try {
            ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(path));
            CharBuffer text = CharBuffer.allocate(bytes.remaining());
            CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
            decoder.decode(bytes, text, true);
            return end(text.flip(), shownName);
        } catch (IOException e) {
            return new Place(shownName, 1, 1);
        }
    }

    private static Place end(CharBuffer text, String shownName) {
        int line = 1;
        int start = text.length() > 0 && text.charAt(0) == '\uFEFF' ? 1 : 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean pair = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if (c == '\n' || c == '\r' && !pair) {
                line++;
                start = i + 1;
            }
        }
        return new Place(shownName, line, text.length() - start + 1);
    }
}
