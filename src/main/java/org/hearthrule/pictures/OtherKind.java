package org.hearthrule.pictures;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What a file is that is not taken, as far as its first bytes tell; so that a parent reads "a web page", not "an unknown
 * file". Signatures from memory unless a source stands beside them.
 */
enum OtherKind {
    EMPTY, HEIC, AVIF, VIDEO, SOUND, TIFF, BITMAP, SVG, WEB_PAGE, XML, WORD, TABLE, SLIDES, OPEN_DOCUMENT, OLD_OFFICE,
    RICH_TEXT, ARCHIVE, PROGRAM, TEXT, UNKNOWN;

    /**
     * Brands of HEIF files: heic, heix, heim, heis by the registration of image/heic, mif1 by image/heif, hevc, hevx,
     * hevm, hevs by image/heic-sequence, msf1 by image/heif-sequence (IANA, August 9, 2018).
     */
    private static final Set<String> HEIF = Set.of("heic", "heix", "heim", "heis", "mif1", "hevc", "hevx", "hevm", "hevs",
            "msf1");
    private static final Set<String> AVIF_BRANDS = Set.of("avif", "avis");
    private static final int MOST_BRANDS = 64;
    private static final int TEXT_LOOKED_AT = 1024;

    /** Returns the key of its name in words. */
    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns what begins with these bytes; a few thousand tell the kinds of office files apart. */
    static OtherKind of(byte[] head) {
        if (head.length == 0) {
            return EMPTY;
        }
        if (FileKind.text(head, 4, 4).equals("ftyp")) {
            return boxed(head);
        }
        String start = FileKind.text(head, 0, 8);
        if (start.startsWith("PK\u0003\u0004") || start.startsWith("PK\u0005\u0006")) {
            return zipped(FileKind.text(head, 0, head.length));
        }
        if (start.startsWith("II*\0") || start.startsWith("MM\0*")) {
            return TIFF;
        }
        if (start.startsWith("BM")) {
            return BITMAP;
        }
        if (start.equals("\u00D0\u00CF\u0011\u00E0\u00A1\u00B1\u001A\u00E1")) {
            return OLD_OFFICE;
        }
        if (start.startsWith("{\\rtf")) {
            return RICH_TEXT;
        }
        if (start.startsWith("ID3") || start.startsWith("OggS") || start.startsWith("fLaC")
                || start.startsWith("RIFF") && FileKind.text(head, 8, 4).equals("WAVE")) {
            return SOUND;
        }
        if (start.startsWith("Rar!") || start.startsWith("7z\u00BC\u00AF") || start.startsWith("\u001F\u008B")) {
            return ARCHIVE;
        }
        if (start.startsWith("MZ") || start.startsWith("\u007FELF") || start.startsWith("#!")) {
            return PROGRAM;
        }
        return written(head);
    }

    /** A file of boxes (ISO/IEC 14496-12): the first box lists the brands it keeps to. */
    private static OtherKind boxed(byte[] head) {
        int size = (head[0] & 0xFF) << 24 | (head[1] & 0xFF) << 16 | (head[2] & 0xFF) << 8 | head[3] & 0xFF;
        int end = Math.min(head.length, Math.max(12, Math.min(size, 16 + 4 * MOST_BRANDS)));
        OtherKind found = VIDEO;
        for (int at = 8; at + 4 <= end; at += at == 8 ? 8 : 4) {
            String brand = FileKind.text(head, at, 4);
            if (AVIF_BRANDS.contains(brand)) {
                return AVIF;
            }
            if (HEIF.contains(brand)) {
                found = HEIC;
            }
        }
        return found;
    }

    private static OtherKind zipped(String head) {
        if (head.contains("word/")) {
            return WORD;
        }
        if (head.contains("xl/")) {
            return TABLE;
        }
        if (head.contains("ppt/")) {
            return SLIDES;
        }
        return head.contains("mimetypeapplication/vnd.oasis.opendocument") ? OPEN_DOCUMENT : ARCHIVE;
    }

    private static OtherKind written(byte[] head) {
        int length = Math.min(head.length, TEXT_LOOKED_AT);
        String text = new String(head, 0, length, StandardCharsets.UTF_8);
        if (text.indexOf('\0') >= 0) {
            return UNKNOWN;
        }
        String start = text.replace("\uFEFF", "").stripLeading().toLowerCase(Locale.ROOT);
        if (start.startsWith("<svg") || start.startsWith("<?xml") && start.contains("<svg")
                || start.startsWith("<!--") && start.contains("<svg")) {
            return SVG;
        }
        if (List.of("<!doctype html", "<html", "<head", "<body", "<script").stream().anyMatch(start::startsWith)
                || start.startsWith("<!--") && start.contains("<html")) {
            return WEB_PAGE;
        }
        if (start.startsWith("<?xml") || start.startsWith("<!doctype svg")) {
            return start.contains("<!doctype svg") ? SVG : XML;
        }
        return isText(text) ? TEXT : UNKNOWN;
    }

    /** A character that is cut at the end, or one that is none, becomes U+FFFD; more than one is no text. */
    private static boolean isText(String text) {
        long strange = text.chars().filter(c -> c == 0xFFFD || c < ' ' && c != '\t' && c != '\n' && c != '\r' && c != '\f')
                .count();
        return strange <= 1;
    }
}
