package org.hearthrule.page.year;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hearthrule.checklist.year.Minimum;
import org.hearthrule.law.Evidence;
import org.hearthrule.page.year.CurveDrawing.Row;
import org.hearthrule.page.year.CurveDrawing.Said;
import org.hearthrule.rules.Pace;
import org.hearthrule.terms.Prose;

/** Says in sentences what the curve of a minimum shows. */
final class CurveWords {

    private final Minimum minimum;
    private final LocalDate today;
    private final String asked;
    private final String unit;
    private final String measure;

    CurveWords(Minimum minimum, LocalDate today) {
        this.minimum = minimum;
        this.today = today;
        this.asked = YearWords.number(minimum.asked());
        this.unit = minimum.unit();
        this.measure = minimum.parts().get(0).course().measure().slug();
    }

    private String per() {
        return minimum.law().per().name().toLowerCase(Locale.ROOT);
    }

    /** @return what tells the amount from others of its line */
    String name() {
        return minimum.name() != null ? Prose.upperFirst(minimum.name()) : minimum.isInEach()
                ? YearWords.say("year.curve.name.each", asked, unit, per()) : YearWords.say("year.curve.label", asked, unit);
    }

    String title(String whose) {
        String line = minimum.line().finding().title();
        line = minimum.name() == null ? line : YearWords.say("year.curve.named", line, minimum.name());
        if (minimum.isInEach()) {
            return whose == null ? YearWords.say("year.curve.title.each", line, asked, unit, per())
                    : YearWords.say("year.curve.title.each-of", line, whose, asked, unit, per());
        }
        String reached = YearWords.number(minimum.parts().get(0).reached());
        return whose == null ? YearWords.say("year.curve.title", line, reached, asked, unit)
                : YearWords.say("year.curve.title.of", line, whose, reached, asked, unit);
    }

    /** @return what each line of the drawing says */
    List<Said> said() {
        List<Said> said = new ArrayList<>();
        if (minimum.isInEach()) {
            minimum.parts().forEach(part -> said.add(new Said(said.isEmpty() ? "so-far" : "none",
                    YearWords.say("year.curve.in-part", partName(part), YearWords.number(part.reached()), asked))));
            said.add(new Said("asked", YearWords.say("year.curve.asked-each", asked, unit, per())));
        } else {
            Minimum.Part part = minimum.parts().get(0);
            LocalDate end = today.isBefore(part.to()) ? today : part.to();
            said.add(new Said("so-far", part.reached().signum() == 0 ? YearWords.say("year.curve.nothing", YearWords.date(end))
                    : YearWords.say("year.curve.so-far", YearWords.number(part.reached()), unit, YearWords.date(end))));
            said.add(new Said("asked", part.due() == null ? YearWords.say("year.curve.asked", asked, unit)
                    : YearWords.say("year.curve.asked-by", asked, unit, YearWords.date(part.due()))));
            part.reachedOn().ifPresent(day -> said.add(new Said("none", YearWords.say("year.curve.reached", YearWords.date(day)))));
        }
        minimum.parts().stream().filter(part -> part.pace() != null && !today.isBefore(part.from()))
                .forEach(part -> pace(part, said));
        return said;
    }

    private void pace(Minimum.Part part, List<Said> said) {
        Pace pace = part.pace();
        String lack = YearWords.number(pace.lack());
        String needed = pace.needed().map(week -> YearWords.say("year.curve.needed", lack, YearWords.number(week), measure))
                .orElse(YearWords.say("year.curve.none-left", lack));
        said.add(new Said("needed", minimum.isInEach() ? YearWords.say("year.curve.of-part", part(minimum, part), needed) : needed));
        if (pace.left() > 0 && pace.reached().signum() > 0) {
            pace.soFar().ifPresent(week -> said.add(new Said("pace", pace.reachedOn()
                    .map(day -> YearWords.say("year.curve.pace", YearWords.number(week), measure, YearWords.date(day)))
                    .orElse(YearWords.say("year.curve.pace-far", YearWords.number(week), measure)))));
        }
    }

    /** @return what else there is to know of the amount */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        Evidence.Time law = minimum.law();
        if (law.dayHours() != null) {
            notes.add(YearWords.say("year.curve.day-hours", YearWords.number(law.dayHours())));
        }
        if (law.meanHours() != null) {
            notes.add(YearWords.say("year.curve.mean-hours", YearWords.number(law.meanHours())));
        }
        if (law.setBy() != null) {
            notes.add(YearWords.say("year.curve.set-by", law.setBy().who()));
        }
        if (law.over() != null) {
            notes.add(YearWords.say("year.curve.over"));
        }
        switch (minimum.way()) {
            case CHOSEN -> notes.add(YearWords.say("year.curve.chosen"));
            case ONE_OF_SEVERAL, NOT_CHOSEN -> notes.add(YearWords.say("year.curve.either"));
            case ASKED -> { }
        }
        return notes;
    }

    /** @return for example {@code Quarter 1} */
    static String part(Minimum minimum, Minimum.Part part) {
        return Prose.upperFirst(minimum.law().per().name().toLowerCase(Locale.ROOT)) + ' ' + Math.max(1, part.course().part());
    }

    /** @return for example {@code Quarter 1, August 24 to October 2} */
    String partName(Minimum.Part part) {
        return YearWords.say("year.curve.part", part(minimum, part), YearWords.dayOfMonth(part.from()),
                YearWords.dayOfMonth(part.to()));
    }

    String ofAsked(Minimum.Part part) {
        return YearWords.number(part.reached()) + " / " + asked;
    }

    /** @return what is asked, missing and needed */
    List<Row> summary(Minimum.Part part) {
        List<Row> rows = new ArrayList<>();
        rows.add(row("asked", asked));
        rows.add(row("missing", YearWords.number(part.course().lack())));
        if (part.due() != null) {
            rows.add(row("due", YearWords.date(part.due())));
        }
        part.reachedOn().ifPresent(day -> rows.add(row("reached", YearWords.date(day))));
        if (part.pace() != null) {
            part.pace().needed().ifPresent(week -> rows.add(row("needed", YearWords.number(week))));
            part.pace().soFar().ifPresent(week -> rows.add(row("pace", YearWords.number(week))));
            part.pace().reachedOn().ifPresent(day -> rows.add(row("then", YearWords.date(day))));
        }
        return rows;
    }

    private static Row row(String key, String value) {
        return new Row(YearWords.say("year.row." + key), value);
    }
}
