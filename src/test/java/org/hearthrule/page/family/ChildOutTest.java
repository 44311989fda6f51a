package org.hearthrule.page.family;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.hearthrule.page.DemoVisit;
import org.hearthrule.page.FilledForm;
import org.hearthrule.page.Visit;
import org.junit.jupiter.api.Test;

/** A child entered by mistake leaves the book. */
class ChildOutTest extends DemoVisit {

    private static final String ADDRESS = "/family/child/out";

    private Map<String, String> files() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(visit.book())) {
            for (Path file : all.filter(one -> one.toString().endsWith(".json")).toList()) {
                files.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return files;
    }

    private FilledForm form() {
        return FilledForm.of(visit.get(ADDRESS + "?id=wren"), ADDRESS);
    }

    /** The numbers were counted in the demo family's files by other means: a script over each list. */
    @Test
    void whatGoesAndWhatStaysIsSaidBefore() throws IOException {
        Map<String, String> before = files();

        String page = visit.get(ADDRESS + "?id=wren").text();

        assertThat(page).containsSubsequence("note the end", "What goes", "Times taught under a law: 1",
                "Schools before: 1",
                "Grades, one for each school year: 2", "Entries in the log: 171", "Books: 23", "Pieces of work: 48",
                "Evaluations: 1",
                "Health papers: 7", "Answers to what the law asks: 1", "What stays", "Entries in the log: 162",
                "Books: 12",
                "Papers you sent: 3", "Papers you keep: 4", "Days that something happened on: 1",
                "3 photos and scans");
        assertThat(visit.get("/family/child?id=wren").body()).contains(ADDRESS + "?id=wren");
        assertThat(files()).isEqualTo(before);
    }

    @Test
    void itIsDoneOnlyWhenItIsConfirmed() throws IOException {
        Map<String, String> before = files();

        Visit.Reply reply = form().send(visit);

        assertThat(reply.status()).isEqualTo(422);
        assertThat(reply.text()).contains("Tick that you want this");
        assertThat(files()).isEqualTo(before);
    }

    @Test
    void nothingNamesTheChildAnyMoreAndOneUndoBringsItBack() throws IOException {
        // one edit and its undo, so that the files are spelled as the program spells them
        visit.post("/family/person", "name", "Selma Orrick", "roles", "evaluator");
        visit.post("/undo");
        FilledForm.of(visit.get("/family/grades"), "/family/grades").with("grade:2024-25:wren", "3")
                .with("grade:2025-26:wren", "4").send(visit);
        visit.post("/undo");
        Map<String, String> before = files();
        long pictures = pictures();

        assertThat(form().with("sure", "yes").send(visit).status()).isEqualTo(303);

        assertThat(String.join("\n", files().values())).doesNotContain("\"wren\"").contains("\"ansel\"")
                .contains("\"marit\"");
        // a record of two loses one child, a record of one goes: neither becomes a record of the whole family
        assertThat(files().get("family.json"))
                .contains("\"students\": [\"ansel\", \"marit\"], \"note\": \"last day of the school year\"");
        assertThat(count(files(), "\"students\": []")).isEqualTo(count(before, "\"students\": []"));
        assertThat(pictures()).isEqualTo(pictures);
        assertThat(visit.get("/checklist").status()).isEqualTo(200);
        assertThat(visit.get("/log?child=wren").body()).doesNotContain("value=\"wren\"");
        assertThat(visit.get("/family/child/out?id=wren").status()).isEqualTo(404);

        visit.post("/undo");
        assertThat(files()).isEqualTo(before);
    }

    private long pictures() throws IOException {
        try (Stream<Path> all = Files.walk(visit.book().resolve("photos"))) {
            return all.filter(Files::isRegularFile).count();
        }
    }

    private static long count(Map<String, String> files, String words) {
        return files.values().stream().mapToLong(text -> text.split(java.util.regex.Pattern.quote(words),
                -1).length - 1).sum();
    }

    /** Stops a record that came meanwhile from going unseen. */
    @Test
    void whatWasAddedMeanwhileIsShownFirst() throws IOException {
        FilledForm opened = form().with("sure", "yes");
        Path year = visit.book().resolve("2025-26.json");
        Files.writeString(year, Files.readString(year).replaceFirst("\"health\": \\[",
                "\"health\": [\n    {\"student\": \"wren\", \"kind\": "
                + "\"eye-examination\", \"date\": \"2026-05-11\"},"));

        Visit.Reply late = opened.send(visit);

        assertThat(late.status()).isEqualTo(422);
        assertThat(late.text()).contains("This was changed elsewhere", "Health papers: 8");
        assertThat(files().get("family.json")).contains("Wren Kestler");
        assertThat(FilledForm.of(late, ADDRESS).send(visit).status()).isEqualTo(303);
        assertThat(files().get("family.json")).doesNotContain("Wren Kestler");
    }

    @Test
    void theOnlyChildStays() throws IOException {
        for (String other : new String[] {"ansel", "marit"}) {
            FilledForm.of(visit.get(ADDRESS + "?id=" + other), ADDRESS).with("sure", "yes").send(visit);
        }

        Visit.Reply page = visit.get(ADDRESS + "?id=wren");
        assertThat(page.text()).contains("only child of this book").doesNotContain("Are you sure?");
        Visit.Reply sent = visit.post(ADDRESS, "id", "wren", "sure", "yes");

        assertThat(sent.status()).isEqualTo(422);
        assertThat(files().get("family.json")).contains("Wren Kestler");
        assertThat(visit.get(ADDRESS + "?id=nobody").status()).isEqualTo(404);
    }
}
