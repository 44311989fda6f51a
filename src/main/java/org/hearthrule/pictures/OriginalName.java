package org.hearthrule.pictures;

import org.hearthrule.terms.Wording;

/** The name a file had at home, made fit to be read; never used as a path. */
final class OriginalName {

    private static final int LONGEST = 120;

    private OriginalName() { }

    /** Returns the last part of a name, at most 120 characters of it, without characters that cannot be seen. */
    static String shown(String name) {
        String given = name == null ? "" : name;
        String last = given.substring(Math.max(given.lastIndexOf('/'), given.lastIndexOf('\\')) + 1);
        String seen = last.codePoints().filter(OriginalName::isSeen)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString().strip();
        if (seen.isEmpty()) {
            return Wording.english().say("picture.no-name");
        }
        if (seen.length() <= LONGEST) {
            return seen;
        }
        int end = Character.isHighSurrogate(seen.charAt(LONGEST - 2)) ? LONGEST - 2 : LONGEST - 1;
        return seen.substring(0, end) + '…';
    }

    private static boolean isSeen(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.UNASSIGNED, Character.PRIVATE_USE,
                    Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }
}
