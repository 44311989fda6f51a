package org.hearthrule.checklist.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hearthrule.checklist.Checklist;
import org.hearthrule.checklist.Line;
import org.hearthrule.records.Book;
import org.hearthrule.records.YearLabel;
import org.hearthrule.rules.Status;
import org.junit.jupiter.api.Test;

/** Counted by hand from the few entries below, and held against the checklist of the demo family. */
class YearCalendarTest {

    /** Two children who move from one state to another on March 1, 2027, with what a calendar of a year can hold. */
    private static final Book MOVED = Years.book(Map.of("family.json", """
            {"hearthrule": 1,
             "students": [{"id": "ada", "name": "Ada", "born": "2016-03-02"}, {"id": "bo", "name": "Bo", "born": "2018-03-02"}],
             "placements": [
              {"student": "ada", "jurisdiction": "us-il", "pathway": "private-school-at-home", "from": "2025-08-25",
               "to": "2027-02-28", "ended": "moved"},
              {"student": "bo", "jurisdiction": "us-il", "pathway": "private-school-at-home", "from": "2025-08-25",
               "to": "2027-02-28", "ended": "moved"},
              {"student": "ada", "jurisdiction": "us-pa", "pathway": "home-education-program", "from": "2027-03-01"},
              {"student": "bo", "jurisdiction": "us-pa", "pathway": "home-education-program", "from": "2027-03-01"}],
             "events": [{"kind": "moved-in", "date": "2027-03-01", "note": "the mill house"},
                        {"kind": "test-agreed", "date": "2027-04-02", "students": ["bo"]}]}
            """, "2026-27.json", """
            {"hearthrule": 1, "year": "2026-27",
             "calendar": {"firstDay": "2026-08-24", "lastDay": "2027-05-28", "schoolFirstDay": "2026-08-26",
              "quarters": [{"from": "2026-08-24", "to": "2026-10-30"}, {"from": "2026-11-02", "to": "2027-01-22"}],
              "schoolClosed": ["2026-11-27", "2027-04-02"]},
             "log": [
              {"date": "2026-09-01", "minutes": 60, "students": ["ada", "bo"], "subjects": ["arithmetic"], "did": "Sums."},
              {"date": "2026-09-01", "minutes": 45, "students": ["ada"], "subjects": ["music", "arithmetic"], "did": "Scales."},
              {"date": "2026-09-02", "students": ["bo"], "did": "A walk."}]}
            """));

    private static YearView view(String student) throws Exception {
        return Years.view(MOVED, LocalDate.of(2027, 5, 1), student, "2026-27");
    }

    private static CalendarDay day(YearView view, String date) {
        LocalDate day = LocalDate.parse(date);
        return view.months().stream().flatMap(month -> month.days().stream()).filter(one -> one.date().equals(day))
                .findFirst().orElseThrow();
    }

    @Test
    void theYearRunsFromJulyToJuneDayByDay() throws Exception {
        List<CalendarMonth> months = view(null).months();

        assertThat(months).extracting(CalendarMonth::month).startsWith(YearMonth.of(2026, 7)).endsWith(YearMonth.of(2027, 6))
                .hasSize(12);
        assertThat(months.stream().flatMap(month -> month.days().stream()).map(CalendarDay::date).toList())
                .isEqualTo(LocalDate.of(2026, 7, 1).datesUntil(LocalDate.of(2027, 7, 1)).toList());
    }

    @Test
    void anEntryForTwoChildrenCountsOnceForAllAndWholeForEach() throws Exception {
        assertThat(day(view(null), "2026-09-01")).returns(2, CalendarDay::entries).returns(105, CalendarDay::minutes)
                .returns(List.of("Arithmetic", "Music"), CalendarDay::subjects);
        assertThat(day(view("ada"), "2026-09-01")).returns(2, CalendarDay::entries).returns(105, CalendarDay::minutes);
        assertThat(day(view("bo"), "2026-09-01")).returns(1, CalendarDay::entries).returns(60, CalendarDay::minutes);
    }

    @Test
    void anEntryWithoutMinutesIsStillADay() throws Exception {
        YearView view = view("bo");

        assertThat(day(view, "2026-09-02")).returns(1, CalendarDay::entries).returns(0, CalendarDay::minutes);
        assertThat(view).returns(2, YearView::daysLogged).returns(2, YearView::entries).returns(60, YearView::minutes);
    }

    @Test
    void theBoundsOfYearAndQuartersStandOnTheirDays() throws Exception {
        YearView view = view(null);

        assertThat(day(view, "2026-08-24").marks()).containsExactly(DayMark.bound(DayMark.Kind.YEAR_BEGINS, 0),
                DayMark.bound(DayMark.Kind.QUARTER_BEGINS, 1));
        assertThat(day(view, "2026-10-30").marks()).containsExactly(DayMark.bound(DayMark.Kind.QUARTER_ENDS, 1));
        assertThat(day(view, "2026-11-02").marks()).containsExactly(DayMark.bound(DayMark.Kind.QUARTER_BEGINS, 2));
        assertThat(day(view, "2026-08-26").marks()).containsExactly(DayMark.bound(DayMark.Kind.SCHOOL_BEGINS, 0));
        assertThat(day(view, "2027-05-28").marks()).containsExactly(DayMark.bound(DayMark.Kind.YEAR_ENDS, 0));
    }

