package org.hearthrule.pictures;

import java.text.Normalizer;
import java.time.LocalDate;
import java.util.Locale;
import java.util.regex.Pattern;
import org.hearthrule.records.Hash;

/**
 * Names that stored files get: {@code work/2026-05/2026-05-14-drawing-1f3870be274f.jpg}. They hold nothing that a client
 * sent; a folder of them sorts by day and can be read without a program.
 */
final class OurName {

    /** The folder of the book in which stored files lie. */
    static final String FOLDER = "work";

    private static final String DEFAULT_KIND = "piece";
    private static final int LONGEST_KIND = 40;
    private static final int HASH_DIGITS = 12;
    private static final Pattern FORM = Pattern.compile(FOLDER
            + "/\\d{4}-\\d{2}/\\d{4}-\\d{2}-\\d{2}-[a-z0-9-]+-[0-9a-f]{" + HASH_DIGITS + "}(-\\d+)?\\.(jpg|png|gif|webp|pdf)");

    private OurName() { }

    /**
     * Returns a path within the book, with slashes.
     *
     * @param piece  what it is, in any words; they become plain small letters, digits and hyphens
     * @param number 1, or more when the name is taken by something else
     */
    static String path(LocalDate day, String piece, Hash hash, FileKind kind, int number) {
        String month = day.toString().substring(0, 7);
        return FOLDER + '/' + month + '/' + day + '-' + slug(piece) + '-' + hash.hex().substring(0, HASH_DIGITS)
                + (number == 1 ? "" : "-" + number) + '.' + kind.ending();
    }

    /** Returns whether a path within the book is one of ours. */
    static boolean isOurs(String path) {
        return FORM.matcher(path).matches();
    }

    private static String slug(String words) {
        String plain = Normalizer.normalize(words == null ? "" : words, Normalizer.Form.NFD).toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", "-");
        String cut = plain.substring(0, Math.min(LONGEST_KIND, plain.length())).replaceAll("^-|-$", "");
        return cut.isEmpty() ? DEFAULT_KIND : cut;
    }
}
