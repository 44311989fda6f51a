package org.hearthrule.page.bench;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.hearthrule.law.Profile;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookText;
import org.hearthrule.records.Person;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.Evaluation;
import org.hearthrule.records.YearRecords.Filing;
import org.hearthrule.records.YearRecords.HealthPaper;
import org.hearthrule.records.YearRecords.KeptDocument;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.records.YearRecords.Reading;
import org.hearthrule.records.YearRecords.Sample;
import org.hearthrule.records.YearRecords.Score;
import org.hearthrule.records.YearRecords.TestTaken;

/**
 * An invented family that has kept its book for thirteen school years: four children, the eldest from kindergarten to
 * the twelfth grade, 40,000 log entries and what else comes together, a move to another state in the seventh winter.
 */
final class ManyYears {

    static final LocalDate DAY = LocalDate.of(2026, 5, 20);
    static final int ENTRIES = 40_000;
    static final int FIRST_YEAR = 2013;
    static final int YEARS = 13;

    private static final LocalDate MOVED = LocalDate.of(2020, 1, 11);
    private static final int DAYS = 180;
    private static final int READINGS = 24;
    private static final int SAMPLES = 20;
    private static final int WIDTH = 4_000;
    private static final int HEIGHT = 3_000;
    private static final String AS_FROM_A_CAMERA = "photos/large.jpg";
    private static final Path DEMO = Path.of("test-fixtures", "books", "tennick-landing");
    private static final List<String> PHOTOS = photos();

    private static final List<String> SUBJECTS = List.of("reading", "writing", "spelling", "arithmetic", "life-science",
            "geography", "us-history", "state-history", "civics", "health", "music", "drawing", "physical-education",
            "safety", "literature", "algebra");
    private static final List<String> DOING = List.of("Read aloud and talked it over", "Two pages of the workbook",
            "Measured and drew a plan", "Wrote a letter to an aunt", "Looked for it on the map and coloured it",
            "Practised, slowly first", "A walk along the creek with the notebook", "Fractions with measuring cups",
            "Copied a poem and learned half of it", "Built a model of card");

    /** A child, and the year in which its kindergarten began. */
    private enum Child {
        EDDA("Edda", 2013), OREN("Oren", 2015), TAMSIN("Tamsin", 2018), IVO("Ivo", 2020);

        private final String words;
        private final int begins;

        Child(String words, int begins) {
            this.words = words;
            this.begins = begins;
        }

        String id() {
            return name().toLowerCase(Locale.ROOT);
        }

        boolean isTaughtIn(int year) {
            return year >= begins;
        }

        String grade(int year) {
            return year == begins ? "K" : Integer.toString(year - begins);
        }
    }

    private ManyYears() { }

