package org.hearthrule.input;

/** Characters that a reader cannot see or that reorder what the reader sees. */
public final class Unseen {

    private Unseen() { }

    /** @param c a code point; half of a pair alone (a surrogate) is one of them */
    public static boolean is(int c) {
        if (c < 0x7F) {
            return c < 0x20;
        }
        return c <= 0x9F || c >= 0x200E && isAbove(c);
    }

    private static boolean isAbove(int c) {
        return c <= 0x200F
                || c >= 0x2028 && c <= 0x202E
                || c >= 0x2066 && c <= 0x2069
                || c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE
                || c == 0xFEFF;
    }
}
