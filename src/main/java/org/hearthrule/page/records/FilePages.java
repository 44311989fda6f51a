package org.hearthrule.page.records;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.pictures.Attachments;
import org.hearthrule.pictures.FileKind;
import org.hearthrule.pictures.Preview;
import org.hearthrule.pictures.Previews;

/** {@code /attachment} and {@code /preview}: photos and scans of the book, and nothing else of this machine. */
public final class FilePages implements Feature {

    private final ConcurrentMap<Path, Previews> previews = new ConcurrentHashMap<>();

    @Override
    public void addTo(Routes routes) {
        routes.get("/attachment", FilePages::attachment);
        routes.get("/preview", this::preview);
    }

    private static Attachments attachments(Call call) {
        return new Attachments(call.desk().folder(), call.desk().clock());
    }

    private static Answer attachment(Call call) {
        Optional<Attachments.Opened> opened = attachments(call).open(call.query("path"));
        if (opened.isEmpty()) {
            return new Answer.Nothing();
        }
        Attachments.Opened file = opened.get();
        Answer.Body body = out -> Files.copy(file.file(), out);
        return file.kind() != FileKind.PDF ? new Answer.Inline(file.kind().mediaType(), body)
                : new Answer.Download(file.file().getFileName().toString(), file.kind().mediaType(), body);
    }

    private Answer preview(Call call) throws Exception {
        Previews ofBook = previews.computeIfAbsent(call.desk().folder(), folder -> new Previews(attachments(call)));
        Previews.Size size = call.query("size").toLowerCase(Locale.ROOT).equals("large") ? Previews.Size.LARGE : Previews.Size.SMALL;
        Preview preview = ofBook.of(call.query("path"), size);
        if (preview instanceof Preview.Ready ready) {
            return new Answer.Inline("image/jpeg", out -> Files.copy(ready.file(), out));
        }
        return new Answer.Nothing();
    }
}
