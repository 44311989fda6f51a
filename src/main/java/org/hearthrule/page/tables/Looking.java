package org.hearthrule.page.tables;

import java.util.ArrayList;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.law.SubjectWords;
import org.hearthrule.page.frame.Form;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecord;
import org.hearthrule.rules.BookPlacements;
import org.hearthrule.tables.ImportOptions;
import org.hearthrule.tables.ImportPreview;
import org.hearthrule.tables.Layout;
import org.hearthrule.tables.ListKind;
import org.hearthrule.tables.TableFile;
import org.hearthrule.tables.TableImport;

import org.hearthrule.terms.Prose;

/** A look at a table: what was said about it, and what taking it over would do. Nothing is written. */
final class Looking<T extends YearRecord> {

    private final TableAtHand table;
    private final TableFile file;
    private final ListKind<T> kind;
    private final ImportOptions options;
    private final ImportPreview<T> preview;
    private final Form form;

    private Looking(TableAtHand table, TableFile file, ListKind<T> kind, ImportOptions options, ImportPreview<T> preview, Form form) {
        this.table = table;
        this.file = file;
        this.kind = kind;
        this.options = options;
        this.preview = preview;
        this.form = form;
    }

    /**
     * @param said null at the first look: then the columns are guessed, and so they are when another sheet was chosen
     */
    static Looking<?> at(TableAtHand table, Form said, Book book, Profiles profiles) throws BadInputException {
        return at(table, table.kind(), said, book, SubjectWords.of(laws(book, profiles)));
    }

    private static <T extends YearRecord> Looking<T> at(TableAtHand table, ListKind<T> kind, Form said, Book book,
                                                        Map<String, List<String>> names) {
        TableFile file = table.read(said == null ? null : said.text("sheet"));
        boolean first = said == null || !said.raw("sheet").equals(said.raw("shown-sheet"));
        Form form = !first ? said : Said.guessed(TableImport.preview(file, kind, book, ImportOptions.NONE));
        if (file.table().isPresent() && file.table().get().layout() instanceof Layout.Sheet sheet) {
            form.fill("sheet", sheet.name());
        } else if (said != null) {
            form.fill("sheet", said.text("sheet"));
        }
        ImportOptions options = (file.table().isEmpty() ? ImportOptions.NONE
                : Said.read(form, kind, file.table().get(), book)).withNamesOfLaws(names);
        ImportPreview<T> preview = TableImport.preview(file, kind, book, options);
        if (file.table().isPresent()) {
            Complaints.tell(form, preview, first);
        } else {
            preview.problems().forEach(problem -> form.complain("sheet", Prose.upperFirst(problem.words())));
        }
        return new Looking<>(table, file, kind, options, preview, form);
    }

    /** Returns the laws of the book's placements. One that is not known is no matter for a table. */
    private static List<Profile> laws(Book book, Profiles profiles) throws BadInputException {
        List<Profile> laws = new ArrayList<>();
        for (String code : BookPlacements.jurisdictions(book)) {
            profiles.known(code).ifPresent(laws::add);
        }
        return laws;
    }

    /** @return whether something of the table can be taken over now */
    boolean isReady() {
        return form.isFine() && !preview.hasErrors() && preview.count() > 0;
    }

    int count() {
        return preview.count();
    }

    int again() {
        return preview.skipped().size();
    }

    int wrong() {
        return preview.wrong().size();
    }

    /** @return changes with what was said and with what that gives */
    String print() {
        return Integer.toHexString(options.hashCode()) + '-' + preview.count() + '-' + preview.before().students().size();
    }

    /** @return the book with the rows in it; the same book when it was changed meanwhile so that they no longer fit */
    Book addedTo(Book now) {
        ImportPreview<T> fresh = now == preview.before() ? preview : TableImport.preview(file, kind, now, options);
        try {
            return fresh.hasErrors() ? now : TableImport.apply(fresh.accept());
        } catch (BadInputException e) {
            throw new IllegalStateException(e);
        }
    }

    TableView view() {
        return new Showing(file.table().orElse(null), preview, form).view(table, print(), isReady());
    }
}
