package org.hearthrule.page.year;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.checklist.year.Minimum;
import org.hearthrule.page.year.CurveDrawing.Label;
import org.hearthrule.page.year.CurveDrawing.Track;
import org.hearthrule.rules.TimeCourse;

/** Works out the drawing of one minimum. */
final class CurveDrawer {

    /** From so many months on the axis bears years. */
    private static final int MANY_MONTHS = 16;
    private static final double AXIS = 187;
    /** Room that the due day takes on the axis, and a month's name before it. */
    private static final double ROOM = 84;
    /** Half the amount is not told below this height. */
    private static final double LOW = 40;
    private static final int FEW_PARTS = 4;

    private final Minimum minimum;
    private final LocalDate today;
    private final Scale scale;

    CurveDrawer(Minimum minimum, LocalDate today) {
        this.minimum = minimum;
        this.today = today;
        BigDecimal most = minimum.parts().stream().map(Minimum.Part::reached).reduce(minimum.asked(), BigDecimal::max);
        this.scale = new Scale(minimum.from(), minimum.to(), most);
    }

    /**
     * @param id    unique in the page
     * @param whose first name of the child, or null
     */
    CurveDrawing draw(String id, String whose) {
        boolean alone = minimum.parts().size() == 1;
        List<Track> tracks = minimum.parts().stream().map(part -> new TrackDrawer(scale, today, alone).draw(part)).toList();
        CurveWords words = new CurveWords(minimum, today);
        List<CurveDrawing.Said> said = words.said();
        List<String> notes = words.notes();
        List<String> all = new ArrayList<>(said.stream().map(CurveDrawing.Said::words).toList());
        all.addAll(notes);
        return new CurveDrawing(id, words.name(), words.title(whose), String.join(" ", all), axis(), due(), half(),
                scale.holds(today) ? Num.of(scale.x(today)) : null, tracks, said, notes, rows(words));
    }

    private Label half() {
        BigDecimal half = minimum.asked().divide(BigDecimal.valueOf(2));
        double y = scale.y(half);
        return Scale.BOTTOM - y < LOW ? null : new Label(Num.of(Scale.LEFT), Num.of(y), "start", YearWords.number(half));
    }

    /** Every month has its mark, every second its name; years where there are many. */
    private List<Label> axis() {
        if (minimum.isInEach() && minimum.parts().size() <= FEW_PARTS) {
            return minimum.parts().stream().map(part -> new Label(Num.of(scale.start(part.from())), Num.of(AXIS), "start",
                    CurveWords.part(minimum, part))).toList();
        }
        List<Label> labels = new ArrayList<>();
        YearMonth first = YearMonth.from(scale.from());
        YearMonth last = YearMonth.from(scale.to());
        boolean years = first.plusMonths(MANY_MONTHS).isBefore(last);
        int count = 0;
        for (YearMonth month = first; !month.isAfter(last); month = month.plusMonths(1)) {
            boolean begins = years ? month.getMonthValue() == 1 : count++ % 2 == 0;
            double x = scale.start(month.atDay(1));
            boolean room = x < (minimum.parts().get(0).due() == null ? Scale.RIGHT : scale.x(minimum.parts().get(0).due())) - ROOM;
            String name = years ? Integer.toString(month.getYear()) : YearWords.shortMonth(month.getMonthValue());
            labels.add(new Label(Num.of(x), Num.of(AXIS), "start", begins && room ? name : ""));
        }
        return labels;
    }

    private Label due() {
        LocalDate due = minimum.parts().get(0).due();
        return due == null || minimum.parts().size() > 1 ? null
                : new Label(Num.of(scale.x(due)), Num.of(AXIS), "end", YearWords.dayOfMonth(due));
    }

    /** Month by month what there was at its end, then what is asked and at which pace; of quarters, one row each. */
    private List<CurveDrawing.Row> rows(CurveWords words) {
        List<CurveDrawing.Row> rows = new ArrayList<>();
        if (minimum.parts().size() > 1 || minimum.isInEach()) {
            minimum.parts().forEach(part -> rows.add(new CurveDrawing.Row(words.partName(part), words.ofAsked(part))));
            return rows;
        }
        Minimum.Part part = minimum.parts().get(0);
        LocalDate end = today.isBefore(part.to()) ? today : part.to();
        List<TimeCourse.Point> points = part.course().points();
        BigDecimal reached = BigDecimal.ZERO;
        int next = 0;
        for (YearMonth month = YearMonth.from(part.from()); !month.atDay(1).isAfter(end); month = month.plusMonths(1)) {
            while (next < points.size() && !points.get(next).day().isAfter(month.atEndOfMonth())) {
                reached = points.get(next++).reached();
            }
            boolean whole = !month.atEndOfMonth().isAfter(end);
            rows.add(new CurveDrawing.Row(whole ? YearWords.say("year.row.month", YearWords.month(month))
                    : YearWords.say("year.row.today", YearWords.date(end)), YearWords.number(reached)));
        }
        rows.addAll(words.summary(part));
        return rows;
    }
}
