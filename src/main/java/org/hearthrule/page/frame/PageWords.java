package org.hearthrule.page.frame;

import java.time.LocalDate;
import java.util.List;
import org.hearthrule.terms.Wording;

/** Sentences that the page puts together; what a template says by itself stands there. Safe for several threads. */
public final class PageWords {

    /** Where they stand. */
    public static final String FILE = "shared/wording/page.properties";

    private static final Wording PAGE = Wording.load(FILE);
    private static final Wording ENGLISH = Wording.english();

    private PageWords() { }

    public static String say(String key, Object... arguments) {
        return PAGE.say(key, arguments);
    }

    /** @return the sentence for one or for many; the number is {@code {0}} */
    public static String count(String key, long number, Object... more) {
        return PAGE.count(key, number, more);
    }

    public static String date(LocalDate day) {
        return ENGLISH.date(day);
    }

    public static String and(List<String> words) {
        return ENGLISH.and(words);
    }
}
