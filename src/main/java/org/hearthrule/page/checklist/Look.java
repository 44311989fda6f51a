package org.hearthrule.page.checklist;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Line;
import org.hearthrule.checklist.Section;
import org.hearthrule.law.Profile;

/**
 * What stood on a checklist when somebody looked at it: enough to say at the next look what has changed. Kept as lines
 * of text whose parts are parted by tabs.
 *
 * @param day   of the look
 * @param lines by id; what is not due, what is not asked and open questions of the law are left out
 * @param laws  by short name
 */
record Look(LocalDate day, Map<String, Stood> lines, Map<String, Law> laws) {

    private static final String FIRST = "hearthrule-look-1";
    private static final List<Section> LEFT_OUT = List.of(Section.LAW_UNCLEAR, Section.NOT_DUE, Section.NOT_ASKED);

    /**
     * A line.
     *
     * @param name of the child, or empty
     * @param due  or null
     */
    record Stood(String title, String name, Section section, LocalDate due) { }

    /** A law's file. */
    record Law(String name, String hash, LocalDate lastRead) { }

    static Look at(Checklist checklist) {
        Map<String, Stood> lines = new LinkedHashMap<>();
        for (Line line : checklist.lines()) {
            if (!LEFT_OUT.contains(line.section())) {
                String name = line.finding().studentName() == null ? "" : line.finding().studentName();
                lines.put(line.id(), new Stood(plain(line.finding().title()), plain(name), line.section(), line.finding().due()));
            }
        }
        Map<String, Law> laws = new LinkedHashMap<>();
        Stream.concat(checklist.follows().stream().map(Checklist.Follows::profile),
                checklist.followed().stream().map(Checklist.Followed::profile)).forEach(law -> laws.put(law.slug(), law(law)));
        return new Look(checklist.asOf(), lines, laws);
    }

    private static Law law(Profile profile) {
        return new Law(profile.name(), profile.contentHash(), profile.lastRead());
    }

    private static String plain(String text) {
        return text.replaceAll("\\s+", " ");
    }

    String text() {
        StringBuilder text = new StringBuilder(FIRST + '\t' + day + '\n');
        lines.forEach((id, line) -> text.append(String.join("\t", "line", id, line.section().slug(),
                line.due() == null ? "" : line.due().toString(), line.name(), line.title())).append('\n'));
        laws.forEach((slug, law) -> text.append(String.join("\t", "law", slug, law.hash(), law.lastRead().toString(), law.name()))
                .append('\n'));
        return text.toString();
    }

    /** @return the look of a text; empty when it is none, or one of another version */
    static Optional<Look> of(String text) {
        try {
            Map<String, Stood> lines = new LinkedHashMap<>();
            Map<String, Law> laws = new LinkedHashMap<>();
            List<String> all = text.lines().toList();
            String[] head = all.get(0).split("\t", -1);
            if (!head[0].equals(FIRST)) {
                return Optional.empty();
            }
            for (String one : all.subList(1, all.size())) {
                String[] parts = one.split("\t", -1);
                if (parts[0].equals("line")) {
                    lines.put(parts[1], new Stood(parts[5], parts[4], section(parts[2]),
                            parts[3].isEmpty() ? null : LocalDate.parse(parts[3])));
                } else {
                    laws.put(parts[1], new Law(parts[4], parts[2], LocalDate.parse(parts[3])));
                }
            }
            return Optional.of(new Look(LocalDate.parse(head[1]), lines, laws));
        } catch (DateTimeException | IndexOutOfBoundsException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static Section section(String slug) {
        return Stream.of(Section.values()).filter(one -> one.slug().equals(slug)).findFirst()
                .orElseThrow(IllegalArgumentException::new);
    }
}
