package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Profile;
import org.hearthrule.rules.Finding;
import org.hearthrule.rules.Judgement;
import org.hearthrule.rules.RecordRef;
import org.hearthrule.terms.Wording;

/** Explains one line: the rule, the law, the very records counted, the arithmetic, what would change the answer. */
public final class ExplainText {

    /** So many records are shown unless all are asked for: the first half and the last half of them. */
    private static final int RECORDS_SHOWN = 24;

    private final Wording wording;
    private final Style style;
    private final boolean all;
    private final Page page;

    private ExplainText(Wording wording, Style style, boolean all) {
        this.wording = wording;
        this.style = style;
        this.all = all;
        this.page = new Page(style, wording);
    }

    /**
     * @param all every record, however many there are
     * @return the explanation, each line ended
     */
    public static String of(Line line, Judgement judgement, Wording wording, Style style, boolean all) {
        return new ExplainText(wording, style, all).write(line, judgement);
    }

    private String write(Line line, Judgement judgement) {
        Finding finding = line.finding();
        head(line, judgement.asOf());
        list("explain.counted", counted(finding.counted()));
        list("explain.sums", finding.arithmetic());
        records(finding.records());
        list("explain.change", finding.wouldChange());
        law(line, judgement);
        page.blank().heading(wording.say("explain.rules"));
        finding.rules().forEach(rule -> page.line("  " + page.clean(rule)));
        page.blank().paragraph(0, wording.say("caution.foot"));
        return page.toString();
    }

    private void head(Line line, LocalDate asOf) {
        Finding finding = line.finding();
        String title = finding.studentName() == null ? finding.title()
                : wording.say("line.title", finding.title(), finding.studentName());
        page.wrap(title, style.columns()).forEach(text -> page.line(style.bold(text)));
        page.line(style.dim(page.clean(finding.id())));
        String word = Shape.of(finding.status(), style.unicode()) + ' ' + wording.say("status."
                + (line.section() == Section.NOT_ASKED ? line.section().slug() : finding.status().slug()));
        String due = finding.due() == null ? word : word + ' ' + wording.say("explain.due", wording.date(finding.due()),
                wording.distance(finding.due(), asOf));
        page.blank().paragraph(0, due + '.');
        // the remark on the rule stands below, with the law
        String note = line.asked() == null ? null : line.asked().note();
        finding.why().stream().filter(why -> !why.equals(note)).forEach(why -> page.paragraph(0, why));
        if (finding.dueNote() != null) {
            page.paragraph(0, finding.dueNote());
        }
        if (finding.next() != null) {
            page.paragraph(0, wording.say("line.next", finding.next()));
        }
    }

    private static List<String> counted(Map<String, Object> counted) {
        return counted.entrySet().stream().map(entry -> entry.getKey().replace('-', ' ') + ": " + value(entry.getValue()))
                .toList();
    }

    private static String value(Object value) {
        return value instanceof List<?> list ? list.stream().map(String::valueOf).collect(Collectors.joining(", "))
                : String.valueOf(value);
    }

    private void list(String heading, List<String> items) {
        if (!items.isEmpty()) {
            page.blank().heading(wording.say(heading));
            items.forEach(item -> page.hanging(2, "", item));
        }
    }

    private void records(List<RecordRef> records) {
        page.blank().heading(wording.count("explain.records", records.size()));
        if (records.isEmpty()) {
            page.paragraph(2, wording.say("explain.records.none"));
            return;
        }
        int left = all ? 0 : Math.max(0, records.size() - RECORDS_SHOWN);
        int half = left == 0 ? records.size() : RECORDS_SHOWN / 2;
        records.subList(0, half).forEach(this::record);
        if (left > 0) {
            page.paragraph(2, wording.say("explain.records.more", Wording.number(left)));
            records.subList(records.size() - half, records.size()).forEach(this::record);
        }
    }

    private void record(RecordRef record) {
        String day = record.date() == null ? wording.say("explain.no-day") : record.date().toString();
        page.hanging(2, day + "  ", wording.say("explain.record", record.words(), record.year(), record.id()));
    }

    private void law(Line line, Judgement judgement) {
        Finding finding = line.finding();
        page.blank().heading(wording.say("explain.law"));
        if (finding.cites().isEmpty()) {
            page.paragraph(2, wording.say("line.no-source"));
        }
        Sources sources = new Sources(wording);
        for (Cite cite : finding.cites()) {
            page.hanging(2, "", String.join(" ", sources.sentences(List.of(cite))));
            page.wrap(cite.source().address(), style.columns() - 2).forEach(text -> page.line("  " + style.dim(text)));
        }
        if (line.binding() != null) {
            page.paragraph(2, wording.say("explain.binding", line.binding().words()));
        }
        for (Profile profile : judgement.profiles()) {
            new Duty(wording, profile).note(finding.requirement()).ifPresent(note -> page.paragraph(2, note));
            for (Profile.Doubt doubt : profile.doubts()) {
                if (doubt.on().contains(finding.requirement())) {
                    page.paragraph(2, wording.say("explain.doubt", doubt.about(), doubt.ask()));
                }
            }
        }
        if (finding.confirmWith() != null) {
            page.paragraph(2, wording.say("line.confirm", finding.confirmWith()));
        }
    }
}
