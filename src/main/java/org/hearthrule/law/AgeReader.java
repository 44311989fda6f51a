package org.hearthrule.law;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Listing;
import org.hearthrule.input.Node;
import org.hearthrule.terms.EventKind;

/** Reads the compulsory ages. */
final class AgeReader {

    private static final int OLDEST = 25;
    private static final List<String> BIRTHDAY = List.of("birthday");
    private static final List<String> BIRTHDAY_OR_YEAR_END = List.of("birthday", "year-end");
    private static final List<String> CALENDAR_YEAR = List.of("calendar-year");
    private static final List<String> SCHOOL_FIRST_DAY = List.of("school-first-day");
    private static final List<String> START_FORMS = List.of("earlier-of", "later-of", "on", "by", "before", "in");
    private static final List<String> START_BESIDES = List.of("age", "mid-year", "binds-from");
    private static final List<String> END_FORMS =
            List.of("earlier-of", "later-of", "on", "by", "event", "grade-completed");
    private static final List<String> END_BESIDES = List.of("age");

    private AgeReader() { }

    /** @return the entries of {@code attendance-age}, of which there has to be one */
    static List<AttendanceAge> required(Fields profile, Scope scope) {
        if (!profile.has("attendance-age") && profile.isMapping()) {
            scope.error(profile.place(), ProfileFault.NO_AGES, "no `attendance-age`", "a list of compulsory ages",
                    null);
        }
        return optional(profile, scope);
    }

    /** @return the entries of {@code attendance-age}, possibly none */
    static List<AttendanceAge> optional(Fields profile, Scope scope) {
        if (!profile.has("attendance-age")) {
            return List.of();
        }
        Forms.items(profile, "attendance-age", scope);
        List<AttendanceAge> ages = new ArrayList<>();
        if (profile.optionalNode("attendance-age").orElse(null) instanceof Listing) {
            for (Fields entry : profile.listOfFields("attendance-age", "the compulsory ages")) {
                AttendanceAge age = entry(entry, scope);
                for (AttendanceAge before : ages) {
                    if (before.when().equals(Condition.ALWAYS)) {
                        checkApart(before.validity(), age.validity(), entry, scope);
                    }
                }
                ages.add(age);
            }
        }
        return List.copyOf(ages);
    }

    private static void checkApart(Validity before, Validity next, Fields entry, Scope scope) {
        boolean nextEndsFirst = next.until() != null && before.from() != null && next.until().isBefore(before.from());
        boolean beforeEndsFirst = before.until() != null && next.from() != null
                && before.until().isBefore(next.from());
        if (!nextEndsFirst && !beforeEndsFirst) {
            scope.error(entry.place(), ProfileFault.AGES_OVERLAP, "ages in force together with those of another entry",
                    "`from` and `until` that share no day", null);
        }
    }

    private static AttendanceAge entry(Fields fields, Scope scope) {
        Validity validity = ValidityReader.read(fields, false, scope);
        Condition when = ConditionReader.optional(fields, "when", scope);
        Node startsNode = fields.node("starts");
        Node endsNode = fields.node("ends");
        AttendanceAge.Starts starts = startsNode == null ? null : starts(startsNode, scope);
        AttendanceAge.Ends ends = endsNode == null ? null : ends(endsNode, scope);
        int first = starts == null ? 0 : startAge(starts);
        int last = ends == null ? 0 : endAge(ends);
        if (first > 0 && last > 0 && last <= first) {
            scope.error(fields.place("ends"), ProfileFault.AGE_ORDER, "an end at " + last + " and a start at " + first,
                    "an end after the start", null);
        }
        Condition early = fields.has("early") ? ConditionReader.optional(fields, "early", scope) : null;
        String note = fields.optionalText("note", Forms.LONGEST_TEXT).orElse(null);
        List<Cite> cites = CiteReader.required(fields, "the compulsory ages", scope);
        fields.done();
        return new AttendanceAge(when, starts, ends, early, cites, validity, note);
    }

    private static AttendanceAge.Starts starts(Node node, Scope scope) {
        Fields fields = Fields.of(node, scope.problems(), "the start");
        String form = Forms.only(node, fields, START_FORMS, START_BESIDES, ProfileFault.NO_AGE,
                ProfileFault.SEVERAL_ORDERS, scope);
        AttendanceAge.Starts starts = null;
        if ("earlier-of".equals(form) || "later-of".equals(form)) {
            List<AttendanceAge.Starts> parts = new ArrayList<>();
            for (Node item : Forms.items(fields, form, scope)) {
                AttendanceAge.Starts part = starts(item, scope);
                if (part != null) {
                    parts.add(part);
                }
            }
            starts = form.equals("earlier-of") ? new AttendanceAge.Starts.EarlierOf(List.copyOf(parts))
                    : new AttendanceAge.Starts.LaterOf(List.copyOf(parts));
        } else if (form != null) {
            starts = oneStart(form, fields, scope);
        }
        fields.done();
        return starts;
    }

