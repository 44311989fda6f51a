package org.hearthrule.page.records;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.pictures.Attachments;
import org.hearthrule.pictures.Taken;
import org.hearthrule.pictures.Upload;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.YearRecord;
import org.hearthrule.records.YearRecords;

/** The list of one kind of record, and its form: add, mend, take out. */
public final class RecordPages<T extends YearRecord> implements Feature {

    private static final int AT_ONCE = 100;
    private static final String FORM = "records/form.jte";

    private final RecordForm<T> kind;

    private RecordPages(RecordForm<T> kind) {
        this.kind = kind;
    }

    /** @return the pages of every kind of paper */
    public static List<Feature> all() {
        return Stream.<RecordForm<?>>of(new ReadingForm(), new SampleForm(), new FilingForm(), new DocumentForm(), new RequestForm(),
                new TestForm(), new EvaluationForm(), new HealthForm(), new VisitForm()).<Feature>map(RecordPages::new).toList();
    }

    @Override
    public void addTo(Routes routes) {
        routes.get(kind.path(), this::list);
        routes.get(kind.path() + "/new", this::blank);
        routes.post(kind.path() + "/new", this::add);
        routes.get(kind.path() + "/{year}/{id}", this::shown);
        routes.post(kind.path() + "/{year}/{id}", this::change);
        routes.post(kind.path() + "/{year}/{id}/delete", this::delete);
    }

    /**
     * One record as a list sets it.
     *
     * @param address of its form
     * @param scan    path of its scan within the book, or null when it has none or its file is gone
     * @param pictures paths of its photos and scans
     * @param papers  paths of files of which there is no picture, such as a PDF
     * @param gone    paths under which there is no file
     */
    public record Row(String address, String title, String who, List<String> words, String scan, List<String> pictures,
                      List<String> papers, List<String> gone) { }

    /**
     * A list as its template sets it.
     *
     * @param filters what else it can be narrowed to
     * @param next    where it goes on, or null
     * @param left    how many come after these
     */
    public record ListView(String path, String one, String many, String about, List<Row> rows, Form form,
                           List<org.hearthrule.page.frame.Option> children, List<Field> filters, boolean filtered,
                           String next, int left) { }

    /**
     * A form as its template sets it.
     *
     * @param action  where it is sent
     * @param delete  where its record is taken out, or null for a new one
     * @param print   print of the record it was opened with, or empty
     * @param there   what the book holds now, where that is another version than the form was opened with; else null
     * @param scan    path of the scan there is, or null
     * @param before  what was entered before, by the id of a datalist
     */
    public record FormView(String path, String many, String heading, String action, String delete, List<Field> fields,
                           Form form, String print, List<String> there, String scan, String back,
                           Map<String, List<String>> before) { }

    private Answer list(Call call) throws Exception {
        Offered offered = Offered.of(call);
        Narrowed<T> narrowed = new Narrowed<>(kind, call.queryForm());
        List<Listed<T>> fitting = new ArrayList<>();
        List<T> all = new ArrayList<>();
        List<String> labels = new ArrayList<>(offered.book().years().keySet());
        labels.sort(Comparator.reverseOrder());
        for (String label : labels) {
            List<T> records = records(offered.book().years().get(label));
            all.addAll(records);
            records.stream().sorted(Comparator.comparing((T record) -> record.day(), Comparator.nullsLast(Comparator.reverseOrder())))
                    .filter(record -> narrowed.fits(label, record))
                    .filter(record -> narrowed.fits(kind.title(record, offered) + ' ' + kind.words(record, offered)))
                    .forEach(record -> fitting.add(new Listed<>(label, record)));
        }
        int from = Math.min(call.query("from").matches("[0-9]{1,6}") ? Integer.parseInt(call.query("from")) : 0, fitting.size());
        int to = Math.min(from + AT_ONCE, fitting.size());
        Attachments attachments = new Attachments(call.desk().folder(), call.desk().clock());
        List<Row> rows = fitting.subList(from, to).stream().map(one -> row(one, offered, attachments)).toList();
        String next = to == fitting.size() ? null : kind.path() + '?' + narrowed.query() + "from=" + to;
        ListView view = new ListView(kind.path(), kind.one(), kind.many(), kind.about(), rows, call.queryForm(), offered.children(),
                narrowed.fields(all, labels), narrowed.isAnything(), next, fitting.size() - to);
        return Answer.page("records/list.jte", kind.many(), Part.RECORDS, Map.of("view", view));
    }

    private record Listed<T>(String label, T record) { }

    @SuppressWarnings("unchecked") // a list of a kind holds that kind alone
    private List<T> records(YearRecords year) {
        return (List<T>) kind.kind().in(year);
    }

