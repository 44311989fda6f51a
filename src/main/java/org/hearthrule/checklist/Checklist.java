package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Placements;
import org.hearthrule.records.Student;
import org.hearthrule.rules.Finding;
import org.hearthrule.rules.Judgement;

/**
 * What a family's records show on a day, line by line, in the order in which it is read.
 *
 * @param asOf    the day
 * @param family  as the family calls itself, or null when there is no record book
 * @param follows which child follows which pathway on that day; before it starts or after it ended, the
 *                nearest one
 * @param followed what was followed before that day and still has lines: another state before a move, another
 *                pathway before a change
 * @param lines   every line, also those that are not due
 */
public record Checklist(LocalDate asOf, String family, List<Follows> follows, List<Followed> followed, List<Line> lines) {

    /**
     * A child and the law it was taught under on the day.
     *
     * @param student id
     * @param name    as printed
     */
    public record Follows(String student, String name, Profile profile, Pathway pathway) { }

    /**
     * A law that a child was taught under until a day before this one.
     *
     * @param until last day under it
     */
    public record Followed(String student, String name, Profile profile, Pathway pathway, LocalDate until) { }

    public Checklist {
        followed = List.copyOf(followed);
        follows = List.copyOf(follows);
        lines = List.copyOf(lines);
    }

    /** @return the checklist of a book that was judged */
    public static Checklist of(Judgement judgement, Book book) {
        Map<String, Requirement> asked = asked(judgement.profiles());
        List<Line> lines = judgement.findings().stream()
                .map(finding -> Line.of(finding, asked.get(finding.requirement()), judgement.asOf()))
                .sorted(Line.ORDER).toList();
        return new Checklist(judgement.asOf(), book.familyName(), follows(judgement, book), followed(judgement, book, lines),
                lines);
    }

    private static Map<String, Requirement> asked(List<Profile> profiles) {
        Map<String, Requirement> asked = new HashMap<>();
        for (Profile profile : profiles) {
            for (Pathway pathway : profile.pathways()) {
                pathway.asks().forEach(requirement -> asked.put(requirement.id(), requirement));
            }
        }
        return asked;
    }

    private static List<Follows> follows(Judgement judgement, Book book) {
        List<Follows> follows = new ArrayList<>();
        for (Student student : book.students()) {
            for (Placement placement : placementsOf(student, book, judgement.asOf())) {
                profile(judgement, placement.jurisdiction()).ifPresent(profile -> profile
                        .pathway(placement.pathway()).ifPresent(pathway -> follows.add(
                                new Follows(student.id(), student.name(), profile, pathway))));
            }
        }
        return follows;
    }

    private static List<Followed> followed(Judgement judgement, Book book, List<Line> lines) {
        List<Followed> followed = new ArrayList<>();
        for (Placement placement : book.placements()) {
            boolean over = placement.to() != null && placement.to().isBefore(judgement.asOf());
            String way = placement.jurisdiction() + '/' + placement.pathway() + '/';
            if (over && lines.stream().anyMatch(line -> line.finding().requirement().startsWith(way)
                    && line.section() != Section.NOT_DUE && placement.student().equals(line.finding().student()))) {
                profile(judgement, placement.jurisdiction()).ifPresent(profile -> profile.pathway(placement.pathway())
                        .ifPresent(pathway -> followed.add(new Followed(placement.student(),
                                book.student(placement.student()).orElseThrow().name(), profile, pathway, placement.to()))));
            }
        }
        return followed;
    }

    /** Those that go on on the day; when there is none, the next one to come; else the last that ended. */
    private static List<Placement> placementsOf(Student student, Book book, LocalDate day) {
        List<Placement> all = Placements.of(book, student.id());
        List<Placement> now = all.stream()
                .filter(p -> !p.from().isAfter(day) && (p.to() == null || !p.to().isBefore(day))).toList();
        if (!now.isEmpty() || all.isEmpty()) {
            return now;
        }
        return List.of(all.stream().filter(p -> p.from().isAfter(day)).findFirst().orElse(all.get(all.size() - 1)));
    }

    private static Optional<Profile> profile(Judgement judgement, String code) {
        return judgement.profiles().stream().filter(p -> p.slug().equals(code)).findFirst();
    }

    /** @return only what concerns one child: its own lines and those of the family */
    public Checklist forStudent(String id) {
        return new Checklist(asOf, family, follows.stream().filter(f -> f.student().equals(id)).toList(),
                followed.stream().filter(f -> f.student().equals(id)).toList(), lines.stream().filter(line -> concerns(line.finding(), id)).toList());
    }

    private static boolean concerns(Finding finding, String student) {
        return finding.student() == null || finding.student().equals(student);
    }

    /** @return the lines of one part */
    public List<Line> lines(Section section) {
        return lines.stream().filter(line -> line.section() == section).toList();
    }

    /**
     * @return true when something asks for care: a line is late, thin or unclear. What the other side owes does not
     *         count.
     */
    public boolean needsCare() {
        return lines.stream().anyMatch(line -> !line.finding().theirs()
                && (line.section() == Section.LATE || line.section() == Section.THIN_OR_UNCLEAR));
    }
}
