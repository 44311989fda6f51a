package org.hearthrule.suggest;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * How quick it is, printed; the limits are several times what one core needs, so that a busy machine fails nothing, and
 * a way that has become ten times slower does.
 */
class SuggesterSpeedTest {

    private static final int ENTRIES = 40_000;

    /** Thirteen years of four children are learned each time the page is started. */
    @Test
    void learnsFortyThousandLinesAtOnce() {
        List<Confirmed> lines = years(ENTRIES);
        Suggester.packaged().of("measured the jetty");

        long begun = worked();
        Suggester suggester = Suggester.learning(lines);
        Duration first = Duration.ofNanos(worked() - begun);
        Suggester.learning(lines);
        begun = worked();
        Suggester.learning(lines);
        Duration warm = Duration.ofNanos(worked() - begun);
        System.out.println("Suggested subjects: " + ENTRIES + " lines learned in " + first.toMillis() + " ms, warm in "
                + warm.toMillis() + " ms of processor time");

        assertThat(suggester.words()).isLessThanOrEqualTo(Habits.MOST_WORDS);
        assertThat(first).isLessThan(Duration.ofSeconds(3));
        assertThat(warm).isLessThan(Duration.ofMillis(1_500));
    }

    /** Suggestions come while a parent types; learning one line happens when she saves. */
    @Test
    void suggestsAndLearnsOneLineInMuchLessThanAMillisecond() {
        List<Confirmed> lines = years(2_000);
        Suggester suggester = Suggester.learning(lines);
        long[] suggested = new long[lines.size()];
        long[] learned = new long[lines.size()];
        for (int round = 0; round < 3; round++) {
            for (int i = 0; i < lines.size(); i++) {
                long begun = System.nanoTime();
                suggester.of(lines.get(i).words());
                suggested[i] = System.nanoTime() - begun;
                begun = System.nanoTime();
                suggester.learn(lines.get(i));
                learned[i] = System.nanoTime() - begun;
            }
        }
        System.out.println(String.format(Locale.ROOT, "Suggested subjects: one line %.0f µs, learning it %.0f µs (median)",
                median(suggested), median(learned)));

        assertThat(median(suggested)).isLessThan(1_000);
        assertThat(median(learned)).isLessThan(1_000);
    }

    /** @return nanoseconds for which this thread had a processor: other people's work on the machine does not count */
    private static long worked() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static double median(long[] nanos) {
        long[] sorted = nanos.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2] / 1_000.0;
    }

    /** Lines as a family may write them, no two alike: an invented line, a word of the day, a number. */
    static List<Confirmed> years(int entries) {
        List<Measured.Line> lines = Measured.read("development.csv");
        Random random = new Random(7);
        List<Confirmed> years = new ArrayList<>(entries);
        for (int i = 0; i < entries; i++) {
            Measured.Line line = lines.get(random.nextInt(lines.size()));
            years.add(new Confirmed(line.words() + ", page " + i + " with " + name(random.nextInt(6_000)), line.expected()));
        }
        return years;
    }

    private static String name(int number) {
        StringBuilder name = new StringBuilder("tenn");
        for (int rest = number; rest > 0; rest /= 20) {
            name.append("bcdfghjklmnprstvwxza".charAt(rest % 20)).append('o');
        }
        return name.toString();
    }
}
