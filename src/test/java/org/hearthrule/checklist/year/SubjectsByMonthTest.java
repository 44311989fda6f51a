package org.hearthrule.checklist.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Readiness;
import org.hearthrule.checklist.ReadinessCheck;
import org.hearthrule.checklist.year.SubjectRow.Cell;
import org.hearthrule.checklist.year.SubjectRow.Origin;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;

/** Summed by hand from the few records below, and held against the readiness of the demo family. */
class SubjectsByMonthTest {

    private static final int SEPTEMBER = 2;
    private static final int MAY = 10;

    private static final Book BOOK = Years.book(Map.of("family.json", """
            {"hearthrule": 1, "students": [{"id": "ada", "name": "Ada", "born": "2016-03-02"}],
             "placements": [{"student": "ada", "jurisdiction": "us-pa", "pathway": "home-education-program",
              "from": "2024-08-26"}]}
            """, "2025-26.json", """
            {"hearthrule": 1, "year": "2025-26", "grades": {"ada": "4"},
             "log": [
              {"date": "2025-09-01", "minutes": 60, "students": ["ada"], "subjects": ["music", "dance"], "did": "A reel."},
              {"date": "2025-09-30", "minutes": 45, "students": ["ada"], "subjects": ["music"], "did": "Scales."},
              {"date": "2026-05-04", "minutes": 20, "students": ["ada"], "did": "A walk."}],
             "readings": [{"students": ["ada"], "title": "A Book", "started": "2025-09-03", "finished": "2026-05-01",
               "subjects": ["music"]},
              {"students": ["ada"], "title": "Another", "subjects": ["music"]}],
             "samples": [{"student": "ada", "title": "A tune", "date": "2025-09-02", "subjects": ["music"]},
              {"student": "ada", "title": "A song", "subjects": ["music"]}]}
            """));

    private static SubjectRow row(List<SubjectRow> rows, String name) {
        return rows.stream().filter(row -> name == null ? row.name() == null : name.equals(row.name())).findFirst().orElseThrow();
    }

    @Test
    void sumsEachSubjectByMonthAndKeepsApartWhatHasNoDay() throws Exception {
        SubjectRow music = row(Years.view(BOOK, Years.MAY, "ada", "2025-26").subjects(), "music");

        assertThat(music.origin()).isEqualTo(Origin.ASKED);
        assertThat(music.months().get(SEPTEMBER)).isEqualTo(new Cell(105, 2, 1, 0));
        assertThat(music.months().get(MAY)).isEqualTo(new Cell(0, 0, 0, 1));
        assertThat(music.undated()).isEqualTo(new Cell(0, 0, 1, 1));
        assertThat(music.total()).isEqualTo(new Cell(105, 2, 2, 2));
        assertThat(music.months()).hasSize(12).filteredOn(cell -> !cell.isEmpty()).hasSize(2);
    }

    @Test
    void theFamilysOwnSubjectsComeAfterTheLawsAndWhatHasNoneLast() throws Exception {
        List<SubjectRow> rows = Years.view(BOOK, Years.MAY, "ada", "2025-26").subjects();

        assertThat(row(rows, "Dance")).returns(Origin.OTHER, SubjectRow::origin).returns(new Cell(60, 1, 0, 0), SubjectRow::total);
        assertThat(rows).extracting(SubjectRow::origin).isSorted();
        assertThat(rows.get(rows.size() - 1)).returns(Origin.NONE, SubjectRow::origin)
                .returns(new Cell(20, 1, 0, 0), SubjectRow::total);
    }

    /** Two pages that count one subject differently would leave a parent to guess which of them is right. */
    @Test
    void theYearsSumsAreThoseOfTheReadiness() throws Exception {
        Book demo = Years.demo();
        Checklist checklist = Checklist.of(Years.judged(demo, Years.MAY), demo);
        for (Student student : demo.students()) {
            List<SubjectRow> rows = Years.view(demo, Years.MAY, student.id(), "2025-26").subjects();
            List<Readiness.SubjectRow> ready = ReadinessCheck.of(checklist, demo, student, Wording.english()).subjects();

            assertThat(ready).isNotEmpty().allSatisfy(other -> {
                Cell total = row(rows, other.name()).total();
                assertThat(total.minutes()).as(other.name()).isEqualTo(other.minutes());
                assertThat(total.samples()).as(other.name())
                        .isEqualTo(other.counts().stream().mapToInt(Integer::intValue).sum() + other.undated().size());
                assertThat(total.books()).as(other.name()).isEqualTo(other.books().size());
            });
        }
    }
}
