package org.hearthrule.page.tables;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.PageWords;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.Book;
import org.hearthrule.tables.Export;
import org.hearthrule.tables.ExportChoice;
import org.hearthrule.tables.ExportFormat;
import org.hearthrule.tables.ListKind;
import org.hearthrule.tables.TableFile;
import org.hearthrule.terms.Prose;

/** {@code /tables}: a log or a list of books kept in a spreadsheet is taken over; everything is taken out again. */
public final class TablePages implements Feature {

    private static final Map<String, ListKind<?>> KINDS = Map.of("log", ListKind.LOG, "books", ListKind.READINGS);
    private static final List<Option> HOLDS = List.of(Option.of("log", "A log: what was done on each day"),
            Option.of("books", "Books and other readings"));
    private static final List<Option> FORMATS = List.of(
            new Option("xlsx", "A spreadsheet (XLSX)", "One sheet for each list."),
            new Option("csv", "Tables as text (CSV)", "One file for each list, all in one ZIP."),
            new Option("json", "One text file for programs (JSON)", "Everything, nothing lost."));

    private final TablesAtHand tables = new TablesAtHand();

    @Override
    public void addTo(Routes routes) {
        routes.get("/tables", call -> tables(call, Form.empty().fill("holds", "log"), Form.empty().fill("format", "xlsx"), 200));
        routes.post("/tables", this::choose);
        routes.get("/tables/take", this::look);
        routes.post("/tables/take", this::take);
        routes.get("/tables/out", TablePages::out);
    }

    private static Answer tables(Call call, Form in, Form out, int status) {
        return new Answer.Shown("tables/tables.jte", "Spreadsheets", Part.KEEPING, Map.of("in", in, "out", out, "holds", HOLDS,
                "formats", FORMATS, "children", Choices.children(call.desk().book())), status);
    }

    private Answer choose(Call call) throws IOException {
        Form form = call.form();
        String holds = form.mustOneOf("holds", KINDS.keySet(), "Choose what the rows are.");
        List<Call.Upload> files = call.files("table");
        if (files.isEmpty()) {
            form.complain("table", "Choose a spreadsheet (XLSX) or a table as text (CSV).");
        }
        if (form.isFine()) {
            byte[] content = content(files.get(0));
            TableFile file = TableFile.read(files.get(0).name(), content, TableFile.Choice.NONE);
            if (file.table().isPresent() || file.sheets().size() > 1) {
                return Answer.see(tables.put(files.get(0).name(), content, KINDS.get(holds)).path());
            }
            file.problems().forEach(problem -> form.complain("table", Prose.upperFirst(problem.words())));
        }
        return tables(call, form, Form.empty().fill("format", "xlsx"), 422);
    }

    private static byte[] content(Call.Upload file) throws IOException {
        try (InputStream in = file.open()) {
            return TableFile.bytes(in);
        }
    }

    private Optional<TableAtHand> find(Call call) {
        return tables.find(call.query("table"));
    }

    private static Answer gone() {
        return Answer.done("That table is at hand no longer. Choose its file again.", "/tables");
    }

    private Answer look(Call call) throws BadInputException {
        Optional<TableAtHand> table = find(call);
        return table.isEmpty() ? gone()
                : shown(Looking.at(table.get(), null, call.desk().book(), call.desk().profiles()), false, 200);
    }

    /** @param changed whether something was changed since it was shown last, and is to be looked at first */
    private static Answer shown(Looking<?> look, boolean changed, int status) {
        return new Answer.Shown("tables/take.jte", "A table to take over", Part.KEEPING,
                Map.of("view", look.view(), "changed", changed), status);
    }

    private Answer take(Call call) throws Exception {
        Optional<TableAtHand> table = find(call);
        if (table.isEmpty()) {
            return gone();
        }
        Looking<?> look = Looking.at(table.get(), call.form(), call.desk().book(), call.desk().profiles());
        boolean asked = call.form().raw("do").equals("take");
        boolean seen = look.print().equals(call.form().raw("shown"));
        if (!asked || !seen || !look.isReady()) {
            return shown(look, asked && !seen, asked ? 422 : 200);
        }
        Book before = call.desk().book();
        call.desk().edit(PageWords.count("tables.edit", look.count()), look::addedTo);
        if (call.desk().book().equals(before)) {
            return look(call);
        }
        tables.remove(table.get());
        return Answer.done(done(look), table.get().kind() == ListKind.LOG ? "/log" : "/books");
    }

    private static String done(Looking<?> look) {
        String again = look.again() == 0 ? "" : ' ' + PageWords.count("tables.again", look.again());
        String wrong = look.wrong() == 0 ? "" : ' ' + PageWords.count("tables.wrong", look.wrong());
        return PageWords.count("tables.taken", look.count()) + again + wrong + ' ' + PageWords.say("tables.undo");
    }

    private static Answer out(Call call) {
        Form form = call.queryForm();
        Book book = call.desk().book();
        String key = form.mustOneOf("format", FORMATS.stream().map(Option::value).toList(), "Choose a form.");
        List<String> students = form.ticked("students", Choices.childIds(book));
        LocalDate from = form.day("from");
        LocalDate to = form.day("to");
        if (from != null && to != null && to.isBefore(from)) {
            form.complain("to", "This day lies before the first one. Type a later day.");
        }
        if (!form.isFine()) {
            return tables(call, Form.empty().fill("holds", "log"), form, 422);
        }
        ExportFormat format = Arrays.stream(ExportFormat.values()).filter(one -> one.key().equals(key)).findFirst().orElseThrow();
        return new Answer.Download("hearthrule-" + call.desk().now().toLocalDate() + '.' + format.ending(), format.mediaType(),
                out -> Export.write(book, new ExportChoice(students, from, to), format, out));
    }
}
