package org.hearthrule.rules;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hearthrule.input.Listing;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Problems;
import org.hearthrule.input.Scalar;
import org.hearthrule.input.YamlText;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;

/**
 * One case of {@code test-fixtures/cases/}, or of the hardest rules beside them: what is given, what the law makes of
 * it, and the section that says so.
 *
 * <p>Cases are written from the statute or from notes on it, not from what the program prints.
 */
record LawCase(String file, String name, String section, Map<String, Node> given, List<Map<String, Node>> expected) {

    /** The child a case is about. */
    static final String CHILD = "child";

    private static final Path CASES = Path.of("test-fixtures", "cases");

    /** @return the files of cases, those of the hardest rules last */
    static List<Path> files() throws IOException {
        List<Path> files = new ArrayList<>(yaml(CASES));
        files.addAll(yaml(CASES.resolve("hardest")));
        return files;
    }

    /** @return the cases of one state, whichever file they stand in */
    static List<LawCase> of(String code) throws IOException {
        List<LawCase> cases = new ArrayList<>();
        for (Path file : files()) {
            if (code.equalsIgnoreCase(jurisdiction(file.getFileName().toString()))) {
                cases.addAll(read(file));
            }
        }
        return cases;
    }

    private static List<Path> yaml(Path folder) throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.filter(Files::isRegularFile).sorted().toList();
        }
    }

    static List<LawCase> read(Path file) throws IOException {
        Problems problems = new Problems();
        Optional<Node> root = YamlText.read(file.getFileName().toString(), Files.readString(file), problems);
        if (problems.hasErrors() || root.isEmpty()) {
            throw new IllegalArgumentException(problems.all().toString());
        }
        List<LawCase> cases = new ArrayList<>();
        for (Node item : ((Listing) root.get()).items()) {
            Map<String, Node> fields = fields(item);
            List<Map<String, Node>> expected = ((Listing) fields.get("expect")).items().stream().map(LawCase::fields).toList();
            cases.add(new LawCase(file.getFileName().toString(), text(fields.get("name")), text(fields.get("section")),
                    fields(fields.get("given")), expected));
        }
        return cases;
    }

    /** @return the code that the file is named by, without a number before it */
    String jurisdiction() {
        return jurisdiction(file);
    }

    private static String jurisdiction(String file) {
        return file.substring(0, file.indexOf('.')).replaceFirst("^\\d+-", "");
    }

    LocalDate asOf() {
        return LocalDate.parse(text(given.get("as-of")));
    }

    /** @return the record book that the case describes */
    Book book() {
        Map<String, Map<String, List<String>>> years = new TreeMap<>();
        Map<String, String> grades = new TreeMap<>();
        if (given.containsKey("grade")) {
            grades.put(label(asOf()), text(given.get("grade")));
        }
        addYears(years, grades);
        addChoices(years);
        addLog(years);
        Map<String, String> files = new LinkedHashMap<>();
        files.put("family.json", family());
        List<String> labels = new ArrayList<>(years.keySet());
        grades.keySet().stream().filter(label -> !labels.contains(label)).forEach(labels::add);
        for (String label : labels) {
            files.put(label + ".json", year(label, years.getOrDefault(label, Map.of()), grades.get(label)));
        }
        Problems problems = new Problems();
        Optional<Book> book = BookReader.read(files, problems);
        if (problems.hasErrors() || book.isEmpty()) {
            throw new IllegalArgumentException(name + "\n" + problems.all().stream().map(p -> p.toText()).toList() + files);
        }
        return book.get();
    }

    private String family() {
        StringBuilder out = new StringBuilder("{\"hearthrule\":1,\"students\":[{\"id\":\"child\",\"name\":\"Child\"");
        field(out, "born", given.get("born"));
        field(out, "schools", given.get("schools"));
        out.append('}');
        int siblings = given.containsKey("siblings") ? Integer.parseInt(text(given.get("siblings"))) : 0;
        for (int number = 1; number <= siblings; number++) {
            out.append(",{\"id\":\"sibling-").append(number).append("\",\"name\":\"Sibling\"");
            field(out, "born", given.get("born"));
            out.append('}');
        }
        out.append("],\"persons\":").append(given.containsKey("persons") ? json(given.get("persons")) : "[]");
        out.append(",\"placements\":[").append(placement(CHILD));
        for (int number = 1; number <= siblings; number++) {
            out.append(',').append(placement("sibling-" + number));
        }
        out.append("],\"events\":[");
        List<String> items = new ArrayList<>();
        fieldsOf("events").forEach((kind, days) -> {
            for (Node day : days instanceof Listing list ? list.items() : List.of(days)) {
                items.add("{\"kind\":\"" + kind + "\",\"date\":" + json(day) + "}");
            }
        });
        out.append(String.join(",", items)).append("],\"facts\":[");
        items.clear();
        fieldsOf("facts").forEach((fact, is) -> items.add("{\"fact\":\"" + fact + "\",\"is\":" + json(is) + "}"));
        return out.append(String.join(",", items)).append("]}").toString();
    }

    private String placement(String student) {
        StringBuilder out = new StringBuilder("{\"student\":\"" + student + "\",\"jurisdiction\":\"" + jurisdiction() + '"');
        field(out, "pathway", given.get("pathway"));
        field(out, "from", given.get("starts"));
        field(out, "to", given.get("ends"));
        if (given.containsKey("place")) {
            fields(given.get("place")).forEach((key, value) -> field(out, key, value));
        }
        field(out, "optIns", given.get("opt-ins"));
        return out.append('}').toString();
    }

    private static String year(String label, Map<String, List<String>> lists, String grade) {
        StringBuilder out = new StringBuilder("{\"hearthrule\":1,\"year\":\"").append(label).append('"');
        if (grade != null) {
            out.append(",\"grades\":{\"child\":\"").append(grade).append("\"}");
        }
        lists.forEach((key, items) -> {
            String all = String.join(",", items);
            out.append(",\"").append(key).append("\":").append(key.equals("calendar") ? all : "[" + all + "]");
        });
        return out.append('}').toString();
    }

    private void addYears(Map<String, Map<String, List<String>>> years, Map<String, String> grades) {
        fieldsOf("years").forEach((label, lists) -> {
            Map<String, List<String>> year = years.computeIfAbsent(label, key -> new LinkedHashMap<>());
            fields(lists).forEach((key, value) -> {
                if (key.equals("grades")) {
                    grades.put(label, value instanceof Scalar grade ? grade.text() : text(fields(value).values().iterator().next()));
                } else if (value instanceof Listing list) {
                    list.items().forEach(item -> year.computeIfAbsent(key, k -> new ArrayList<>()).add(withChild(key, item)));
                } else {
                    year.computeIfAbsent(key, k -> new ArrayList<>()).add(json(value));
                }
            });
        });
    }

    private static String withChild(String list, Node item) {
        boolean one = List.of("samples", "tests", "evaluations", "health", "choices").contains(list);
        String who = one ? "\"student\":\"child\"" : "\"students\":[\"child\"]";
        String rest = json(item);
        return "{" + who + "," + rest.substring(1);
    }

    private void addChoices(Map<String, Map<String, List<String>>> years) {
        fieldsOf("choices").forEach((choice, value) -> {
            String made = value instanceof Listing ? "\"dates\":" + json(value) : "\"value\":" + json(value);
            years.computeIfAbsent(label(asOf()), key -> new LinkedHashMap<>()).computeIfAbsent("choices", k -> new ArrayList<>())
                    .add("{\"student\":\"child\",\"choice\":\"" + choice + "\"," + made + "}");
        });
    }

    private void addLog(Map<String, Map<String, List<String>>> years) {
        if (!given.containsKey("taught")) {
            return;
        }
        for (Node item : ((Listing) given.get("taught")).items()) {
            Map<String, Node> taught = fields(item);
            LocalDate day = LocalDate.parse(text(taught.get("from")));
            int days = Integer.parseInt(text(taught.get("days")));
            for (int left = days; left > 0; day = day.plusDays(1)) {
                if (day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY) {
                    continue;
                }
                StringBuilder entry = new StringBuilder("{\"date\":\"" + day + "\",\"students\":[\"child\"],\"did\":\"Taught.\"");
                field(entry, "minutes", taught.get("minutes"));
                field(entry, "subjects", taught.get("subjects"));
                field(entry, "place", taught.get("place"));
                field(entry, "core", taught.get("core"));
                years.computeIfAbsent(label(day), key -> new LinkedHashMap<>()).computeIfAbsent("log", k -> new ArrayList<>())
                        .add(entry.append('}').toString());
                left--;
            }
        }
    }

    /** @return label of the record book's file that holds the day */
    static String label(LocalDate day) {
        int first = day.getMonthValue() >= 7 ? day.getYear() : day.getYear() - 1;
        return first + "-" + String.format("%02d", (first + 1) % 100);
    }

    private Map<String, Node> fieldsOf(String key) {
        return given.containsKey(key) ? fields(given.get(key)) : Map.of();
    }

    private static void field(StringBuilder out, String key, Node value) {
        if (value != null) {
            out.append(",\"").append(key).append("\":").append(json(value));
        }
    }

    static Map<String, Node> fields(Node node) {
        Map<String, Node> fields = new LinkedHashMap<>();
        for (Mapping.Entry entry : ((Mapping) node).entries()) {
            fields.put(entry.key().text(), entry.value());
        }
        return fields;
    }

    static String text(Node node) {
        return ((Scalar) node).text();
    }

    private static String json(Node node) {
        if (node instanceof Mapping mapping) {
            List<String> entries = new ArrayList<>();
            for (Mapping.Entry entry : mapping.entries()) {
                entries.add(quoted(entry.key().text()) + ":" + json(entry.value()));
            }
            return "{" + String.join(",", entries) + "}";
        }
        if (node instanceof Listing list) {
            return "[" + String.join(",", list.items().stream().map(LawCase::json).toList()) + "]";
        }
        Scalar scalar = (Scalar) node;
        if (scalar.form() != Scalar.Form.PLAIN) {
            return quoted(scalar.text());
        }
        return switch (scalar.text()) {
            case "yes", "true" -> "true";
            case "no", "false" -> "false";
            default -> scalar.text().matches("-?\\d+(\\.\\d+)?") ? scalar.text() : quoted(scalar.text());
        };
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