    private Row row(Listed<T> listed, Offered offered, Attachments attachments) {
        T record = listed.record();
        List<String> pictures = new ArrayList<>();
        List<String> papers = new ArrayList<>();
        List<String> gone = new ArrayList<>();
        for (String path : kind.pictures(record)) {
            Optional<Attachments.Opened> opened = attachments.open(path);
            (opened.isEmpty() ? gone : opened.get().kind().hasPreview() ? pictures : papers).add(path);
        }
        String scan = kind.scan(record);
        if (scan != null && attachments.open(scan).isEmpty()) {
            gone.add(scan);
            scan = null;
        }
        return new Row(kind.path() + '/' + listed.label() + '/' + record.id(), kind.title(record, offered),
                offered.childNames(kind.students(record)), kind.words(record, offered), scan, pictures, papers, gone);
    }

    private Answer blank(Call call) throws Exception {
        return form(call, Offered.of(call), call.queryForm(), null, null, 200, call.query("back"), null);
    }

    private Answer add(Call call) throws Exception {
        Offered offered = Offered.of(call);
        Form form = call.form();
        takeScan(call, form);
        T read = kind.read(form, offered, "new", null);
        if (!form.isFine()) {
            return form(call, offered, form, null, null, 422, form.raw("back"), null);
        }
        String label = kind.label(read, null, offered);
        call.desk().edit(Offered.plain(kind.one()), book -> BookEdits.put(book, label,
                kind.read(form, offered, BookEdits.newId(book, kind.kind(), label), null)));
        return Answer.done("Saved: " + kind.title(read, offered) + " · " + offered.childNames(kind.students(read)) + '.',
                call.back(kind.path()));
    }

    private Answer shown(Call call) throws Exception {
        Offered offered = Offered.of(call);
        Optional<T> found = find(offered.book(), call);
        return found.isEmpty() ? new Answer.Nothing()
                : form(call, offered, kind.fill(found.get()), found.get(), null, 200, call.query("back"), call.path());
    }

    @SuppressWarnings("unchecked") // only a record of this kind is taken
    private Optional<T> find(Book book, Call call) {
        return BookEdits.find(book, call.path("year"), call.path("id")).map(BookEdits.Found::record)
                .filter(record -> org.hearthrule.records.RecordKind.of(record) == kind.kind()).map(record -> (T) record);
    }

    private Answer change(Call call) throws Exception {
        Offered offered = Offered.of(call);
        Form form = call.form();
        Optional<T> found = find(offered.book(), call);
        if (found.isEmpty()) {
            return new Answer.Nothing();
        }
        T before = found.get();
        takeScan(call, form);
        T read = kind.read(form, offered, before.id(), before);
        boolean changedMeanwhile = !Print.of(before).equals(form.raw("print"));
        if (!form.isFine() || changedMeanwhile) {
            List<String> there = changedMeanwhile ? kind.words(before, offered) : null;
            return form(call, offered, form, before, there, 422, form.raw("back"), call.path());
        }
        String from = call.path("year");
        String to = kind.label(read, from, offered);
        call.desk().edit(Offered.plain(kind.one()), book -> BookEdits.move(book, from, before.id(), to,
                from.equals(to) ? read : kind.read(form, offered, BookEdits.newId(book, kind.kind(), to), before)));
        return Answer.done("Saved: " + kind.title(read, offered) + '.', call.back(kind.path()));
    }

    private Answer delete(Call call) throws Exception {
        Offered offered = Offered.of(call);
        Optional<T> found = find(offered.book(), call);
        if (found.isEmpty()) {
            return new Answer.Nothing();
        }
        call.desk().edit(Offered.plain(kind.one()) + " taken out", book -> BookEdits.remove(book, call.path("year"), call.path("id")));
        return Answer.done("Taken out: " + kind.title(found.get(), offered) + ". It can be taken back below.", kind.path());
    }

    /** Stores a scan that came along; a second try of the same form keeps the one of the first. */
    private static void takeScan(Call call, Form form) throws IOException {
        for (Call.Upload file : call.files("scan")) {
            Taken taken = new Attachments(call.desk().folder(), call.desk().clock()).store(new Upload(file.name(), file::open), "scan");
            if (taken instanceof Taken.Stored stored) {
                form.fill("copy", stored.path());
            } else if (taken instanceof Taken.AlreadyThere there) {
                form.fill("copy", there.path());
            } else if (taken instanceof Taken.Refused refused) {
                form.complain("scan", refused.words());
            }
        }
    }

    private Answer form(Call call, Offered offered, Form form, T before, List<String> there, int status, String back, String action) {
        String print = before == null ? "" : status == 200 || there != null ? Print.of(before) : form.raw("print");
        FormView view = new FormView(kind.path(), kind.many(), before == null ? "Note " + kind.one() : kind.title(before, offered),
                before == null ? kind.path() + "/new" : action, before == null ? null : action + "/delete",
                kind.fields(form, offered), form, print, there, form.is("copy") ? form.raw("copy") : null, back,
                kind.before(offered));
        return new Answer.Shown(FORM, view.heading(), Part.RECORDS, Map.of("view", view), status);
    }
}
