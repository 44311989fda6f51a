package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hearthrule.law.Condition;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Span;
import org.hearthrule.law.Threshold;
import org.hearthrule.terms.Wording;

/** Says in plain words when a rule applies, fit to follow "if". */
final class ConditionWords {

    private final Wording wording;
    private final Profile profile;
    private final Pathway pathway;

    ConditionWords(Wording wording, Profile profile, Pathway pathway) {
        this.wording = wording;
        this.profile = profile;
        this.pathway = pathway;
    }

    /** @return the words, empty when the rule always applies */
    String of(Condition condition) {
        return of(condition, true);
    }

    private String of(Condition condition, boolean is) {
        if (condition instanceof Condition.Not not) {
            return of(not.part(), !is);
        }
        if (condition instanceof Condition.All all) {
            return joined(all.parts(), is, is);
        }
        if (condition instanceof Condition.Any any) {
            return joined(any.parts(), is, !is);
        }
        if (!is && condition instanceof Condition.Attribute attribute) {
            return plain(new Condition.Attribute(attribute.fact(), !attribute.is()));
        }
        if (!is && condition instanceof Condition.Event event) {
            return event(event, false);
        }
        if (!is && condition instanceof Condition.Grade grade) {
            return wording.say("if.grades.not", grade.grades().words());
        }
        if (!is && condition instanceof Condition.YearOfProgram year && isFirst(year)) {
            return wording.say("if.year.first.not");
        }
        String words = plain(condition);
        return is ? words : wording.say("if.not", words);
    }

    /** "Not both" reads as "not one or not the other". */
    private String joined(List<Condition> parts, boolean is, boolean all) {
        List<String> words = new ArrayList<>();
        for (Condition part : parts) {
            String each = of(part, is);
            boolean nested = parts.size() > 1 && (part instanceof Condition.All || part instanceof Condition.Any);
            if (!each.isEmpty()) {
                words.add(nested ? '(' + each + ')' : each);
            }
        }
        return String.join(wording.say(all ? "if.and" : "if.or"), words);
    }

    private String plain(Condition condition) {
        if (condition instanceof Condition.Age age) {
            return age(age);
        }
        if (condition instanceof Condition.Grade grade) {
            return wording.say(grade.grades().numbers().size() == 1 ? "if.grade" : "if.grades", grade.grades().words());
        }
        if (condition instanceof Condition.YearOfProgram year) {
            return year(year);
        }
        if (condition instanceof Condition.Event event) {
            return event(event, true);
        }
        if (condition instanceof Condition.CameFrom from) {
            String kinds = wording.or(from.kinds().stream().map(ConditionWords::slug).toList());
            String where = from.inState() == null ? ""
                    : wording.say(from.inState() ? "if.came-from.here" : "if.came-from.elsewhere");
            String within = from.within() == null ? "" : wording.say("if.came-from.within", span(from.within()));
            return wording.say("if.came-from", kinds) + where + within;
        }
        if (condition instanceof Condition.Choice choice) {
            return choice(choice);
        }
        if (condition instanceof Condition.History history) {
            if (history.yearsAgo() == 0) {
                return wording.say(history.was().equals("met") ? "if.history.now" : "if.history.now.missing",
                        title(history.requirement()));
            }
            String was = history.was().equals("owed") ? wording.say("if.history.owed") : slug(history.was());
            return wording.say(history.yearsAgo() == 1 ? "if.history.last" : "if.history", title(history.requirement()),
                    was, history.yearsAgo());
        }
        if (condition instanceof Condition.Result result) {
            return wording.say("if.result", title(result.requirement()), threshold(result.threshold()),
                    resultYear(result.yearsAgo(), result.orEarlier()));
        }
        if (condition instanceof Condition.Outcome outcome) {
            return wording.say("if.outcome", title(outcome.requirement()),
                    wording.or(outcome.says().stream().map(ConditionWords::slug).toList()),
                    resultYear(outcome.yearsAgo(), outcome.orEarlier()));
        }
        if (condition instanceof Condition.Attribute attribute) {
            Profile.FactAsked asked = profile.facts().get(attribute.fact());
            return wording.say(attribute.is() ? "if.fact.yes" : "if.fact.no",
                    asked == null ? slug(attribute.fact()) : asked.question());
        }
        if (condition instanceof Condition.Place place) {
            return wording.say("if.place", wording.or(place.names()));
        }
        if (condition instanceof Condition.Asked asked) {
            return wording.say("if.asked", slug(asked.by()));
        }
        return wording.say("if.opt-in", slug(((Condition.OptIn) condition).program()));
    }

