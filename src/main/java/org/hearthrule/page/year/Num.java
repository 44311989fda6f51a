package org.hearthrule.page.year;

/** Numbers in a drawing. */
final class Num {

    private static final double TENTH = 10.0;

    private Num() { }

    /** @return with at most one digit after the point, whatever the language of the machine */
    static String of(double number) {
        long tenths = Math.round(number * TENTH);
        String whole = (tenths < 0 ? "-" : "") + Math.abs(tenths) / 10;
        long rest = Math.abs(tenths) % 10;
        return rest == 0 ? whole : whole + '.' + rest;
    }
}
