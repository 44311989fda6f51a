package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Source;
import org.hearthrule.terms.Binding;
import org.hearthrule.terms.Wording;

/** Says where a rule stands, when and how that was read, and how binding it is. */
final class Sources {

    private final Wording wording;

    Sources(Wording wording) {
        this.wording = wording;
    }

    /** @return a sentence for each way and day of reading, in the order first met */
    List<String> sentences(List<Cite> cites) {
        List<String> sentences = new ArrayList<>();
        List<Cite> left = new ArrayList<>(cites);
        while (!left.isEmpty()) {
            Cite first = left.get(0);
            List<String> words = left.stream().filter(cite -> readAlike(cite, first)).map(Cite::words).distinct()
                    .toList();
            left.removeIf(cite -> readAlike(cite, first));
            sentences.add(wording.say("line.read." + first.basis().slug(),
                    String.join("; ", words), wording.date(first.read())));
        }
        return sentences;
    }

    /** @return one sentence: every text once, and the weakest way any of it was read */
    String brief(Line line) {
        Map<String, List<String>> sections = new LinkedHashMap<>();
        for (Cite cite : line.finding().cites()) {
            List<String> parts = sections.computeIfAbsent(cite.source().title(), title -> new ArrayList<>());
            for (String part : cite.section().split(", ")) {
                if (!part.isEmpty() && !parts.contains(part)) {
                    parts.add(part);
                }
            }
        }
        List<String> texts = new ArrayList<>();
        sections.forEach((title, parts) -> texts.add(parts.isEmpty() ? title : title + ' ' + String.join(", ", parts)));
        return wording.say("line.read." + line.basis().slug(), String.join("; ", texts),
                wording.date(line.read()));
    }

    /** @return how a text was read */
    String sentence(Source source) {
        return wording.say("line.read." + source.basis().slug(), source.title(),
                wording.date(source.read()));
    }

    private static boolean readAlike(Cite one, Cite other) {
        return one.basis() == other.basis() && one.read().equals(other.read());
    }

    /** @return a sentence when the rule is no law, else an empty text */
    String binding(Binding binding) {
        return binding == null || binding.law() ? ""
                : wording.say("line.binding." + binding.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
