package org.hearthrule.page.tables;

import java.util.List;
import java.util.Set;
import org.hearthrule.input.Problem;
import org.hearthrule.page.frame.Form;
import org.hearthrule.tables.ImportColumn;
import org.hearthrule.tables.ImportPreview;
import org.hearthrule.tables.NameUse;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** Puts what is still to be said about a table beside the field where it can be said. */
final class Complaints {

    /** What one says once for the whole table, not for each row. */
    private static final Set<String> OF_THE_TABLE = Set.of("UNKNOWN-STUDENT", "UNKNOWN-SUBJECT", "UNCLEAR-MINUTES");

    private final Form form;
    private final ImportPreview<?> preview;

    private Complaints(Form form, ImportPreview<?> preview) {
        this.form = form;
        this.preview = preview;
    }

    /** @param first whether the table is looked at for the first time, with its columns guessed */
    static void tell(Form form, ImportPreview<?> preview, boolean first) {
        Complaints complaints = new Complaints(form, preview);
        complaints.columns(first);
        complaints.dates();
        complaints.time();
        if (!form.is("leave-out")) {
            complaints.names(Said.CHILD, preview.students(), "Choose who “%s” is, or leave these rows out below.");
            complaints.names(Said.SUBJECT, preview.subjects(), "Choose what “%s” stands for, or that it is no subject.");
            complaints.rows();
        }
    }

    /** @return problems of a row beside those that are told at a field */
    static List<Problem> ofRow(ImportPreview.Row<?> row) {
        return row.problems().stream().filter(problem -> !OF_THE_TABLE.contains(problem.code())).toList();
    }

    private void columns(boolean first) {
        for (ImportColumn column : preview.kind().columns()) {
            if (preview.columns().containsKey(column)) {
                continue;
            }
            List<Integer> meant = first ? column.meantBy(preview.headers()) : List.of();
            if (meant.size() > 1) {
                form.complain(Said.field(column), "Several columns could hold " + column.words() + ": "
                        + Wording.english().and(meant.stream().map(i -> '“' + preview.headers().get(i) + '”').toList())
                        + ". Choose one of them, or none.");
            } else if (column == preview.kind().required()) {
                form.complain(Said.field(column), "Choose the column that holds " + column.words() + '.');
            } else if (column == ImportColumn.STUDENTS && form.raw("students").isEmpty() && preview.before().students().size() != 1) {
                form.complain("students", "Choose the column with the children above, or tick here whom the rows are about.");
            }
        }
    }

    private void dates() {
        if (preview.dateForm() == null && preview.problems().stream().anyMatch(one -> one.code().equals("AMBIGUOUS-DATES"))) {
            form.complain("dates", "The dates can be read in several ways, and not all mean the same days. Choose how they are meant.");
        } else if (preview.dateForm() == null && preview.columns().containsKey(preview.kind().required())
                && preview.problems().stream().anyMatch(one -> one.code().equals("MIXED-DATES"))) {
            form.complain("dates", "The dates are written in several ways. Choose the one that most of them have.");
        }
    }

    private void time() {
        if (preview.problems().stream().anyMatch(one -> one.code().equals("UNCLEAR-MINUTES"))) {
            form.complain("time", "Say whether a number without a unit is minutes or hours.");
        }
    }

    private void names(String kind, List<NameUse> names, String words) {
        List<NameUse> unknown = unknown(form, kind, names);
        for (int i = 0; i < unknown.size(); i++) {
            if (!unknown.get(i).known()) {
                form.complain(kind + '-' + i, String.format(words, unknown.get(i).written()));
            }
        }
    }

    /** @return the names that the book does not know, those that somebody explained among them, in the table's order */
    static List<NameUse> unknown(Form form, String kind, List<NameUse> names) {
        Set<String> explained = Said.names(form, kind).keySet();
        return names.stream().filter(use -> !use.known() || explained.contains(use.written())).toList();
    }

    private void rows() {
        long wrong = preview.rows().stream().filter(row -> !ofRow(row).isEmpty()).count();
        if (wrong > 0) {
            form.complain("leave-out", Prose.upperFirst(wrong == 1 ? "one row" : wrong + " rows")
                    + " cannot be read; why, stands below. Mend the table and choose it again, or tick to leave "
                    + (wrong == 1 ? "it" : "them") + " out.");
        }
    }
}
