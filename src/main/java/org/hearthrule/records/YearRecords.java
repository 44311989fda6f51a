package org.hearthrule.records;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What one school year's file holds. Every record has an id that is unique in the file; where the file gives none it
 * is made from the list and the position, for example {@code log-12}.
 *
 * @param label  for example {@code 2026-27}
 * @param grades grade by student id: {@code K} or {@code 1} to {@code 12}
 */
public record YearRecords(String label, Map<String, String> grades, Calendar calendar, List<ChoiceMade> choices,
                          List<LogEntry> log, List<Reading> readings, List<Sample> samples, List<TestTaken> tests,
                          List<Evaluation> evaluations, List<Filing> filings, List<Request> requests,
                          List<HealthPaper> health, List<KeptDocument> documents, List<Visit> visits) {

    /** @return a year in which nothing is entered */
    public static YearRecords empty(String label) {
        return new YearRecords(label, Map.of(), Calendar.EMPTY, List.of(), List.of(), List.of(), List.of(), List.of(),
                List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** @return the id of every record */
    public Set<String> ids() {
        Set<String> ids = new HashSet<>();
        log.forEach(record -> ids.add(record.id()));
        readings.forEach(record -> ids.add(record.id()));
        samples.forEach(record -> ids.add(record.id()));
        tests.forEach(record -> ids.add(record.id()));
        evaluations.forEach(record -> ids.add(record.id()));
        filings.forEach(record -> ids.add(record.id()));
        requests.forEach(record -> ids.add(record.id()));
        health.forEach(record -> ids.add(record.id()));
        documents.forEach(record -> ids.add(record.id()));
        visits.forEach(record -> ids.add(record.id()));
        return ids;
    }

    /** @return the same year with another log */
    public YearRecords withLog(List<LogEntry> entries) {
        return new YearRecords(label, grades, calendar, choices, List.copyOf(entries), readings, samples, tests,
                evaluations, filings, requests, health, documents, visits);
    }

    /**
     * Days of the year, each null or empty while not entered.
     *
     * @param schoolFirstDay first day of school in the district
     */
    public record Calendar(LocalDate firstDay, LocalDate lastDay, LocalDate schoolFirstDay, LocalDate schoolLastDay,
                           List<Stretch> quarters, List<Stretch> terms, List<LocalDate> schoolClosed) {
        public static final Calendar EMPTY =
                new Calendar(null, null, null, null, List.of(), List.of(), List.of());
    }

    /** From a day to a day, both included. */
    public record Stretch(LocalDate from, LocalDate to) { }

    /**
     * A choice made for the year.
     *
     * @param student id, or null for all
     * @param value   chosen value, or null when dates were chosen
     * @param dates   chosen dates
     */
    public record ChoiceMade(String student, String choice, String value, List<LocalDate> dates, LocalDate made) { }

    /**
     * What was done on a day.
     *
     * @param date      the day it is about
     * @param minutes   0 to 1440; 0 when not said
     * @param students  ids, at least one
     * @param subjects  ids of the common vocabulary, possibly none
     * @param did       what was done, in the parent's words; empty, never null, when not said
     * @param materials books and materials, possibly empty
     * @param place     {@code home} or another word, or null
     * @param core      marked by the parent as a core subject, or null when not said
     * @param by        person id, or null
     * @param written   when the entry was written, or null
     */
    public record LogEntry(String id, LocalDate date, int minutes, List<String> students, List<String> subjects,
                           String did, List<String> materials, String place, Boolean core, String by,
                           LocalDateTime written) implements YearRecord {
        @Override
        public LocalDate day() {
            return date;
        }
    }

    /**
     * A book or other reading.
     *
     * @param students ids, at least one
     * @param author   or null
     * @param started  or null
     * @param finished or null while it goes on
     * @param idea     what it served, or null
     * @param isbn     10 or 13 characters without hyphens (ISO 2108), or null
     */
    public record Reading(String id, List<String> students, String title, String author, LocalDate started,
                          LocalDate finished, List<String> subjects, String idea, String isbn) implements YearRecord {
        /** A reading without an ISBN. */
        public Reading(String id, List<String> students, String title, String author, LocalDate started, LocalDate finished,
                       List<String> subjects, String idea) {
            this(id, students, title, author, started, finished, subjects, idea, null);
        }

        @Override
        public LocalDate day() {
            return finished != null ? finished : started;
        }
    }

    /**
     * A piece of work.
     *
     * @param date  null while the parent has not settled it
     * @param kind  or null
     * @param idea  or null
     * @param files lie in the folder of the book; with slashes, never leading out of it
     */
    public record Sample(String id, String student, LocalDate date, List<String> subjects, String title, String kind,
                         String idea, List<String> files, boolean chosen) implements YearRecord {
        @Override
        public LocalDate day() {
            return date;
        }
    }

    /**
     * A test.
     *
     * @param method  slug, {@code standardized-test} unless said
     * @param name    as printed on it, or null
     * @param edition or null
     * @param givenBy person id or a role, or null
     * @param place   or null
     * @param consent who agreed beforehand, or null
     * @param file    scan of the result, in the folder of the book, or null
     */
    public record TestTaken(String id, String student, LocalDate date, String method, String name, String edition,
                            String givenBy, String place, String consent, List<Score> scores,
                            String file) implements YearRecord {
        @Override
        public LocalDate day() {
            return date;
        }

        /** @return its name, or its method in words when it has none */
        public String label() {
            return name == null ? method.replace('-', ' ') : name;
        }
    }

    /** One figure of a report: for example area {@code reading}, measure {@code percentile}, value 41. */
    public record Score(String area, String measure, java.math.BigDecimal value) { }

    /**
     * A judgement by a person.
     *
     * @param method   slug, for example {@code portfolio-evaluation}
     * @param by       person id or a role, or null
     * @param consent  who agreed beforehand, or null
     * @param includes for example {@code interview}, {@code portfolio}
     * @param outcome  word of the report, or null
     * @param note     or null
     * @param file     scan of the report or certificate, in the folder of the book, or null
     */
    public record Evaluation(String id, String student, LocalDate date, String method, String by, String consent,
                             List<String> includes, String outcome, String note, String file) implements YearRecord {
        @Override
        public LocalDate day() {
            return date;
        }
    }

    /**
     * A paper that was sent.
     *
     * @param students whom it covers; empty: all
     * @param paper    slug of the paper
     * @param how      or null
     * @param to       or null
     * @param year     label of the school year it is for, or null when nothing was said
     * @param part     1 to 366 when the paper is sent several times a year, or null
     * @param states   what it says
     * @param attached what came with it
     * @param copy     file in the folder of the book, or null
     */
    public record Filing(String id, List<String> students, String paper, LocalDate sent, String how, String to,
                         String year, Integer part, List<String> states, List<String> attached, String copy,
                         List<Answer> answers) implements YearRecord {
        @Override
        public LocalDate day() {
            return sent;
        }
    }

    /**
     * An answer from the other side.
     *
     * @param kind {@code received}, {@code materials}, {@code approved}, {@code refused}, {@code deficiency} or
     *             {@code answered}
     * @param note or null
     */
    public record Answer(String kind, LocalDate date, String note) { }

    /**
     * A request by an authority.
     *
     * @param students whom it concerns; empty: all
     * @param by       or null
     * @param written  whether it came in writing
     * @param cause    or null
     */
    public record Request(String id, List<String> students, String by, boolean written, LocalDate date,
                          String cause) implements YearRecord {
        @Override
        public LocalDate day() {
            return date;
        }
    }

    /**
     * A health paper or exemption.
     *
     * @param file scan of it, in the folder of the book, or null
     */
    public record HealthPaper(String id, String student, String kind, LocalDate date,
                              String file) implements YearRecord {
        @Override
        public LocalDate day() {
            return date;
        }
    }

    /**
     * A paper that is kept, not sent.
     *
     * @param students whom it concerns; empty: all
     * @param file     in the folder of the book, or null
     */
    public record KeptDocument(String id, List<String> students, String kind, LocalDate date, String file) implements YearRecord {
        @Override
        public LocalDate day() {
            return date;
        }
    }

    /**
     * A contact with the child by a teacher or supervisor.
     *
     * @param students ids, at least one
     * @param minutes  0 to 1440; 0 when not said
     * @param by       role or name, or null
     */
    public record Visit(String id, List<String> students, LocalDate date, int minutes, String by,
                        boolean faceToFace) implements YearRecord {
        @Override
        public LocalDate day() {
            return date;
        }
    }
}
