package org.hearthrule.page.frame;

/** Where a calendar program on this machine fetches the dates; it has no cookie, and a secret in the address instead. */
public final class CalendarKey {

    public static final String PATH = "/calendar/";
    public static final String ENDING = ".ics";

    private CalendarKey() { }

    static boolean isItsPath(String path) {
        return path.startsWith(PATH) && path.endsWith(ENDING);
    }
}
