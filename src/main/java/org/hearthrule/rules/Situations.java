package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;

/**
 * Which child, pathway and school year a judgement looks at: last year's, this year's and next year's, as far as the
 * child follows the pathway in them.
 */
final class Situations {

    private Situations() {
    }

    /** @param profiles by code in lower case */
    static List<Situation> of(Book book, Map<String, Profile> profiles, LocalDate today) {
        List<Situation> found = new ArrayList<>();
        for (Placement placement : book.placements()) {
            Profile profile = profiles.get(placement.jurisdiction());
            Pathway pathway = profile.pathway(placement.pathway()).orElseThrow();
            Student student = book.student(placement.student()).orElseThrow();
            ProgramYear current = ProgramYear.holding(pathway.year(), today);
            List<ProgramYear> years = new ArrayList<>();
            for (int away = -1; away <= 1; away++) {
                ProgramYear year = current.plus(away);
                if (!placement.from().isAfter(year.end())
                        && (placement.to() == null || !placement.to().isBefore(year.start()))) {
                    years.add(year);
                }
            }
            for (ProgramYear year : years) {
                found.add(new Situation(profile, pathway, student, placement, year, today, book,
                        year.equals(firstToTell(years, today))));
            }
        }
        return found;
    }

    /** @return the first of the years that is not over, else the last one; null when there is none */
    private static ProgramYear firstToTell(List<ProgramYear> years, LocalDate today) {
        ProgramYear last = null;
        for (ProgramYear year : years) {
            last = year;
            if (!year.end().isBefore(today)) {
                break;
            }
        }
        return last;
    }

}
