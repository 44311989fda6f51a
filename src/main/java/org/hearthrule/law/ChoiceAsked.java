package org.hearthrule.law;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a law leaves to the parent or to somebody else to settle, and a book notes among the choices of a school year.
 */
public sealed interface ChoiceAsked {

    /** @return the name under which it is noted */
    String name();

    /** One of several ways; {@code options} are plain words by what is noted. */
    record OneOf(String name, String question, Map<String, String> options) implements ChoiceAsked { }

    /** Days that the parent settles. */
    record Days(String name, String question) implements ChoiceAsked { }

    /** A day that somebody else sets. */
    record DaySet(String name, String who) implements ChoiceAsked { }

    /** A number of days, hours, weeks or months that somebody else sets. */
    record NumberSet(String name, String who, Evidence.Time.Measure measure) implements ChoiceAsked { }

    /** @return everything that a pathway leaves open, each name once, in the order of its file */
    static Collection<ChoiceAsked> of(Pathway pathway) {
        Map<String, ChoiceAsked> asked = new LinkedHashMap<>();
        for (Pathway.ChoiceOffered choice : pathway.choices().values()) {
            asked.put(choice.name(), choice.dates() ? new Days(choice.name(), choice.question())
                    : new OneOf(choice.name(), choice.question(), choice.options()));
        }
        for (Requirement duty : pathway.asks()) {
            for (Evidence.Time time : Evidence.leaves(duty.shows(), Evidence.Time.class)) {
                if (time.setBy() != null) {
                    asked.putIfAbsent(time.setBy().value(), new NumberSet(time.setBy().value(), time.setBy().who(), time.measure()));
                }
            }
            for (Due.SetBy set : daysSet(duty.due())) {
                asked.putIfAbsent(set.value(), new DaySet(set.value(), set.who()));
            }
        }
        return List.copyOf(asked.values());
    }

    private static List<Due.SetBy> daysSet(Due due) {
        if (due instanceof Due.SetBy set) {
            return List.of(set);
        } else if (due instanceof Due.Remarked remarked) {
            return daysSet(Arrays.asList(remarked.due(), remarked.opens(), remarked.advisory(), remarked.practice()));
        } else if (due instanceof Due.LaterOf later) {
            return daysSet(later.parts());
        } else if (due instanceof Due.EarlierOf earlier) {
            return daysSet(earlier.parts());
        } else if (due instanceof Due.Cases cases) {
            return daysSet(cases.cases().stream().map(Due.Case::due).toList());
        }
        return List.of();
    }

    private static List<Due.SetBy> daysSet(List<Due> parts) {
        return parts.stream().flatMap(part -> daysSet(part).stream()).toList();
    }
}
