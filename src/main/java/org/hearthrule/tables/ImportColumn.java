package org.hearthrule.tables;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;

/** What a column of a table may hold. Named on the command line by the constant in small letters. */
public enum ImportColumn {
    DATE("the day", "date", "day", "log date", "activity date", "date of activity"),
    MINUTES("the time spent", "minutes", "mins", "min", "time", "duration", "time spent", "minutes spent", "length",
            "hours", "hrs"),
    TITLE("the title", "title", "book", "book title", "title of book", "title of the book", "name of book"),
    AUTHOR("the author", "author", "authors", "by", "writer", "author s"),
    STARTED("the day it was begun", "started", "begun", "start", "date started", "start date", "started on"),
    FINISHED("the day it was finished", "finished", "ended", "end", "completed", "read", "date", "date finished",
            "date completed", "date read", "finish date", "end date", "finished on"),
    STUDENTS("the children", "child", "children", "student", "students", "kid", "kids", "name", "names", "who",
            "child name", "student name", "learner", "learners", "pupil", "pupils"),
    SUBJECTS("the subjects", "subject", "subjects", "subject s", "subject area", "subject areas"),
    DID("what was done", "did", "note", "notes", "activity", "activities", "description", "what we did",
            "what was done", "lesson", "lessons", "details", "work", "entry", "comment", "comments"),
    MATERIALS("the books and materials", "materials", "material", "books", "resources", "books and materials"),
    IDEA("the idea it served", "idea", "theme", "topic"),
    PLACE("the place", "place", "location", "where"),
    CORE("whether it is a core subject", "core", "core subject"),
    BY("who kept the log", "kept by"),
    WRITTEN("when it was written", "written");

    private final String words;
    private final Set<String> headers;

    ImportColumn(String words, String... headers) {
        this.words = words;
        this.headers = Set.copyOf(List.of(headers));
    }

    /** @return what the column holds, in plain words */
    public String words() {
        return words;
    }

    /** @return the name used on the command line, for example {@code date} */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @return positions, from 0, of the headers that say beyond doubt that this is the column */
    public List<Integer> meantBy(List<String> headers) {
        return IntStream.range(0, headers.size()).filter(i -> isMeantBy(headers.get(i))).boxed().toList();
    }

    private boolean isMeantBy(String header) {
        StringBuilder plain = new StringBuilder();
        for (String word : header.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")) {
            plain.append(plain.length() == 0 || word.isEmpty() ? "" : " ").append(word);
        }
        return headers.contains(plain.toString());
    }
}
