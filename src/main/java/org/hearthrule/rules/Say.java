package org.hearthrule.rules;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.hearthrule.terms.Wording;

/** Fixed sentences of findings, kept in {@code shared/wording/findings.properties}. */
final class Say {

    static final String FILE = "shared/wording/findings.properties";

    private static final Wording SENTENCES = Wording.load(FILE);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMMM d, uuuu", Locale.US);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.US);

    private Say() {
    }

    /**
     * @param key  name of the sentence
     * @param args put in place of {@code {0}}, {@code {1}} …; dates are written out
     * @throws IllegalArgumentException when there is no such sentence
     */
    static String it(String key, Object... args) {
        for (int i = 0; i < args.length; i++) {
            if (args[i] instanceof LocalDate date) {
                args[i] = day(date);
            }
        }
        return SENTENCES.say(key, args);
    }

    /** @return whether there is such a sentence */
    static boolean knows(String key) {
        return SENTENCES.has(key);
    }

    static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** @return the day's month, for example {@code September 2026} */
    static String month(LocalDate date) {
        return MONTH.format(date);
    }
}
