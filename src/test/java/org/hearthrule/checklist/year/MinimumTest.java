package org.hearthrule.checklist.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hearthrule.records.Book;
import org.junit.jupiter.api.Test;

/** How the amounts that the law asks come together. */
class MinimumTest {

    private static final LocalDate OCTOBER = LocalDate.of(2026, 10, 9);

    /** 37 days in each quarter are asked here, besides 148 in the year. */
    private static Book quarters(String more) {
        return Years.book(Map.of("family.json", """
                {"hearthrule": 1, "students": [{"id": "ada", "name": "Ada", "born": "2014-03-02"}],
                 "placements": [{"student": "ada", "jurisdiction": "us-ia", "pathway": "cpi-licensed-practitioner",
                  "from": "2024-08-26"}]}
                """, "2026-27.json", """
                {"hearthrule": 1, "year": "2026-27", "grades": {"ada": "6"}, "calendar": {"firstDay": "2026-08-24",
                 "quarters": [{"from": "2026-08-24", "to": "2026-10-02"}, {"from": "2026-10-05", "to": "2026-12-18"}]},
                 "log": [{"date": "2026-08-25", "minutes": 60, "students": ["ada"], "did": "Sums."},
                  {"date": "2026-08-27", "minutes": 60, "students": ["ada"], "did": "A map."},
                  {"date": "2026-10-05", "minutes": 60, "students": ["ada"], "did": "A poem."}%s]}
                """.formatted(more)));
    }

    /** Curve and line come from one count; what a page makes of the view must not come to another number. */
    @Test
    void theLastPointIsWhatTheChecklistLineCounted() throws Exception {
        List<Minimum> minimums = Years.view(Years.demo(), Years.MAY, null, "2025-26").minimums();

        assertThat(minimums).hasSize(5).allSatisfy(minimum -> minimum.parts().forEach(part -> {
            Object counted = minimum.line().finding().counted().get(part.course().key());
            var points = part.course().points();
            assertThat(points.get(points.size() - 1).reached()).isEqualByComparingTo((BigDecimal) counted)
                    .isEqualByComparingTo(part.reached());
        }));
    }

    /** The README says it of Wren: 171 of 180 days, nine more by June 30, at this pace on June 5. */
    @Test
    void thePaceIsThatOfTheSentence() throws Exception {
        Minimum days = Years.view(Years.demo(), Years.MAY, "wren", "2025-26").minimums().get(0);

        assertThat(days.line().finding().why()).contains("9 more days by June 30, 2026 would do it; at your pace that is "
                + "June 5, 2026.");
        Minimum.Part part = days.parts().get(0);
        assertThat(part).returns(LocalDate.of(2026, 6, 30), Minimum.Part::due).returns(false, Minimum.Part::isReached);
        assertThat(part.pace().lack()).isEqualByComparingTo("9");
        assertThat(part.pace().reachedOn()).contains(LocalDate.of(2026, 6, 5));
        // May 21 to June 30, 2026 are 29 weekdays: 9 / 29 x 5 is 1.55; 171 days in the 213 weekdays since July 28 are 4.01 a week
        assertThat(part.pace().needed()).hasValueSatisfying(week -> assertThat(week).isEqualByComparingTo("1.6"));
        assertThat(part.pace().soFar()).hasValueSatisfying(week -> assertThat(week).isEqualByComparingTo("4.0"));
    }

    @Test
    void whatIsReachedHasItsDayAndNoPace() throws Exception {
        Minimum days = Years.view(Years.demo(), Years.MAY, "ansel", "2025-26").minimums().get(0);
        var part = days.parts().get(0);

        assertThat(part).returns(true, Minimum.Part::isReached).returns(null, Minimum.Part::pace);
        assertThat(part.course().points().get(179).day()).isEqualTo(part.reachedOn().orElseThrow());
    }

    @Test
    void ofDaysAndHoursTheWayThatWasChosenIsTold() throws Exception {
        List<Minimum> minimums = Years.view(Years.demo(), Years.MAY, "wren", "2025-26").minimums();

        assertThat(minimums).extracting(Minimum::unit).containsExactly("days", "hours");
        assertThat(minimums).extracting(Minimum::way).containsExactly(Minimum.Way.CHOSEN, Minimum.Way.NOT_CHOSEN);
    }

    @Test
    void whatIsAskedInEachQuarterHasOnePartForEach() throws Exception {
        Minimum minimum = Years.view(quarters(""), OCTOBER, "ada", "2026-27").minimums().stream()
                .filter(Minimum::isInEach).findFirst().orElseThrow();

        assertThat(minimum.asked()).isEqualByComparingTo("37");
        assertThat(minimum.parts()).extracting(part -> part.reached().intValue()).containsExactly(2, 1);
        assertThat(minimum.parts()).extracting(Minimum.Part::due)
                .containsExactly(LocalDate.of(2026, 10, 2), LocalDate.of(2026, 12, 18));
        // the first quarter is over; in the second, 36 days are missing on the 50 weekdays from October 12 on
        assertThat(minimum.parts().get(0).pace()).isNull();
        assertThat(minimum.parts().get(1).pace().needed())
                .hasValueSatisfying(week -> assertThat(week).isEqualByComparingTo("3.6"));
    }

    @Test
    void nothingLoggedIsACourseWithoutAPoint() throws Exception {
        Book empty = Years.book(Map.of("family.json", """
                {"hearthrule": 1, "students": [{"id": "ada", "name": "Ada", "born": "2014-03-02"}],
                 "placements": [{"student": "ada", "jurisdiction": "us-ia", "pathway": "cpi-licensed-practitioner",
                  "from": "2026-08-24"}]}
                """));
        List<Minimum> minimums = Years.view(empty, OCTOBER, null, "2026-27").minimums();

        assertThat(minimums).isNotEmpty().allSatisfy(minimum -> {
            assertThat(minimum.parts().get(0).course().points()).isEmpty();
            assertThat(minimum.parts().get(0).pace().reachedOn()).isEmpty();
        });
    }

    /** A law that counts from January to December has half of two of its years in each year of the book. */
    @Test
    void aYearFromJanuaryOnIsToldInBothThatItLiesIn() throws Exception {
        Book book = Years.book(Map.of("family.json", """
                {"hearthrule": 1, "students": [{"id": "ada", "name": "Ada", "born": "2014-03-02"}],
                 "placements": [{"student": "ada", "jurisdiction": "us-co", "pathway": "home-based-program",
                  "from": "2024-08-26"}]}
                """, "2025-26.json", """
                {"hearthrule": 1, "year": "2025-26", "log": [
                  {"date": "2025-09-25", "minutes": 60, "students": ["ada"], "did": "Sums."}]}
                """));

        assertThat(Years.view(book, LocalDate.of(2026, 1, 9), null, "2025-26").minimums()).hasSize(1);
        assertThat(Years.view(book, LocalDate.of(2026, 1, 9), null, "2026-27").minimums()).isEmpty();
    }
}
