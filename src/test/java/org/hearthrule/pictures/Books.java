package org.hearthrule.pictures;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Problems;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookReader;

/** Books that name files. */
final class Books {

    private Books() { }

    /** Returns a book with a sample for each path. */
    static Book naming(String... paths) {
        List<String> samples = new ArrayList<>();
        for (String path : paths) {
            samples.add("{\"student\": \"ada\", \"title\": \"A piece\", \"files\": [\"" + path + "\"]}");
        }
        return read("\"samples\": [" + String.join(", ", samples) + "]");
    }

    /** Returns a book with these keys in its only year. */
    static Book read(String year) {
        Problems problems = new Problems();
        return BookReader.read(Map.of("family.json",
                "{\"hearthrule\": 1, \"students\": [{\"id\": \"ada\", \"name\": \"Ada Rowe\"}]}",
                "2025-26.json", "{\"hearthrule\": 1, \"year\": \"2025-26\", " + year + "}"), problems)
                .orElseThrow(() -> new AssertionError(problems.all().toString()));
    }
}
