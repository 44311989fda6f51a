package org.hearthrule.checklist;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.SubjectItem;
import org.hearthrule.terms.Wording;

/** Says in plain words what shows that a requirement is met. */
final class EvidenceWords {

    private final Wording wording;
    private final Profile profile;
    private final ConditionWords conditions;

    EvidenceWords(Wording wording, Profile profile, Pathway pathway) {
        this.wording = wording;
        this.profile = profile;
        this.conditions = new ConditionWords(wording, profile, pathway);
    }

    String of(Evidence evidence) {
        if (evidence instanceof Evidence.AnyOf any) {
            return joined(any.parts(), "evidence.or");
        }
        if (evidence instanceof Evidence.AllOf all) {
            return joined(all.parts(), "evidence.and");
        }
        if (evidence instanceof Evidence.Option option) {
            String what = option.as() != null ? option.as() : of(option.part());
            String when = conditions.of(option.when());
            return when.isEmpty() ? what : wording.say("evidence.if", what, when);
        }
        if (evidence instanceof Evidence.Time time) {
            return time(time);
        }
        if (evidence instanceof Evidence.Subjects subjects) {
            return subjects(subjects);
        }
        if (evidence instanceof Evidence.Test test) {
            return test(test);
        }
        if (evidence instanceof Evidence.Evaluation evaluation) {
            return evaluation(evaluation);
        }
        return leaf(evidence);
    }

    private String joined(List<Evidence> parts, String with) {
        return String.join(wording.say(with), parts.stream().map(part -> {
            boolean nested = part instanceof Evidence.AnyOf || part instanceof Evidence.AllOf;
            return nested ? '(' + of(part) + ')' : of(part);
        }).toList());
    }

    private String leaf(Evidence evidence) {
        if (evidence instanceof Evidence.Filing filing) {
            return wording.say("evidence.filing", ConditionWords.slug(filing.paper()));
        }
        if (evidence instanceof Evidence.Approval approval) {
            return wording.say("evidence.approval", ConditionWords.slug(approval.paper()));
        }
        if (evidence instanceof Evidence.Document document) {
            return wording.say("evidence.document", ConditionWords.slug(document.kind()));
        }
        if (evidence instanceof Evidence.Log log) {
            return wording.count("evidence.log", log.entries(), period(log.per().name()));
        }
        if (evidence instanceof Evidence.Samples samples) {
            return wording.count(samples.perSubject() ? "evidence.samples-per-subject" : "evidence.samples",
                    samples.least());
        }
        if (evidence instanceof Evidence.Readings readings) {
            return wording.count("evidence.readings", readings.least());
        }
        if (evidence instanceof Evidence.Credential credential) {
            return wording.say("evidence.credential", ConditionWords.slug(credential.of()), slugs(credential.kinds()));
        }
        if (evidence instanceof Evidence.HealthPaper health) {
            return slugs(health.kinds());
        }
        if (evidence instanceof Evidence.Fact fact) {
            Profile.FactAsked asked = profile.facts().get(fact.name());
            return wording.say(fact.is() ? "if.fact.yes" : "if.fact.no",
                    asked == null ? ConditionWords.slug(fact.name()) : asked.question());
        }
        if (evidence instanceof Evidence.Visits visits) {
            return visits(visits);
        }
        return ((Evidence.Words) evidence).words();
    }

    private String slugs(List<String> slugs) {
        return wording.or(slugs.stream().map(ConditionWords::slug).toList());
    }

    private String period(String name) {
        return wording.say("period." + name.toLowerCase(Locale.ROOT));
    }

    private String time(Evidence.Time time) {
        List<String> amounts = new ArrayList<>();
        for (Map.Entry<String, BigDecimal> amount : time.amount().entrySet()) {
            String words = wording.say("evidence.time." + time.measure().slug(),
                    number(amount.getValue()));
            amounts.add(amount.getKey().isEmpty() ? words
                    : wording.say("evidence.time.level", words, ConditionWords.slug(amount.getKey())));
        }
        StringBuilder text = new StringBuilder(time.setBy() == null ? wording.and(amounts) : setBy(time));
        if (time.per() != null && time.over() == null) {
            text.append(' ').append(period(time.per().name()));
        }
        if (!time.of().isEmpty()) {
            text.append(wording.say("evidence.time.of", wording.and(time.of().stream().map(of -> of.equals("core")
                    ? wording.say("evidence.time.core") : ConditionWords.slug(of)).toList())));
        }
        if (time.at() != null) {
            text.append(wording.say("evidence.time.at", ConditionWords.slug(time.at())));
        }
        if (time.dayHours() != null) {
            text.append(wording.say("evidence.time.day-hours", number(time.dayHours())));
        }
        if (time.meanHours() != null) {
            text.append(wording.say("evidence.time.mean-hours", number(time.meanHours())));
        }
        if (time.over() != null) {
            text.append(wording.say("evidence.time.over", time.over().words()));
        }
        if (time.yardstick() == Evidence.Time.Yardstick.SUBSTANTIAL) {
            text.append(wording.say("evidence.time.substantial"));
        }
        if (time.yardstick() == Evidence.Time.Yardstick.PRORATED) {
            text.append(wording.say("evidence.time.prorated"));
        }
        return text.toString();
    }

