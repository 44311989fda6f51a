package org.hearthrule.checklist;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hearthrule.checklist.Readiness.Item;
import org.hearthrule.checklist.Readiness.Presence;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Period;
import org.hearthrule.records.YearRecords;
import org.hearthrule.terms.Wording;

/** Looks for each thing a portfolio holds, and says how much of it is there. Nothing is judged. */
final class PortfolioItems {

    private final Wording wording;
    private final EvidenceWords words;
    private final StudentYear year;
    private final LocalDate asOf;
    private final Scans scans;

    PortfolioItems(Wording wording, EvidenceWords words, StudentYear year, LocalDate asOf) {
        this.wording = wording;
        this.words = words;
        this.year = year;
        this.asOf = asOf;
        this.scans = new Scans(wording);
    }

    /** @return the leaves of a piece of evidence, in order, each under its own name */
    List<Item> of(Evidence evidence) {
        List<Item> items = new ArrayList<>();
        add(evidence, null, items);
        return items;
    }

    private void add(Evidence evidence, String name, List<Item> items) {
        if (evidence instanceof Evidence.AllOf all) {
            all.parts().forEach(part -> add(part, name, items));
        } else if (evidence instanceof Evidence.AnyOf any) {
            any.parts().forEach(part -> add(part, name, items));
        } else if (evidence instanceof Evidence.Option option) {
            add(option.part(), option.as() != null ? option.as() : name, items);
        } else {
            items.add(item(evidence, name != null ? name : words.of(evidence)));
        }
    }

    private Item item(Evidence leaf, String name) {
        if (leaf instanceof Evidence.Log log) {
            return log(log, name);
        }
        if (leaf instanceof Evidence.Samples samples) {
            String undated = year.undated.isEmpty() ? ""
                    : ' ' + wording.count("ready.samples.undated", year.undated.size());
            return new Item(name, presence(year.samples.size(), samples.least()),
                    wording.count("ready.samples", year.samples.size()) + undated);
        }
        if (leaf instanceof Evidence.Readings readings) {
            return new Item(name, presence(year.readings.size(), readings.least()),
                    wording.count("ready.readings", year.readings.size()));
        }
        if (leaf instanceof Evidence.Document document) {
            return found(name, year.ofFile(YearRecords::documents).stream()
                    .filter(kept -> kept.kind().equals(document.kind()) && concerns(kept.students()))
                    .map(kept -> kept.date() == null ? "" : wording.date(kept.date())).toList(), List.of());
        }
        if (leaf instanceof Evidence.Test test) {
            List<YearRecords.TestTaken> taken = year.ofFile(YearRecords::tests).stream()
                    .filter(one -> one.student().equals(year.student()) && one.method().equals(test.method())).toList();
            return found(name, taken.stream().map(scans::words).toList(), scans.of(taken));
        }
        if (leaf instanceof Evidence.Evaluation evaluation) {
            List<YearRecords.Evaluation> made = year.ofFile(YearRecords::evaluations).stream()
                    .filter(one -> one.student().equals(year.student()) && one.method().equals(evaluation.method()))
                    .toList();
            return found(name, made.stream().map(scans::words).toList(), scans.of(made));
        }
        return new Item(name, Presence.NOT_COUNTED, wording.say("ready.not-counted"));
    }

    private boolean concerns(List<String> students) {
        return students.isEmpty() || students.contains(year.student());
    }

    private Item found(String name, List<String> found, List<Readiness.Scan> scans) {
        return found.isEmpty() ? new Item(name, Presence.MISSING, wording.say("ready.none"))
                : new Item(name, Presence.THERE, wording.say("ready.found", String.join("; ", found)), scans);
    }

    private static Presence presence(int found, int least) {
        return found == 0 ? Presence.MISSING : found < least ? Presence.SOME : Presence.THERE;
    }

    /** Counts entries, and for a log kept by the month the months without one. */
    private Item log(Evidence.Log log, String name) {
        int entries = year.log.size();
        String text = wording.count("ready.log", entries);
        if (log.per() != Period.MONTH || entries == 0) {
            return new Item(name, presence(entries, log.entries()), text);
        }
        Set<YearMonth> with = year.log.stream().map(entry -> YearMonth.from(entry.date())).collect(Collectors.toSet());
        LocalDate from = year.log.stream().map(YearRecords.LogEntry::date).min(LocalDate::compareTo).orElse(year.first);
        LocalDate to = asOf.isBefore(year.last) ? asOf : year.last;
        int months = 0;
        for (YearMonth month = YearMonth.from(from); !month.isAfter(YearMonth.from(to)); month = month.plusMonths(1)) {
            months++;
        }
        Presence presence = with.size() < months ? Presence.SOME : Presence.THERE;
        return new Item(name, presence, text + ' ' + wording.say("ready.log.months", with.size(), months));
    }
}
