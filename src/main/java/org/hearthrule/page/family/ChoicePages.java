package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.ChoiceAsked;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.PageWords;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.ChoiceMade;
import org.hearthrule.terms.Prose;

/** {@code /family/choice}: what a law leaves to the parent or to somebody else to settle for a school year. */
public final class ChoicePages implements Feature {

    private static final int MOST_DAYS = 6;
    private static final String NUMBER = "[0-9]{1,4}(\\.[0-9]{1,2})?";

    @Override
    public void addTo(Routes routes) {
        routes.get("/family/choice", ChoicePages::open);
        routes.post("/family/choice", ChoicePages::save);
        routes.post("/family/unchosen", ChoicePages::takeBack);
    }

    /** Something to be settled, and where. */
    public record AskedView(String question, String address) { }

    /** A choice made for a year, in words, and its print. */
    public record MadeView(String year, String choice, String student, String words, String print) { }

    /** @return what the laws leave open for the children as they are taught on the day, each name once */
    private static List<ChoiceAsked> asked(Call call) throws BadInputException {
        Map<String, ChoiceAsked> asked = new LinkedHashMap<>();
        for (Checklist.Follows follows : call.desk().checklist().follows()) {
            ChoiceAsked.of(follows.pathway()).forEach(one -> asked.putIfAbsent(one.name(), one));
        }
        return List.copyOf(asked.values());
    }

    static List<AskedView> views(Call call) throws BadInputException {
        return asked(call).stream().map(one -> new AskedView(question(one), "/family/choice?choice=" + one.name())).toList();
    }

    /** @return the choices noted in a book, those of the latest year first */
    static List<MadeView> made(Call call) throws BadInputException {
        Household house = Household.of(call);
        List<ChoiceAsked> asked = asked(call);
        List<MadeView> all = new ArrayList<>();
        house.book().years().forEach((year, records) -> {
            for (ChoiceMade one : records.choices()) {
                all.add(new MadeView(year, one.choice(), one.student() == null ? "" : one.student(),
                        year + ": " + words(house, one, asked), Print.of(one)));
            }
        });
        all.sort(Comparator.comparing(MadeView::year).reversed());
        return all;
    }

    private static String question(ChoiceAsked asked) {
        if (asked instanceof ChoiceAsked.OneOf one) {
            return one.question();
        } else if (asked instanceof ChoiceAsked.Days days) {
            return days.question();
        } else if (asked instanceof ChoiceAsked.DaySet set) {
            return PageWords.say("choice.day-set", set.who());
        }
        ChoiceAsked.NumberSet set = (ChoiceAsked.NumberSet) asked;
        return PageWords.say("choice.number-set", set.measure().slug(), set.who());
    }

    /** Says whose it is, what was asked where that is known, and what was noted. */
    private static String words(Household house, ChoiceMade made, List<ChoiceAsked> asked) {
        String who = made.student() == null ? "" : house.names(List.of(made.student())) + ", ";
        Optional<ChoiceAsked> known = asked.stream().filter(one -> one.name().equals(made.choice())).findFirst();
        String what = known.map(ChoicePages::question).orElse(made.choice().replace('-', ' ') + ':');
        String noted = made.value() == null ? PageWords.and(made.dates().stream().map(PageWords::date).toList())
                : known.isPresent() && known.get() instanceof ChoiceAsked.OneOf one
                ? one.options().getOrDefault(made.value(), made.value()) : made.value().replace('-', ' ');
        return who + what + ' ' + noted;
    }

    private static Optional<ChoiceAsked> find(Call call, String name) throws BadInputException {
        return asked(call).stream().filter(one -> one.name().equals(name)).findFirst();
    }

    private static List<ChoiceMade> held(Book book, String name) {
        return book.years().values().stream().flatMap(year -> year.choices().stream())
                .filter(one -> one.choice().equals(name)).toList();
    }

    /** @param student id, or empty for all */
    private static Optional<ChoiceMade> held(YearRecords year, String name, String student) {
        return year.choices().stream().filter(one -> one.choice().equals(name)
                && (one.student() == null ? "" : one.student()).equals(student)).findFirst();
    }

    private static Answer open(Call call) throws BadInputException {
        Optional<ChoiceAsked> asked = find(call, call.query("choice"));
        if (asked.isEmpty()) {
            return new Answer.Nothing();
        }
        Book book = call.desk().book();
        String year = YearLabel.of(call.desk().today()).toString();
        String child = book.student(call.query("child")).isPresent() ? call.query("child") : "";
        Form form = Form.empty().fill("choice", asked.get().name()).fill("year", year).fill("student", child)
                .fill("print", Print.of(held(book, asked.get().name()))).fill("back", call.query("back"));
        YearRecords records = book.years().getOrDefault(year, YearRecords.empty(year));
        held(records, asked.get().name(), child).ifPresent(one -> {
                    form.fill("value", one.value());
                    for (int i = 0; i < one.dates().size(); i++) {
                        form.fill("day-" + (i + 1), one.dates().get(i));
                    }
                });
        return form(call, asked.get(), form, 200, List.of());
    }