    private String setBy(Evidence.Time time) {
        String measure = time.measure().slug();
        return time.amount().isEmpty() ? wording.say("evidence.time.set-by", measure, time.setBy().who())
                : wording.say("evidence.time.set-by.fallback", measure, time.setBy().who(), number(time.amount().get("")));
    }

    private static String number(BigDecimal number) {
        BigDecimal plain = number.stripTrailingZeros();
        return plain.scale() <= 0 ? Wording.number(plain.longValueExact()) : plain.toPlainString();
    }

    private String subjects(Evidence.Subjects subjects) {
        List<String> owed = subjects.items().stream().filter(item -> !item.may()).map(SubjectItem::name).toList();
        List<String> may = subjects.items().stream().filter(SubjectItem::may).map(SubjectItem::name).toList();
        String interval = subjects.interval().name().toLowerCase(Locale.ROOT).replace('_', '-');
        String span = subjects.span() == null ? "" : wording.say("evidence.subjects.span", subjects.span().words());
        if (owed.isEmpty()) {
            return wording.say("evidence.subjects.only-may", wording.and(may)) + span;
        }
        return wording.and(owed) + wording.say("evidence.subjects." + interval) + span
                + (may.isEmpty() ? "" : wording.say("evidence.subjects.may", wording.and(may)));
    }

    private String test(Evidence.Test test) {
        StringBuilder text = new StringBuilder(wording.say("evidence.test", ConditionWords.slug(test.method())));
        if (!test.list().isEmpty()) {
            text.append(wording.say("evidence.test.list", wording.or(test.list())));
        }
        if (!test.areas().isEmpty()) {
            text.append(wording.say("evidence.test.areas", wording.and(test.areas().stream()
                    .map(ConditionWords::slug).toList())));
        }
        text.append(people(test.givenBy(), test.notBy(), test.consent(), "evidence.given-by"));
        for (var threshold : test.thresholds()) {
            text.append(wording.say("evidence.test.score", conditions.threshold(threshold)));
        }
        return text.toString();
    }

    private String evaluation(Evidence.Evaluation evaluation) {
        StringBuilder text = new StringBuilder(ConditionWords.slug(evaluation.method()));
        text.append(people(evaluation.by(), evaluation.notBy(), evaluation.consent(), "evidence.by"));
        if (!evaluation.includes().isEmpty()) {
            text.append(wording.say("evidence.includes", wording.and(evaluation.includes().stream()
                    .map(ConditionWords::slug).toList())));
        }
        if (!evaluation.says().isEmpty()) {
            text.append(wording.say("evidence.says", slugs(evaluation.says())));
        }
        return text.toString();
    }

    /** Who may do it, who may not, and who must agree first; empty when anyone may. */
    String people(List<String> by, List<String> notBy, String consent, String key) {
        StringBuilder text = new StringBuilder();
        if (!by.isEmpty()) {
            text.append(wording.say(key, slugs(by)));
        }
        if (!notBy.isEmpty()) {
            text.append(wording.say("evidence.not-by", slugs(notBy)));
        }
        if (consent != null) {
            text.append(wording.say("evidence.consent", consent));
        }
        return text.toString();
    }

    private String visits(Evidence.Visits visits) {
        String stretch = visits.perDays() > 0 ? wording.count("evidence.visits.per-days", visits.perDays())
                : period(visits.per().name());
        String amount = wording.say(visits.hours() ? "evidence.time.hours" : "evidence.visits", number(visits.amount()));
        String text = wording.say("evidence.contact", amount, stretch, ConditionWords.slug(visits.by()));
        String mean = visits.monthly() ? wording.say("evidence.mean.month") : visits.mean() ? wording.say("evidence.mean") : "";
        String further = visits.further() == null ? "" : wording.say("evidence.further-child",
                number(visits.further().hours()), period(visits.further().per().name()));
        return text + mean + further + (visits.faceToFace() == 0 ? "" : wording.say("evidence.face-to-face", visits.faceToFace()));
    }
}
