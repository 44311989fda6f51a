package org.hearthrule.rules;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Properties;

/** Fixed sentences of findings, kept in {@code shared/wording/findings.properties}. */
final class Say {

    private static final String FILE = "shared/wording/findings.properties";
    private static final Properties SENTENCES = load();
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
        String sentence = SENTENCES.getProperty(key);
        if (sentence == null) {
            throw new IllegalArgumentException("no sentence " + key + " in " + FILE);
        }
        StringBuilder out = new StringBuilder(sentence.length() + 32);
        int from = 0;
        for (int open = sentence.indexOf('{'); open >= 0; open = sentence.indexOf('{', from)) {
            out.append(sentence, from, open);
            int close = sentence.indexOf('}', open);
            out.append(word(args[Integer.parseInt(sentence.substring(open + 1, close))]));
            from = close + 1;
        }
        return out.append(sentence, from, sentence.length()).toString();
    }

    static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** @return the day's month, for example {@code September 2026} */
    static String month(LocalDate date) {
        return MONTH.format(date);
    }

    private static String word(Object arg) {
        return arg instanceof LocalDate date ? day(date) : String.valueOf(arg);
    }

    private static Properties load() {
        Properties sentences = new Properties();
        try (Reader in = new InputStreamReader(Say.class.getClassLoader().getResourceAsStream(FILE),
                StandardCharsets.UTF_8)) {
            sentences.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return sentences;
    }
}
