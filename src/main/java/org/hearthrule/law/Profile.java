package org.hearthrule.law;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.terms.Grades;

/**
 * The law of one jurisdiction.
 *
 * @param code         for example {@code US-XX}
 * @param name         plain name
 * @param lawCallsIt   the law's own term
 * @param agency       the state's agency
 * @param confirmWith  whom to confirm with unless a requirement says otherwise
 * @param sources      by key
 * @param levels       named grade bands
 * @param gradeByAge   how grades follow from age, or null
 * @param attendance   compulsory ages, possibly several in time
 * @param facts        facts the profile asks about, by name
 * @param pathways     in the order of the file
 * @param doubts       open questions
 * @param changes      changes of law, past
 * @param announced    changes reported or enacted that do not bind yet
 * @param optIns       programs a family may join, kept apart from duties
 * @param file         name of the file as problems show it
 * @param content      text of the file
 */
public record Profile(String code, String name, String lawCallsIt, String agency, String confirmWith,
                      Map<String, Source> sources, Map<String, Grades> levels, GradeByAge gradeByAge,
                      List<AttendanceAge> attendance, Map<String, FactAsked> facts, List<Pathway> pathways,
                      List<Doubt> doubts, List<Change> changes, List<Announced> announced, List<OptIn> optIns,
                      String file, String content) {

    /**
     * A fact a rule turns on.
     *
     * @param about    {@code child}, {@code parent}, {@code teacher}, {@code family} or {@code place}
     * @param question put to the parent when it is missing
     * @param presume  answer taken while nobody has said otherwise; null: ask
     */
    public record FactAsked(String name, String about, String question, Boolean presume) { }

    /**
     * An open question about the law.
     *
     * @param id    whole id
     * @param about the question
     * @param ask   whom to ask
     * @param on    ids of the requirements it touches, possibly none
     * @param when  whom it concerns among those who owe one of them
     * @param cites what raises it, possibly none
     * @param differ whether those say different things
     */
    public record Doubt(String id, String about, String ask, List<String> on, Condition when, List<Cite> cites,
                        boolean differ, Validity validity) { }

    /** A change of law that has happened. */
    public record Change(Effective effective, String what, Cite cite) { }

    /**
     * The day a change began to bind, as far as it is known.
     *
     * @param month null when only the year is known
     * @param day   null when only the month is known
     */
    public record Effective(int year, Integer month, Integer day) { }

    /** {@code from} is null when the day is unknown. */
    public record Announced(LocalDate from, String what, Cite cite) { }

    public record OptIn(String name, String what, Cite cite) { }

    /** A child who is {@code age} on {@code on} is in {@code grade} that school year. */
    public record GradeByAge(int grade, int age, java.time.MonthDay on) { }

    /**
     * Names the profile by its content: another text of the file is another name. Computed at each call, because the
     * first one costs a short-lived process some 20 milliseconds.
     *
     * @return SHA-256 of the text in UTF-8, as 64 hexadecimal digits
     */
    public String contentHash() {
        return Sha256.hex(content);
    }

    /** @return the day a source of this profile was last read */
    public LocalDate lastRead() {
        return sources.values().stream().map(Source::read).max(LocalDate::compareTo).orElseThrow();
    }

    /** @return the code as record books and addresses write it, for example {@code us-xx} */
    public String slug() {
        return code.toLowerCase(Locale.ROOT);
    }

    /** @return the pathways that stand on a day, in the order of the file */
    public List<Pathway> pathwaysOn(LocalDate day) {
        return pathways.stream().filter(pathway -> pathway.validity().inForceOn(day)).toList();
    }

    public Optional<Pathway> pathway(String slug) {
        return pathways.stream().filter(p -> p.slug().equals(slug)).findFirst();
    }

    /** @return the compulsory ages that hold on a pathway: its own in place of those of the state */
    public List<AttendanceAge> attendanceOn(Pathway pathway) {
        return pathway.attendance().isEmpty() ? attendance : pathway.attendance();
    }

    public Pathway usualPathway() {
        return pathways.stream().filter(Pathway::usual).findFirst().orElseThrow();
    }
}
