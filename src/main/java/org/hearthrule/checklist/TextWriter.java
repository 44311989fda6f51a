package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hearthrule.rules.Finding;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** Sets a checklist as text for a terminal: the date in a column of its own, what is to be known beside it. */
public final class TextWriter {

    private final Wording wording;
    private final Style style;
    private final Sources sources;
    private final Checklist checklist;
    private final FirstNames firstNames;
    private final TextPage page;
    private final String onlyPathway;

    private TextWriter(Checklist checklist, Wording wording, Style style) {
        this.wording = wording;
        this.style = style;
        this.sources = new Sources(wording);
        this.checklist = checklist;
        this.firstNames = FirstNames.of(checklist);
        this.page = new TextPage(style, wording);
        List<String> pathways = Stream.concat(checklist.follows().stream().map(follows -> follows.pathway().id() + '/'),
                checklist.followed().stream().map(followed -> followed.pathway().id() + '/')).distinct().toList();
        this.onlyPathway = pathways.size() == 1 ? pathways.get(0) : null;
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
                page.blank().heading(wording.say("section." + section.slug() + ofBook(section)));
                TextEntry.of(lines).forEach(this::entry);
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

    /** Without a record book a day that has passed is no more than that. */
    private String ofBook(Section section) {
        return section == Section.LATE && checklist.family() == null ? ".no-book" : "";
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
        page.paragraph(0, summary());
    }

    private String summary() {
        if (checklist.lines().isEmpty()) {
            return wording.say("checklist.nothing");
        }
        int late = TextEntry.of(checklist.lines(Section.LATE)).size();
        String first = late == 0 ? wording.say("checklist.none-late" + ofBook(Section.LATE))
                : wording.count("checklist.late" + ofBook(Section.LATE), late);
        return TextEntry.of(checklist.lines().stream().filter(this::toCome).toList()).stream().findFirst()
                .map(entry -> first + ' ' + next(entry)).orElse(first);
    }

    private boolean toCome(Line line) {
        Finding finding = line.finding();
        return finding.status() == Status.OPEN && finding.due() != null && !finding.theirs()
                && !finding.due().isBefore(checklist.asOf());
    }

    private String next(TextEntry entry) {
        Finding finding = entry.line().finding();
        return wording.say("checklist.next-date", wording.date(finding.due()),
                wording.distance(finding.due(), checklist.asOf()), title(finding, entry.names()));
    }

    private void entry(TextEntry entry) {
        Line line = entry.line();
        Finding finding = line.finding();
        boolean late = line.section() == Section.LATE;
        List<String> datesPlain = new ArrayList<>();
        List<String> dates = new ArrayList<>();
        String day = day(finding);
        datesPlain.add(day);
        dates.add(late ? style.accent(day) : style.bold(day));
        if (finding.due() != null && line.section() != Section.DONE) {
            String distance = wording.distance(finding.due(), checklist.asOf());
            datesPlain.add(distance);
            dates.add(distance);
        }
        page.blank().beside(dates, datesPlain, right(entry, late));
    }

    private String day(Finding finding) {
        if (finding.due() != null) {
            return wording.date(finding.due());
        }
        return finding.status() == Status.OPEN ? wording.say("date.none") : "";
    }

    private List<String> right(TextEntry entry, boolean late) {
        Line line = entry.line();
        Finding finding = line.finding();
        int columns = style.columns() - TextPage.DATES;
        List<String> right = new ArrayList<>();
        page.wrap(title(finding, entry.names()), columns).forEach(text -> right.add(style.bold(text)));
        String word = Shape.of(finding.status(), style.unicode()) + ' ' + wording.say("status." + statusKey(line)
                + ofBook(line.section())) + '.';
        List<String> found = page.wrap(word + ' ' + found(line), columns);
        right.add((late ? style.accent(word) : style.bold(word)) + found.get(0).substring(word.length()));
        right.addAll(found.subList(1, found.size()));
        if (finding.next() != null) {
            right.addAll(page.wrap(wording.say("line.next", Prose.ended(finding.next())), columns));
        }
        String ids = String.join(", ", entry.ids().stream().map(this::shortId).toList());
        if (line.section() == Section.DONE) {
            page.wrap(source(line) + ' ' + ids, columns).forEach(text -> right.add(style.dim(text)));
        } else {
            page.wrap(source(line), columns).forEach(text -> right.add(style.dim(text)));
            page.wrap(ids, columns).forEach(text -> right.add(style.dim(text)));
        }
        return right;
    }

    /** Any part of an id that fits one line only will do for explain: the pathway is left out where there is one. */
    private String shortId(String id) {
        return onlyPathway != null && id.startsWith(onlyPathway) ? id.substring(onlyPathway.length()) : id;
    }

    private static String statusKey(Line line) {
        return line.section() == Section.NOT_ASKED ? line.section().slug() : line.finding().status().slug();
    }

    private String title(Finding finding, List<String> names) {
        return names.isEmpty() || checklist.family() == null ? finding.title()
                : wording.say("line.title", finding.title(), wording.and(names.stream().map(firstNames::of).toList()));
    }

    /**
     * What was found. Remarks on the rule that do not change with the records are left to {@code explain}; so is
     * everything but the first sentence of what is done.
     */
    private String found(Line line) {
        Finding finding = line.finding();
        boolean open = finding.status() == Status.OPEN || finding.status() == Status.LATE;
        String note = line.asked() == null ? null : line.asked().note();
        List<String> sentences = new ArrayList<>();
        for (String why : finding.why()) {
            if (!why.equals(note) && (sentences.isEmpty() || line.section() != Section.DONE)) {
                sentences.add(Prose.ended(why));
            }
        }
        if (finding.dueNote() != null && open) {
            sentences.add(Prose.ended(finding.dueNote()));
        }
        if (finding.opens() != null && finding.status() == Status.OPEN) {
            sentences.add(wording.say("line.opens", wording.date(finding.opens())));
        }
        if (finding.theirs()) {
            sentences.add(wording.say("line.theirs"));
        }
        return String.join(" ", sentences);
    }

    private String source(Line line) {
        Finding finding = line.finding();
        List<String> sentences = new ArrayList<>();
        if (finding.cites().isEmpty()) {
            sentences.add(wording.say("line.no-source"));
        } else {
            sentences.add(sources.brief(line));
            sentences.add(sources.binding(line.binding()));
        }
        sentences.add(inForce(line));
        boolean settled = line.section() == Section.DONE || line.section() == Section.LAW_UNCLEAR;
        if (finding.confirmWith() != null && !settled) {
            sentences.add(wording.say("line.confirm", finding.confirmWith()));
        }
        sentences.removeIf(String::isEmpty);
        return String.join(" ", sentences);
    }

    /** Which law speaks, where several do: another state's or pathway's, or one that has changed since. */
    private String inForce(Line line) {
        if (line.asked() == null) {
            return "";
        }
        List<String> said = new ArrayList<>();
        if (onlyPathway == null) {
            for (Checklist.Followed followed : checklist.followed()) {
                if (line.id().startsWith(followed.pathway().id() + '/') && followed.student().equals(line.finding().student())) {
                    said.add(wording.say("line.under", followed.profile().name(), wording.date(followed.until())));
                }
            }
        }
        LocalDate until = line.asked().validity().until();
        if (until != null && until.isBefore(checklist.asOf())) {
            said.add(wording.say("line.law-until", wording.date(until)));
        } else if (until != null) {
            said.add(wording.say("line.law-ends", wording.date(until)));
        }
        return String.join(" ", said);
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
