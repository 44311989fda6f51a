package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.hearthrule.input.Problems;
import org.junit.jupiter.api.Test;

class RecordFilesTest {

    @Test
    void everyFileThatARecordNamesIsNamed() {
        Book book = read("\"samples\": [{\"student\": \"ada\", \"title\": \"Kite\", \"files\": [\"work/a.jpg\", \"b.pdf\"]}],"
                + " \"filings\": [{\"paper\": \"notice-of-intent\", \"sent\": \"2025-08-01\", \"copy\": \"work/c.pdf\"},"
                + " {\"paper\": \"notice-of-intent\", \"sent\": \"2025-08-02\"}],"
                + " \"documents\": [{\"kind\": \"birth-certificate\", \"date\": \"2025-08-01\", \"file\": \"work/d.jpg\"}],"
                + " \"tests\": [{\"student\": \"ada\", \"date\": \"2026-04-01\", \"file\": \"work/e.pdf\"},"
                + " {\"student\": \"ada\", \"date\": \"2026-04-02\"}],"
                + " \"evaluations\": [{\"student\": \"ada\", \"date\": \"2026-05-01\", \"method\": \"narrative\", \"file\": \"work/f.pdf\"}],"
                + " \"health\": [{\"student\": \"ada\", \"kind\": \"immunization-record\", \"date\": \"2025-08-01\", \"file\": \"g.png\"}]");

        assertThat(RecordFiles.of(book)).containsExactly("b.pdf", "g.png", "work/a.jpg", "work/c.pdf", "work/d.jpg",
                "work/e.pdf", "work/f.pdf");
    }

    /** A kind of record that names a file, and is forgotten here, would have its photos tidied away as nobody's. */
    @Test
    void everyRecordThatCouldNameAFileIsKnownHere() {
        Set<String> found = new TreeSet<>();
        for (Class<?> type : YearRecords.class.getDeclaredClasses()) {
            if (type.isRecord()) {
                for (RecordComponent component : type.getRecordComponents()) {
                    if (component.getName().matches("(?i).*(file|copy|scan|photo|picture|attachment|image).*")) {
                        found.add(type.getSimpleName() + "." + component.getName());
                    }
                }
            }
        }

        assertThat(found).containsExactly("Evaluation.file", "Filing.copy", "HealthPaper.file", "KeptDocument.file",
                "Sample.files", "TestTaken.file");
    }

    private static Book read(String lists) {
        Problems problems = new Problems();
        return BookReader.read(Map.of("family.json",
                "{\"hearthrule\": 1, \"students\": [{\"id\": \"ada\", \"name\": \"Ada Rowe\"}]}",
                "2025-26.json", "{\"hearthrule\": 1, \"year\": \"2025-26\", " + lists + "}"), problems)
                .orElseThrow(() -> new AssertionError(problems.all().toString()));
    }
}
