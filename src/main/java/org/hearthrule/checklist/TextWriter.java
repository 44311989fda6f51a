package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hearthrule.rules.Finding;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** Sets a checklist as text for a terminal: the date in a column of its own, what is to be known beside it. */
public final class TextWriter {

    private final Wording wording;
    private final Style style;
    private final LineWords words;
    private final Checklist checklist;
    private final TextPage page;

    private TextWriter(Checklist checklist, Wording wording, Style style) {
        this.wording = wording;
        this.style = style;
        this.words = new LineWords(checklist, wording);
        this.checklist = checklist;
        this.page = new TextPage(style, wording);
    }

    /**
     * @param all also what is not due and what the law does not ask
     * @return the checklist, each line ended
     */
    public static String write(Checklist checklist, boolean all, Wording wording, Style style) {
        return new TextWriter(checklist, wording, style).write(all);
    }

    private String write(boolean all) {
        head();
        for (Section section : Section.values()) {
            List<Line> lines = checklist.lines(section).stream().filter(line -> all || !longDone(line)).toList();
            if (!lines.isEmpty() && (all || !section.onlyOnRequest())) {
                // a terminal has no other weight than capitals
                page.blank().heading(words.heading(section).toUpperCase(Locale.ROOT));
                LineGroup.of(lines).forEach(this::entry);
            }
        }
        foot(all);
        return page.toString();
    }

    /** What was done more than a year ago is told only on request. */
    private boolean longDone(Line line) {
        return line.section() == Section.DONE && line.finding().due() != null
                && line.finding().due().isBefore(checklist.asOf().minusYears(1));
    }

    private void head() {
        page.line(style.bold(page.clean(wording.say("checklist.title", wording.date(checklist.asOf())))));
        if (checklist.family() != null) {
            page.paragraph(0, checklist.family());
        }
        for (Checklist.Follows follows : checklist.follows()) {
            page.paragraph(2, wording.say("checklist.follows", follows.name(), follows.profile().name(),
                    Prose.lowerFirst(follows.pathway().name())));
            LawGuide.notInForce(follows.pathway(), checklist.asOf(), wording).ifPresent(said -> page.paragraph(2, said));
        }
        for (Checklist.Followed followed : checklist.followed()) {
            page.paragraph(2, wording.say("checklist.followed", followed.name(), followed.profile().name(),
                    Prose.lowerFirst(followed.pathway().name()), wording.date(followed.until())));
        }
        page.blank().paragraph(0, wording.say("caution")).blank();
        page.paragraph(0, words.summary());
    }

    private void entry(LineGroup group) {
        Line line = group.line();
        Finding finding = line.finding();
        boolean late = line.section() == Section.LATE;
        List<String> datesPlain = new ArrayList<>();
        List<String> dates = new ArrayList<>();
        String day = words.day(finding);
        datesPlain.add(day);
        dates.add(late ? style.accent(day) : style.bold(day));
        if (finding.due() != null && line.section() != Section.DONE) {
            String distance = wording.distance(finding.due(), checklist.asOf());
            datesPlain.add(distance);
            dates.add(distance);
        }
        page.blank().beside(dates, datesPlain, right(group, late));
    }

    private List<String> right(LineGroup group, boolean late) {
        Line line = group.line();
        Finding finding = line.finding();
        int columns = style.columns() - TextPage.DATES;
        List<String> right = new ArrayList<>();
        page.wrap(words.title(group), columns).forEach(text -> right.add(style.bold(text)));
        String word = Shape.of(finding.status(), style.unicode()) + ' ' + words.status(line) + '.';
        List<String> found = page.wrap(word + ' ' + words.found(line), columns);
        right.add((late ? style.accent(word) : style.bold(word)) + found.get(0).substring(word.length()));
        right.addAll(found.subList(1, found.size()));
        if (finding.next() != null) {
            right.addAll(page.wrap(wording.say("line.next", Prose.ended(finding.next())), columns));
        }
        String ids = String.join(", ", group.ids().stream().map(words::shortId).toList());
        if (line.section() == Section.DONE) {
            page.wrap(words.source(line) + ' ' + ids, columns).forEach(text -> right.add(style.dim(text)));
        } else {
            page.wrap(words.source(line), columns).forEach(text -> right.add(style.dim(text)));
            page.wrap(ids, columns).forEach(text -> right.add(style.dim(text)));
        }
        return right;
    }

    private void foot(boolean all) {
        page.blank().line(style.dim((style.unicode() ? "─" : "-").repeat(style.columns())));
        long hidden = checklist.lines().stream().filter(line -> line.section().onlyOnRequest() || longDone(line)).count();
        if (hidden > 0 && !all) {
            page.paragraph(0, wording.count("checklist.more", hidden));
        }
        if (!checklist.lines().isEmpty()) {
            page.paragraph(0, wording.say(checklist.family() == null ? "checklist.explain.no-book" : "checklist.explain"));
        }
        page.paragraph(0, wording.say("caution.foot"));
    }
}
