package org.hearthrule.checklist;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hearthrule.law.Due;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.Span;
import org.hearthrule.terms.EventKind;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** Says in plain words when something is due, fit for the middle of a sentence. */
final class DueWords {

    private final Wording wording;
    private final Pathway pathway;
    private final ConditionWords conditions;

    DueWords(Wording wording, Profile profile, Pathway pathway) {
        this.wording = wording;
        this.pathway = pathway;
        this.conditions = new ConditionWords(wording, profile, pathway);
    }

    /** @return a sentence: {@code Due by June 30.}, {@code If …: by June 30.}, or the law's own words where it names no day */
    String sentence(Due due) {
        String words = of(due);
        boolean ownWords = due instanceof Due.None || !words.isEmpty() && Character.isUpperCase(words.charAt(0));
        return ownWords || startsWithCase(due) ? Prose.ended(Prose.upperFirst(words)) : wording.say("law.asks.due", words);
    }

    private boolean startsWithCase(Due due) {
        if (due instanceof Due.Remarked remarked) {
            return startsWithCase(remarked.due());
        }
        return due instanceof Due.Cases cases && !conditions.of(cases.cases().get(0).when()).isEmpty();
    }

    String of(Due due) {
        if (due instanceof Due.None none) {
            return none.note() == null ? wording.say("due.none") : Prose.unended(none.note());
        }
        if (due instanceof Due.YearEnd) {
            return wording.say("due.year-end");
        }
        if (due instanceof Due.By by) {
            return wording.say("due.by", days(by.dates())) + of(by.year());
        }
        if (due instanceof Due.Window window) {
            return wording.say("due.window", wording.date(window.opens()), wording.date(window.closes()))
                    + of(window.year());
        }
        if (due instanceof Due.After after) {
            return after(after);
        }
        if (due instanceof Due.Before before) {
            return before(before);
        }
        if (due instanceof Due.At at) {
            return wording.say("due.at", at.event().words());
        }
        if (due instanceof Due.InPeriod period) {
            return inPeriod(period);
        }
        if (due instanceof Due.OnRequest request) {
            return request.span() == null ? wording.say("due.on-request")
                    : wording.say("due.on-request.within", span(request.span()));
        }
        if (due instanceof Due.SetBy set) {
            String own = wording.say("due.set-by", set.who());
            return set.fallback() == null ? own : own + wording.say("due.set-by.else", of(set.fallback()));
        }
        if (due instanceof Due.Chosen chosen) {
            return wording.count("due.chosen", chosen.times());
        }
        if (due instanceof Due.With with) {
            return wording.say("due.with", title(with.requirement()));
        }
        return joined(due);
    }

    private String joined(Due due) {
        if (due instanceof Due.LaterOf later) {
            return wording.say("due.later-of", String.join(wording.say("evidence.or"), all(later.parts())));
        }
        if (due instanceof Due.EarlierOf earlier) {
            return wording.say("due.earlier-of", String.join(wording.say("evidence.or"), all(earlier.parts())));
        }
        if (due instanceof Due.Cases cases) {
            List<String> parts = new ArrayList<>();
            for (Due.Case each : cases.cases()) {
                String when = conditions.of(each.when());
                if (!when.isEmpty()) {
                    parts.add(wording.say("due.case", when, of(each.due())));
                } else {
                    parts.add(parts.isEmpty() ? of(each.due()) : wording.say("due.case.else", of(each.due())));
                }
            }
            return String.join("; ", parts);
        }
        return remarked((Due.Remarked) due);
    }

    private String remarked(Due.Remarked remarked) {
        StringBuilder text = new StringBuilder(of(remarked.due()));
        if (remarked.opens() != null) {
            String opens = remarked.opens() instanceof Due.By by ? days(by.dates()) + of(by.year()) : earliest(remarked.opens());
            text.append(wording.say("due.opens", opens));
        }
        if (remarked.advisory() != null) {
            text.append(wording.say("due.advisory", of(remarked.advisory())));
        }
        if (remarked.practice() != null) {
            text.append(wording.say("due.practice", of(remarked.practice())));
        }
        return remarked.note() == null ? text.toString() : text.append(" (").append(Prose.unended(remarked.note())).append(')').toString();
    }

    private List<String> all(List<Due> parts) {
        return parts.stream().map(this::of).toList();
    }

    private String days(List<MonthDay> dates) {
        return wording.and(dates.stream().map(wording::date).toList());
    }

    private String of(Due.YearOf year) {
        return switch (year) {
            case THIS_YEAR -> "";
            case NEXT_YEAR -> wording.say("due.next-year");
            case PREVIOUS_YEAR -> wording.say("due.previous-year");
        };
    }

    private String after(Due.After after) {
        String event = event(after);
        String words = after.span().amount() == 0 ? wording.say("due.on", event)
                : wording.say("due.after", span(after.span()), event);
        if (after.paper() != null) {
            words += wording.say("due.after.paper", ConditionWords.slug(after.paper()));
        }
        if (after.around() != null) {
            words += wording.say("due.after.around", after.around().words());
        }
        return after.notBefore() == null ? words : words + wording.say("due.not-before", earliest(after.notBefore()));
    }

    /** A day from which something may be done, not one by which it must be. */
    private String earliest(Due due) {
        if (due instanceof Due.After after && after.span().amount() > 0) {
            return wording.say("due.earliest", span(after.span()), event(after));
        }
        return of(due);
    }

    private String event(Due.After after) {
        return after.event() != null ? after.event().words() : wording.say("due.birthday", after.age());
    }

    private String before(Due.Before before) {
        String event = before.event().words();
        if (before.span().amount() > 0) {
            return wording.say("due.before", span(before.span()), event);
        }
        return wording.say(before.strict() ? "due.before.strictly" : "due.before.or-on", event);
    }

    private String inPeriod(Due.InPeriod period) {
        String stretch = period.every() == 1 ? wording.say("period." + period.of().name().toLowerCase(Locale.ROOT))
                : wording.say("due.every-years", period.every());
        String words = wording.count("due.times", period.least(), stretch);
        return period.most() == null ? words : words + wording.say("due.most", period.most());
    }

    String span(Span span) {
        return wording.count("span." + span.unit().name().toLowerCase(Locale.ROOT).replace('_', '-'), span.amount());
    }

    private String title(String requirement) {
        return pathway.asks().stream().filter(r -> r.id().equals(requirement) || r.localId().equals(requirement))
                .map(Requirement::title).findFirst().orElse(requirement);
    }

    /** @return the events in plain words, joined with "or" */
    static String events(Wording wording, List<EventKind> kinds) {
        return wording.or(kinds.stream().map(EventKind::words).toList());
    }
}
