package org.hearthrule.page.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;

/** {@code ./hearthrule open BOOK} as a process, as a family starts it. Its pages can be called by several threads. */
final class Opened implements AutoCloseable {

    private static final String STATUS_OF_PEAK = "VmHWM:";

    private final Process process;
    private final HttpClient client;
    private final String address;
    private final String cookie;
    private final Duration listening;
    private final Duration answered;

    /** What came back, and how long the whole of it took. */
    record Reply(int status, String body, long nanos, String location) { }

    /** Starts it and waits for its first page. The client is made before, so that its own start is not counted. */
    Opened(HttpClient client, Path book) throws IOException, InterruptedException {
        this.client = client;
        long start = System.nanoTime();
        process = new ProcessBuilder("./hearthrule", "open", book.toString(), "--no-browser", "--port", "0",
                "--as-of", ManyYears.DAY.toString()).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        BufferedReader said = new BufferedReader(
                new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        String first = said.readLine();
        if (first == null || !first.startsWith("http://")) {
            throw new IOException("the page does not open: " + first);
        }
        listening = Duration.ofNanos(System.nanoTime() - start);
        URI uri = URI.create(first);
        address = "http://" + uri.getAuthority();
        HttpResponse<String> entered = client.send(HttpRequest.newBuilder(uri).build(), BodyHandlers.ofString());
        cookie = entered.headers().firstValue("Set-Cookie").orElseThrow().split(";", 2)[0];
        if (get("/checklist").status() != 200) {
            throw new IOException("the first page is not answered");
        }
        answered = Duration.ofNanos(System.nanoTime() - start);
    }

    /** @return from the start of the process until it said where the page is */
    Duration listening() {
        return listening;
    }

    /** @return from the start of the process until the checklist was there, to its last letter */
    Duration answered() {
        return answered;
    }

    Reply get(String path) {
        return send(HttpRequest.newBuilder(URI.create(address + path)).GET());
    }

    /** @param form encoded, with the token */
    Reply post(String path, String form) {
        return send(HttpRequest.newBuilder(URI.create(address + path))
                .header("Content-Type", "application/x-www-form-urlencoded").header("Sec-Fetch-Site", "same-origin")
                .POST(BodyPublishers.ofString(form)));
    }

    private Reply send(HttpRequest.Builder request) {
        try {
            long start = System.nanoTime();
            HttpResponse<byte[]> response = client.send(request.header("Cookie", cookie).build(),
                    BodyHandlers.ofByteArray());
            long nanos = System.nanoTime() - start;
            String body = new String(response.body(), StandardCharsets.UTF_8);
            String location = response.headers().firstValue("Location").map(to -> to.replace(address, "")).orElse(null);
            return new Reply(response.statusCode(), body, nanos, location);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** @return the most memory the process held at once, in MB, as the system counts it; 0 where it cannot be told */
    long peakMegabytes() throws IOException {
        Path status = Path.of("/proc", Long.toString(process.pid()), "status");
        if (!Files.isReadable(status)) {
            return 0;
        }
        return Files.readAllLines(status).stream().filter(line -> line.startsWith(STATUS_OF_PEAK))
                .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")) / 1024).findFirst().orElse(0);
    }

    /** @return time the process has had on all cores */
    Duration onCores() {
        return process.info().totalCpuDuration().orElse(Duration.ZERO);
    }

    @Override
    public void close() throws InterruptedException {
        process.destroy();
        process.waitFor(10, TimeUnit.SECONDS);
    }
}
