package org.hearthrule.page.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hearthrule.checklist.year.Minimum;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Period;
import org.hearthrule.page.year.CurveDrawing.Label;
import org.hearthrule.page.year.CurveDrawing.Track;
import org.hearthrule.rules.Pace;
import org.hearthrule.rules.TimeCourse;
import org.junit.jupiter.api.Test;

/** Where the labels of a curve stand, whatever the log holds. */
class CurveLabelsTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 7, 1);
    private static final LocalDate LAST = LocalDate.of(2027, 6, 30);
    private static final LocalDate AUGUST = LocalDate.of(2026, 8, 24);

    /** So many days in a row from a day on, seen on a day. */
    private static Minimum.Part part(int asked, LocalDate from, int days, LocalDate today, int past, int left) {
        BigDecimal amount = BigDecimal.valueOf(asked);
        Map<LocalDate, Integer> minutes = new LinkedHashMap<>();
        for (int day = 0; day < days; day++) {
            minutes.put(from.plusDays(day), 60);
        }
        Evidence.Time law = new Evidence.Time(Evidence.Time.Measure.DAYS, Map.of("", amount), Period.YEAR, List.of(), null, null,
                null, null, Evidence.Time.Yardstick.EXACT, null);
        TimeCourse course = new TimeCourse("days", law, law.measure(), "days", amount, 0, FIRST, LAST, minutes);
        Pace pace = days >= asked ? null : new Pace(BigDecimal.valueOf(days), amount, past, left, today);
        return new Minimum.Part(course, LAST, pace);
    }

    private static Track track(int days, LocalDate today) {
        return track(180, AUGUST, days, today);
    }

    private static Track track(int asked, LocalDate from, int days, LocalDate today) {
        int past = Math.max(1, (int) (from.until(today, ChronoUnit.DAYS) * 5 / 7));
        int left = (int) (today.until(LAST, ChronoUnit.DAYS) * 5 / 7);
        Scale scale = new Scale(FIRST, LAST, BigDecimal.valueOf(Math.max(asked, days)));
        return new TrackDrawer(scale, today, true).draw(part(asked, from, days, today, past, left));
    }

    /** A box around a label: letters are some 7 wide and 11 high. */
    private record Box(double left, double right, double top, double bottom, String text) {
        static Box of(Label label) {
            double x = Double.parseDouble(label.x());
            double width = label.text().length() * 6.2;
            double left = label.anchor().equals("end") ? x - width : x;
            return new Box(left, left + width, Double.parseDouble(label.y()) - 9, Double.parseDouble(label.y()) + 1, label.text());
        }

        boolean covers(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }

    /**
     * Labels that cover each other cannot be read, and that would be seen only by the family whose log happens to end
     * there: so every week of the year and every pace is tried.
     */
    @Test
    void noLabelCoversAnotherOrLeavesTheDrawing() {
        List<String> faults = new ArrayList<>();
        for (int asked : new int[] {30, 100, 180}) {
            for (LocalDate today = FIRST.plusDays(3); today.isBefore(LAST); today = today.plusDays(5)) {
                for (int days = 0; days <= Math.min(260, FIRST.until(today, ChronoUnit.DAYS)); days += 3) {
                    check(asked, days, today, faults);
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    private static void check(int asked, int days, LocalDate today, List<String> faults) {
        List<Box> boxes = track(asked, FIRST, days, today).labels().stream().map(Box::of).toList();
        String where = days + " of " + asked + " on " + today + ": ";
        for (Box box : boxes) {
            if (box.left < 0 || box.right > CurveDrawing.WIDTH + 1 || box.top < 0) {
                faults.add(where + box);
            }
            boxes.stream().filter(other -> other != box && box.covers(other)).forEach(other -> faults.add(where + box + " " + other));
        }
    }

    @Test
    void theLineEndsAtTodayAndAtTheNumberReached() {
        Track track = track(90, LocalDate.of(2026, 12, 30));

        // 183 days of 365, and half of what is asked
        assertThat(Double.parseDouble(track.endX())).isEqualTo(3 + 294 * 183 / 365.0, org.assertj.core.data.Offset.offset(.06));
        assertThat(Double.parseDouble(track.endY())).isEqualTo((Scale.TOP + Scale.BOTTOM) / 2, org.assertj.core.data.Offset.offset(.06));
        assertThat(track.path()).startsWith("M3 172").endsWith("H" + track.endX());
        assertThat(track.needed()).returns(track.endX(), CurveDrawing.Stroke::x1).returns("297", CurveDrawing.Stroke::x2)
                .returns("40", CurveDrawing.Stroke::y2);
    }

    @Test
    void aPaceThatFallsShortEndsBelowTheAmountOnTheDueDay() {
        Track track = track(20, LocalDate.of(2027, 4, 1));

        assertThat(track.pace().x2()).isEqualTo("297");
        assertThat(Double.parseDouble(track.pace().y2())).isGreaterThan(100);
        assertThat(track.labels()).extracting(Label::text).containsExactly("180 days", "20");
    }

    @Test
    void whatIsReachedHasNoLineOfNeedOrPace() {
        Track track = track(190, LocalDate.of(2027, 4, 1));

        assertThat(track).returns(null, Track::needed).returns(null, Track::pace);
        // the 180th day from August 24 on is February 19
        assertThat(track.labels()).extracting(Label::text).containsExactly("180 days", "February 19", "190");
    }

    @Test
    void beforeTheYearBeginsThereIsNoLineYet() {
        assertThat(track(0, LocalDate.of(2026, 6, 1))).returns(null, Track::path).returns("3", Track::endX);
    }
}
