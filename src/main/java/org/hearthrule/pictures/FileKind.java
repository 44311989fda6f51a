package org.hearthrule.pictures;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/**
 * The kinds of files that are taken. What a file is, its first bytes say, never its name.
 *
 * <p>First bytes: JPEG by ITU-T T.81 B.1.1.3 (a marker follows the marker SOI), PNG by ISO/IEC 15948 5.2, GIF by its
 * specifications 87a and 89a, WebP by RFC 9649, PDF by ISO 32000-1 7.5.2.
 */
public enum FileKind {
    JPEG("jpg", "image/jpeg", true),
    PNG("png", "image/png", true),
    GIF("gif", "image/gif", true),
    /** Browsers show it; Java does not read it, so that there is no preview. */
    WEBP("webp", "image/webp", false),
    PDF("pdf", "application/pdf", false);

    private static final byte[] PNG_START = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final byte[] JPEG_START = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};

    private final String ending;
    private final String mediaType;
    private final boolean preview;

    FileKind(String ending, String mediaType, boolean preview) {
        this.ending = ending;
        this.mediaType = mediaType;
        this.preview = preview;
    }

    /** @return the end of a file's name, without the dot */
    public String ending() {
        return ending;
    }

    /** @return the media type, such as {@code image/jpeg} */
    public String mediaType() {
        return mediaType;
    }

    /** @return whether {@link Previews} can make a small picture of it */
    public boolean hasPreview() {
        return preview;
    }

    /**
     * @param head the first bytes of a file, 12 or more where there are so many
     * @return its kind, or empty when it is none that is taken
     */
    public static Optional<FileKind> of(byte[] head) {
        if (startsWith(head, JPEG_START)) {
            return Optional.of(JPEG);
        }
        if (startsWith(head, PNG_START)) {
            return Optional.of(PNG);
        }
        if (text(head, 0, 6).equals("GIF87a") || text(head, 0, 6).equals("GIF89a")) {
            return Optional.of(GIF);
        }
        if (text(head, 0, 4).equals("RIFF") && text(head, 8, 4).equals("WEBP")) {
            return Optional.of(WEBP);
        }
        return text(head, 0, 5).equals("%PDF-") ? Optional.of(PDF) : Optional.empty();
    }

    private static boolean startsWith(byte[] head, byte[] start) {
        return head.length >= start.length && Arrays.equals(head, 0, start.length, start, 0, start.length);
    }

    /** Returns bytes as text, fewer when the file is shorter. */
    static String text(byte[] head, int from, int length) {
        int end = Math.min(head.length, from + length);
        return from >= end ? "" : new String(head, from, end - from, StandardCharsets.ISO_8859_1);
    }
}
