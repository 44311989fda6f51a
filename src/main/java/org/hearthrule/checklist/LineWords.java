package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hearthrule.rules.Finding;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** What a line of a checklist says, in sentences: the same on a terminal and on the page. Immutable. */
public final class LineWords {

    private final Checklist checklist;
    private final Wording wording;
    private final Sources sources;
    private final FirstNames firstNames;
    private final String onlyPathway;

    public LineWords(Checklist checklist, Wording wording) {
        this.checklist = checklist;
        this.wording = wording;
        this.sources = new Sources(wording);
        this.firstNames = FirstNames.of(checklist);
        List<String> pathways = Stream.concat(checklist.follows().stream().map(follows -> follows.pathway().id() + '/'),
                checklist.followed().stream().map(followed -> followed.pathway().id() + '/')).distinct().toList();
        this.onlyPathway = pathways.size() == 1 ? pathways.get(0) : null;
    }

    /** @return what stands first: how much is late, and the next date */
    public String summary() {
        if (checklist.lines().isEmpty()) {
            return wording.say("checklist.nothing");
        }
        int late = LineGroup.of(checklist.lines(Section.LATE)).size();
        String first = late == 0 ? wording.say("checklist.none-late" + ofBook(Section.LATE))
                : wording.count("checklist.late" + ofBook(Section.LATE), late);
        return LineGroup.of(checklist.lines().stream().filter(this::toCome).toList()).stream().findFirst()
                .map(group -> first + ' ' + next(group)).orElse(first);
    }

    private boolean toCome(Line line) {
        Finding finding = line.finding();
        return finding.status() == Status.OPEN && finding.due() != null && !finding.theirs()
                && !finding.due().isBefore(checklist.asOf());
    }

    private String next(LineGroup group) {
        Finding finding = group.line().finding();
        return wording.say("checklist.next-date", wording.date(finding.due()),
                wording.distance(finding.due(), checklist.asOf()), title(group));
    }

    /** Without a record book a day that has passed is no more than that. */
    String ofBook(Section section) {
        return section == Section.LATE && checklist.family() == null ? ".no-book" : "";
    }

    /** @return the heading of a part */
    public String heading(Section section) {
        return wording.say("section." + section.slug() + ofBook(section));
    }

    /** @return the day in words; that there is none where something is open; or nothing */
    public String day(Finding finding) {
        if (finding.due() != null) {
            return wording.date(finding.due());
        }
        return finding.status() == Status.OPEN ? wording.say("date.none") : "";
    }

    /** @return the word of the status, such as {@code Open} */
    public String status(Line line) {
        return wording.say("status." + statusKey(line) + ofBook(line.section()));
    }

    /** Any part of an id that fits one line only will do for explain: the pathway is left out where there is one. */
    String shortId(String id) {
        return onlyPathway != null && id.startsWith(onlyPathway) ? id.substring(onlyPathway.length()) : id;
    }

    private static String statusKey(Line line) {
        return line.section() == Section.NOT_ASKED ? line.section().slug() : line.finding().status().slug();
    }

    /** @return the title, and whom it is about where there are several */
    public String title(LineGroup group) {
        Finding finding = group.line().finding();
        List<String> names = group.names();
        return names.isEmpty() || checklist.family() == null ? finding.title()
                : wording.say("line.title", finding.title(), wording.and(names.stream().map(firstNames::of).toList()));
    }

    /**
     * What was found. Remarks on the rule that do not change with the records are left to {@code explain}; so is
     * everything but the first sentence of what is done.
     */
    public String found(Line line) {
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

    /** @return the sources, how and when they were read, how binding the rule is, and whom to confirm with */
    public String source(Line line) {
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
}
