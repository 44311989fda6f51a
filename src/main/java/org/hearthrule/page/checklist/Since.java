package org.hearthrule.page.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hearthrule.page.frame.PageWords;
import org.hearthrule.page.sheet.Addresses;

/**
 * What has changed since the last look.
 *
 * @param title   with the day of that look
 * @param changes the first of them
 * @param more    how many come after these
 */
public record Since(String title, List<Change> changes, int more) {

    private static final int SHOWN = 12;

    /**
     * @param words   a sentence
     * @param address where it stands, or null when it stands nowhere any more
     */
    public record Change(String words, String address) { }

    /** What happened to a line, the same for all children it happened to. */
    private record What(String title, Look.Stood before, Look.Stood after) {

        static What of(Look.Stood before, Look.Stood after) {
            return new What((after == null ? before : after).title(), nameless(before), nameless(after));
        }

        private static Look.Stood nameless(Look.Stood line) {
            return line == null ? null : new Look.Stood(line.title(), "", line.section(), line.due());
        }

        String words(List<String> names) {
            String whose = names.isEmpty() ? title : PageWords.say("since.whose", title, PageWords.and(names));
            if (before == null) {
                return PageWords.say("since.new", whose, state(after));
            } else if (after == null) {
                return PageWords.say("since.gone", whose, state(before));
            } else if (before.section() == after.section()) {
                return PageWords.say("since.moved", whose, due(after.due()), due(before.due()));
            }
            return PageWords.say("since.now", whose, state(after), state(before));
        }

        private static String state(Look.Stood line) {
            String word = PageWords.say("since.is." + line.section().slug());
            return line.due() == null ? word : PageWords.say("since.with-day", word, PageWords.date(line.due()));
        }

        private static String due(LocalDate day) {
            return day == null ? PageWords.say("since.no-day") : PageWords.date(day);
        }
    }

    /**
     * @param child name of the one child looked at, or null for all
     * @return what is otherwise now; null when nothing is
     */
    static Since of(Look before, Look now, String child) {
        List<Change> changes = new ArrayList<>();
        now.laws().forEach((slug, law) -> {
            Look.Law was = before.laws().get(slug);
            if (was != null && !was.hash().equals(law.hash())) {
                changes.add(new Change(PageWords.say("since.law", law.name(), PageWords.date(law.lastRead())), "/law/" + slug));
            }
        });
        Map<What, List<String>> lines = new LinkedHashMap<>();
        Map<What, String> addresses = new LinkedHashMap<>();
        Map<String, Look.Stood> all = new LinkedHashMap<>(now.lines());
        before.lines().forEach(all::putIfAbsent);
        all.forEach((id, line) -> {
            Look.Stood was = before.lines().get(id);
            Look.Stood is = now.lines().get(id);
            boolean other = was == null || is == null || was.section() != is.section() || !Objects.equals(was.due(), is.due());
            if (other && (child == null || line.name().isEmpty() || line.name().equals(child))) {
                What what = What.of(was, is);
                List<String> names = lines.computeIfAbsent(what, key -> new ArrayList<>());
                if (!line.name().isEmpty() && !names.contains(first(line.name()))) {
                    names.add(first(line.name()));
                }
                if (is != null) {
                    addresses.putIfAbsent(what, "/line?id=" + Addresses.encoded(id));
                }
            }
        });
        lines.forEach((what, names) -> changes.add(new Change(what.words(names), addresses.get(what))));
        return changes.isEmpty() ? null : new Since(PageWords.say("since.title", PageWords.date(before.day())),
                changes.stream().limit(SHOWN).toList(), Math.max(0, changes.size() - SHOWN));
    }

    private static String first(String name) {
        return name.split(" ", 2)[0];
    }
}
