package org.hearthrule.terms;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Fixed sentences for a reader, from a file of {@code shared/wording/}.
 *
 * <p>A sentence holds its arguments in braces, by number ({@code {0}}) or by name ({@code {child}}); {@code {{} is a
 * brace. A missing key or argument is a mistake of ours and throws. Immutable and safe to share between threads.
 */
public final class Wording {

    /** Up to this many days a distance in time is told in days; beyond, in months or years. */
    private static final int DAYS_TOLD_AS_DAYS = 90;
    private static final int DAYS_TOLD_AS_MONTHS = 700;
    private static final double DAYS_OF_A_MONTH = 30.44;
    private static final double DAYS_OF_A_YEAR = 365.25;

    private final Properties sentences;

    private Wording(Properties sentences) {
        this.sentences = sentences;
    }

    /** @return the sentences of checklists and other output, read when first asked for */
    public static Wording english() {
        return English.SENTENCES;
    }

    /**
     * Reads a file of sentences in UTF-8.
     *
     * @param resource path on the class path, for example {@code shared/wording/en.properties}
     * @throws IllegalArgumentException when there is no such file
     */
    public static Wording load(String resource) {
        Properties sentences = new Properties();
        try (InputStream in = Wording.class.getClassLoader().getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalArgumentException("no wording at " + resource);
            }
            sentences.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Wording(sentences);
    }

    /** @return all keys */
    public Set<String> keys() {
        return sentences.stringPropertyNames();
    }

    public boolean has(String key) {
        return sentences.getProperty(key) != null;
    }

    /**
     * @param key       name of the sentence
     * @param arguments values of {@code {0}}, {@code {1}} and so on
     * @return the sentence
     * @throws IllegalArgumentException when the key or an argument is missing
     */
    public String say(String key, Object... arguments) {
        return fill(key, name -> {
            int index = index(name);
            return index >= 0 && index < arguments.length ? arguments[index] : null;
        });
    }

    /**
     * @param key       name of the sentence
     * @param arguments values by name
     * @return the sentence
     * @throws IllegalArgumentException when the key or an argument is missing
     */
    public String say(String key, Map<String, ?> arguments) {
        return fill(key, arguments::get);
    }

    /**
     * A sentence that has one form for one and another for all other numbers: {@code key.one} and {@code key.many}.
     *
     * @param number value of {@code {0}}
     * @param more   values of {@code {1}} and so on
     */
    public String count(String key, long number, Object... more) {
        Object[] arguments = new Object[more.length + 1];
        arguments[0] = number(number);
        System.arraycopy(more, 0, arguments, 1, more.length);
        return say(key + (number == 1 ? ".one" : ".many"), arguments);
    }

    /** @return a whole number with commas between thousands */
    public static String number(long number) {
        String digits = Long.toString(number);
        StringBuilder out = new StringBuilder(digits);
        for (int i = digits.length() - 3; i > (number < 0 ? 1 : 0); i -= 3) {
            out.insert(i, ',');
        }
        return out.toString();
    }

    /** @return for example {@code June 30, 2027} */
    public String date(LocalDate day) {
        return say("date", month(day.getMonthValue()), day.getDayOfMonth(), Integer.toString(day.getYear()));
    }

    /** @return for example {@code June 30} */
    public String date(MonthDay day) {
        return say("date.of-year", month(day.getMonthValue()), day.getDayOfMonth());
    }

    /**
     * @param month null when only the year is known
     * @param day   null when only the month is known
     * @return for example {@code June 30, 2027}, {@code June 2027} or {@code 2027}
     */
    public String date(int year, Integer month, Integer day) {
        if (month == null) {
            return Integer.toString(year);
        }
        return day == null ? say("date.month", month(month), Integer.toString(year)) : date(LocalDate.of(year, month, day));
    }

    /** @return the names of the months in order */
    public List<String> months() {
        return IntStream.rangeClosed(1, 12).mapToObj(this::month).toList();
    }

    private String month(int number) {
        return say("month." + number);
    }

    /** @return how far a day lies from today, for example {@code in 12 days} or {@code 3 days ago} */
    public String distance(LocalDate day, LocalDate today) {
        long days = ChronoUnit.DAYS.between(today, day);
        if (days == 0) {
            return say("distance.today");
        }
        String way = days > 0 ? "distance.in" : "distance.ago";
        long far = Math.abs(days);
        if (far <= DAYS_TOLD_AS_DAYS) {
            return far == 1 ? say(way + ".1") : say(way + ".days", far);
        }
        if (far <= DAYS_TOLD_AS_MONTHS) {
            return say(way + ".months", Math.round(far / DAYS_OF_A_MONTH));
        }
        return say(way + ".years", Math.round(far / DAYS_OF_A_YEAR));
    }

    /** @return for example {@code reading, writing and spelling} */
    public String and(List<String> words) {
        return joined(words, "list.and");
    }

    /** @return for example {@code days or hours} */
    public String or(List<String> words) {
        return joined(words, "list.or");
    }

    private String joined(List<String> words, String last) {
        if (words.size() < 2) {
            return words.isEmpty() ? "" : words.get(0);
        }
        String start = String.join(say("list.comma"), words.subList(0, words.size() - 1));
        return start + say(last) + words.get(words.size() - 1);
    }

    private interface Arguments {
        Object of(String name);
    }

    private String fill(String key, Arguments arguments) {
        String sentence = sentences.getProperty(key);
        if (sentence == null) {
            throw new IllegalArgumentException("no wording for " + key);
        }
        int brace = sentence.indexOf('{');
        if (brace < 0) {
            return sentence;
        }
        StringBuilder out = new StringBuilder(sentence.length() + 40);
        int from = 0;
        while (brace >= 0) {
            out.append(sentence, from, brace);
            int close = sentence.indexOf('}', brace);
            if (close < 0) {
                throw new IllegalArgumentException("open brace in the wording of " + key);
            }
            String name = sentence.substring(brace + 1, close);
            Object value = name.equals("{") ? "{" : arguments.of(name);
            if (value == null) {
                throw new IllegalArgumentException("no argument {" + name + "} for the wording of " + key);
            }
            out.append(value);
            from = close + 1;
            brace = sentence.indexOf('{', from);
        }
        return out.append(sentence, from, sentence.length()).toString();
    }

    /** @return the number that an argument's name is, or -1 */
    private static int index(String name) {
        return name.length() == 1 && name.charAt(0) >= '0' && name.charAt(0) <= '9' ? name.charAt(0) - '0' : -1;
    }

    /** Read when first asked for. */
    private static final class English {
        static final Wording SENTENCES = load("shared/wording/en.properties");
    }
}
