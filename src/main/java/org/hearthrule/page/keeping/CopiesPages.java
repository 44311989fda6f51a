package org.hearthrule.page.keeping;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.Problems;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookArchive;
import org.hearthrule.records.Moments;
import org.hearthrule.terms.Wording;

/** {@code /keeping}, and {@code /copies}: the files of the book, the book as it was, and the whole book as one file. */
public final class CopiesPages implements Feature {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("h:mm:ss a", Locale.US);
    private static final String COPIES = "keeping/copies.jte";

    @Override
    public void addTo(Routes routes) {
        routes.get("/keeping", call -> Answer.page("keeping/keeping.jte", "Keeping", Part.KEEPING,
                Map.of("folder", call.desk().folder().toAbsolutePath().toString(), "remarks", call.desk().problems().size())));
        routes.get("/keeping/files", call -> Answer.page("keeping/files.jte", "The files of your book", Part.KEEPING,
                Map.of("folder", call.desk().folder().toAbsolutePath().toString(), "problems", call.desk().problems())));
        routes.get("/copies", call -> copies(call, Form.empty(), 200));
        routes.post("/copies/back", CopiesPages::back);
        routes.get("/copies/whole", CopiesPages::whole);
        routes.post("/copies/restore", CopiesPages::restore);
        routes.post("/copies/earlier", call -> earlier(call, call.form().raw("copy")));
    }

    /** A day and the states that are kept of it, the newest first. */
    public record Day(String words, List<Kept> kept) { }

    /**
     * A state that is kept.
     *
     * @param value as sent
     * @param words when it was written
     */
    public record Kept(String value, String words) { }

    private static Answer copies(Call call, Form form, int status) throws IOException {
        Map<LocalDate, List<Kept>> days = new LinkedHashMap<>();
        for (LocalDateTime moment : moments(call).all()) {
            days.computeIfAbsent(moment.toLocalDate(), day -> new ArrayList<>())
                    .add(new Kept(moment.toString(), TIME.format(moment)));
        }
        List<Day> shown = days.entrySet().stream()
                .map(day -> new Day(Wording.english().date(day.getKey()), day.getValue())).toList();
        return new Answer.Shown(COPIES, "Copies", Part.KEEPING, Map.of("days", shown, "earlier", earlier(call), "form", form),
                status);
    }

    /** @return the book as it was each time before a whole copy was put back */
    private static List<Kept> earlier(Call call) throws IOException {
        List<Kept> earlier = new ArrayList<>();
        for (Path copy : BookArchive.earlier(call.desk().folder())) {
            LocalDateTime at = LocalDateTime.ofInstant(Files.getLastModifiedTime(copy).toInstant(), call.desk().clock().getZone());
            earlier.add(new Kept(copy.getFileName().toString(), Wording.english().date(at.toLocalDate()) + ", " + TIME.format(at)));
        }
        return earlier;
    }

    private static Moments moments(Call call) {
        return new Moments(call.desk().folder(), call.desk().clock().getZone());
    }

    private static Answer back(Call call) throws Exception {
        Optional<LocalDateTime> moment = moments(call).all().stream()
                .filter(one -> one.toString().equals(call.form().raw("moment"))).findFirst();
        if (moment.isEmpty()) {
            return Answer.done("That state is kept no longer. Nothing was changed.", "/copies");
        }
        String when = Wording.english().date(moment.get().toLocalDate()) + ", " + TIME.format(moment.get());
        Book then = moments(call).at(moment.get(), call.desk().book());
        call.desk().edit("The book as it was on " + when, now -> then);
        return Answer.done("The book is as it was on " + when + ". This can be taken back below.", "/checklist");
    }

    private static Answer whole(Call call) {
        String name = "hearthrule-" + call.desk().now().toLocalDate() + ".zip";
        return new Answer.Download(name, "application/zip", out -> {
            try {
                BookArchive.write(call.desk().folder(), out, call.desk().clock());
            } catch (org.hearthrule.input.BadInputException e) {
                throw new IOException("the book cannot be copied", e);
            }
        });
    }

    private static Answer restore(Call call) throws Exception {
        Form form = call.form();
        List<Call.Upload> files = call.files("copy");
        if (files.isEmpty()) {
            form.complain("copy", "Choose the ZIP file of a whole copy.");
            return copies(call, form, 422);
        }
        Path zip = Files.createTempFile("hearthrule-copy-", ".zip");
        try {
            try (InputStream in = files.get(0).open()) {
                Files.copy(in, zip, StandardCopyOption.REPLACE_EXISTING);
            }
            Problems problems = new Problems();
            if (BookArchive.check(zip, problems).isEmpty()) {
                form.complain("copy", "This is no whole copy of a book, or it is damaged: " + problems.all().get(0).words()
                        + " Nothing was changed.");
                return copies(call, form, 422);
            }
            return putBack(call, zip);
        } finally {
            Files.deleteIfExists(zip);
        }
    }

    /** Undoes the putting back of a whole copy; can be undone in the same way. */
    private static Answer earlier(Call call, String name) throws Exception {
        for (Path copy : BookArchive.earlier(call.desk().folder())) {
            if (copy.getFileName().toString().equals(name)) {
                return putBack(call, copy);
            }
        }
        return Answer.done("That state is kept no longer. Nothing was changed.", "/copies");
    }

    private static Answer putBack(Call call, Path zip) throws Exception {
        BookArchive.Restored restored = BookArchive.restore(zip, call.desk().folder(), call.desk().clock());
        String made = Wording.english().date(restored.contents().made().atZone(call.desk().clock().getZone()).toLocalDate());
        return Answer.done("The book is as in the copy made on " + made + '.' + (restored.earlier() == null ? ""
                : " How it was before is kept under Keeping, Copies, and can be put back there."), "/checklist");
    }
}
