package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.hearthrule.checklist.Sheet.Column;
import org.hearthrule.checklist.Sheet.Span;
import org.hearthrule.rules.Finding;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Wording;

/** What lies ready for an evaluation: what is left to do, subject by subject, item by item. */
public final class ReadinessSheet {

    private static final int NAMES = 38;

    private final Wording wording;
    private final Readiness ready;
    private final Predicate<String> isThere;
    private final SheetBuilder sheet = new SheetBuilder();

    private ReadinessSheet(Readiness ready, Wording wording, Predicate<String> isThere) {
        this.ready = ready;
        this.isThere = isThere;
        this.wording = wording;
    }

    public static Sheet of(Readiness ready, Wording wording) {
        return new ReadinessSheet(ready, wording, path -> true).write();
    }

    /**
     * @param isThere whether the book holds the file of a path
     * @return the portfolio, item by item, without its heading; nothing when the law names no items
     */
    public static Sheet items(Readiness ready, Wording wording, Predicate<String> isThere) {
        ReadinessSheet one = new ReadinessSheet(ready, wording, isThere);
        one.itemList();
        return one.sheet.sheet("");
    }

    /**
     * @param isThere whether the book holds the file of a path
     * @return tests, evaluations and who may make them, without their heading
     */
    public static Sheet tests(Readiness ready, Wording wording, Predicate<String> isThere) {
        ReadinessSheet one = new ReadinessSheet(ready, wording, isThere);
        one.testList();
        return one.sheet.sheet("");
    }

    private Sheet write() {
        String title = wording.say("ready.title", ready.student(), wording.date(ready.asOf()));
        if (ready.follows() == null) {
            return sheet.say(wording.say("ready.no-pathway", ready.student())).sheet(title);
        }
        sheet.say(wording.say("ready.year", ready.follows().profile().name(), ready.follows().pathway().name(),
                wording.date(ready.first()), wording.date(ready.last())));
        sheet.apart().caution(wording.say("caution"));
        steps();
        subjects();
        items();
        tests();
        sheet.foot().say(wording.say("caution.foot"));
        return sheet.sheet(title);
    }

    private void steps() {
        sheet.heading(wording.say("ready.steps", wording.date(ready.before())));
        String when = wording.distance(ready.before(), ready.asOf());
        sheet.say(ready.beforeWhat() == null ? wording.say("ready.until-year-end", when)
                : wording.say("ready.until", ready.beforeWhat(), when));
        if (ready.steps().isEmpty()) {
            sheet.say(wording.say("ready.nothing-left"));
        }
        for (Readiness.Step step : ready.steps()) {
            String title = step.by() == null ? step.title()
                    : wording.say("ready.step.by", step.title(), wording.date(step.by()));
            sheet.item(Sheet.Plain.NUMBER, wording.say("ready.step", title, step.next(), step.found()));
        }
    }

    private void subjects() {
        if (ready.subjects().isEmpty()) {
            return;
        }
        sheet.heading(wording.say("ready.subjects"));
        List<String> ends = ready.thirds().stream().map(third -> wording.date(third.to())).toList();
        sheet.say(wording.say("ready.subjects.thirds", ends.get(0), ends.get(1), ends.get(2)));
        sheet.add(new Sheet.Table(wording.say("ready.subjects"), columns(), ready.subjects().stream().map(this::row).toList(), false));
        sheet.say(wording.say("ready.subjects.note"));
    }

    private List<Column> columns() {
        String samples = wording.say("ready.subjects.over");
        return List.of(new Column("", "", NAMES, Column.Align.WRAPPED), number("days", 5), number("hours", 8), number("books", 7),
                new Column("1st", samples, 7, Column.Align.RIGHT), new Column("2nd", samples, 5, Column.Align.RIGHT),
                new Column("3rd", samples, 5, Column.Align.RIGHT), new Column("", "", 0, Column.Align.RIGHT));
    }

    private Column number(String key, int width) {
        return new Column(wording.say("ready.subjects." + key), "", width, Column.Align.RIGHT);
    }

    private List<Span> row(Readiness.SubjectRow row) {
        List<String> cells = new ArrayList<>(List.of(row.may() ? wording.say("ready.may-subject", row.name()) : row.name(),
                Integer.toString(row.days()), hours(row.minutes()), Integer.toString(row.books().size())));
        row.counts().forEach(n -> cells.add(n == 0 ? "-" : n.toString()));
        cells.add(row.undated().isEmpty() ? "" : wording.say("ready.undated", row.undated().size()));
        return cells.stream().<Span>map(Sheet.Text::new).toList();
    }

    /** @return hours with one decimal, for example {@code 79.8} */
    public static String hours(int minutes) {
        int tenths = (minutes + 3) / 6;
        return tenths / 10 + "." + tenths % 10;
    }

    private void items() {
        if (ready.items().isEmpty()) {
            return;
        }
        sheet.heading(wording.say("ready.portfolio"));
        itemList();
    }

    private void itemList() {
        for (Readiness.Item item : ready.items()) {
            String word = wording.say("ready.presence." + item.presence().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            sheet.item(over(item.scans(), Sheet.Item.of(tile(item.presence()),
                    wording.say("ready.item", item.name(), word, item.found()))));
        }
    }

    private static Sheet.Tile tile(Readiness.Presence presence) {
        return new Sheet.Tile(switch (presence) {
            case THERE -> Status.MET;
            case SOME -> Status.THIN;
            case MISSING -> Status.OPEN;
            case NOT_COUNTED -> Status.UNCLEAR;
        });
    }

    private void tests() {
        sheet.heading(wording.say("ready.tests"));
        testList();
    }

    private void testList() {
        if (ready.tests().isEmpty()) {
            sheet.say(wording.say("ready.tests.none"));
        }
        for (Readiness.Assessment test : ready.tests()) {
            Finding finding = test.line().finding();
            List<String> said = new ArrayList<>();
            said.add(wording.say("status." + finding.status().slug()) + '.');
            said.add(finding.why().isEmpty() ? "" : finding.why().get(0));
            if (finding.due() != null) {
                said.add(wording.say("ready.due", wording.date(finding.due())));
            }
            sheet.item(over(test.scans(), Sheet.Item.of(new Sheet.Tile(finding.status()),
                    wording.say("ready.test", finding.title(), String.join(" ", said)))));
        }
        ready.evaluators().forEach(sentence -> sheet.item(Sheet.Plain.NONE, sentence));
    }

    private Sheet.Item over(List<Readiness.Scan> scans, Sheet.Item item) {
        List<Span> small = new ArrayList<>();
        for (Readiness.Scan scan : scans) {
            if (!small.isEmpty()) {
                small.add(new Sheet.Text("; "));
            }
            small.add(isThere.test(scan.path()) ? new Sheet.See(wording.say("ready.scan.typed", scan.of(), scan.path()),
                    new Sheet.Link(wording.say("ready.scan", scan.of()), new Sheet.Reference.File(scan.path())))
                    : new Sheet.Text(wording.say("ready.scan.missing", scan.of(), scan.path())));
        }
        return item.over(small);
    }
}