    @Test
    void theMoveIsOneMarkForBrothersAndSisters() throws Exception {
        List<DayMark> last = day(view(null), "2027-02-28").marks();
        List<DayMark> first = day(view(null), "2027-03-01").marks();

        assertThat(last).extracting(DayMark::kind).containsExactly(DayMark.Kind.LEAVES);
        assertThat(last.get(0)).returns("moved", DayMark::note).returns(List.of("Ada", "Bo"), DayMark::children);
        assertThat(first).extracting(DayMark::kind).containsExactly(DayMark.Kind.FOLLOWS, DayMark.Kind.EVENT);
        assertThat(first.get(1)).returns("the day you moved in", DayMark::what).returns("the mill house", DayMark::note);
    }

    @Test
    void anEventOfOneChildIsNotToldOfAnother() throws Exception {
        assertThat(day(view("bo"), "2027-04-02").marks()).extracting(DayMark::kind).containsExactly(DayMark.Kind.EVENT);
        assertThat(day(view("ada"), "2027-04-02").marks()).isEmpty();
    }

    @Test
    void closedDaysAndHolidaysAreToldApart() throws Exception {
        YearView view = view(null);

        assertThat(day(view, "2027-04-02")).returns(true, CalendarDay::closed).returns(null, CalendarDay::holiday);
        // 5 U.S.C. 6103(a): Labor Day, the first Monday in September; Thanksgiving Day, the fourth Thursday in November
        assertThat(day(view, "2026-09-07")).returns(false, CalendarDay::closed).returns("Labor Day", CalendarDay::holiday);
        assertThat(day(view, "2026-11-26")).returns("Thanksgiving Day", CalendarDay::holiday);
    }

    /** Lincoln's birthday is a legal holiday in Connecticut and none in Pennsylvania (from memory). */
    @Test
    void theHolidaysAreThoseOfTheStateLivedInOnTheDay() throws Exception {
        assertThat(day(movingOn("2027-02-28", "2027-03-01"), "2027-02-12").holiday()).isEqualTo("Lincoln's Birthday");
        assertThat(day(movingOn("2027-01-31", "2027-02-01"), "2027-02-12").holiday()).isNull();
    }

    private static YearView movingOn(String last, String first) throws Exception {
        return Years.view(Years.book(Map.of("family.json", """
                {"hearthrule": 1, "students": [{"id": "ada", "name": "Ada", "born": "2016-03-02"}],
                 "placements": [
                  {"student": "ada", "jurisdiction": "us-ct", "pathway": "equivalent-instruction", "from": "2025-08-25", "to": "%s"},
                  {"student": "ada", "jurisdiction": "us-pa", "pathway": "home-education-program", "from": "%s"}]}
                """.formatted(last, first))), LocalDate.of(2027, 5, 1), null, "2026-27");
    }

    /** A due date that the calendar leaves out would be missed by whoever trusts the calendar. */
    @Test
    void everyDueLineOfTheChecklistStandsOnItsDay() throws Exception {
        Book demo = Years.demo();
        YearView view = Years.view(demo, Years.MAY, null, "2025-26");
        List<Line> due = Checklist.of(Years.judged(demo, Years.MAY), demo).lines().stream()
                .filter(line -> line.finding().due() != null && line.finding().status() != Status.NOT_DUE
                        && YearLabel.of(line.finding().due()).toString().equals("2025-26")).toList();

        List<String> told = view.months().stream().flatMap(month -> month.days().stream())
                .flatMap(day -> day.due().stream().map(line -> day.date() + " " + line.id())).toList();
        assertThat(told).isNotEmpty().containsExactlyInAnyOrderElementsOf(due.stream()
                .map(line -> line.finding().due() + " " + line.id()).collect(Collectors.toList()));
    }

    @Test
    void oneChildSeesItsOwnDueDatesOnly() throws Exception {
        YearView view = Years.view(Years.demo(), Years.MAY, "wren", "2025-26");

        assertThat(view.months().stream().flatMap(month -> month.days().stream()).flatMap(day -> day.due().stream()).toList())
                .isNotEmpty().allMatch(line -> line.finding().student() == null || line.finding().student().equals("wren"));
    }

    /** A paper that went out in autumn would else be told for ever as missing in the year it belongs to. */
    @Test
    void aLineOfALaterDayHasTheLastWord() throws Exception {
        Book demo = Years.demo();
        YearLabel label = YearLabel.parse("2025-26").orElseThrow();
        List<Line> done = Checklist.of(Years.judged(demo, Years.MAY), demo).lines();
        LocalDate before = LocalDate.of(2025, 7, 10);

        YearView alone = YearView.of(demo, Years.judged(demo, before), null, label);
        YearView later = YearView.of(demo, Years.judged(demo, before), done, null, label);

        assertThat(statuses(alone, "affidavit")).containsOnly(Status.OPEN);
        assertThat(statuses(later, "affidavit")).containsOnly(Status.MET);
    }

    private static List<Status> statuses(YearView view, String word) {
        return view.months().stream().flatMap(month -> month.days().stream()).flatMap(day -> day.due().stream())
                .filter(line -> line.finding().title().toLowerCase(java.util.Locale.ROOT).contains(word))
                .map(line -> line.finding().status()).distinct().toList();
    }

    @Test
    void aYearLongPastIsSeenFromTheAutumnAfterIt() {
        YearLabel label = YearLabel.parse("2024-25").orElseThrow();

        assertThat(YearView.seenFrom(label, LocalDate.of(2025, 3, 1))).isEqualTo(LocalDate.of(2025, 3, 1));
        assertThat(YearView.seenFrom(label, LocalDate.of(2025, 8, 1))).isEqualTo(LocalDate.of(2025, 8, 1));
        assertThat(YearView.seenFrom(label, LocalDate.of(2026, 5, 20))).isEqualTo(LocalDate.of(2025, 9, 30));
        assertThat(YearView.seenFrom(label, LocalDate.of(2023, 5, 20))).isEqualTo(LocalDate.of(2023, 5, 20));
    }
}
