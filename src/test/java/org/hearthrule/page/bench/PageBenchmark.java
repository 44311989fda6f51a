package org.hearthrule.page.bench;

import java.net.http.HttpClient;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Profile;

/**
 * Measures the page of a book of many years, for {@code .bench/run page}: starts, memory, and every page there is, with
 * five callers at once, each of whom calls the next as soon as the one before is there.
 *
 * <pre>
 * PageBenchmark FOLDER STARTS CALLS FROM TO   the state lived in first, the one moved to
 * </pre>
 */
public final class PageBenchmark {

    private static final int CALLERS = 5;
    private static final int SAVINGS = 30;
    private static final int COPIES = 20;
    private static final String WHOLE_COPY = "/copies/whole";
    private static final double HUNDREDTH = 0.99;
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([^\"]+)\"");

    private final HttpClient client = HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1)
            .followRedirects(HttpClient.Redirect.NEVER).build();
    private final Path book;
    private final String state;
    private final String other;

    private PageBenchmark(Path book, String state, String other) {
        this.book = book;
        this.state = state;
        this.other = other;
    }

    public static void main(String[] args) throws Exception {
        Path book = Path.of(args[0]);
        Profile before = Packaged.profiles().find(args[3]);
        Profile after = Packaged.profiles().find(args[4]);
        ManyYears.write(book, before, after);
        PageBenchmark benchmark = new PageBenchmark(book, after.slug(), before.slug());
        benchmark.starts(Integer.parseInt(args[1]));
        benchmark.pages(Integer.parseInt(args[2]));
        benchmark.savings();
    }

    /** Each start a process of its own, in the same folder. */
    private void starts(int times) throws Exception {
        List<Duration> listening = new ArrayList<>();
        List<Duration> answered = new ArrayList<>();
        List<Duration> onCores = new ArrayList<>();
        // the first one makes the class-data archive
        new Opened(client, book).close();
        for (int i = 0; i < times; i++) {
            try (Opened page = new Opened(client, book)) {
                listening.add(page.listening());
                answered.add(page.answered());
                onCores.add(page.onCores());
            }
        }
        System.out.printf("%nCold, %d starts, %s; median and longest:%n%n", times, machine());
        System.out.printf("| from the start of the process until                            | median   | longest  |%n");
        System.out.printf("|----------------------------------------------------------------|----------|----------|%n");
        start("the page can be called: its address is printed", listening);
        start("the first page, the checklist, is there", answered);
        start("the same, time on all cores", onCores);
    }

    private static void start(String what, List<Duration> times) {
        Collections.sort(times);
        System.out.printf("| %-62s | %6.2f s | %6.2f s |%n", what, seconds(times.get(times.size() / 2)),
                seconds(times.get(times.size() - 1)));
    }

