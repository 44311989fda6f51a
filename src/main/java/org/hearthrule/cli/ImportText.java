package org.hearthrule.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hearthrule.checklist.Style;
import org.hearthrule.checklist.TextPage;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.records.YearRecords.Reading;
import org.hearthrule.tables.DateForm;
import org.hearthrule.tables.ImportColumn;
import org.hearthrule.tables.ImportPreview;
import org.hearthrule.tables.TableSheet;
import org.hearthrule.terms.Wording;

/** Sets as text what taking over a table would do. */
final class ImportText {

    private static final int SHOWN = 8;

    private final Wording wording;
    private final TextPage page;
    private final ImportPreview<?> preview;

    private ImportText(ImportPreview<?> preview, Wording wording, Style style) {
        this.preview = preview;
        this.wording = wording;
        this.page = new TextPage(style, wording);
    }

    static String of(ImportPreview<?> preview, String table, Wording wording, Style style) {
        return new ImportText(preview, wording, style).write(table);
    }

    private String write(String table) {
        page.heading(wording.say("import.title", table));
        if (preview.layout() != null) {
            page.paragraph(0, wording.say("import.layout", preview.layout().words()));
        }
        if (preview.sheets().size() > 1) {
            page.paragraph(0, wording.say("import.sheets",
                    preview.sheets().stream().map(this::sheet).collect(Collectors.joining(", "))));
        }
        columns();
        if (preview.dateForm() != null) {
            page.paragraph(0, wording.say(!preview.dateFormGuessed() ? "import.dates"
                    : preview.dateFormsThatFit().isEmpty() ? "import.dates.most" : "import.dates.guessed",
                    preview.dateForm().pattern()));
        } else if (preview.dateFormsThatFit().size() > 1) {
            page.paragraph(0, wording.say("import.dates.several",
                    wording.or(preview.dateFormsThatFit().stream().map(DateForm::pattern).toList())));
        }
        if (!preview.hasErrors()) {
            rows();
        }
        return page.toString();
    }

    private String sheet(TableSheet sheet) {
        return wording.say(sheet.hidden() ? "import.sheet.hidden" : "import.sheet", sheet.name());
    }

    private void columns() {
        if (!preview.columns().isEmpty()) {
            page.paragraph(0, wording.say(preview.columnsGuessed() ? "import.columns.guessed" : "import.columns"));
            for (Map.Entry<ImportColumn, String> column : preview.columnNames().entrySet()) {
                page.hanging(2, "", wording.say("import.column", column.getKey().words(), column.getValue()));
            }
        }
        if (!preview.unused().isEmpty()) {
            page.paragraph(0, wording.say("import.unused", String.join(", ", preview.unused())));
        }
    }

    private void rows() {
        List<?> all = preview.toAdd().values().stream().flatMap(List::stream).toList();
        page.blank().paragraph(0, wording.count("import.new", all.size()));
        all.subList(0, Math.min(SHOWN, all.size())).forEach(this::record);
        if (all.size() > SHOWN) {
            page.paragraph(2, wording.say("import.more", Wording.number(all.size() - SHOWN)));
        }
        var skipped = preview.skipped();
        if (!skipped.isEmpty()) {
            page.blank().paragraph(0, wording.count("import.skipped", skipped.size()));
            skipped.stream().limit(SHOWN).forEach(row -> page.hanging(2, "", wording.say("import.skipped.row",
                    row.place().row(), row.skipped().words())));
            if (skipped.size() > SHOWN) {
                page.paragraph(2, wording.say("import.more", Wording.number(skipped.size() - SHOWN)));
            }
        }
        if (!preview.wrong().isEmpty()) {
            page.blank().paragraph(0, wording.count("import.wrong", preview.wrong().size()));
        }
    }

    private void record(Object record) {
        if (record instanceof LogEntry entry) {
            page.hanging(2, entry.date() + "  ", wording.say("import.entry", entry.minutes(),
                    String.join(", ", entry.students()), subjects(entry.subjects()), entry.did()));
        } else if (record instanceof Reading reading) {
            LocalDate day = reading.finished() == null ? reading.started() : reading.finished();
            page.hanging(2, day == null ? "" : day + "  ", wording.say("import.reading",
                    reading.title(), String.join(", ", reading.students()), subjects(reading.subjects())));
        }
    }

    private String subjects(List<String> ids) {
        return ids.isEmpty() ? wording.say("import.no-subject")
                : ids.stream().map(subject -> subject.replace('-', ' ')).collect(Collectors.joining(", "));
    }
}
