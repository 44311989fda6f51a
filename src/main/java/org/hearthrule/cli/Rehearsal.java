package org.hearthrule.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.page.PageRehearsal;
import org.hearthrule.page.frame.Settings;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookText;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;
import org.hearthrule.terms.Subjects;

/**
 * Checks an invented book with something of everything in it, opens its pages, and throws the result away, so that a
 * class-data archive made meanwhile holds what that needs. The launcher asks for it once after a build.
 */
final class Rehearsal {

    private static final LocalDate DAY = LocalDate.of(2027, 1, 15);
    private static final YearLabel YEAR = YearLabel.of(DAY);

    private Rehearsal() { }

    static int run() throws Exception {
        Path folder = Files.createTempDirectory("hearthrule-rehearsal-");
        try {
            for (Map.Entry<String, String> file : BookText.files(book(Profiles.packaged(Laws.reader()))).entrySet()) {
                Files.writeString(folder.resolve(file.getKey()), file.getValue());
            }
            PageRehearsal.of(new Settings(folder, folder.resolve("demo"), false, Profiles.packaged(Laws.reader()),
                    Clock.systemDefaultZone(), DAY, 0, Hearthrule.version()));
            Terminal nowhere = new Terminal(null, OutputStream.nullOutputStream(), OutputStream.nullOutputStream(),
                    StandardCharsets.UTF_8, true, Map.of(), DAY);
            return Math.max(Hearthrule.run(new String[] {"check", folder.toString(), "--all"}, nowhere),
                    Hearthrule.run(new String[] {"check", folder.toString(), "--format", "json"}, nowhere));
        } finally {
            delete(folder);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> inside = Files.walk(folder)) {
            for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    /** One child in each state. */
    private static Book book(Profiles profiles) throws Exception {
        List<Student> students = new ArrayList<>();
        List<Placement> placements = new ArrayList<>();
        Map<String, String> grades = new TreeMap<>();
        for (String code : profiles.codes()) {
            Profile profile = profiles.find(code);
            Pathway pathway = profile.usualPathway();
            String id = "child-" + (students.size() + 1);
            students.add(new Student(id, "Child " + (students.size() + 1), LocalDate.of(2016, 3, 4), null));
            placements.add(new Placement(id, code.toLowerCase(Locale.ROOT), pathway.slug(), LocalDate.of(2026, 9, 1), null,
                    null, null, null, null, null, List.of(), null));
            grades.put(id, "5");
        }
        SortedMap<String, YearRecords> years = new TreeMap<>();
        years.put(YEAR.toString(), records(students.stream().map(Student::id).toList(), grades));
        return new Book(null, "Rehearsal", students, List.of(), placements, List.of(), List.of(), List.of(), years);
    }

    private static YearRecords records(List<String> children, Map<String, String> grades) {
        List<String> subjects = List.copyOf(Subjects.ids()).subList(0, 4);
        String child = children.get(0);
        List<YearRecords.LogEntry> log = new ArrayList<>();
        for (int day = 0; day < 40; day++) {
            log.add(new YearRecords.LogEntry("log-" + day, LocalDate.of(2026, 9, 1).plusDays(2L * day), 60, children,
                    subjects, "Something.", List.of(), "home", null, null, null));
        }
        return new YearRecords(YEAR.toString(), grades, YearRecords.Calendar.EMPTY, List.of(), log,
                List.of(new YearRecords.Reading("reading-1", children, "A Book", "A. Writer", null,
                        LocalDate.of(2026, 10, 1), subjects, null)),
                List.of(new YearRecords.Sample("sample-1", child, LocalDate.of(2026, 10, 2), subjects, "A piece", "drawing",
                        null, List.of(), false),
                        new YearRecords.Sample("sample-2", child, null, List.of(), "Another", "drawing", null, List.of(),
                        false)),
                List.of(new YearRecords.TestTaken("test-1", child, LocalDate.of(2026, 10, 3), "standardized-test", "A Test",
                        null, "school", null, null,
                        List.of(new YearRecords.Score("reading", "percentile", BigDecimal.TEN)), null)),
                List.of(), List.of(new YearRecords.Filing("filing-1", children, "notice-of-intent",
                        LocalDate.of(2026, 8, 1), null, null, null, null, List.of(), List.of(), null, List.of())),
                List.of(), List.of(), List.of(), List.of());
    }
}
