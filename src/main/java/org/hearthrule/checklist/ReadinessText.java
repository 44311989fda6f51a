package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hearthrule.rules.Finding;
import org.hearthrule.terms.Wording;

/** Sets what lies ready for an evaluation as text. */
public final class ReadinessText {

    private static final int NAMES = 38;

    private final Wording wording;
    private final Style style;
    private final Readiness ready;
    private final Page page;

    private ReadinessText(Readiness ready, Wording wording, Style style) {
        this.wording = wording;
        this.style = style;
        this.ready = ready;
        this.page = new Page(style, wording);
    }

    /** @return the text, each line ended */
    public static String of(Readiness ready, Wording wording, Style style) {
        return new ReadinessText(ready, wording, style).write();
    }

    private String write() {
        page.line(style.bold(page.clean(wording.say("ready.title", ready.student(), wording.date(ready.asOf())))));
        if (ready.follows() == null) {
            return page.paragraph(0, wording.say("ready.no-pathway", ready.student())).toString();
        }
        page.paragraph(0, wording.say("ready.year", ready.follows().profile().name(), ready.follows().pathway().name(),
                wording.date(ready.first()), wording.date(ready.last())));
        page.blank().paragraph(0, wording.say("caution"));
        steps();
        subjects();
        items();
        tests();
        page.blank().paragraph(0, wording.say("caution.foot"));
        return page.toString();
    }

    private void steps() {
        page.blank().heading(wording.say("ready.steps", wording.date(ready.before()).toUpperCase(Locale.ROOT)));
        String when = wording.distance(ready.before(), ready.asOf());
        page.paragraph(0, ready.beforeWhat() == null ? wording.say("ready.until-year-end", when)
                : wording.say("ready.until", ready.beforeWhat(), when));
        if (ready.steps().isEmpty()) {
            page.paragraph(0, wording.say("ready.nothing-left"));
        }
        int number = 1;
        for (Readiness.Step step : ready.steps()) {
            String title = step.by() == null ? step.title()
                    : wording.say("ready.step.by", step.title(), wording.date(step.by()));
            String mark = number < 10 ? " " + number + "  " : number + "  ";
            page.hanging(0, mark, wording.say("ready.step", title, step.next(), step.found()));
            number++;
        }
    }

    private void subjects() {
        if (ready.subjects().isEmpty()) {
            return;
        }
        page.blank().heading(wording.say("ready.subjects"));
        List<String> ends = ready.thirds().stream().map(third -> wording.date(third.to())).toList();
        page.paragraph(0, wording.say("ready.subjects.thirds", ends.get(0), ends.get(1), ends.get(2)));
        page.blank().line(" ".repeat(NAMES) + style.dim(wording.say("ready.subjects.over")));
        page.line(" ".repeat(NAMES) + style.dim(row(wording.say("ready.subjects.days"), wording.say("ready.subjects.hours"),
                wording.say("ready.subjects.books"), List.of("1st", "2nd", "3rd"))));
        ready.subjects().forEach(this::subject);
        page.blank().paragraph(0, wording.say("ready.subjects.note"));
    }

    private void subject(Readiness.SubjectRow row) {
        String name = row.may() ? wording.say("ready.may-subject", row.name()) : row.name();
        List<String> lines = page.wrap(name, NAMES - 2);
        String undated = row.undated() == 0 ? "" : ' ' + wording.say("ready.undated", row.undated());
        String numbers = row(Integer.toString(row.days()), hours(row.minutes()), Integer.toString(row.books()),
                row.samples().stream().map(n -> n == 0 ? "-" : n.toString()).toList());
        page.line(lines.get(0) + " ".repeat(NAMES - Width.of(lines.get(0))) + numbers + undated);
        lines.subList(1, lines.size()).forEach(line -> page.line("  " + line));
    }

    private static String hours(int minutes) {
        int tenths = (minutes + 3) / 6;
        return tenths / 10 + "." + tenths % 10;
    }

    private static String row(String days, String hours, String books, List<String> thirds) {
        StringBuilder row = new StringBuilder(right(days, 5)).append(right(hours, 8)).append(right(books, 7)).append("  ");
        thirds.forEach(third -> row.append(right(third, 5)));
        return row.toString();
    }

    private static String right(String text, int columns) {
        return " ".repeat(Math.max(1, columns - text.length())) + text;
    }

    private void items() {
        if (ready.items().isEmpty()) {
            return;
        }
        page.blank().heading(wording.say("ready.portfolio"));
        for (Readiness.Item item : ready.items()) {
            String word = wording.say("ready.presence." + item.presence().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            page.hanging(0, mark(item.presence()) + ' ', wording.say("ready.item", item.name(), word, item.found()));
        }
    }

    private String mark(Readiness.Presence presence) {
        return switch (presence) {
            case THERE -> style.unicode() ? "◆" : "*";
            case SOME -> style.unicode() ? "◈" : "+";
            case MISSING -> style.unicode() ? "◇" : "o";
            case NOT_COUNTED -> style.unicode() ? "◌" : "?";
        };
    }

    private void tests() {
        page.blank().heading(wording.say("ready.tests"));
        if (ready.tests().isEmpty()) {
            page.paragraph(0, wording.say("ready.tests.none"));
        }
        for (Line line : ready.tests()) {
            Finding finding = line.finding();
            List<String> said = new ArrayList<>();
            said.add(wording.say("status." + finding.status().slug()) + '.');
            said.add(finding.why().isEmpty() ? "" : finding.why().get(0));
            if (finding.due() != null) {
                said.add(wording.say("ready.due", wording.date(finding.due())));
            }
            page.hanging(0, Shape.of(finding.status(), style.unicode()) + ' ',
                    wording.say("ready.test", finding.title(), String.join(" ", said)));
        }
        ready.evaluators().forEach(sentence -> page.hanging(2, "", sentence));
    }
}
