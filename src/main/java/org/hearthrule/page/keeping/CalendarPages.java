package org.hearthrule.page.keeping;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.util.Map;
import org.hearthrule.checklist.CalendarFile;
import org.hearthrule.checklist.CalendarWriter;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.CalendarKey;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Desk;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.terms.Wording;

/** {@code /calendar}: the dates as a file, and an address on this machine that a calendar program can fetch. */
public final class CalendarPages implements Feature {

    private static final String TYPE = "text/calendar; charset=utf-8";

    @Override
    public void addTo(Routes routes) {
        routes.get("/calendar", CalendarPages::page);
        routes.get("/calendar-file", CalendarPages::download);
        routes.getWithoutBook(CalendarKey.PATH + "{file}", CalendarPages::fetched);
    }

    private static Answer page(Call call) throws IOException {
        return Answer.page("keeping/calendar.jte", "Calendar", Part.KEEPING, Map.of("address",
                call.address() + CalendarKey.PATH + CalendarKey.of(call.desk().folder()) + CalendarKey.ENDING));
    }

    private static Answer download(Call call) throws Exception {
        boolean names = call.query("names").equals("yes");
        byte[] text = calendar(call.desk(), names);
        return new Answer.Download("hearthrule-dates.ics", TYPE, out -> out.write(text));
    }

    /** A calendar program has no cookie: the address itself is the secret, and gives the dates alone. */
    private static Answer fetched(Call call) throws Exception {
        if (!call.house().hasBook()) {
            return new Answer.Nothing();
        }
        String expected = CalendarKey.of(call.desk().folder()) + CalendarKey.ENDING;
        boolean right = MessageDigest.isEqual(expected.getBytes(StandardCharsets.UTF_8),
                call.path("file").getBytes(StandardCharsets.UTF_8));
        if (!right) {
            return new Answer.Nothing();
        }
        byte[] text = calendar(call.desk(), false);
        return new Answer.Inline(TYPE, out -> out.write(text));
    }

    /** What was given last is kept, so that what has moved is told as moved and what has gone as called off. */
    private static synchronized byte[] calendar(Desk desk, boolean names) throws Exception {
        Path last = desk.ownFolder().resolve("calendar.ics");
        CalendarFile previous = Files.isRegularFile(last)
                ? CalendarFile.read(Files.readString(last, StandardCharsets.UTF_8)).orElse(CalendarFile.NONE) : CalendarFile.NONE;
        String key = desk.book().students().stream().map(child -> child.id()).toList().toString() + CalendarKey.of(desk.folder());
        String text = new CalendarWriter(Wording.english(), names).write(desk.checklist(), key, previous);
        Path fresh = Files.writeString(desk.ownFolder().resolve("calendar.ics.new"), text, StandardCharsets.UTF_8);
        Files.move(fresh, last, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
