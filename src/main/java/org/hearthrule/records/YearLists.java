package org.hearthrule.records;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Problems;

/** Reads the lists of one school year's file. */
final class YearLists {

    /** A day has so many minutes. */
    static final int LONGEST_DAY = 1440;

    private static final int MOST_PARTS = 366;
    private static final String STANDARDIZED_TEST = "standardized-test";
    private static final List<String> ANSWERS =
            List.of("received", "materials", "approved", "refused", "deficiency", "answered");

    private final Item root;
    private final YearLabel label;
    private final Problems problems;
    private final Ids ids = new Ids();
    private final Map<String, List<Item>> lists = new LinkedHashMap<>();
    private final Map<List<String>, List<String>> shared = new HashMap<>();

    YearLists(Item root, YearLabel label, Problems problems) {
        this.root = root;
        this.label = label;
        this.problems = problems;
    }

    YearRecords read(Map<String, String> grades, YearRecords.Calendar calendar) {
        List<YearRecords.ChoiceMade> choices = YearReader.map(root.items("choices", "the choice"), this::choice);
        open("log", "the log entry");
        open("readings", "the reading");
        open("samples", "the sample");
        open("tests", "the test");
        open("evaluations", "the evaluation");
        open("filings", "the filing");
        open("requests", "the request");
        open("health", "the health paper");
        open("documents", "the document");
        open("visits", "the visit");
        return new YearRecords(label.toString(), grades, calendar, choices, list("log", "log", this::entry),
                list("readings", "reading", this::reading), list("samples", "sample", this::sample),
                list("tests", "test", this::test), list("evaluations", "evaluation", this::evaluation),
                list("filings", "filing", this::filing), list("requests", "request", this::request),
                list("health", "health", this::healthPaper), list("documents", "document", this::document),
                list("visits", "visit", this::visit));
    }

    /** Opens a list and takes the ids given in it: one that is made must not take them away. */
    private void open(String key, String what) {
        List<Item> items = root.items(key, what);
        lists.put(key, items);
        for (Item item : items) {
            String id = item.textOrNull("id");
            if (id != null) {
                ids.take(id, item.place("id"), problems);
            }
        }
    }

    private <T> List<T> list(String key, String prefix, Reader<T> reader) {
        int[] position = {0};
        return YearReader.map(lists.get(key), item -> {
            position[0]++;
            String id = item.textOrNull("id");
            T read = reader.read(item, id == null ? ids.make(prefix + "-" + position[0], item.place()) : id);
            item.done();
            return read;
        });
    }

    private YearRecords.ChoiceMade choice(Item item) {
        String student = item.studentOrNull("student");
        String choice = item.text("choice");
        String value = item.textOrNull("value");
        List<LocalDate> dates = item.dates("dates");
        if (value == null && dates.isEmpty()) {
            problems.error(item.place(), "MISSING-KEY", "neither `value` nor `dates` in the choice",
                    "what was chosen, under one of them", null);
        } else if (value != null && !dates.isEmpty()) {
            item.fields().error("dates", "TWO-CHOICES", "`value` and `dates` in one choice", "only one of them", null);
        }
        LocalDate made = item.dateOrNull("made");
        item.done();
        return new YearRecords.ChoiceMade(student, choice, value, dates, made);
    }

    private YearRecords.LogEntry entry(Item item, String id) {
        String did = item.textOrNull("did");
        return new YearRecords.LogEntry(id, dayOfYear(item, "date"), minutes(item),
                same(item.atLeastOneStudent("students")), same(item.subjects("subjects")), did == null ? "" : did,
                same(item.texts("materials")), item.textOrNull("place"), item.yesNoOrNull("core"),
                item.personOrNull("by"), item.timeOrNull("written"));
    }

    private YearRecords.Reading reading(Item item, String id) {
        LocalDate started = item.dateOrNull("started");
        LocalDate finished = item.dateOrNull("finished");
        Order.check(item, "started", started, "finished", finished);
        boolean open = finished == null;
        YearReader.warnOutside(item, open ? "started" : "finished", open ? started : finished, label);
        return new YearRecords.Reading(id, same(item.atLeastOneStudent("students")), item.text("title"),
                item.textOrNull("author"), started, finished, same(item.subjects("subjects")), item.textOrNull("idea"),
                isbn(item));
    }