    private static AttendanceAge.Starts oneStart(String form, Fields fields, Scope scope) {
        int age = fields.integer("age", 1, OLDEST);
        if (form.equals("on")) {
            fields.oneOf("on", BIRTHDAY);
            return new AttendanceAge.Starts.Birthday(age, fields.oneOf("mid-year", AttendanceAge.MidYear.class));
        }
        if (form.equals("in")) {
            fields.oneOf("in", CALENDAR_YEAR);
            return new AttendanceAge.Starts.CalendarYear(age, fields.monthDay("binds-from"));
        }
        if (!Forms.startsWithDigit(fields, form)) {
            fields.oneOf(form, SCHOOL_FIRST_DAY);
            return new AttendanceAge.Starts.BySchoolFirstDay(age, form.equals("by"));
        }
        MonthDay date = fields.monthDay(form);
        MonthDay bindsFrom = fields.optionalMonthDay("binds-from").orElse(null);
        AttendanceAge.MidYear midYear = fields.optionalOneOf("mid-year", AttendanceAge.MidYear.class)
                .orElse(AttendanceAge.MidYear.NEXT_YEAR);
        return new AttendanceAge.Starts.ByDate(age, date, form.equals("by"), bindsFrom, midYear);
    }

    private static AttendanceAge.Ends ends(Node node, Scope scope) {
        Fields fields = Fields.of(node, scope.problems(), "the end");
        String form = Forms.only(node, fields, END_FORMS, END_BESIDES, ProfileFault.NO_AGE,
                ProfileFault.SEVERAL_ORDERS, scope);
        AttendanceAge.Ends ends = null;
        if ("earlier-of".equals(form) || "later-of".equals(form)) {
            List<AttendanceAge.Ends> parts = new ArrayList<>();
            for (Node item : Forms.items(fields, form, scope)) {
                AttendanceAge.Ends part = ends(item, scope);
                if (part != null) {
                    parts.add(part);
                }
            }
            ends = form.equals("earlier-of") ? new AttendanceAge.Ends.EarlierOf(List.copyOf(parts))
                    : new AttendanceAge.Ends.LaterOf(List.copyOf(parts));
        } else if (form != null) {
            ends = oneEnd(form, fields, scope);
        }
        fields.done();
        return ends;
    }

    private static AttendanceAge.Ends oneEnd(String form, Fields fields, Scope scope) {
        if (form.equals("event")) {
            EventKind event = EventReader.required(fields, form, scope);
            return new AttendanceAge.Ends.OnEvent(event);
        }
        if (form.equals("grade-completed")) {
            return new AttendanceAge.Ends.GradeCompleted(GradeReader.one(fields, form, scope));
        }
        int age = fields.integer("age", 1, OLDEST);
        if (form.equals("by")) {
            return new AttendanceAge.Ends.ByDate(age, fields.monthDay("by"));
        }
        return "year-end".equals(fields.oneOf("on", BIRTHDAY_OR_YEAR_END))
                ? new AttendanceAge.Ends.YearEnd(age)
                : new AttendanceAge.Ends.Birthday(age);
    }

    /** The age at which it starts; 0 when no age decides. */
    private static int startAge(AttendanceAge.Starts starts) {
        if (starts instanceof AttendanceAge.Starts.Birthday) {
            return ((AttendanceAge.Starts.Birthday) starts).age();
        }
        if (starts instanceof AttendanceAge.Starts.ByDate) {
            return ((AttendanceAge.Starts.ByDate) starts).age();
        }
        if (starts instanceof AttendanceAge.Starts.CalendarYear) {
            return ((AttendanceAge.Starts.CalendarYear) starts).age();
        }
        if (starts instanceof AttendanceAge.Starts.BySchoolFirstDay) {
            return ((AttendanceAge.Starts.BySchoolFirstDay) starts).age();
        }
        boolean earlier = starts instanceof AttendanceAge.Starts.EarlierOf;
        int found = 0;
        for (AttendanceAge.Starts part : earlier ? ((AttendanceAge.Starts.EarlierOf) starts).parts()
                : ((AttendanceAge.Starts.LaterOf) starts).parts()) {
            found = pick(found, startAge(part), earlier);
        }
        return found;
    }

    private static int pick(int found, int age, boolean earlier) {
        if (found == 0 || age == 0) {
            return Math.max(found, age);
        }
        return earlier ? Math.min(found, age) : Math.max(found, age);
    }

    /** The age at which it ends; 0 when no age decides. */
    private static int endAge(AttendanceAge.Ends ends) {
        if (ends instanceof AttendanceAge.Ends.Birthday) {
            return ((AttendanceAge.Ends.Birthday) ends).age();
        }
        if (ends instanceof AttendanceAge.Ends.YearEnd) {
            return ((AttendanceAge.Ends.YearEnd) ends).age();
        }
        if (ends instanceof AttendanceAge.Ends.ByDate) {
            return ((AttendanceAge.Ends.ByDate) ends).age();
        }
        int found = 0;
        if (ends instanceof AttendanceAge.Ends.EarlierOf) {
            for (AttendanceAge.Ends part : ((AttendanceAge.Ends.EarlierOf) ends).parts()) {
                found = pick(found, endAge(part), true);
            }
        } else if (ends instanceof AttendanceAge.Ends.LaterOf) {
            for (AttendanceAge.Ends part : ((AttendanceAge.Ends.LaterOf) ends).parts()) {
                found = pick(found, endAge(part), false);
            }
        }
        return found;
    }
}
