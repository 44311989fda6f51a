package org.hearthrule.page.records;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecord;
import org.hearthrule.terms.Wording;

/** How one kind of record is entered and read. {@link RecordPages} does the rest alike for all. Stateless. */
abstract class RecordForm<T extends YearRecord> {

    private static final String OTHER = "-other";

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
    List<Option> states() {
        return List.of();
    }

    /** @return the value of its state among {@link #states}, or null */
    String state(T record) {
        return null;
    }

    /** @return what was entered before and is offered again, by the id of the datalist that a field names */
    Map<String, List<String>> before(Offered offered) {
        return Map.of();
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

    static String when(LocalDate day) {
        return Wording.english().date(day);
    }

    /** @return an own word typed where none of those offered fits, as files spell it; null when neither */
    static String kindOf(Form form, String name, List<Option> offered, String whatToChoose) {
        String other = form.text(name + OTHER);
        if (other == null) {
            return form.mustOneOf(name, Choices.values(offered), whatToChoose);
        }
        String slug = BookEdits.slug(other);
        if (slug.isEmpty()) {
            form.complain(name + OTHER, "Type a name with letters.");
        }
        return slug;
    }

    /** @return the two fields of a kind: the choice, and an own word */
    static List<Field> kindFields(Form form, String name, String label, List<Option> offered) {
        keepOther(form, name, offered, Offered::plain);
        return List.of(form.field(name, label).options(offered).type("select").must(),
                form.field(name + OTHER, "Another").hint("When none of those fits: its name."));
    }

    /** @return a person of the book, or the role that was typed; null when neither */
    static String personOf(Form form, String name, Offered offered) {
        String other = form.text(name + OTHER);
        return other != null ? other : form.oneOf(name, Choices.values(offered.persons()));
    }

    /** @return the two fields of a person: the choice, and a role */
    static List<Field> personFields(Form form, String name, String label, String hint, Offered offered) {
        keepOther(form, name, offered.persons(), UnaryOperator.identity());
        return List.of(form.field(name, label).options(offered.persons()).type("select"),
                form.field(name + OTHER, "Somebody else").hint(hint));
    }

    /** What a record holds and the choice does not offer goes into the field beside it: a form loses nothing it was opened with. */
    private static void keepOther(Form form, String name, List<Option> offered, UnaryOperator<String> words) {
        String held = form.raw(name);
        boolean unknown = !held.isEmpty() && offered.stream().noneMatch(one -> one.value().equals(held));
        if (unknown && !form.is(name + OTHER)) {
            form.fill(name + OTHER, words.apply(held));
        }
    }
}