    private static String isbn(Item item) {
        String typed = item.textOrNull("isbn");
        String wrong = typed == null ? null : Isbn.complaint(typed);
        if (wrong != null) {
            item.fields().error("isbn", "WRONG-ISBN", Phrases.quoted(typed), "an ISBN of 10 or 13 digits (ISO 2108)", wrong);
        }
        return typed == null || wrong != null ? typed : Isbn.digits(typed);
    }

    private YearRecords.Sample sample(Item item, String id) {
        LocalDate date = item.dateOrNull("date");
        YearReader.warnOutside(item, "date", date, label);
        return new YearRecords.Sample(id, item.student("student"), date, same(item.subjects("subjects")),
                item.text("title"), item.textOrNull("kind"), item.textOrNull("idea"), item.files("files"),
                Boolean.TRUE.equals(item.yesNoOrNull("chosen")));
    }

    private YearRecords.TestTaken test(Item item, String id) {
        String method = item.textOrNull("method");
        return new YearRecords.TestTaken(id, item.student("student"), item.date("date"),
                method == null ? STANDARDIZED_TEST : method, item.textOrNull("name"), item.textOrNull("edition"),
                item.textOrNull("givenBy"), item.textOrNull("place"), item.textOrNull("consent"),
                YearReader.map(item.items("scores", "the score"), YearLists::score), item.fileOrNull("file"));
    }

    private static YearRecords.Score score(Item item) {
        BigDecimal value = item.number("value");
        YearRecords.Score score = new YearRecords.Score(item.text("area"), item.text("measure"), value);
        item.done();
        return score;
    }

    private YearRecords.Evaluation evaluation(Item item, String id) {
        return new YearRecords.Evaluation(id, item.student("student"), item.date("date"), item.text("method"),
                item.textOrNull("by"), item.textOrNull("consent"), item.texts("includes"), item.textOrNull("outcome"),
                item.textOrNull("note"), item.fileOrNull("file"));
    }

    private YearRecords.Filing filing(Item item, String id) {
        OptionalInt part = item.integer("part", 1, MOST_PARTS);
        return new YearRecords.Filing(id, same(item.students("students")), item.text("paper"), item.date("sent"),
                item.textOrNull("how"), item.textOrNull("to"), yearOrNull(item),
                part.isPresent() ? part.getAsInt() : null, item.texts("states"), item.texts("attached"),
                item.fileOrNull("copy"), YearReader.map(item.items("answers", "the answer"), YearLists::answer));
    }

    private static String yearOrNull(Item item) {
        String text = item.textOrNull("for");
        if (text != null && YearLabel.parse(text).isEmpty()) {
            item.fields().error("for", "WRONG-YEAR", Phrases.quoted(text), "a school year such as \"2026-27\"", null);
        }
        return text;
    }

    private static YearRecords.Answer answer(Item item) {
        YearRecords.Answer answer = new YearRecords.Answer(item.oneOf("kind", ANSWERS), item.date("date"),
                item.textOrNull("note"));
        item.done();
        return answer;
    }

    private YearRecords.Request request(Item item, String id) {
        return new YearRecords.Request(id, same(item.students("students")), item.textOrNull("by"),
                item.yesNo("written"), item.date("date"), item.textOrNull("cause"));
    }

    private YearRecords.HealthPaper healthPaper(Item item, String id) {
        return new YearRecords.HealthPaper(id, item.student("student"), item.text("kind"), item.date("date"),
                item.fileOrNull("file"));
    }

    private YearRecords.KeptDocument document(Item item, String id) {
        return new YearRecords.KeptDocument(id, same(item.students("students")), item.text("kind"), item.date("date"),
                item.fileOrNull("file"));
    }

    private YearRecords.Visit visit(Item item, String id) {
        return new YearRecords.Visit(id, same(item.atLeastOneStudent("students")), dayOfYear(item, "date"),
                minutes(item), item.textOrNull("by"), Boolean.TRUE.equals(item.yesNoOrNull("faceToFace")));
    }

    private LocalDate dayOfYear(Item item, String key) {
        LocalDate day = item.date(key);
        YearReader.warnOutside(item, key, day, label);
        return day;
    }

    private static int minutes(Item item) {
        return item.integer("minutes", 0, LONGEST_DAY).orElse(0);
    }

    /** Thousands of entries name the same few children and subjects: one list serves them all. */
    private List<String> same(List<String> list) {
        List<String> first = shared.putIfAbsent(list, list);
        return first == null ? list : first;
    }

    /** Builds one record. */
    private interface Reader<T> {
        T read(Item item, String id);
    }
}
