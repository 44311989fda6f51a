package org.hearthrule.page.frame;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.terms.Prose;

/** What forms of several parts offer to choose from. */
public final class Choices {

    private Choices() { }

    public static List<Option> children(Book book) {
        return book.students().stream().map(one -> Option.of(one.id(), one.name())).toList();
    }

    public static List<String> childIds(Book book) {
        return book.students().stream().map(Student::id).toList();
    }

    public static List<Option> persons(Book book) {
        return book.persons().stream().map(one -> Option.of(one.id(), one.name())).toList();
    }

    /** @return every state there is a law of, by the code that record books write */
    public static List<Option> states(Profiles profiles) {
        return profiles.names().entrySet().stream()
                .map(one -> Option.of(one.getKey().toLowerCase(Locale.ROOT), one.getValue())).toList();
    }

    /** @return the ways of a law that stand on a day, each with what it is in short */
    public static List<Option> ways(Profile law, LocalDate day) {
        return law.pathwaysOn(day).stream().map(way -> new Option(way.slug(), way.name(), way.inShort())).toList();
    }

    /** @return school years there are records of, and those around today, the latest first */
    public static List<Option> years(Book book, LocalDate today) {
        TreeSet<String> labels = new TreeSet<>(book.years().keySet());
        YearLabel now = YearLabel.of(today);
        labels.add(now.toString());
        labels.add(new YearLabel(now.start() + 1).toString());
        return labels.descendingSet().stream().map(label -> Option.of(label, label)).toList();
    }

    /** @return what is offered, and what the book holds beside it: a form loses nothing it was opened with */
    public static List<Option> keeping(List<Option> offered, Collection<String> held) {
        List<Option> all = new ArrayList<>(offered);
        held.stream().filter(one -> !values(offered).contains(one))
                .forEach(one -> all.add(Option.of(one, Prose.upperFirst(one.replace('-', ' ')))));
        return all;
    }

    /** @return what is sent for each */
    public static List<String> values(List<Option> options) {
        return options.stream().map(Option::value).toList();
    }
}
