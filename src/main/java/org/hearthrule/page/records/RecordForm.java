package org.hearthrule.page.records;

import java.util.List;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecord;

/** How one kind of record is entered and read. {@link RecordPages} does the rest alike for all. Stateless. */
abstract class RecordForm<T extends YearRecord> {

    abstract RecordKind kind();

    /** @return the address of its list, such as {@code /papers} */
    abstract String path();

    /** @return such as {@code a test} */
    abstract String one();

    /** @return the heading of the list */
    abstract String many();

    /** @return what it is for, and what to do while there is none */
    abstract String about();

    abstract List<Field> fields(Form form, Offered offered);

    /** @return a form with what a record holds */
    abstract Form fill(T record);

    /**
     * @param before the record that is mended, or null for a new one
     * @return the record; whatever when the form has complaints
     */
    abstract T read(Form form, Offered offered, String id, T before);

    abstract List<String> students(T record);

    abstract String title(T record, Offered offered);

    /** @return what else there is to say, a sentence each */
    abstract List<String> words(T record, Offered offered);

    /** @return subjects it belongs to */
    List<String> subjects(T record) {
        return List.of();
    }

    /** @return whether its list can be narrowed to a month */
    boolean hasMonths() {
        return false;
    }

    /** @return states that its list can be narrowed to */
    List<org.hearthrule.page.frame.Option> states() {
        return List.of();
    }

    /** @return the value of its state among {@link #states}, or null */
    String state(T record) {
        return null;
    }

    /** @return what was entered before and is offered again, by the id of the datalist that a field names */
    java.util.Map<String, List<String>> before(Offered offered) {
        return java.util.Map.of();
    }

    /** @return path of the scan within the book, or null */
    String scan(T record) {
        return null;
    }

    /** @return paths of its photos and scans within the book */
    List<String> pictures(T record) {
        return List.of();
    }

    /**
     * @param now label of the year it lies in, or null for a new one
     * @return the school year it is put into: that of its day, unless the form names another
     */
    String label(T record, String now, Offered offered) {
        return YearLabel.of(record.day()).toString();
    }

    static String when(java.time.LocalDate day) {
        return org.hearthrule.terms.Wording.english().date(day);
    }

    /** @return an own word typed where none of those offered fits, as files spell it; null when neither */
    static String kindOf(Form form, String name, List<org.hearthrule.page.frame.Option> offered, String whatToChoose) {
        String other = form.text(name + "-other");
        if (other != null) {
            String slug = other.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
            if (slug.isEmpty()) {
                form.complain(name + "-other", "Type a name with letters.");
            }
            return slug;
        }
        return form.mustOneOf(name, offered.stream().map(org.hearthrule.page.frame.Option::value).toList(), whatToChoose);
    }

    /** Puts a kind into the choice, or beside it when it is not among those offered. */
    static Form fillKind(Form form, String name, String kind) {
        return form.fill(name, kind).fill(name + "-known", kind);
    }

    /** @return the two fields of a kind: the choice, and an own word */
    static List<Field> kindFields(Form form, String name, String label, List<org.hearthrule.page.frame.Option> offered) {
        String kind = form.raw(name);
        boolean known = kind.isEmpty() || offered.stream().anyMatch(one -> one.value().equals(kind));
        List<org.hearthrule.page.frame.Option> all = new java.util.ArrayList<>(offered);
        if (!known && !form.is(name + "-other")) {
            form.fill(name + "-other", Offered.plain(kind));
        }
        return List.of(form.field(name, label).options(all).type("select").must(),
                form.field(name + "-other", "Another").hint("When none of those fits: its name."));
    }
}
