package org.hearthrule.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tries what another program, another page in the browser or another machine could try. */
class ClosedToOthersTest extends DemoVisit {

    /** Sends a request byte by byte, as no client library would, and returns all that comes back. */
    private String raw(String request) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", visit.server().port())) {
            socket.setSoTimeout(5_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String cookie() {
        // the start address gives the cookie; a second one gives it to a raw request
        String start = visit.server().newStartAddress().substring(visit.address().length());
        try {
            String answer = raw("GET " + start + " HTTP/1.1\r\nHost: 127.0.0.1:" + visit.server().port()
                    + "\r\nConnection: close\r\n\r\n");
            int at = answer.indexOf("Set-Cookie: ") + "Set-Cookie: ".length();
            return answer.substring(at, answer.indexOf(';', at));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** A server on every address of the machine shows a family's records to the whole café. */
    @Test
    void itListensOnLoopbackOnly() throws Exception {
        for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : Collections.list(card.getInetAddresses())) {
                if (!address.isLoopbackAddress()) {
                    assertThat(answers(address)).as(address.toString()).isFalse();
                }
            }
        }
        assertThat(answers(InetAddress.getByName("127.0.0.1"))).isTrue();
    }

    private boolean answers(InetAddress address) {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(address, visit.server().port()), 1_000);
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /** A name in somebody's domain that points to 127.0.0.1 makes a foreign page ours, unless the host is compared exactly. */
    @ParameterizedTest
    @ValueSource(strings = {"evil.example", "127.0.0.1", "127.0.0.1:1", "127.0.0.1.evil.example:PORT", "localhost:PORT.evil.example",
            "evil.example:PORT", "127.0.0.1:PORT@evil.example", "LOCALHOST.:PORT", "[::1]:PORT", ""})
    void anotherHostIsTurnedAway(String host) throws IOException {
        String answer = raw("GET /checklist HTTP/1.1\r\nHost: " + host.replace("PORT", "" + visit.server().port())
                + "\r\nCookie: " + cookie() + "\r\nConnection: close\r\n\r\n");

        assertThat(answer).matches("(?s)HTTP/1.1 (421|400) .*").doesNotContain("Kestler");
    }

    @Test
    void theRightHostIsLetIn() throws IOException {
        String answer = raw("GET /checklist HTTP/1.1\r\nHost: localhost:" + visit.server().port() + "\r\nCookie: " + cookie()
                + "\r\nConnection: close\r\n\r\n");

        assertThat(answer).startsWith("HTTP/1.1 200 ").contains("Kestler");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/checklist", "/", "/assets/frame.css", "/welcome", "/nowhere", "/attachment?path=family.json"})
    void withoutTheCookieThereIsNothingToSee(String path) throws Exception {
        var answer = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(visit.address() + path)).build(),
                BodyHandlers.ofString());

        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).doesNotContain("Kestler").doesNotContain("<");
    }

    @Test
    void aStartAddressIsGoodForOneUse() throws Exception {
        String start = visit.server().newStartAddress();
        var first = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(start)).build(), BodyHandlers.ofString());
        var second = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create(start)).build(), BodyHandlers.ofString());

        assertThat(first.statusCode()).isEqualTo(302);
        assertThat(first.headers().firstValue("Set-Cookie")).hasValueSatisfying(cookie -> assertThat(cookie)
                .contains("HttpOnly").contains("SameSite=Strict").contains("Path=/"));
        assertThat(second.statusCode()).isEqualTo(403);
        assertThat(second.headers().firstValue("Set-Cookie")).isEmpty();
    }

    @Test
    void aWrongStartAddressGivesNoCookie() {
        var answer = visit.send(HttpRequest.newBuilder(URI.create(visit.address() + "/start/guess")));

        assertThat(answer.header("Set-Cookie")).isNull();
    }

    private Visit.Reply changeWith(String body, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(visit.address() + "/demo/leave"))
                .header("Content-Type", "application/x-www-form-urlencoded").POST(BodyPublishers.ofString(body));
        for (int i = 0; i < headers.length; i += 2) {
            request.header(headers[i], headers[i + 1]);
        }
        return visit.send(request);
    }

    @Test
    void aChangeNeedsTheToken() {
        assertThat(changeWith("token=guess", "Sec-Fetch-Site", "same-origin").status()).isEqualTo(403);
        assertThat(changeWith("", "Sec-Fetch-Site", "same-origin").status()).isEqualTo(403);
        assertThat(changeWith("token=" + visit.token(), "Sec-Fetch-Site", "same-origin").status()).isEqualTo(303);
    }

    /** A page on another port of this machine is the same site to a browser, and sends our cookie along. */
    @ParameterizedTest
    @ValueSource(strings = {"cross-site", "same-site", "none"})
    void aChangeFromAnotherPageIsRefusedEvenWithTheToken(String site) {
        assertThat(changeWith("token=" + visit.token(), "Sec-Fetch-Site", site).status()).isEqualTo(403);
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://evil.example", "http://127.0.0.1:1", "https://127.0.0.1", "null"})
    void aChangeFromAnotherOriginIsRefusedEvenWithTheToken(String origin) {
        assertThat(changeWith("token=" + visit.token(), "Origin", origin).status()).isEqualTo(403);
    }

    @ParameterizedTest
    @ValueSource(strings = {"cross-site", "same-site"})
    void aForeignPageCannotLook(String site) {
        var answer = visit.send(HttpRequest.newBuilder(URI.create(visit.address() + "/checklist")).header("Sec-Fetch-Site", site));

        assertThat(answer.status()).isEqualTo(403);
        assertThat(answer.body()).doesNotContain("Kestler");
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "PROPFIND"})
    void otherMethodsAreRefused(String method) throws IOException {
        String answer = raw(method + " /checklist HTTP/1.1\r\nHost: 127.0.0.1:" + visit.server().port() + "\r\nCookie: "
                + cookie() + "\r\nConnection: close\r\n\r\n");

        assertThat(answer).matches("(?s)HTTP/1.1 (405|400|501) .*").doesNotContain("Kestler");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/assets/../family.json", "/assets/..%2f..%2ffamily.json", "/assets/%2e%2e/book/family.json",
            "/assets//etc/passwd", "/assets/..%5cfamily.json", "/assets/frame.css%00.txt", "/assets/....//family.json"})
    void assetsAreAFixedList(String path) throws IOException {
        String answer = raw("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + visit.server().port() + "\r\nCookie: " + cookie()
                + "\r\nConnection: close\r\n\r\n");

        assertThat(answer).matches("(?s)HTTP/1.1 (400|404) .*").doesNotContain("\"students\"").doesNotContain("root:");
    }

    @Test
    void everyAnswerForbidsWhatIsInlineOrFromElsewhere() {
        for (String path : List.of("/checklist", "/nowhere", "/assets/frame.css")) {
            Visit.Reply reply = visit.get(path);

            assertThat(reply.header("Content-Security-Policy")).contains("default-src 'none'").contains("script-src 'self'")
                    .contains("frame-ancestors 'none'").contains("form-action 'self'").doesNotContain("unsafe");
            assertThat(reply.header("X-Content-Type-Options")).isEqualTo("nosniff");
            assertThat(reply.header("Referrer-Policy")).isEqualTo("no-referrer");
            assertThat(reply.header("Cross-Origin-Resource-Policy")).isEqualTo("same-origin");
        }
        assertThat(visit.get("/checklist").header("Cache-Control")).isEqualTo("no-store");
        assertThat(visit.get("/checklist").header("Server")).isNull();
    }

    /** A name with a tag in it, written into the book from outside, must come out as text. */
    @Test
    void whatStandsInTheBookIsShownAsText() throws IOException {
        Path family = visit.book().resolve("family.json");
        Files.writeString(family, Files.readString(family).replace("Kestler family, Tennick Landing",
                "<script>alert(1)</script><img src=x onerror=alert(2)>"));

        String page = visit.get("/checklist").body();

        assertThat(page).doesNotContain("<script>alert").doesNotContain("<img src=x").contains("&lt;script&gt;");
    }

    @Test
    void aFormThatIsTooLargeIsRefusedAndTheBookIsAsItWas() throws IOException {
        byte[] before = Files.readAllBytes(visit.book().resolve("2025-26.json"));

        Visit.Reply reply = visit.post("/undo", "much", "x".repeat(2_000_000));

        assertThat(reply.status()).isIn(400, 413);
        assertThat(Files.readAllBytes(visit.book().resolve("2025-26.json"))).isEqualTo(before);
    }

    @Test
    void anAddressToComeBackToIsOneOfThisPage() {
        for (String away : List.of("http://evil.example/", "//evil.example/", "/\\evil.example", "javascript:alert(1)")) {
            assertThat(visit.post("/undo", "back", away).header("Location")).as(away).endsWith("/checklist");
        }
    }
}
