package org.hearthrule.rules;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.records.Book;
import org.hearthrule.terms.Prose;

/** Findings about the records themselves: they cite no law. */
final class RecordFindings {

    private RecordFindings() {
    }

    static Finding of(RecordDoubt doubt, Book book, List<Situation> situations) {
        Situation situation = situations.stream().filter(s -> s.studentId().equals(doubt.student())).findFirst().orElse(null);
        String name = book.student(doubt.student()).map(student -> student.name()).orElse(doubt.student());
        Map<String, Object> counted = new LinkedHashMap<>();
        if (!doubt.records().isEmpty()) {
            counted.put("records", doubt.records().size());
        }
        String about = doubt.about().isEmpty() ? "all" : slug(doubt.about());
        String rule = "records/" + slug(doubt.rule());
        return new Finding(rule + "/" + doubt.student() + "/" + about, rule,
                situation == null ? null : situation.profile().slug(),
                situation == null ? null : situation.pathway().slug(), doubt.student(), name, RequirementKind.RECORD,
                Prose.upperFirst(doubt.rule()), null, doubt.status(), null, Say.it("due.records"), null, false, List.of(doubt.sentence()),
                doubt.next(), counted, doubt.records(), List.of(), List.of(), List.of(doubt.rule()), List.of(), null);
    }

    /** Letters and digits stay, everything between them becomes one hyphen: an id is typed and printed. */
    private static String slug(String words) {
        StringBuilder slug = new StringBuilder();
        words.toLowerCase(Locale.ROOT).codePoints().forEach(c -> {
            if (Character.isLetterOrDigit(c)) {
                slug.appendCodePoint(c);
            } else if (slug.length() > 0 && slug.charAt(slug.length() - 1) != '-') {
                slug.append('-');
            }
        });
        int end = slug.length();
        return end > 0 && slug.charAt(end - 1) == '-' ? slug.substring(0, end - 1) : slug.toString();
    }
}
