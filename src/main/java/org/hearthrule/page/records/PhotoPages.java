package org.hearthrule.page.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.frame.SubjectChoice;
import org.hearthrule.pictures.Attachments;
import org.hearthrule.pictures.DateOffer;
import org.hearthrule.pictures.Intake;
import org.hearthrule.pictures.PictureFacts;
import org.hearthrule.pictures.Taken;
import org.hearthrule.pictures.Upload;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords.Sample;
import org.hearthrule.records.YearRecords;
import org.hearthrule.terms.Subjects;

/**
 * {@code /records}, many photos at once, and {@code /unsettled}: pieces without a day or a subject in one place. A day
 * that a camera noted is offered with its origin, and taken only when the parent takes it.
 */
public final class PhotoPages implements Feature {

    private static final int AT_ONCE = 40;

    @Override
    public void addTo(Routes routes) {
        routes.get("/records", PhotoPages::records);
        routes.get("/work/photos", call -> photos(call, Form.empty(), List.of(), 0, 200));
        routes.post("/work/photos", PhotoPages::take);
        routes.get("/unsettled", call -> unsettled(call, Form.empty(), 200));
        routes.post("/unsettled", PhotoPages::settle);
    }

    /** A list of the book and how much is in it. */
    public record Count(String path, String words, String count) { }

    /**
     * A piece that is not settled yet.
     *
     * @param ref     year and id, as sent
     * @param picture path of its first file, or null
     * @param offers  days it may be of, with their origin
     * @param notes   what else its file tells
     */
    public record Piece(String ref, String address, String title, String who, String picture, List<Option> offers,
                        List<String> notes, Sample sample) { }

    private static Answer records(Call call) {
        Book book = call.desk().book();
        Map<RecordKind, Integer> counts = new LinkedHashMap<>();
        for (RecordKind kind : RecordKind.values()) {
            counts.put(kind, book.years().values().stream().mapToInt(year -> kind.in(year).size()).sum());
        }
        List<Count> shown = new ArrayList<>();
        shown.add(count("/books", "Books", counts.get(RecordKind.READINGS), "book"));
        shown.add(count("/work", "Work", counts.get(RecordKind.SAMPLES), "piece"));
        shown.add(count("/tests", "Tests", counts.get(RecordKind.TESTS), "test"));
        shown.add(count("/evaluations", "Evaluations", counts.get(RecordKind.EVALUATIONS), "evaluation"));
        shown.add(count("/papers", "Papers you sent", counts.get(RecordKind.FILINGS), "paper"));
        shown.add(count("/documents", "Papers you keep", counts.get(RecordKind.DOCUMENTS), "paper"));
        shown.add(count("/health", "Health papers", counts.get(RecordKind.HEALTH), "paper"));
        shown.add(count("/requests", "Requests to see your records", counts.get(RecordKind.REQUESTS), "request"));
        shown.add(count("/visits", "Visits of a teacher or supervisor", counts.get(RecordKind.VISITS), "visit"));
        return Answer.page("records/records.jte", "Records", Part.RECORDS, Map.of("counts", shown, "open", refs(book).size()));
    }

    private static Count count(String path, String words, int number, String one) {
        return new Count(path, words, number == 0 ? "nothing yet" : number == 1 ? "one " + one
                : org.hearthrule.terms.Wording.number(number) + ' ' + one + 's');
    }

    private static Answer photos(Call call, Form form, List<String> refused, int saved, int status) throws Exception {
        return new Answer.Shown("records/photos.jte", "Photos and scans", Part.RECORDS, Map.of("form", form, "children",
                Offered.of(call).children(), "refused", refused, "saved", saved), status);
    }

    /** Stores what came; each file becomes a piece without a day, under the name it had at home. */
    private static Answer take(Call call) throws Exception {
        Form form = call.form();
        String child = form.mustOneOf("student", Offered.of(call).childIds(), "Choose whose work this is.");
        List<Call.Upload> files = call.files("files");
        if (files.isEmpty()) {
            form.complain("files", "Choose photos or scans, or drop them here.");
        }
        if (!form.isFine()) {
            return photos(call, form, List.of(), 0, 422);
        }
        List<Upload> uploads = files.stream().map(file -> new Upload(file.name(), file::open)).toList();
        List<Sample> pieces = new ArrayList<>();
        List<String> refused = new ArrayList<>();
        for (Taken taken : new Intake(call.desk().folder(), call.desk().clock()).take(uploads, "work")) {
            if (taken instanceof Taken.Stored stored) {
                pieces.add(new Sample("new", child, null, List.of(), stored.name(), null, null, List.of(stored.path()), false));
            } else if (taken instanceof Taken.AlreadyThere there) {
                refused.add(there.name() + " lies in the book already, so it was not taken a second time.");
            } else if (taken instanceof Taken.Refused no) {
                refused.add(no.words());
            }
        }
        String label = YearLabel.of(call.desk().today()).toString();
        if (!pieces.isEmpty()) {
            call.desk().edit(pieces.size() == 1 ? "A photo" : pieces.size() + " photos", book -> added(book, label, pieces));
        }
        if (!refused.isEmpty()) {
            return photos(call, form, refused, pieces.size(), pieces.isEmpty() ? 422 : 200);
        }
        return Answer.done(pieces.size() == 1 ? "Saved: one piece. Settle its day and subject here." : "Saved: " + pieces.size()
                + " pieces. Settle their days and subjects here.", "/unsettled");
    }

