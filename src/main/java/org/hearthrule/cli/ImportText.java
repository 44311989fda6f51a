package org.hearthrule.cli;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hearthrule.checklist.Style;
import org.hearthrule.checklist.TextPage;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.tables.DateForm;
import org.hearthrule.tables.ImportColumn;
import org.hearthrule.tables.ImportPreview;
import org.hearthrule.terms.Wording;

/** Sets as text what taking over a table would do. */
final class ImportText {

    private static final int SHOWN = 8;

    private final Wording wording;
    private final TextPage page;
    private final ImportPreview preview;

    private ImportText(ImportPreview preview, Wording wording, Style style) {
        this.preview = preview;
        this.wording = wording;
        this.page = new TextPage(style, wording);
    }

    static String of(ImportPreview preview, String table, Wording wording, Style style) {
        return new ImportText(preview, wording, style).write(table);
    }

    private String write(String table) {
        page.heading(wording.say("import.title", table));
        page.paragraph(0, wording.say("import.layout", preview.layout().words()));
        if (!preview.columns().isEmpty()) {
            page.paragraph(0, wording.say(preview.columnsGuessed() ? "import.columns.guessed" : "import.columns"));
            for (Map.Entry<ImportColumn, String> column : preview.columns().entrySet()) {
                page.hanging(2, "", wording.say("import.column", column.getKey().words(), column.getValue()));
            }
        }
        if (!preview.unused().isEmpty()) {
            page.paragraph(0, wording.say("import.unused", String.join(", ", preview.unused())));
        }
        if (preview.dateForm() != null) {
            page.paragraph(0, wording.say(preview.dateFormGuessed() ? "import.dates.guessed" : "import.dates",
                    preview.dateForm().pattern()));
        } else if (preview.dateFormsThatFit().size() > 1) {
            page.paragraph(0, wording.say("import.dates.several",
                    wording.or(preview.dateFormsThatFit().stream().map(DateForm::pattern).toList())));
        }
        if (!preview.hasErrors()) {
            entries();
        }
        return page.toString();
    }

    private void entries() {
        List<LogEntry> all = preview.toAdd().values().stream().flatMap(List::stream).toList();
        page.blank().paragraph(0, wording.count("import.new", all.size()));
        all.subList(0, Math.min(SHOWN, all.size())).forEach(this::entry);
        if (all.size() > SHOWN) {
            page.paragraph(2, wording.say("import.more", Wording.number(all.size() - SHOWN)));
        }
        if (!preview.skipped().isEmpty()) {
            page.blank().paragraph(0, wording.count("import.skipped", preview.skipped().size()));
            preview.skipped().stream().limit(SHOWN).forEach(skipped -> page.hanging(2, "",
                    wording.say("import.skipped.row", skipped.place().line(), skipped.because())));
        }
    }

    private void entry(LogEntry entry) {
        String subjects = entry.subjects().stream().map(subject -> subject.replace('-', ' '))
                .collect(Collectors.joining(", "));
        page.hanging(2, entry.date() + "  ", wording.say("import.entry", entry.minutes(),
                String.join(", ", entry.students()), subjects.isEmpty() ? wording.say("import.no-subject") : subjects,
                entry.did()));
    }
}
