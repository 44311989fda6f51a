package org.hearthrule.page.frame;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hearthrule.input.Unseen;

/**
 * What was typed into a form, and what must be put right. Reading a value that is wrong records one complaint beside
 * its field, in words that say what to type; all fields are read before anything is told, so that all complaints come
 * at once. Confined to one call.
 */
public final class Form {

    private static final int LONGEST_LINE = 200;

    private final Map<String, List<String>> values;
    private final Map<String, String> complaints = new LinkedHashMap<>();

    private Form(Map<String, List<String>> values) {
        this.values = new LinkedHashMap<>(values);
    }

    /** @return a form nothing was typed into yet */
    public static Form empty() {
        return new Form(Map.of());
    }

    public static Form of(Map<String, List<String>> values) {
        return new Form(values);
    }

    /** Puts something into a field beforehand; null or nothing leaves it empty. */
    public Form fill(String name, Object value) {
        if (value != null) {
            values.put(name, List.of(value.toString()));
        }
        return this;
    }

    /** Ticks answers beforehand. */
    public Form tick(String name, Collection<String> answers) {
        values.put(name, List.copyOf(answers));
        return this;
    }

    /** @return a field to be set by a template */
    public Field field(String name, String label) {
        return Field.of(name, label, values.getOrDefault(name, List.of()), complaints.get(name));
    }

    /** @return what was typed, without spaces at its ends; never null */
    public String raw(String name) {
        List<String> all = values.getOrDefault(name, List.of());
        return all.isEmpty() ? "" : all.get(0).strip();
    }

    /** @return everything that was sent under a name */
    public List<String> all(String name) {
        return List.copyOf(values.getOrDefault(name, List.of()));
    }

    /** @return whether a box was ticked or a button pressed */
    public boolean is(String name) {
        return !raw(name).isEmpty();
    }

    /** @return a line of text, or null when nothing was typed */
    public String text(String name) {
        return text(name, LONGEST_LINE);
    }

    /** @return a text, or null when nothing was typed; new lines are kept */
    public String text(String name, int longest) {
        String text = raw(name).replace("\r\n", "\n");
        if (text.length() > longest) {
            complain(name, "This is longer than " + longest + " characters. Shorten it a little.");
            return null;
        }
        if (text.codePoints().anyMatch(c -> c != '\n' && c != '\t' && Unseen.is(c))) {
            complain(name, "This holds a character that cannot be seen. Type it anew instead of pasting it.");
            return null;
        }
        return text.isEmpty() ? null : text;
    }

    /** @return a line of text; null with a complaint when nothing was typed */
    public String must(String name, String whatToType) {
        String text = text(name);
        if (text == null && !complaints.containsKey(name)) {
            complain(name, whatToType);
        }
        return text;
    }

    /** @return a day; null when nothing was entered, and with a complaint when it is none */
    public LocalDate day(String name) {
        String typed = raw(name);
        if (typed.isEmpty()) {
            return null;
        }
        Optional<LocalDate> day = TypedDay.of(typed);
        if (day.isEmpty()) {
            complain(name, "“" + typed + "” is no day of the calendar. Type it like 2026-05-14 or May 14, 2026.");
        }
        return day.orElse(null);
    }

    /** @return a day; null with a complaint when there is none */
    public LocalDate mustDay(String name, String whatToType) {
        LocalDate day = day(name);
        if (day == null && !complaints.containsKey(name)) {
            complain(name, whatToType);
        }
        return day;
    }

    /** @return a whole number; empty when nothing was typed, and with a complaint when it is none or out of range */
    public OptionalInt number(String name, int least, int most) {
        String typed = raw(name).replace(",", "");
        if (typed.isEmpty()) {
            return OptionalInt.empty();
        }
        boolean digits = typed.length() < 8 && typed.chars().allMatch(c -> c >= '0' && c <= '9');
        int number = digits ? Integer.parseInt(typed) : -1;
        if (!digits || number < least || number > most) {
            complain(name, "“" + raw(name) + "” will not do here. Type a whole number from " + least + " to " + most + ".");
            return OptionalInt.empty();
        }
        return OptionalInt.of(number);
    }

    /** @return one of a few answers; null when none was chosen, and with a complaint when it is another */
    public String oneOf(String name, Collection<String> answers) {
        String chosen = raw(name);
        if (chosen.isEmpty()) {
            return null;
        }
        if (!answers.contains(chosen)) {
            complain(name, "Choose one of those offered.");
            return null;
        }
        return chosen;
    }

    /** @return one of a few answers; null with a complaint when none was chosen */
    public String mustOneOf(String name, Collection<String> answers, String whatToChoose) {
        String chosen = oneOf(name, answers);
        if (chosen == null && !complaints.containsKey(name)) {
            complain(name, whatToChoose);
        }
        return chosen;
    }

    /** @return the answers ticked, each once, in the order sent; one that was not offered is a complaint */
    public List<String> ticked(String name, Collection<String> answers) {
        List<String> ticked = new ArrayList<>();
        for (String value : values.getOrDefault(name, List.of())) {
            if (!value.isBlank() && !answers.contains(value)) {
                complain(name, "Choose of those offered.");
            } else if (!value.isBlank() && !ticked.contains(value)) {
                ticked.add(value);
            }
        }
        return List.copyOf(ticked);
    }

    /** @return the answers ticked; a complaint when there is none */
    public List<String> mustTick(String name, Collection<String> answers, String whatToTick) {
        List<String> ticked = ticked(name, answers);
        if (ticked.isEmpty() && !complaints.containsKey(name)) {
            complain(name, whatToTick);
        }
        return ticked;
    }

    /** Says what is wrong with a field; the first word on a field stays. */
    public void complain(String name, String words) {
        complaints.putIfAbsent(name, words);
    }

    /** @return whether nothing has to be put right */
    public boolean isFine() {
        return complaints.isEmpty();
    }

    /** @return names of the fields with a complaint, in the order found */
    public List<String> wrong() {
        return List.copyOf(complaints.keySet());
    }

    public String complaint(String name) {
        return complaints.get(name);
    }
}
