package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.SubjectItem;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearRecords;
import org.hearthrule.records.YearRecords.LogEntry;
import org.hearthrule.terms.Subjects;

/**
 * The benchmarks' other yardstick: what a programmer would write who wanted only the numbers that one family's findings
 * count, without rules, sentences or references to records.
 */
final class HandSums {

    /** The numbers of one child. */
    static final class Sums {
        final Map<String, Set<Object>> bySubject = new HashMap<>();
        final Map<String, Integer> items = new LinkedHashMap<>();
        final Map<LocalDate, List<LogEntry>> byDay = new HashMap<>();
        int minutes;
        int entries;
        int readings;
        int samples;
        int tests;
        int evaluations;
        int filings;
        int papers;
        int doubts;
    }

    private HandSums() {
    }

    static Map<String, Sums> of(Book book, Pathway pathway, LocalDate from, LocalDate today) {
        Map<String, Sums> sums = new LinkedHashMap<>();
        book.students().forEach(student -> sums.put(student.id(), new Sums()));
        for (YearRecords year : book.years().values()) {
            for (LogEntry entry : year.log()) {
                for (String student : entry.students()) {
                    log(entry, sums.get(student), from, today);
                }
            }
            year.readings().forEach(reading -> reading.students().forEach(student -> {
                Sums own = sums.get(student);
                own.readings++;
                own.doubts += reading.author() == null ? 1 : 0;
                tag(reading, reading.subjects(), own);
            }));
            year.samples().forEach(sample -> {
                Sums own = sums.get(sample.student());
                own.samples++;
                own.doubts += sample.date() == null || sample.subjects().isEmpty() ? 1 : 0;
                tag(sample, sample.subjects(), own);
            });
            year.tests().forEach(test -> sums.get(test.student()).tests++);
            year.evaluations().forEach(evaluation -> sums.get(evaluation.student()).evaluations++);
            year.health().forEach(paper -> sums.get(paper.student()).papers++);
            year.filings().forEach(filing -> (filing.students().isEmpty() ? sums.keySet() : filing.students())
                    .forEach(student -> sums.get(student).filings++));
        }
        sums.values().forEach(own -> {
            own.byDay.values().forEach(entries -> own.doubts += doubts(entries));
            for (Requirement requirement : pathway.asks()) {
                if (requirement.shows() instanceof Evidence.Subjects subjects) {
                    subjects.items().forEach(item -> own.items.put(requirement.id() + " " + item.name(), count(item, own)));
                }
            }
        });
        return sums;
    }

    private static void log(LogEntry entry, Sums own, LocalDate from, LocalDate today) {
        if (entry.date().isBefore(from) || entry.date().isAfter(today)) {
            own.doubts += entry.date().isAfter(today) ? 1 : 0;
            return;
        }
        own.minutes += entry.minutes();
        own.entries++;
        own.byDay.computeIfAbsent(entry.date(), day -> new ArrayList<>()).add(entry);
        own.doubts += entry.written() != null && entry.written().toLocalDate().isAfter(entry.date().plusDays(14)) ? 1 : 0;
        tag(entry, entry.subjects(), own);
    }

    private static int doubts(List<LogEntry> ofOneDay) {
        int minutes = 0;
        boolean twice = false;
        for (int one = 0; one < ofOneDay.size(); one++) {
            minutes += ofOneDay.get(one).minutes();
            for (int other = one + 1; other < ofOneDay.size(); other++) {
                twice |= ofOneDay.get(one).did().equals(ofOneDay.get(other).did());
            }
        }
        return (minutes > 1440 ? 1 : 0) + (twice ? 1 : 0);
    }

    private static void tag(Object record, List<String> subjects, Sums own) {
        for (String subject : subjects) {
            own.bySubject.computeIfAbsent(subject, id -> Collections.newSetFromMap(new IdentityHashMap<>())).add(record);
        }
    }

    private static int count(SubjectItem item, Sums own) {
        Set<Object> found = Collections.newSetFromMap(new IdentityHashMap<>());
        own.bySubject.forEach((logged, records) -> {
            if (item.shownBy().stream().anyMatch(asked -> Subjects.shows(logged, asked))) {
                found.addAll(records);
            }
        });
        return found.size();
    }
}