    /** Writes the book into a folder; what was there of an earlier one is deleted. */
    static void write(Path folder, Profile before, Profile after) throws IOException {
        delete(folder);
        Files.createDirectories(folder);
        for (Map.Entry<String, String> file : BookText.files(book(before, after)).entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
        Files.createDirectory(folder.resolve("photos"));
        for (String photo : PHOTOS) {
            if (photo.equals(AS_FROM_A_CAMERA)) {
                BufferedImage dark = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
                ImageIO.write(dark, "jpg", folder.resolve(photo).toFile());
            } else {
                Files.copy(DEMO.resolve(photo), folder.resolve(photo));
            }
        }
    }

    /** Those of the demo family, and one as large as a camera makes it. */
    private static List<String> photos() {
        List<String> photos = new ArrayList<>(List.of(AS_FROM_A_CAMERA));
        for (String name : Objects.requireNonNull(DEMO.resolve("photos").toFile().list())) {
            photos.add("photos/" + name);
        }
        photos.sort(null);
        return List.copyOf(photos);
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> inside = Files.walk(folder)) {
                for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    private static Book book(Profile before, Profile after) {
        List<Student> students = new ArrayList<>();
        List<Placement> placements = new ArrayList<>();
        for (Child child : Child.values()) {
            LocalDate began = firstDay(child.begins);
            LocalDate born = LocalDate.of(child.begins - 5, 3, 4);
            students.add(new Student(child.id(), child.words + " Varley", born, List.of()));
            if (began.isBefore(MOVED)) {
                placements.add(placement(child, before, began, MOVED.minusDays(1), null));
            }
            placements.add(placement(child, after, began.isBefore(MOVED) ? MOVED : began, null, began));
        }
        List<Person> persons = List.of(new Person("hanne", "Hanne Varley", List.of("parent", "supervisor", "teacher"),
                List.of(new Person.Credential("high-school-diploma", null, null))),
                new Person("luc", "Luc Varley", List.of("parent", "spouse", "teacher"), List.of()),
                new Person("quill", "Maud Quill", List.of("certified-teacher", "evaluator"), List.of()));
        return new Book(null, "Varley family", students, persons, placements, List.of(), List.of(), List.of(), years());
    }

    private static Placement placement(Child child, Profile law, LocalDate from, LocalDate to, LocalDate started) {
        return new Placement(child.id(), law.slug(), law.usualPathway().slug(), from, to, to == null ? null : "moved",
                from.equals(started) ? null : started, null, null, null, List.of(), null);
    }

    /** The last Monday of August. */
    private static LocalDate firstDay(int year) {
        LocalDate day = LocalDate.of(year, 8, 31);
        while (day.getDayOfWeek() != DayOfWeek.MONDAY) {
            day = day.minusDays(1);
        }
        return day;
    }

    private static SortedMap<String, YearRecords> years() {
        int childYears = 0;
        for (Child child : Child.values()) {
            childYears += FIRST_YEAR + YEARS - child.begins;
        }
        SortedMap<String, YearRecords> years = new TreeMap<>();
        int left = ENTRIES;
        for (int year = FIRST_YEAR; year < FIRST_YEAR + YEARS; year++) {
            List<Child> taught = taughtIn(year);
            int each = left / childYears;
            YearLabel label = new YearLabel(year);
            years.put(label.toString(), new Year(year, label.toString(), taught).records(each));
            left -= each * taught.size();
            childYears -= taught.size();
        }
        return years;
    }

    private static List<Child> taughtIn(int year) {
        return List.of(Child.values()).stream().filter(child -> child.isTaughtIn(year)).toList();
    }

    /** One school year in the making. */
    private record Year(int year, String label, List<Child> children) {

        YearRecords records(int entriesOfEach) {
            Map<String, String> grades = new TreeMap<>();
            List<LogEntry> log = new ArrayList<>();
            List<Reading> readings = new ArrayList<>();
            List<Sample> samples = new ArrayList<>();
            List<TestTaken> tests = new ArrayList<>();
            List<Evaluation> evaluations = new ArrayList<>();
            List<HealthPaper> health = new ArrayList<>();
            List<LocalDate> days = days();
            for (Child child : children) {
                grades.put(child.id(), child.grade(year));
                log(child, days, entriesOfEach, log);
                readings(child, days, readings);
                samples(child, days, samples);
                LocalDate spring = LocalDate.of(year + 1, 4, 14);
                tests.add(new TestTaken("test-" + (tests.size() + 1), child.id(), spring, "standardized-test",
                        "Varied Skills Test", null, "quill", null, null,
                        List.of(new Score("reading", "percentile", BigDecimal.valueOf(61)),
                                new Score("mathematics", "percentile", BigDecimal.valueOf(55))), null));
                if (spring.plusDays(30).isBefore(DAY.minusDays(30))) {
                    evaluations.add(new Evaluation("evaluation-" + (evaluations.size() + 1), child.id(),
                            spring.plusDays(30), "portfolio-evaluation", "quill", null,
                            List.of("interview", "portfolio"), "satisfactory", null, null));
                }
                health.add(new HealthPaper("health-" + (health.size() + 1), child.id(), "immunization-record",
                        LocalDate.of(year, 7, 1), null));
            }
            List<Filing> filings = List.of(filing("filing-1", "notice-of-intent", LocalDate.of(year, 7, 20)),
                    filing("filing-2", "affidavit", LocalDate.of(year, 7, 21)));
            List<KeptDocument> documents = List.of(new KeptDocument("document-1", List.of(), "objectives",
                    LocalDate.of(year, 7, 22), null));
            YearRecords.Calendar calendar = new YearRecords.Calendar(days.get(0), days.get(DAYS - 1), null, null,
                    List.of(), List.of(), List.of());
            return new YearRecords(label, grades, calendar, List.of(), inOrder(log), readings, samples, tests,
                    evaluations, filings, List.of(), health, documents, List.of());
        }

        private Filing filing(String id, String paper, LocalDate sent) {
            return new Filing(id, List.of(), paper, sent, "mail", "superintendent", label, null, List.of(), List.of(),
                    null, List.of());
        }

        private List<LocalDate> days() {
            List<LocalDate> days = new ArrayList<>();
            for (LocalDate day = firstDay(year); days.size() < DAYS; day = day.plusDays(1)) {
                if (day.getDayOfWeek() != DayOfWeek.SATURDAY && day.getDayOfWeek() != DayOfWeek.SUNDAY) {
                    days.add(day);
                }
            }
            return days;
        }

        private void log(Child child, List<LocalDate> days, int entries, List<LogEntry> log) {
            for (int i = 0; i < entries; i++) {
                LocalDate day = days.get((int) ((long) i * DAYS / entries));
                int number = i * 7 + child.ordinal() * 3 + year;
                String subject = SUBJECTS.get(number % SUBJECTS.size());
                // one in fifty has no subject yet
                List<String> subjects = i % 50 == 49 ? List.of() : List.of(subject);
                log.add(new LogEntry("log-" + (log.size() + 1), day, 30 + number % 40, List.of(child.id()), subjects,
                        DOING.get(number % DOING.size()) + ", " + subject.replace('-', ' ') + ", part " + (i + 1),
                        i % 3 == 0 ? List.of("Workbook " + child.grade(year)) : List.of(), "home", null,
                        i % 4 == 0 ? "luc" : "hanne", day.atTime(19, 30)));
            }
        }

        /** As a family writes it: day after day, with all children of the day together. */
        private static List<LogEntry> inOrder(List<LogEntry> log) {
            return log.stream().sorted(Comparator.comparing(LogEntry::date)).toList();
        }

        private void readings(Child child, List<LocalDate> days, List<Reading> readings) {
            for (int i = 0; i < READINGS; i++) {
                LocalDate begun = days.get(i * (DAYS - 10) / READINGS);
                readings.add(new Reading("reading-" + (readings.size() + 1), List.of(child.id()),
                        "The Lantern Boat, volume " + (i + 1), "A. Penhallow", begun, begun.plusDays(9),
                        List.of("literature"), null));
            }
        }

        private void samples(Child child, List<LocalDate> days, List<Sample> samples) {
            for (int i = 0; i < SAMPLES; i++) {
                // the last of the year waits to be settled
                boolean settled = i < SAMPLES - 1;
                List<String> files = i % 2 == 0 ? List.of(PHOTOS.get(samples.size() / 2 % PHOTOS.size())) : List.of();
                LocalDate day = settled ? days.get(i * DAYS / SAMPLES) : null;
                List<String> subjects = settled ? List.of(SUBJECTS.get(i % SUBJECTS.size())) : List.of();
                samples.add(new Sample("sample-" + (samples.size() + 1), child.id(), day, subjects, "Piece " + (i + 1),
                        "page", null, files, i % 4 == 0));
            }
        }
    }
}
