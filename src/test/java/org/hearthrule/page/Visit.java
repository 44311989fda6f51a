package org.hearthrule.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hearthrule.law.Packaged;
import org.hearthrule.page.frame.Settings;

/**
 * A visit to the page, as a browser without script makes it: a server on a free port over a copy of a book, with the
 * cookie of its start address.
 */
public final class Visit implements AutoCloseable {

    /** The demo family, its day. */
    public static final Path DEMO = Path.of("test-fixtures", "books", "tennick-landing");
    public static final LocalDate DAY = LocalDate.of(2026, 5, 20);

    private static final Pattern TOKEN = Pattern.compile("name=\"token\" value=\"([^\"]+)\"");

    private final PageServer server;
    private final Path book;
    private final HttpClient client = HttpClient.newBuilder().cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NEVER).build();
    private String token;

    /** What came back. */
    public record Reply(int status, String body, HttpResponse<byte[]> whole) {

        public String header(String name) {
            return whole.headers().firstValue(name).orElse(null);
        }

        /** @return what a reader sees of a page, with one space between words */
        public String text() {
            return body.replaceAll("(?s)<(script|style|title)\\b.*?</\\1>", " ").replaceAll("<[^>]*>", " ")
                    .replace("&lt;", "<").replace("&gt;", ">").replace("&#34;", "\"").replace("&#39;", "'").replace("&amp;", "&")
                    .replaceAll("\\s+", " ").replaceAll(" ([.,;:?!)])", "$1");
        }
    }

    /**
     * @param source book to copy, or null for an empty folder
     * @param folder where everything of this visit lies; anew for each test
     * @param today  the day of the page, noon in New York
     */
    public Visit(Path source, Path folder, LocalDate today) {
        try {
            book = folder.resolve("book");
            if (source != null) {
                copy(source, book);
            }
            Instant noon = today.atTime(12, 0).atZone(ZoneId.of("America/New_York")).toInstant();
            server = PageServer.start(new Settings(book, folder.resolve("demo"), false, Packaged.profiles(),
                    Clock.fixed(noon, ZoneId.of("America/New_York")), null, 0, "test"));
            get(server.newStartAddress().substring(address().length()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** @return a visit to the demo family's book on its day */
    public static Visit demo(Path folder) {
        return new Visit(DEMO, folder, DAY);
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else if (!path.getFileName().toString().startsWith(".")) {
                    Files.copy(path, target);
                }
            }
        }
    }

    public PageServer server() {
        return server;
    }

    /** @return the folder of the book */
    public Path book() {
        return book;
    }

    /** @return for example {@code http://127.0.0.1:40123} */
    public String address() {
        return "http://127.0.0.1:" + server.port();
    }

    /** @return the page of a path, without following it elsewhere */
    public Reply get(String path) {
        Reply reply = send(HttpRequest.newBuilder(URI.create(address() + path)).GET());
        Matcher found = TOKEN.matcher(reply.body());
        if (found.find()) {
            token = found.group(1);
        }
        return reply;
    }

    /** @return the page of a path, and of where that leads */
    public Reply follow(String path) {
        Reply reply = get(path);
        for (int hops = 0; hops < 5 && reply.status() >= 300 && reply.status() < 400; hops++) {
            reply = get(reply.header("Location").replace(address(), ""));
        }
        return reply;
    }

    /**
     * Sends a form with the token of this run, as a browser does.
     *
     * @param namesAndValues one after the other; a name may come several times
     */
    public Reply post(String path, String... namesAndValues) {
        StringBuilder body = new StringBuilder("token=").append(encode(token()));
        for (int i = 0; i < namesAndValues.length; i += 2) {
            body.append('&').append(encode(namesAndValues[i])).append('=').append(encode(namesAndValues[i + 1]));
        }
        return send(HttpRequest.newBuilder(URI.create(address() + path))
                .header("Content-Type", "application/x-www-form-urlencoded").header("Sec-Fetch-Site", "same-origin")
                .POST(BodyPublishers.ofString(body.toString())));
    }

    /** Sends a form and looks at the page it leads to. */
    public Reply postAndFollow(String path, String... namesAndValues) {
        Reply reply = post(path, namesAndValues);
        return reply.status() == 303 ? follow(reply.header("Location").replace(address(), "")) : reply;
    }

    /** A file of a form. */
    public record FilePart(String field, String name, byte[] content) { }

    /** Sends a form with files. */
    public Reply upload(String path, List<FilePart> files, String... namesAndValues) {
        String line = "----hearthrule-test-boundary";
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        List<String> values = new ArrayList<>(List.of("token", token()));
        values.addAll(List.of(namesAndValues));
        for (int i = 0; i < values.size(); i += 2) {
            body.writeBytes(("--" + line + "\r\nContent-Disposition: form-data; name=\"" + values.get(i) + "\"\r\n\r\n"
                    + values.get(i + 1) + "\r\n").getBytes(StandardCharsets.UTF_8));
        }
        for (FilePart file : files) {
            body.writeBytes(("--" + line + "\r\nContent-Disposition: form-data; name=\"" + file.field() + "\"; filename=\""
                    + file.name() + "\"\r\nContent-Type: application/octet-stream\r\n\r\n").getBytes(StandardCharsets.UTF_8));
            body.writeBytes(file.content());
            body.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
        }
        body.writeBytes(("--" + line + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return send(HttpRequest.newBuilder(URI.create(address() + path))
                .header("Content-Type", "multipart/form-data; boundary=" + line).header("Sec-Fetch-Site", "same-origin")
                .POST(BodyPublishers.ofByteArray(body.toByteArray())));
    }

    /** @return the token that stands in the page's forms */
    public String token() {
        if (token == null) {
            follow("/");
            if (token == null) {
                get("/welcome");
            }
        }
        return token;
    }

    /** Sends any request with the cookie of this visit. */
    public Reply send(HttpRequest.Builder request) {
        try {
            HttpResponse<byte[]> response = client.send(request.build(), BodyHandlers.ofByteArray());
            return new Reply(response.statusCode(), new String(response.body(), StandardCharsets.UTF_8), response);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** @return what the first group of a pattern finds in a text; a pattern that finds nothing fails the test */
    public static String first(String pattern, String text) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertThat(found.find()).as(pattern).isTrue();
        return found.group(1);
    }

    public static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.close();
    }
}
