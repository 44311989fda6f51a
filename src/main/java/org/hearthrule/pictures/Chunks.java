package org.hearthrule.pictures;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Set;
import java.util.function.BiConsumer;

/**
 * Walks over the parts of a file that is built of parts, and reads only those that are wanted: a part may say of itself
 * that it is gigabytes long, and others hold text that would fill the memory when unpacked.
 */
final class Chunks {

    /** An Exif block in a JPEG cannot be longer than 65,535 bytes; nothing here needs more. */
    private static final int LONGEST = 1 << 16;
    private static final int MOST = 10_000;

    private Chunks() { }

    /** Parts of a PNG (ISO/IEC 15948 5.3): length, type, data, check sum. Those longer than 65,536 bytes are left out. */
    static void ofPng(Path file, Set<String> wanted, BiConsumer<String, byte[]> take) throws IOException {
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            long at = 8;
            for (int i = 0; i < MOST && at + 12 <= in.length(); i++) {
                in.seek(at);
                long length = in.readInt() & 0xFFFFFFFFL;
                String type = type(in);
                if (wanted.contains(type) && length <= LONGEST && at + 12 + length <= in.length()) {
                    take.accept(type, bytes(in, (int) length));
                }
                at += 12 + length;
            }
        }
    }

    /** Parts of a WebP (RFC 9649 2.3): type, length, data, evened out. Of longer ones the first 65,536 bytes. */
    static void ofWebp(Path file, Set<String> wanted, BiConsumer<String, byte[]> take) throws IOException {
        try (RandomAccessFile in = new RandomAccessFile(file.toFile(), "r")) {
            long at = 12;
            for (int i = 0; i < MOST && at + 8 <= in.length(); i++) {
                in.seek(at);
                String type = type(in);
                long length = Integer.reverseBytes(in.readInt()) & 0xFFFFFFFFL;
                if (wanted.contains(type)) {
                    take.accept(type, bytes(in, (int) Math.min(Math.min(length, LONGEST), in.length() - at - 8)));
                }
                at += 8 + length + length % 2;
            }
        }
    }

    private static String type(RandomAccessFile in) throws IOException {
        return new String(bytes(in, 4), StandardCharsets.ISO_8859_1);
    }

    private static byte[] bytes(RandomAccessFile in, int length) throws IOException {
        byte[] bytes = new byte[length];
        in.readFully(bytes);
        return bytes;
    }
}
