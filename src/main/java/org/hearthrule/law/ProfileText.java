package org.hearthrule.law;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hearthrule.input.Place;
import org.hearthrule.input.Problems;

/** Gets the text of a profile out of bytes, strictly. */
final class ProfileText {

    /** The most bytes a profile may have; the longest so far has some fifty thousand. */
    private static final int MOST_BYTES = 4_000_000;

    private ProfileText() { }

    /** @return the text, or null after recording why there is none */
    static String of(Path path, String shownName, Problems problems) {
        if (!Files.isRegularFile(path)) {
            cannotRead(shownName, Files.exists(path) ? "what is not a file" : "no file", problems);
            return null;
        }
        try (InputStream in = Files.newInputStream(path)) {
            return of(in, shownName, problems);
        } catch (IOException e) {
            cannotRead(shownName, "a file that cannot be read (" + e.getMessage() + ")", problems);
            return null;
        }
    }

    /** @return the text, or null after recording why there is none */
    static String of(InputStream in, String shownName, Problems problems) throws IOException {
        byte[] bytes = in.readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            problems.error(new Place(shownName, 1, 1), ProfileFault.TOO_BIG.code(), "more than " + MOST_BYTES
                    + " bytes", "at most " + MOST_BYTES, "it is not a profile");
            return null;
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        CharBuffer text = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), text, true);
        text.flip();
        if (result.isError()) {
            problems.error(end(text, shownName), ProfileFault.NOT_UTF_8.code(), "bytes that are not UTF-8",
                    "a text file in UTF-8", "save it again with the encoding UTF-8");
            return null;
        }
        return text.toString();
    }

    static void cannotRead(String shownName, String found, Problems problems) {
        problems.error(new Place(shownName, 1, 1), ProfileFault.CANNOT_READ.code(), found, "a file of a profile",
                null);
    }

    /** The place just after a text. */
    private static Place end(CharSequence text, String shownName) {
        int line = 1;
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) == '\n') {
                line++;
                start = i + 1;
            }
        }
        return new Place(shownName, line, text.length() - start + 1);
    }
}
