package org.hearthrule.page.records;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.frame.SubjectChoice;
import org.hearthrule.page.records.Settling.Said;
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
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.Sample;

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
        routes.get("/unsettled", call -> unsettled(call, Form.empty(), List.of(), 0, 200));
        routes.post("/unsettled", PhotoPages::settle);
    }

    /** A list of the book and how much is in it. */
    public record Count(String path, String words, String count) { }

    /**
     * A piece that is not settled yet.
     *
     * @param ref     year and id, as sent
     * @param print   its print
     * @param picture path of its first file, or null
     * @param offers  days it may be of, with their origin
     * @param notes   what else its file tells
     */
    public record Piece(String ref, String print, String address, String title, String who, String picture,
                        List<Option> offers, List<String> notes, Sample sample) { }

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

    private static Answer unsettled(Call call, Form form, List<Settling.Left> left, int saved, int status)
            throws Exception {
        Book book = call.desk().book();
        Attachments attachments = new Attachments(call.desk().folder(), call.desk().clock());
        List<Ref> refs = refs(book);
        List<Piece> pieces = new ArrayList<>();
        for (Ref ref : refs.subList(0, Math.min(AT_ONCE, refs.size()))) {
            pieces.add(piece(ref, attachments, call, book));
        }
        return new Answer.Shown("records/unsettled.jte", "To be settled", Part.RECORDS, Map.of("pieces", pieces,
                "form", form, "left", left, "saved", saved, "more", refs.size() - pieces.size(), "subjects",
                SubjectChoice.withAreas(), "missing", attachments.missing(book),
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
        return new Piece(ref.words(), Print.of(sample), "/work/" + ref.words(), sample.title(),
                book.student(sample.student()).orElseThrow().name(),
                opened.isPresent() && opened.get().kind().hasPreview() ? picture : null, offers, notes, sample);
    }

    /** Saves what was said, except about pieces that were changed elsewhere meanwhile: those are shown again. */
    private static Answer settle(Call call) throws Exception {
        Form form = call.form();
        List<Said> said = new ArrayList<>();
        form.all("piece").stream().distinct().forEach(ref -> Said.of(form, ref).ifPresent(said::add));
        if (!form.isFine()) {
            return unsettled(call, form, List.of(), 0, 422);
        }
        AtomicReference<Settling> done = new AtomicReference<>();
        call.desk().edit("Pieces of work settled", book -> { // perhaps tried several times: the last one counts
            done.set(Settling.of(book, said));
            return done.get().book();
        });
        int saved = done.get().saved();
        List<Settling.Left> left = done.get().left();
        if (!left.isEmpty()) {
            Form again = Form.empty();
            left.forEach(one -> one.said().fill(again));
            return unsettled(call, again, left, saved, saved == 0 ? 422 : 200);
        }
        return Answer.done(saved == 0 ? "Nothing was said about any piece, so nothing was changed."
                : saved == 1 ? "Saved: one piece." : "Saved: " + saved + " pieces.", "/unsettled");
    }
}
