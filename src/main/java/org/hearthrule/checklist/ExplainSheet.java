package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hearthrule.checklist.Sheet.Item;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Profile;
import org.hearthrule.rules.Finding;
import org.hearthrule.rules.Judgement;
import org.hearthrule.rules.RecordRef;
import org.hearthrule.terms.Wording;

/** Explains one line: the rule, the law, the very records counted, the arithmetic, what would change the answer. */
public final class ExplainSheet {

    /** So many records are shown unless all are asked for: the first half and the last half of them. */
    private static final int RECORDS_SHOWN = 24;

    private final Wording wording;
    private final boolean all;
    private final SheetBuilder sheet = new SheetBuilder();

    private ExplainSheet(Wording wording, boolean all) {
        this.wording = wording;
        this.all = all;
    }

    /** @param all every record, however many there are */
    public static Sheet of(Line line, Judgement judgement, Wording wording, boolean all) {
        return new ExplainSheet(wording, all).write(line, judgement);
    }

    private Sheet write(Line line, Judgement judgement) {
        Finding finding = line.finding();
        head(line, judgement.asOf());
        list("explain.counted", counted(finding.counted()));
        list("explain.sums", finding.arithmetic());
        records(finding.records());
        list("explain.change", finding.wouldChange());
        law(line, judgement);
        list("explain.rules", finding.rules());
        sheet.foot().say(wording.say("caution.foot"));
        return sheet.sheet(finding.studentName() == null ? finding.title()
                : wording.say("line.title", finding.title(), finding.studentName()));
    }

    private void head(Line line, LocalDate asOf) {
        Finding finding = line.finding();
        sheet.small(finding.id()).apart();
        String word = wording.say("status." + (line.section() == Section.NOT_ASKED ? line.section().slug()
                : finding.status().slug()));
        String due = finding.due() == null ? word : word + ' ' + wording.say("explain.due", wording.date(finding.due()),
                wording.distance(finding.due(), asOf));
        sheet.say(new Sheet.Tile(finding.status()), new Sheet.Text(' ' + due + '.'));
        // the remark on the rule stands below, with the law
        String note = line.asked() == null ? null : line.asked().note();
        finding.why().stream().filter(why -> !why.equals(note)).forEach(sheet::say);
        if (finding.dueNote() != null) {
            sheet.say(finding.dueNote());
        }
        if (finding.next() != null) {
            sheet.say(wording.say("line.next", finding.next()));
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
            sheet.heading(wording.say(heading));
            items.forEach(this::item);
        }
    }

    private void item(String text) {
        sheet.item(Sheet.Plain.NONE, text);
    }

    private void records(List<RecordRef> records) {
        sheet.heading(wording.count("explain.records", records.size()));
        if (records.isEmpty()) {
            item(wording.say("explain.records.none"));
            return;
        }
        int left = all ? 0 : Math.max(0, records.size() - RECORDS_SHOWN);
        int half = left == 0 ? records.size() : RECORDS_SHOWN / 2;
        records.subList(0, half).forEach(this::record);
        if (left > 0) {
            String number = Wording.number(left);
            sheet.item(Item.of(Sheet.Plain.NONE, List.of(new Sheet.See(wording.say("explain.records.more", number),
                    new Sheet.Link(wording.say("explain.records.between", number), new Sheet.Reference.AllRecords())))));
            records.subList(records.size() - half, records.size()).forEach(this::record);
        }
    }

    private void record(RecordRef record) {
        sheet.item(new Sheet.Day(record.date()), wording.say("explain.record", record.words(), record.year(), record.id()));
    }

    private void law(Line line, Judgement judgement) {
        Finding finding = line.finding();
        sheet.heading(wording.say("explain.law"));
        if (finding.cites().isEmpty()) {
            item(wording.say("line.no-source"));
        }
        Sources sources = new Sources(wording);
        for (Cite cite : finding.cites()) {
            sheet.item(Item.of(Sheet.Plain.NONE, String.join(" ", sources.sentences(List.of(cite))))
                    .over(new Sheet.Address(cite.source().address())));
        }
        if (line.binding() != null) {
            item(wording.say("explain.binding", line.binding().words()));
        }
        for (Profile profile : judgement.profiles()) {
            new Duty(wording, profile).note(finding.requirement()).ifPresent(this::item);
            for (Profile.Doubt doubt : profile.doubts()) {
                if (doubt.on().contains(finding.requirement())) {
                    item(wording.say("explain.doubt", doubt.about(), doubt.ask()));
                }
            }
        }
        if (finding.confirmWith() != null) {
            item(wording.say("line.confirm", finding.confirmWith()));
        }
        if (line.asked() != null) {
            sheet.hint("", new Sheet.Link(wording.say("explain.to.rule"), new Sheet.Reference.Rule(line.asked().id())),
                    new Sheet.Link(wording.say("law.to.mistake"), new Sheet.Reference.Mistake(line.asked().id())));
        }
    }
}