    private static Book added(Book book, String label, List<Sample> pieces) {
        Book now = book;
        for (Sample piece : pieces) {
            now = BookEdits.put(now, label, new Sample(BookEdits.newId(now, RecordKind.SAMPLES, label), piece.student(), null,
                    List.of(), piece.title(), null, null, piece.files(), false));
        }
        return now;
    }

    private record Ref(String label, Sample sample) {
        String words() {
            return label + '/' + sample.id();
        }
    }

    /** Pieces without a day or a subject, of the latest year first. */
    private static List<Ref> refs(Book book) {
        List<Ref> refs = new ArrayList<>();
        for (YearRecords year : book.years().values()) {
            year.samples().stream().filter(one -> one.date() == null || one.subjects().isEmpty())
                    .forEach(one -> refs.add(new Ref(year.label(), one)));
        }
        refs.sort(Comparator.comparing(Ref::label).reversed());
        return refs;
    }

    private static Answer unsettled(Call call, Form form, int status) throws Exception {
        Book book = call.desk().book();
        Attachments attachments = new Attachments(call.desk().folder(), call.desk().clock());
        List<Ref> refs = refs(book);
        List<Piece> pieces = new ArrayList<>();
        for (Ref ref : refs.subList(0, Math.min(AT_ONCE, refs.size()))) {
            pieces.add(piece(ref, attachments, call, book));
        }
        return new Answer.Shown("records/unsettled.jte", "To be settled", Part.RECORDS, Map.of("pieces", pieces, "form", form,
                "more", refs.size() - pieces.size(), "subjects", SubjectChoice.withAreas(), "missing", attachments.missing(book),
                "unnamed", attachments.unreferenced(book)), status);
    }

    private static Piece piece(Ref ref, Attachments attachments, Call call, Book book) {
        Sample sample = ref.sample();
        String picture = sample.files().isEmpty() ? null : sample.files().get(0);
        Optional<Attachments.Opened> opened = picture == null ? Optional.empty() : attachments.open(picture);
        List<Option> offers = new ArrayList<>();
        List<String> notes = List.of();
        if (opened.isPresent() && sample.date() == null) {
            PictureFacts facts = PictureFacts.read(opened.get().file(), opened.get().kind(), sample.title(), call.desk().clock());
            for (DateOffer offer : facts.offers()) {
                offers.add(Option.of(offer.day().toString(), org.hearthrule.terms.Wording.english().date(offer.day()) + ": " + offer.words()));
            }
            notes = facts.notes();
        }
        return new Piece(ref.words(), "/work/" + ref.words(), sample.title(), book.student(sample.student()).orElseThrow().name(),
                opened.isPresent() && opened.get().kind().hasPreview() ? picture : null, offers, notes, sample);
    }

    /** Saves every piece about which something was said, all or none. */
    private static Answer settle(Call call) throws Exception {
        Form form = call.form();
        List<UnaryOperator<Book>> edits = new ArrayList<>();
        for (Ref ref : refs(call.desk().book())) {
            edit(form, ref).ifPresent(edits::add);
        }
        if (!form.isFine()) {
            return unsettled(call, form, 422);
        }
        if (edits.isEmpty()) {
            return Answer.done("Nothing was said about any piece, so nothing was changed.", "/unsettled");
        }
        call.desk().edit(edits.size() == 1 ? "One piece settled" : edits.size() + " pieces settled", book -> {
            Book now = book;
            for (UnaryOperator<Book> one : edits) {
                now = one.apply(now);
            }
            return now;
        });
        return Answer.done(edits.size() == 1 ? "Saved: one piece." : "Saved: " + edits.size() + " pieces.", "/unsettled");
    }

    private static Optional<UnaryOperator<Book>> edit(Form form, Ref ref) {
        String key = ref.words();
        LocalDate typed = form.day("date:" + key);
        LocalDate day = typed != null ? typed : form.day("offer:" + key);
        List<String> subjects = form.ticked("subject:" + key, Subjects.ids());
        String title = form.text("title:" + key);
        String idea = form.text("idea:" + key);
        Sample was = ref.sample();
        Sample is = new Sample(was.id(), was.student(), day == null ? was.date() : day, subjects.isEmpty() ? was.subjects() : subjects,
                title == null ? was.title() : title, was.kind(), idea == null ? was.idea() : idea, was.files(), was.chosen());
        if (is.equals(was)) {
            return Optional.empty();
        }
        String to = is.date() == null ? ref.label() : YearLabel.of(is.date()).toString();
        return Optional.of(book -> {
            Optional<BookEdits.Found> found = BookEdits.find(book, ref.label(), was.id());
            if (found.isEmpty() || !found.get().record().equals(was)) {
                return book; // changed elsewhere since; it stays on the list
            }
            String id = to.equals(ref.label()) ? was.id() : BookEdits.newId(book, RecordKind.SAMPLES, to);
            return BookEdits.move(book, ref.label(), was.id(), to, new Sample(id, is.student(), is.date(), is.subjects(),
                    is.title(), is.kind(), is.idea(), is.files(), is.chosen()));
        });
    }
}
