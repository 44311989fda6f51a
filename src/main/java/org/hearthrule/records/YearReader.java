package org.hearthrule.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Phrases;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Scalar;
import org.hearthrule.terms.Grades;

/** Reads the file of one school year, such as {@code 2026-27.json}: its head here, its lists by {@link YearLists}. */
final class YearReader {

    private final YearLabel label;
    private final Names names;
    private final Problems problems;
    private Item root;

    /**
     * @param label as the name of the file says
     * @param names whom the file may refer to
     */
    YearReader(YearLabel label, Names names, Problems problems) {
        this.label = label;
        this.names = names;
        this.problems = problems;
    }

    /** Returns what was read, which may lack what could not be; empty when a newer version wrote the file. */
    Optional<YearRecords> read(Node node) {
        root = new Item(Fields.of(node, problems, "the file of a school year"), names);
        if (!FormatVersion.isReadable(root.fields())) {
            return Optional.empty();
        }
        checkYear();
        Map<String, String> grades = root.fields().optionalFields("grades", "the grades").map(this::grades)
                .orElse(Map.of());
        YearRecords.Calendar calendar = root.fields().optionalFields("calendar", "the calendar").map(this::calendar)
                .orElse(YearRecords.Calendar.EMPTY);
        YearRecords year = new YearLists(root, label, problems).read(grades, calendar);
        root.done();
        return Optional.of(year);
    }

    private void checkYear() {
        String text = root.text("year");
        if (text != null && !text.equals(label.toString())) {
            root.fields().error("year", "WRONG-YEAR", Phrases.quoted(text),
                    "\"" + label + "\", as the name of the file says", null);
        }
    }

    private Map<String, String> grades(Fields fields) {
        Map<String, String> grades = new LinkedHashMap<>();
        for (Mapping.Entry entry : fields.entries()) {
            names.checkStudent(entry.key().text(), entry.key().place(), problems);
            String grade = grade(entry.value());
            if (grade != null) {
                grades.put(entry.key().text(), grade);
            }
        }
        return Collections.unmodifiableMap(grades);
    }

    private String grade(Node node) {
        Scalar scalar = node instanceof Scalar value ? value : null;
        boolean text = scalar != null && scalar.form() == Scalar.Form.QUOTED;
        if (text && Grades.number(scalar.text()).isPresent() && scalar.text().equals(scalar.text().strip())) {
            return scalar.text();
        }
        String found = scalar == null ? "a list or keys with values" : text ? Phrases.quoted(scalar.text())
                : scalar.text();
        problems.error(node.place(), "WRONG-GRADE", found, "a grade in quotes: \"K\" or \"1\" to \"12\"",
                scalar == null ? null : gradeGuess(scalar.text()));
        return null;
    }

    private static String gradeGuess(String text) {
        String word = text.strip().toUpperCase(Locale.ROOT);
        if (word.equals("0") || word.equals("K") || word.equals("KG") || word.equals("KINDERGARTEN")) {
            return "write \"K\"";
        }
        int end = 0;
        while (end < word.length() && Character.isDigit(word.charAt(end))) {
            end++;
        }
        String digits = word.substring(0, end).replaceFirst("^0+", "");
        boolean ordinal = word.substring(end).matches("|ST|ND|RD|TH");
        return ordinal && Grades.number(digits).isPresent() ? "write \"" + digits + '"' : null;
    }

    private YearRecords.Calendar calendar(Fields fields) {
        Item item = new Item(fields, names);
        LocalDate first = day(item, "firstDay");
        LocalDate last = day(item, "lastDay");
        LocalDate schoolFirst = day(item, "schoolFirstDay");
        LocalDate schoolLast = day(item, "schoolLastDay");
        Order.check(item, "firstDay", first, "lastDay", last);
        Order.check(item, "schoolFirstDay", schoolFirst, "schoolLastDay", schoolLast);
        YearRecords.Calendar calendar = new YearRecords.Calendar(first, last, schoolFirst, schoolLast,
                stretches(item, "quarters", "the quarter"), stretches(item, "terms", "the term"),
                item.dates("schoolClosed"));
        item.done();
        return calendar;
    }

    private LocalDate day(Item item, String key) {
        LocalDate day = item.dateOrNull(key);
        warnOutside(item, key, day, label);
        return day;
    }

    private List<YearRecords.Stretch> stretches(Item item, String key, String what) {
        return map(item.items(key, what), one -> {
            LocalDate from = one.date("from");
            LocalDate to = one.date("to");
            Order.check(one, "from", from, "to", to);
            one.done();
            return new YearRecords.Stretch(from, to);
        });
    }

    /** Warns of a day that does not lie in the school year of the file. */
    static void warnOutside(Item item, String key, LocalDate day, YearLabel label) {
        if (day == null || label.holds(day)) {
            return;
        }
        String other = YearLabel.of(day).fileName();
        item.problems().warning(item.place(key), "OUTSIDE-YEAR", "\"" + day + '"',
                "a day from " + label.first() + " to " + label.last(),
                "it belongs in " + other + ", or the year is mistyped");
    }

    static <T> List<T> map(List<Item> items, Function<Item, T> reader) {
        List<T> read = new ArrayList<>(items.size());
        for (Item item : items) {
            read.add(reader.apply(item));
        }
        return List.copyOf(read);
    }
}