    private static Answer form(Call call, ChoiceAsked asked, Form form, int status, List<String> there) {
        List<Field> fields = new ArrayList<>();
        if (asked instanceof ChoiceAsked.OneOf one) {
            fields.add(form.field("value", "What holds for you").type("one").must().options(one.options().entrySet().stream()
                    .map(option -> Option.of(option.getKey(), Prose.upperFirst(option.getValue()))).toList()));
        } else if (asked instanceof ChoiceAsked.NumberSet set) {
            fields.add(form.field("value", "How many " + set.measure().slug()).must().hint("A number, for example 180."));
        } else {
            for (int i = 1; i <= MOST_DAYS; i++) {
                Field day = form.field("day-" + i, i == 1 ? "The day" : "Day " + i).type("date");
                fields.add(i == 1 ? day.must() : day);
            }
        }
        List<Option> years = Choices.years(call.desk().book(), call.desk().today());
        return Household.shown("choice", "What is settled for the year", form, status, Map.of("question", question(asked),
                "fields", fields, "years", years, "children", Household.of(call).children(), "there", there));
    }

    private static Answer save(Call call) throws Exception {
        Form form = call.form();
        Household house = Household.of(call);
        Optional<ChoiceAsked> asked = find(call, form.raw("choice"));
        if (asked.isEmpty()) {
            return new Answer.Nothing();
        }
        String year = form.mustOneOf("year", Choices.values(Choices.years(house.book(), house.today())),
                "Choose the school year.");
        String student = form.oneOf("student", house.ids());
        String value = value(form, asked.get());
        List<LocalDate> days = days(form, asked.get());
        List<ChoiceMade> held = held(house.book(), asked.get().name());
        boolean changed = !Print.of(held).equals(form.raw("print"));
        if (!form.isFine() || changed) {
            return form(call, asked.get(), changed ? form.fill("print", Print.of(held)) : form, 422,
                    changed ? there(house, held, asked.get()) : List.of());
        }
        ChoiceMade made = new ChoiceMade(student, asked.get().name(), value, days, call.desk().now().toLocalDate());
        call.desk().edit("Your choice", book -> BookEdits.inYear(book, year, records -> BookEdits.choose(records, made)));
        return Answer.done("Saved for " + year + ": " + words(house, made, List.of(asked.get())), call.back("/family"));
    }

    private static String value(Form form, ChoiceAsked asked) {
        if (asked instanceof ChoiceAsked.OneOf one) {
            return form.mustOneOf("value", one.options().keySet(), "Choose what holds for you.");
        } else if (asked instanceof ChoiceAsked.NumberSet) {
            String number = form.must("value", "Type the number, for example 180.");
            if (number != null && !number.matches(NUMBER)) {
                form.complain("value", "“" + number + "” is no number. Type it like 180 or 17.5.");
            }
            return number;
        }
        return null;
    }

    private static List<LocalDate> days(Form form, ChoiceAsked asked) {
        List<LocalDate> days = new ArrayList<>();
        if (asked instanceof ChoiceAsked.Days || asked instanceof ChoiceAsked.DaySet) {
            for (int i = 1; i <= MOST_DAYS; i++) {
                LocalDate day = i == 1 ? form.mustDay("day-1", "Enter the day.") : form.day("day-" + i);
                if (day != null && !days.contains(day)) {
                    days.add(day);
                }
            }
        }
        return days.stream().sorted().toList();
    }

    private static List<String> there(Household house, List<ChoiceMade> held, ChoiceAsked asked) {
        return held.isEmpty() ? List.of("nothing") : held.stream().map(one -> words(house, one, List.of(asked))).toList();
    }

    private static Answer takeBack(Call call) throws Exception {
        Form form = call.form();
        String year = form.raw("year");
        String student = form.is("student") ? form.raw("student") : null;
        YearRecords records = call.desk().book().years().getOrDefault(year, YearRecords.empty(year));
        Optional<ChoiceMade> held = held(records, form.raw("choice"), form.raw("student"));
        if (held.isEmpty()) {
            return new Answer.Nothing();
        }
        if (!Print.ofHeld(held).equals(form.raw("print"))) {
            return Answer.done("Not taken out: the choice was changed elsewhere. It stands here as it is now.", "/family");
        }
        call.desk().edit("Your choice taken back", book -> BookEdits.inYear(book, year, one ->
                BookEdits.unchosen(one, form.raw("choice"), student)));
        return Answer.done("The choice is taken out.", "/family");
    }
}