    private String resultYear(int yearsAgo, boolean orEarlier) {
        String when = yearsAgo == 0 ? wording.say("if.result.now") : wording.count("if.result.ago", yearsAgo);
        return orEarlier ? when + wording.say("if.result.or-earlier") : when;
    }

    private String age(Condition.Age age) {
        String day = switch (age.on().anchor()) {
            case THAT_DAY -> "";
            case YEAR_START -> wording.say("if.age.year-start");
            case YEAR_END -> wording.say("if.age.year-end");
            case ON -> wording.say("if.age.on", wording.date(age.on().date()));
            case BEFORE -> wording.say("if.age.before", wording.date(age.on().date()));
        };
        if (age.atLeast() != null && age.below() != null) {
            return wording.say("if.age.between", age.atLeast(), age.below()) + day;
        }
        return (age.atLeast() != null ? wording.say("if.age.at-least", age.atLeast())
                : wording.say("if.age.below", age.below())) + day;
    }

    private static boolean isFirst(Condition.YearOfProgram year) {
        return year.atLeast() == 1 && year.atMost() != null && year.atMost() == 1 && year.every() == 1;
    }

    private String year(Condition.YearOfProgram year) {
        if (isFirst(year)) {
            return wording.say("if.year.first");
        }
        if (year.every() > 1) {
            return wording.say("if.year.every", year.every(), year.atLeast());
        }
        if (year.atMost() == null) {
            return wording.say("if.year.from", year.atLeast());
        }
        return year.atMost() == year.atLeast()
                ? wording.say("if.year.only", year.atLeast())
                : wording.say("if.year.between", year.atLeast(), year.atMost());
    }

    private String event(Condition.Event event, boolean is) {
        String not = is ? "" : ".not";
        String words = event.kind().words();
        if (event.order() == null) {
            words = wording.say("if.event" + not, words);
        } else {
            String other = event.date() != null ? wording.date(event.date()) : event.other().words();
            String order = event.order().name().toLowerCase(Locale.ROOT).replace('_', '-');
            words = wording.say("if.event." + order + not, words, other);
        }
        words = event.ago() == null ? words : words + wording.say("if.event.ago", span(event.ago()));
        return event.within() == null ? words : words + wording.say("if.event.within", span(event.within()));
    }

    private String choice(Condition.Choice choice) {
        Pathway.ChoiceOffered offered = pathway.choices().get(choice.name());
        Map<String, String> options = offered == null ? Map.of() : offered.options();
        return wording.say("if.choice",
                wording.or(choice.values().stream().map(value -> options.getOrDefault(value, slug(value))).toList()));
    }

    /** For example {@code above 33 (percentile; composite)}. */
    String threshold(Threshold threshold) {
        String areas = threshold.areas().isEmpty() ? "" : "; " + wording.and(threshold.areas().stream()
                .map(ConditionWords::slug).toList());
        String bound = threshold.againstTestBefore() ? wording.say("if.result.test-before")
                : threshold.number().toPlainString();
        return threshold.comparison().words() + ' ' + bound + " (" + slug(threshold.measure()) + areas + ')';
    }

    private String title(String requirement) {
        return pathway.asks().stream().filter(r -> r.id().equals(requirement) || r.localId().equals(requirement))
                .map(r -> r.title()).findFirst().orElse(slug(requirement));
    }

    private String span(Span span) {
        return new DueWords(wording, profile, pathway).span(span);
    }

    /** {@code home-program} as words. */
    static String slug(String slug) {
        return slug.substring(slug.lastIndexOf('/') + 1).replace('-', ' ');
    }
}
