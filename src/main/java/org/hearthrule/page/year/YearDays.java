package org.hearthrule.page.year;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords.Calendar;
import org.hearthrule.records.YearRecords.Stretch;

/** Puts the days of a year's calendar into a form, and reads them out of it. */
final class YearDays {

    static final int QUARTERS = 4;
    static final int TERMS = 3;
    private static final int MOST_CLOSED = 366;
    private static final int LONGEST = 8_000;
    private static final String TO = "(?i)\\s+(?:to|through|until)\\s+|\\s*[–—]\\s*";

    private final Form form;
    private final YearLabel label;

    private YearDays(Form form, YearLabel label) {
        this.form = form;
        this.label = label;
    }

    /** @return the form with what the book holds */
    static Form filled(Calendar calendar) {
        Form form = Form.empty().fill("first", calendar.firstDay()).fill("last", calendar.lastDay())
                .fill("school-first", calendar.schoolFirstDay()).fill("school-last", calendar.schoolLastDay())
                .fill("closed", closed(calendar.schoolClosed()));
        fill(form, "quarter", calendar.quarters());
        fill(form, "term", calendar.terms());
        return form;
    }

    private static void fill(Form form, String what, List<Stretch> stretches) {
        for (int number = 1; number <= stretches.size(); number++) {
            form.fill(what + '-' + number + "-from", stretches.get(number - 1).from())
                    .fill(what + '-' + number + "-to", stretches.get(number - 1).to());
        }
    }

    /** One line for each day; days in a row are one line. */
    private static String closed(List<LocalDate> days) {
        List<String> lines = new ArrayList<>();
        List<LocalDate> sorted = days.stream().sorted().distinct().toList();
        for (int from = 0; from < sorted.size();) {
            int to = from;
            while (to + 1 < sorted.size() && sorted.get(to + 1).equals(sorted.get(to).plusDays(1))) {
                to++;
            }
            lines.add(to == from ? YearWords.date(sorted.get(from))
                    : YearWords.date(sorted.get(from)) + " to " + YearWords.date(sorted.get(to)));
            from = to + 1;
        }
        return String.join("\n", lines);
    }

    /** @return the calendar; empty with complaints in the form when something must be put right */
    static Optional<Calendar> read(Form form, YearLabel label) {
        YearDays days = new YearDays(form, label);
        Calendar calendar = new Calendar(days.day("first"), days.day("last"), days.day("school-first"), days.day("school-last"),
                days.stretches("quarter", QUARTERS), days.stretches("term", TERMS), days.closed());
        days.order("first", "last", calendar.firstDay(), calendar.lastDay());
        days.order("school-first", "school-last", calendar.schoolFirstDay(), calendar.schoolLastDay());
        return form.isFine() ? Optional.of(calendar) : Optional.empty();
    }

    private LocalDate day(String name) {
        LocalDate day = form.day(name);
        if (day != null && !label.holds(day)) {
            form.complain(name, YearWords.say("year.days.outside", YearWords.date(day), YearPage.words(label),
                    YearWords.date(label.first()), YearWords.date(label.last())));
        }
        return day;
    }

    private void order(String first, String last, LocalDate from, LocalDate to) {
        if (from != null && to != null && to.isBefore(from)) {
            form.complain(last, YearWords.say("year.days.order", YearWords.date(to), YearWords.date(from)));
        }
    }

    /** Those filled in must come first, each whole, each after the one before. */
    private List<Stretch> stretches(String what, int most) {
        List<Stretch> found = new ArrayList<>();
        boolean gap = false;
        for (int number = 1; number <= most; number++) {
            String from = what + '-' + number + "-from";
            String to = what + '-' + number + "-to";
            LocalDate first = day(from);
            LocalDate last = day(to);
            if (!form.is(from) && !form.is(to)) {
                gap = true;
                continue;
            }
            if (gap) {
                form.complain(from, YearWords.say("year.days.gap"));
            }
            if (!form.is(from) || !form.is(to)) {
                form.complain(form.is(from) ? to : from, YearWords.say("year.days.half"));
            }
            order(from, to, first, last);
            Stretch before = found.isEmpty() ? null : found.get(found.size() - 1);
            if (first != null && before != null && before.to() != null && !first.isAfter(before.to())) {
                form.complain(from, YearWords.say("year.days.overlap", YearWords.date(before.to())));
            }
            found.add(new Stretch(first, last));
        }
        return List.copyOf(found);
    }

    private List<LocalDate> closed() {
        String text = form.text("closed", LONGEST);
        SortedSet<LocalDate> days = new TreeSet<>();
        for (String line : text == null ? List.<String>of() : text.lines().filter(one -> !one.isBlank()).toList()) {
            String[] ends = line.strip().split(TO, 2);
            LocalDate from = typed(ends[0]);
            LocalDate to = ends.length == 1 ? from : typed(ends[1]);
            if (from == null || to == null || to.isBefore(from)) {
                form.complain("closed", YearWords.say("year.days.closed", line.strip()));
            } else if (!label.holds(from) || !label.holds(to)) {
                form.complain("closed", YearWords.say("year.days.outside", line.strip(), YearPage.words(label),
                        YearWords.date(label.first()), YearWords.date(label.last())));
            } else {
                from.datesUntil(to.plusDays(1)).limit(MOST_CLOSED).forEach(days::add);
            }
        }
        return List.copyOf(days);
    }

    /** @return the day as any field of the page would read it, or null */
    private static LocalDate typed(String text) {
        return Form.of(Map.of("day", List.of(text))).day("day");
    }
}