    private static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }

    private void pages(int callsEach) throws Exception {
        try (Opened page = new Opened(client, book)) {
            Map<String, List<String>> pages = Walk.of(page, begin());
            pages.remove(WHOLE_COPY);
            List<String[]> calls = calls(pages, callsEach);
            // each page once more before it counts
            all(page, calls(pages, 1));
            Duration before = page.onCores();
            Map<String, List<Long>> times = all(page, calls);
            Duration used = page.onCores().minus(before);
            System.out.printf("%nWarm (walked from link to link, then called once more), %d callers at once, %s:%n%n",
                    CALLERS, machine());
            System.out.printf("| %-41s | variants | calls |    median |       p99 |   longest |%n", "page");
            System.out.printf("|-%s-|----------|-------|-----------|-----------|-----------|%n", "-".repeat(41));
            times.forEach((name, taken) -> row(name, pages.get(name).size(), taken));
            List<Long> every = times.values().stream().flatMap(List::stream).toList();
            row("all of them", pages.values().stream().mapToInt(List::size).sum(), every);
            System.out.printf("%n%d calls took the process %.1f s on all cores. It never held more than %d MB.%n",
                    calls.size(), seconds(used), page.peakMegabytes());
            List<Long> copies = new ArrayList<>();
            for (int i = 0; i < COPIES; i++) {
                copies.add(page.get(WHOLE_COPY).nanos());
            }
            System.out.printf("%nA file, not a page; one caller:%n%n");
            row("the whole book packed, " + WHOLE_COPY, 1, copies);
            System.out.printf("%nAfter it, never more than %d MB.%n", page.peakMegabytes());
        }
    }

    /** Where to begin, and what is asked by a form, so that no link leads there. */
    private List<String> begin() {
        List<String> begin = new ArrayList<>(List.of("/", "/log", "/log/week", "/law", "/welcome?state=" + state,
                "/log?words=fractions", "/log?words=creek&child=oren", "/log?words=nothing+of+the+kind",
                "/log?child=ivo", "/log?subject=algebra", "/log?subject=science&child=tamsin",
                "/log?from=2016-09-01&to=2017-05-31", "/log?bare=yes", "/log?day=2019-10-15",
                "/log/subjects?did=measured+the+creek", "/books?words=lantern", "/work?subject=drawing",
                "/work?child=edda", "/law?q=north", "/law?q=nowhere", "/calendar-file?names=yes",
                "/family/move?state=" + other));
        for (int year = ManyYears.FIRST_YEAR; year < ManyYears.FIRST_YEAR + ManyYears.YEARS; year++) {
            begin.add("/log/week?start=" + LocalDate.of(year, 10, 1));
            begin.add("/log?before=" + LocalDate.of(year, 12, 1));
        }
        String sides = "here=" + state + "&there=" + other;
        begin.add("/compare?" + sides);
        begin.add("/compare?here=" + other + "&there=" + state);
        begin.add("/law/" + state + "?on=2020-02-01");
        for (String child : List.of("edda", "oren", "tamsin", "ivo")) {
            begin.add("/compare?" + sides + "&child=" + child);
            begin.add("/compare?" + sides + "&child=" + child + "&moves=2026-08-15");
            begin.add("/compare?" + sides + "&child=" + child + "&moves=2026-06-01");
        }
        return begin;
    }

    /** Each page equally often, its variants in turn, in an order that is the same in each run. */
    private static List<String[]> calls(Map<String, List<String>> pages, int each) {
        List<String[]> calls = new ArrayList<>();
        pages.forEach((name, variants) -> {
            for (int i = 0; i < each && !variants.isEmpty(); i++) {
                calls.add(new String[] {name, variants.get(i % variants.size())});
            }
        });
        Collections.shuffle(calls, new Random(1));
        return calls;
    }

    private static Map<String, List<Long>> all(Opened page, List<String[]> calls) throws Exception {
        Map<String, List<Long>> times = new TreeMap<>();
        calls.forEach(call -> times.put(call[0], Collections.synchronizedList(new ArrayList<>())));
        AtomicInteger next = new AtomicInteger();
        ExecutorService callers = Executors.newFixedThreadPool(CALLERS);
        List<Future<?>> running = new ArrayList<>();
        for (int caller = 0; caller < CALLERS; caller++) {
            running.add(callers.submit(() -> {
                for (int i = next.getAndIncrement(); i < calls.size(); i = next.getAndIncrement()) {
                    Opened.Reply reply = page.get(calls.get(i)[1]);
                    if (reply.status() != 200) {
                        throw new IllegalStateException(calls.get(i)[1] + " is answered with " + reply.status());
                    }
                    times.get(calls.get(i)[0]).add(reply.nanos());
                }
            }));
        }
        for (Future<?> caller : running) {
            caller.get();
        }
        callers.shutdown();
        callers.awaitTermination(1, TimeUnit.MINUTES);
        return times;
    }

    /** One entry after the other is saved, and the log looked at, as a browser does that is sent there. */
    private void savings() throws Exception {
        try (Opened page = new Opened(client, book)) {
            List<Long> saved = new ArrayList<>();
            List<Long> log = new ArrayList<>();
            List<Long> checklist = new ArrayList<>();
            for (int i = 0; i < SAVINGS * 2; i++) {
                Matcher token = TOKEN.matcher(page.get("/log").body());
                if (!token.find()) {
                    throw new IllegalStateException("no form");
                }
                Opened.Reply reply = page.post("/log", "token=" + token.group(1) + "&did=Rowed+to+the+island&length=45"
                        + "&students=ivo&subjects=physical-education&when=" + ManyYears.DAY);
                if (reply.status() != 303) {
                    throw new IllegalStateException("saving is answered with " + reply.status());
                }
                Opened.Reply then = page.get(reply.location());
                Opened.Reply anew = page.get("/checklist");
                // the first half is to warm up
                if (i >= SAVINGS) {
                    saved.add(reply.nanos());
                    log.add(then.nanos());
                    checklist.add(anew.nanos());
                }
            }
            System.out.printf("%nOne caller, %d times after as many to warm up, %s:%n%n", SAVINGS, machine());
            row("an entry saved", 1, saved);
            row("the log after it", 1, log);
            row("the checklist judged anew after it", 1, checklist);
            System.out.printf("%nIt never held more than %d MB.%n", page.peakMegabytes());
        }
    }

    private static void row(String name, int variants, List<Long> times) {
        long[] sorted = times.stream().mapToLong(Long::longValue).sorted().toArray();
        System.out.printf("| %-41s | %8d | %5d | %6.1f ms | %6.1f ms | %6.1f ms |%n", name, variants, sorted.length,
                milliseconds(sorted, 0.5), milliseconds(sorted, HUNDREDTH), milliseconds(sorted, 1));
    }

    private static double milliseconds(long[] sorted, double share) {
        return sorted[Math.max(0, (int) Math.ceil(share * sorted.length) - 1)] / 1e6;
    }

    private static String machine() throws Exception {
        Path load = Path.of("/proc/loadavg");
        return Runtime.getRuntime().availableProcessors() + " cores, load "
                + (Files.isReadable(load) ? Files.readString(load).split(" ", 2)[0] : "unknown");
    }
}
