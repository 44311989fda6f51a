package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;

/** The fixed sentences of findings. */
class SayTest {

    private static final Wording SENTENCES = Wording.load(Say.FILE);

    /** Every text in the sources that looks like a key or like the start of one. */
    private static Set<String> texts() throws IOException {
        Pattern literal = Pattern.compile("\"([a-z]+[a-z.-]*)\"");
        Set<String> texts = new TreeSet<>();
        for (Path root : new Path[] {Path.of("src/main/java/org/hearthrule/rules"), Path.of("rules")}) {
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Matcher found = literal.matcher(Files.readString(file));
                    while (found.find()) {
                        texts.add(found.group(1));
                    }
                }
            }
        }
        return texts;
    }

    /** A key that is mistyped would only be missed in the middle of somebody's checklist. */
    @Test
    void everySentenceAskedForIsThere() throws IOException {
        Pattern asked = Pattern.compile("Say\\.it\\(\\s*\"([a-z.-]+)\"[,)]");
        Set<String> missing = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/org/hearthrule/rules"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Matcher found = asked.matcher(Files.readString(file));
                while (found.find()) {
                    if (!Say.knows(found.group(1))) {
                        missing.add(found.group(1));
                    }
                }
            }
        }

        assertThat(missing).isEmpty();
    }

    /** A sentence that nothing asks for grows stale unseen. */
    @Test
    void everySentenceIsAskedFor() throws IOException {
        Set<String> texts = texts();
        Set<String> idle = new TreeSet<>();
        for (String key : SENTENCES.keys()) {
            boolean used = texts.contains(key) || texts.stream().anyMatch(text -> text.contains(".")
                    && (key.startsWith(text + "-") || key.startsWith(text + ".")));
            if (!used) {
                idle.add(key);
            }
        }

        assertThat(idle).isEmpty();
    }
}
