package org.hearthrule.page.records;

import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.function.Function;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.sheet.Addresses;
import org.hearthrule.records.YearRecord;
import org.hearthrule.terms.Subjects;

/** What a list is narrowed to, as chosen above it; nothing chosen lets everything through. */
final class Narrowed<T extends YearRecord> {

    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.US);
    private static final List<String> NAMES = List.of("words", "child", "subject", "year", "month", "state");

    private final RecordForm<T> kind;
    private final Form form;

    Narrowed(RecordForm<T> kind, Form form) {
        this.kind = kind;
        this.form = form;
    }

    boolean isAnything() {
        return NAMES.stream().anyMatch(form::is);
    }

    /** @return what was chosen, as a query without its mark; empty when nothing was */
    String query() {
        StringBuilder query = new StringBuilder();
        NAMES.stream().filter(form::is).forEach(name -> query.append(name).append('=')
                .append(Addresses.encoded(form.raw(name))).append('&'));
        return query.toString();
    }

    /** @return whether it is of the child, subject, year, month and state that were chosen */
    boolean fits(String label, T record) {
        String day = record.day() == null ? "" : record.day().toString();
        List<String> children = kind.students(record);
        return (!form.is("child") || children.isEmpty() || children.contains(form.raw("child")))
                && (!form.is("subject") || kind.subjects(record).contains(form.raw("subject")))
                && (!form.is("year") || label.equals(form.raw("year")))
                && (!form.is("month") || !day.isEmpty() && day.startsWith(form.raw("month")))
                && (!form.is("state") || form.raw("state").equals(kind.state(record)));
    }

    /** @return whether each of the words that were typed stands in a text */
    boolean fits(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return List.of(form.raw("words").toLowerCase(Locale.ROOT).split("\\s+")).stream().allMatch(lower::contains);
    }

    /** @return the choices there are: of what no two records differ in, there is none */
    List<Field> fields(List<T> records, List<String> labels) {
        List<Field> fields = new ArrayList<>();
        add(fields, "subject", "Subject", options(records, one -> kind.subjects(one), Subjects::name, Comparator.comparing(Subjects::name)));
        add(fields, "year", "School year", labels.stream().map(label -> Option.of(label, label)).toList());
        if (kind.hasMonths()) {
            add(fields, "month", "Month", options(records, one -> one.day() == null ? List.of() : List.of(YearMonth.from(one.day()).toString()),
                    month -> MONTH.format(YearMonth.parse(month)), Comparator.reverseOrder()));
        }
        add(fields, "state", "Which", kind.states());
        return fields;
    }

    private void add(List<Field> fields, String name, String label, List<Option> options) {
        if (options.size() > 1) {
            fields.add(form.field(name, label).options(options).must());
        }
    }

    private List<Option> options(List<T> records, Function<T, List<String>> values, Function<String, String> words, Comparator<String> order) {
        TreeSet<String> found = new TreeSet<>(order);
        records.forEach(one -> found.addAll(values.apply(one)));
        return found.stream().map(value -> Option.of(value, words.apply(value))).toList();
    }
}
