package org.hearthrule.input;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/** Collects problems. Not safe for use by several threads at once. */
public final class Problems {

    private static final Comparator<Problem> BY_PLACE =
            Comparator.comparing((Problem problem) -> problem.place().file())
                    .thenComparingInt(problem -> problem.place().line())
                    .thenComparingInt(problem -> problem.place().column());

    private final List<Problem> found = new ArrayList<>();
    private final Map<String, Lines> sources = new HashMap<>();
    private boolean errors;

    /** Makes an empty collection. */
    public Problems() {}

    /**
     * Tells what a file contains, so that its lines can be shown.
     *
     * @param file the name that the places of the file carry
     * @param content the whole text of the file
     */
    public void register(String file, String content) {
        sources.put(file, new Lines(content));
    }

    /**
     * Tells where a file lies. It is read (as UTF-8) only when a problem in it is shown; a file that
     * cannot be read then has no lines to show.
     *
     * @param file the name that the places of the file carry
     * @param path where the file lies
     */
    public void register(String file, Path path) {
        sources.put(file, new Lines(path));
    }

    /**
     * Adds an error.
     *
     * @param place where it is
     * @param code a name in capitals with hyphens
     * @param found what is there
     * @param expected what should be there
     * @param perhaps a likely remedy, or null
     */
    public void error(Place place, String code, String found, String expected, String perhaps) {
        errors = true;
        this.found.add(new Problem(place, Severity.ERROR, code, found, expected, perhaps, null));
    }

    /**
     * Adds a warning.
     *
     * @param place where it is
     * @param code a name in capitals with hyphens
     * @param found what is there
     * @param expected what should be there
     * @param perhaps a likely remedy, or null
     */
    public void warning(Place place, String code, String found, String expected, String perhaps) {
        this.found.add(new Problem(place, Severity.WARNING, code, found, expected, perhaps, null));
    }

    /** Adds what others found. */
    public void addAll(Collection<Problem> others) {
        for (Problem problem : others) {
            errors |= problem.severity() == Severity.ERROR;
            found.add(problem);
        }
    }

    /** Returns whether any error (not only warnings) was added. */
    public boolean hasErrors() {
        return errors;
    }

    /** Returns whether nothing at all was added. */
    public boolean isEmpty() {
        return found.isEmpty();
    }

    /**
     * Returns every problem once, by file, line and column, and within one place in the order of
     * adding; each with its source line where the file was registered. Cannot be changed.
     */
    public List<Problem> all() {
        List<Problem> sorted = new ArrayList<>(new LinkedHashSet<>(found));
        sorted.sort(BY_PLACE);
        sorted.replaceAll(this::withExcerpt);
        return List.copyOf(sorted);
    }

    /**
     * Does nothing when there are no errors.
     *
     * @throws BadInputException carrying {@link #all()} when there is an error
     */
    public void throwIfErrors() throws BadInputException {
        if (errors) {
            throw new BadInputException(all());
        }
    }

    /** Returns a line of a registered file, or null. */
    String line(String file, int line) {
        Lines lines = sources.get(file);
        return lines == null ? null : lines.line(line);
    }

    private Problem withExcerpt(Problem problem) {
        Place place = problem.place();
        if (problem.excerpt() != null || place.sheet() != null) {
            return problem;
        }
        String excerpt = line(place.file(), place.line());
        return new Problem(
                place,
                problem.severity(),
                problem.code(),
                problem.found(),
                problem.expected(),
                problem.perhaps(),
                excerpt);
    }

    /** The lines of one file, split only when one is asked for. */
    private static final class Lines {

        private final Path path;
        private String content;
        private List<Integer> starts;
        private int lastLine;
        private String lastText;

        Lines(String content) {
            this.path = null;
            this.content = content;
        }

        Lines(Path path) {
            this.path = path;
        }

        String line(int line) {
            if (starts == null) {
                split();
            }
            if (line < 1 || line > starts.size()) {
                return null;
            }
            if (line != lastLine) {
                lastText = text(line);
                lastLine = line;
            }
            return lastText;
        }

        private String text(int line) {
            int start = starts.get(line - 1);
            int end = line < starts.size() ? starts.get(line) : content.length();
            while (end > start && (content.charAt(end - 1) == '\n' || content.charAt(end - 1) == '\r')) {
                end--;
            }
            return content.substring(start, end);
        }

        private void split() {
            if (content == null) {
                content = load(path);
            }
            starts = new ArrayList<>();
            starts.add(!content.isEmpty() && content.charAt(0) == '\uFEFF' ? 1 : 0);
            for (int i = 0; i < content.length(); i++) {
                char c = content.charAt(i);
                boolean pair = c == '\r' && i + 1 < content.length() && content.charAt(i + 1) == '\n';
                if (c == '\n' || c == '\r' && !pair) {
                    starts.add(i + 1);
                }
            }
        }

        private static String load(Path path) {
            try {
                return new String(Files.readAllBytes(path), StandardCharsets.UTF_8);
            } catch (IOException e) {
                return "";
            }
        }
    }
}
