package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.law.AttendanceAge;
import org.hearthrule.law.AttendanceAge.Ends;
import org.hearthrule.law.AttendanceAge.MidYear;
import org.hearthrule.law.AttendanceAge.Starts;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.terms.Grades;
import org.hearthrule.terms.Wording;

/** Says in plain words between which ages a law binds. */
final class AgeText {

    private final Wording wording;
    private final Profile profile;

    AgeText(Wording wording, Profile profile) {
        this.wording = wording;
        this.profile = profile;
    }

    /** Says the ages that bind everywhere in the state. */
    void add(SheetBuilder sheet, LocalDate asOf) {
        sheet.heading(wording.say("law.age"), "age");
        add(sheet, profile.attendance(), profile.usualPathway(), asOf);
    }

    /** @return a sentence or two for each entry that is in force on the pathway */
    List<String> sentences(Pathway pathway, LocalDate asOf) {
        ConditionWords conditions = new ConditionWords(wording, profile, pathway);
        List<String> said = new ArrayList<>();
        for (AttendanceAge age : profile.attendanceOn(pathway)) {
            if (age.validity().inForceOn(asOf)) {
                said.add(sentence(age, conditions));
            }
        }
        return said;
    }

    private String sentence(AttendanceAge age, ConditionWords conditions) {
        String whose = conditions.of(age.when());
        return (whose.isEmpty() ? "" : wording.say("law.age.for", whose) + ' ')
                + wording.say("law.age.starts", starts(age.starts())) + ' ' + wording.say("law.age.ends", ends(age.ends()));
    }

    /** Says ages in force, for example those of one pathway. */
    void add(SheetBuilder sheet, List<AttendanceAge> ages, Pathway pathway, LocalDate asOf) {
        ConditionWords conditions = new ConditionWords(wording, profile, pathway);
        for (AttendanceAge age : ages) {
            if (!age.validity().inForceOn(asOf)) {
                continue;
            }
            sheet.say(sentence(age, conditions));
            if (age.early() != null) {
                sheet.say(wording.say("law.age.early", conditions.of(age.early())));
            }
            if (age.note() != null) {
                sheet.say(age.note());
            }
            sheet.small(String.join(" ", new Sources(wording).sentences(age.cites())));
        }
    }

    private String starts(Starts starts) {
        if (starts instanceof Starts.Birthday birthday) {
            return wording.say("law.age.start.birthday", birthday.age()) + midYear(birthday.midYear());
        }
        if (starts instanceof Starts.ByDate by) {
            String from = by.bindsFrom() == null ? ""
                    : wording.say("law.age.start.binds-from", wording.date(by.bindsFrom()));
            return wording.say(by.inclusive() ? "law.age.start.by" : "law.age.start.before", by.age(),
                    wording.date(by.date())) + from + midYear(by.midYear());
        }
        if (starts instanceof Starts.CalendarYear year) {
            return wording.say("law.age.start.calendar", year.age(), wording.date(year.from()));
        }
        if (starts instanceof Starts.BySchoolFirstDay school) {
            return wording.say(school.inclusive() ? "law.age.start.school" : "law.age.start.before-school", school.age());
        }
        boolean earlier = starts instanceof Starts.EarlierOf;
        List<Starts> parts = starts instanceof Starts.EarlierOf e ? e.parts() : ((Starts.LaterOf) starts).parts();
        return wording.say(earlier ? "due.earlier-of" : "due.later-of",
                String.join(wording.say("evidence.or"), parts.stream().map(this::starts).toList()));
    }

    private String midYear(MidYear midYear) {
        if (midYear == null) {
            return "";
        }
        return switch (midYear) {
            case OWED -> "";
            case NEXT_YEAR -> wording.say("law.age.mid-year.next-year");
            case UNCLEAR -> wording.say("law.age.mid-year.unclear");
        };
    }

    private String ends(Ends ends) {
        if (ends instanceof Ends.Birthday birthday) {
            return wording.say("law.age.end.birthday", birthday.age());
        }
        if (ends instanceof Ends.YearEnd year) {
            return wording.say("law.age.end.year", year.age());
        }
        if (ends instanceof Ends.ByDate by) {
            return wording.say("law.age.end.by", by.age(), wording.date(by.date()));
        }
        if (ends instanceof Ends.OnEvent event) {
            return wording.say("law.age.end.event", event.event().words());
        }
        if (ends instanceof Ends.GradeCompleted grade) {
            return wording.say("law.age.end.grade", Grades.name(grade.grade()));
        }
        boolean earlier = ends instanceof Ends.EarlierOf;
        List<Ends> parts = ends instanceof Ends.EarlierOf e ? e.parts() : ((Ends.LaterOf) ends).parts();
        return wording.say(earlier ? "due.earlier-of" : "due.later-of",
                String.join(wording.say("evidence.or"), parts.stream().map(this::ends).toList()));
    }
}
