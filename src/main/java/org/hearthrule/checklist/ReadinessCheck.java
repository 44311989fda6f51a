package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthrule.checklist.Readiness.Step;
import org.hearthrule.checklist.Readiness.SubjectRow;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearRecord;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Wording;

/** Gathers what lies ready for an evaluation from a checklist, the law and the records. */
public final class ReadinessCheck {

    private final Wording wording;
    private final Checklist checklist;
    private final Book book;
    private final Checklist.Follows follows;
    private final StudentYear year;
    private final EvidenceWords words;

    private ReadinessCheck(Checklist checklist, Book book, Checklist.Follows follows, StudentYear year,
                           Wording wording) {
        this.wording = wording;
        this.checklist = checklist;
        this.book = book;
        this.follows = follows;
        this.year = year;
        this.words = new EvidenceWords(wording, follows.profile(), follows.pathway());
    }

    /** @param checklist of the whole book */
    public static Readiness of(Checklist checklist, Book book, Student student, Wording wording) {
        Checklist own = checklist.forStudent(student.id());
        if (own.follows().isEmpty()) {
            return new Readiness(checklist.asOf(), student.name(), null, null, null, List.of(), null, null, List.of(),
                    List.of(), List.of(), List.of(), List.of());
        }
        Checklist.Follows follows = own.follows().get(0);
        StudentYear year = new StudentYear(book, student.id(), follows.pathway().year(), checklist.asOf());
        return new ReadinessCheck(own, book, follows, year, wording).check(student);
    }

    private Readiness check(Student student) {
        List<Line> owed = checklist.lines().stream().filter(this::isOwedThisYear).toList();
        List<SubjectRow> subjects = subjects(owed);
        List<Line> tests = owed.stream().filter(line -> line.finding().kind() == RequirementKind.ASSESS).toList();
        LocalDate first = tests.stream().map(line -> line.finding().due()).filter(due -> due != null
                && !due.isBefore(checklist.asOf())).min(Comparator.naturalOrder()).orElse(null);
        LocalDate before = first == null ? year.last : first;
        return new Readiness(checklist.asOf(), student.name(), follows, year.first, year.last, year.thirds(), before,
                first == null ? null : dueOn(first, tests), subjects, items(owed),
                tests.stream().map(this::assessment).toList(), evaluators(tests), steps(subjects, before));
    }

    /** Returns what falls due on the day, an evaluation before a test. */
    private String dueOn(LocalDate day, List<Line> tests) {
        return wording.and(tests.stream().filter(line -> day.equals(line.finding().due()))
                .sorted(Comparator.comparing(line -> Evidence.leaves(line.asked().shows(), Evidence.Evaluation.class).isEmpty()))
                .map(line -> line.finding().title()).distinct().toList());
    }

    private boolean isOwedThisYear(Line line) {
        return line.asked() != null && line.finding().status() != Status.NOT_DUE
                && year.label().equals(line.finding().year());
    }

    private List<SubjectRow> subjects(List<Line> owed) {
        Map<String, SubjectRow> rows = new LinkedHashMap<>();
        for (Line line : owed) {
            for (Evidence.Subjects named : Evidence.leaves(line.asked().shows(), Evidence.Subjects.class)) {
                named.items().forEach(item -> rows.computeIfAbsent(item.name(), name -> year.row(item, line.asked())));
            }
        }
        return List.copyOf(rows.values());
    }

    private List<Readiness.Item> items(List<Line> owed) {
        PortfolioItems portfolio = new PortfolioItems(wording, words, year, checklist.asOf());
        return owed.stream().map(Line::asked).filter(asked -> asked.kind() == RequirementKind.RECORD).distinct()
                .flatMap(asked -> portfolio.of(asked.shows()).stream()).toList();
    }

    private Readiness.Assessment assessment(Line line) {
        List<YearRecord> counted = line.finding().records().stream().flatMap(ref ->
                BookEdits.find(book, ref.year(), ref.id()).stream()).map(BookEdits.Found::record).toList();
        return new Readiness.Assessment(line, new Scans(wording).of(counted));
    }

    private List<String> evaluators(List<Line> tests) {
        Set<String> sentences = new LinkedHashSet<>();
        for (Line line : tests) {
            for (Evidence.Evaluation evaluation : Evidence.leaves(line.asked().shows(), Evidence.Evaluation.class)) {
                sentences.add(may(evaluation.method(), evaluation.by(), evaluation.notBy(), evaluation.consent()));
            }
            for (Evidence.Test test : Evidence.leaves(line.asked().shows(), Evidence.Test.class)) {
                sentences.add(may(test.method(), test.givenBy(), test.notBy(), test.consent()));
            }
        }
        return List.copyOf(sentences);
    }

    private String may(String method, List<String> by, List<String> notBy, String consent) {
        List<String> parts = new ArrayList<>();
        parts.add(by.isEmpty() ? wording.say("ready.may.anyone") : wording.or(slugs(by)));
        if (!notBy.isEmpty()) {
            parts.add(wording.say("ready.may.not", wording.or(slugs(notBy))));
        }
        if (consent != null) {
            parts.add(wording.say("ready.may.consent", consent));
        }
        return wording.say("ready.may", ConditionWords.slug(method), String.join("; ", parts));
    }

    private static List<String> slugs(List<String> slugs) {
        return slugs.stream().map(ConditionWords::slug).toList();
    }

    /** Each next step once, in the order of the checklist, as far as it falls before the day; then the thin thirds. */
    private List<Step> steps(List<SubjectRow> subjects, LocalDate before) {
        Map<String, Step> steps = new LinkedHashMap<>();
        for (Line line : checklist.lines()) {
            if (line.finding().next() != null && !line.finding().theirs() && isOfThisYear(line)
                    && isBefore(line, before)) {
                String found = line.finding().why().isEmpty() ? "" : line.finding().why().get(0);
                steps.putIfAbsent(line.finding().title() + line.finding().next() + found,
                        new Step(line.finding().due(), line.finding().title(), line.finding().next(), found, line));
            }
        }
        thirds(subjects).forEach(found -> steps.put(found, new Step(null, wording.say("ready.thirds.title"),
                wording.say("ready.thirds.next"), found, null)));
        return List.copyOf(steps.values());
    }

    private boolean isOfThisYear(Line line) {
        return line.finding().year() == null || line.finding().year().equals(year.label());
    }

    /** Doubts about the law itself need no answer before an evaluation. */
    private static boolean isBefore(Line line, LocalDate before) {
        boolean ofRecords = line.asked() == null && line.finding().cites().isEmpty();
        return switch (line.section()) {
            case LATE, SOON, LATER -> line.finding().due() == null || !line.finding().due().isAfter(before);
            case THIN_OR_UNCLEAR -> line.asked() != null || ofRecords;
            case DONE, LAW_UNCLEAR, NOT_DUE, NOT_ASKED -> false;
        };
    }

    /** For each third that is over: the subjects that have samples, but none from it. */
    private List<String> thirds(List<SubjectRow> subjects) {
        List<String> sentences = new ArrayList<>();
        List<Readiness.Third> thirds = year.thirds();
        for (int i = 0; i < thirds.size(); i++) {
            int third = i;
            List<String> without = subjects.stream().filter(row -> !row.may() && row.counts().get(third) == 0
                    && row.counts().stream().anyMatch(n -> n > 0)).map(SubjectRow::name).toList();
            if (!without.isEmpty() && thirds.get(i).to().isBefore(checklist.asOf())) {
                sentences.add(wording.say("ready.thirds", wording.say("ready.third." + (i + 1)), wording.and(without)));
            }
        }
        return sentences;
    }
}
