package org.hearthrule.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.hearthrule.input.Problems;
import org.hearthrule.law.Profile;
import org.hearthrule.law.ProfileReader;
import org.hearthrule.law.Profiles;
import org.hearthrule.records.Book;
import org.hearthrule.terms.Subjects;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One family of three children and 2,160 log entries in a warm process. Run by {@code .bench/run}. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class WarmBenchmark {

    private static final LocalDate FIRST_DAY = LocalDate.of(2025, 8, 25);

    private final ProfileReader reader = new ProfileReader(Subjects::known, Subjects.ids());
    private Profile profile;
    private Book book;
    private Judge judge;
    private int edits;

    /** Fails when the two do not count the same. */
    @Setup
    public void prepare() throws Exception {
        profile = Profiles.packaged(reader).find(System.getProperty("jurisdiction", "us-pa"));
        book = BenchBook.of(profile);
        judge = new Judge(List.of(profile));
        compare(judge.judge(book, BenchBook.AS_OF).findings(), byHand());
    }

    /** From a book in memory to every finding with its sentences, sums and references to records. */
    @Benchmark
    public Judgement judged() {
        return judge.judge(book, BenchBook.AS_OF);
    }

    /** Only the numbers, on the same book. */
    @Benchmark
    public Map<String, HandSums.Sums> byHand() {
        return HandSums.of(book, profile.usualPathway(), FIRST_DAY, BenchBook.AS_OF);
    }

    /** A profile is edited: read, checked, compiled anew, and the family judged by it. */
    @Benchmark
    public Judgement edited() {
        Problems problems = new Problems();
        Profile changed = reader.read(profile.file(), profile.content() + "# " + edits++ + "\n", problems).orElseThrow();
        return new Judge(List.of(changed)).judge(book, BenchBook.AS_OF);
    }

    private static void compare(List<Finding> findings, Map<String, HandSums.Sums> sums) {
        sums.forEach((student, own) -> {
            for (Finding finding : findings) {
                if (student.equals(finding.student()) && BenchBook.YEAR.equals(finding.year())) {
                    same(own.byDay.size(), finding.counted().get("days"), finding);
                    same(BigDecimal.valueOf(own.minutes).divide(BigDecimal.valueOf(60), 1, RoundingMode.DOWN),
                            finding.counted().get("hours"), finding);
                    same(own.entries, finding.counted().get("log-entries"), finding);
                    same(own.readings, finding.counted().get("readings"), finding);
                    same(own.samples, finding.counted().get("samples"), finding);
                    own.items.forEach((item, count) -> {
                        if (item.startsWith(finding.requirement() + " ")) {
                            same(count, finding.counted().get(item.substring(finding.requirement().length() + 1)), finding);
                        }
                    });
                }
            }
        });
        if (findings.stream().noneMatch(finding -> finding.counted().containsKey("days"))
                || findings.stream().noneMatch(finding -> finding.counted().containsKey("log-entries"))) {
            throw new IllegalStateException("nothing was compared");
        }
    }

    private static void same(Number byHand, Object counted, Finding finding) {
        if (counted != null && new BigDecimal(byHand.toString()).compareTo(new BigDecimal(counted.toString())) != 0) {
            throw new IllegalStateException(finding.id() + ": by hand " + byHand + ", counted " + finding.counted());
        }
    }
}
