package org.hearthrule.page.frame;

/** Tells an upload that is over its cap from other mishaps; the server says so only in the words of its exceptions. */
final class TooLarge {

    private TooLarge() { }

    static boolean is(Throwable mishap) {
        for (Throwable t = mishap; t != null; t = t.getCause() == t ? null : t.getCause()) {
            String words = t.getMessage() == null ? "" : t.getMessage().toLowerCase(java.util.Locale.ROOT);
            if (words.contains("length exceeded") || words.contains("size exceeded") || words.contains("too large") || words.contains("exceeds")) {
                return true;
            }
        }
        return false;
    }
}
