package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.records.BookEvent;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearRecords;
import org.hearthrule.terms.EventKind;

/**
 * The dated happenings of a situation: those written down as such, and those that other records tell of (a placement,
 * a former school, an answer to a paper).
 */
final class Happenings {

    private static final Set<EventKind> SENT = Set.of(EventKind.NOTICE_SENT, EventKind.PLAN_SENT, EventKind.REPORT_SENT);

    private final Situation situation;
    private final Map<EventKind, List<LocalDate>> known = new EnumMap<>(EventKind.class);

    Happenings(Situation situation) {
        this.situation = situation;
    }

    /** @return every day of this kind, in order, whatever the year */
    List<LocalDate> days(EventKind kind) {
        List<LocalDate> days = known.get(kind);
        if (days == null) {
            days = new ArrayList<>(new java.util.TreeSet<>(collect(kind)));
            known.put(kind, days);
        }
        return days;
    }

    /** @return days of this kind that lie in the situation's year */
    List<LocalDate> daysInYear(EventKind kind) {
        return days(kind).stream().filter(situation.year()::holds).toList();
    }

    /** @return the day that a duty of this year hangs on: the last one up to the year's end */
    Optional<LocalDate> day(EventKind kind) {
        LocalDate found = null;
        for (LocalDate day : days(kind)) {
            if (!day.isAfter(situation.year().end()) && (!yearly(kind) || !day.isBefore(situation.year().start().minusDays(90)))) {
                found = day;
            }
        }
        return Optional.ofNullable(found);
    }

    /** @return for papers and answers, the first such day on or after {@code since}; for other kinds what {@link #day} says */
    Optional<LocalDate> daySince(EventKind kind, LocalDate since) {
        if (!yearly(kind)) {
            return day(kind);
        }
        return days(kind).stream().filter(day -> !day.isBefore(since)).findFirst();
    }

    /**
     * @param paper only the sending of this paper, or answers to it; those written down as mere happenings count when there is none
     * @return days of this kind, in order, whatever the year
     */
    List<LocalDate> days(EventKind kind, String paper) {
        List<LocalDate> answers = new ArrayList<>();
        for (YearRecords year : situation.book().years().values()) {
            for (YearRecords.Filing filing : year.filings()) {
                boolean meant = filing.paper().equals(paper) && situation.concerns(filing.students());
                if (meant && SENT.contains(kind)) {
                    addIfKnown(answers, filing.sent());
                } else if (meant) {
                    answersOf(filing, kind == EventKind.PLAN_RECEIVED ? EventKind.NOTICE_RECEIVED : kind, answers);
                }
            }
        }
        if (answers.isEmpty()) {
            noted(kind, answers);
        }
        return new ArrayList<>(new java.util.TreeSet<>(answers));
    }

    /** @return whether somebody asked in the year; who it was is often left out, and a request that names another is not meant */
    boolean requestedInYear(String by) {
        List<LocalDate> days = new ArrayList<>();
        noted(EventKind.REQUEST_RECEIVED, days);
        requests(request -> request.by() == null || request.by().equals(by), days);
        return days.stream().anyMatch(situation.year()::holds);
    }

    /** @return true when a school was left and nobody said when */
    boolean leftSchoolOnAnUnknownDay() {
        List<Student.FormerSchool> schools = situation.student().schools();
        return schools != null && schools.stream().anyMatch(school -> !school.kind().equals("home-program") && school.to() == null);
    }

    /** Kinds that come anew each year: an old one must not stand in for this year's. */
    private static boolean yearly(EventKind kind) {
        return switch (kind) {
            case SCHOOL_FIRST_DAY, SCHOOL_LAST_DAY, YEAR_FIRST_DAY, YEAR_LAST_DAY, TERM_START, TERM_END, NOTICE_SENT,
                    PLAN_SENT, REPORT_SENT, NOTICE_RECEIVED, PLAN_RECEIVED, MATERIALS_RECEIVED, ANSWER_RECEIVED,
                    DEFICIENCY_RECEIVED, REQUEST_RECEIVED, TEST_GIVEN, TEST_RESULT, CERTIFIED_LETTER_RECEIVED -> true;
            default -> false;
        };
    }

    private List<LocalDate> collect(EventKind kind) {
        List<LocalDate> days = new ArrayList<>();
        noted(kind, days);
        switch (kind) {
            case PROGRAM_START -> days.add(situation.programStart());
            case DUTY_BEGINS -> CompulsoryAge.begins(situation).ifPresent(
                    bound -> days.add(bound.isAfter(situation.programStart()) ? bound : situation.programStart()));
            case STOPPED -> ended(days, null);
            case ENTERED_SCHOOL -> ended(days, "entered-school");
            case MOVED_IN -> movedIn(days);
            case LEFT_SCHOOL -> leftSchool(days);
            case SCHOOL_FIRST_DAY -> addIfKnown(days, situation.calendar().schoolFirstDay());
            case SCHOOL_LAST_DAY -> addIfKnown(days, situation.calendar().schoolLastDay());
            case YEAR_FIRST_DAY -> addIfKnown(days, situation.calendar().firstDay());
            case YEAR_LAST_DAY -> addIfKnown(days, situation.calendar().lastDay());
            case TERM_START -> situation.calendar().terms().forEach(term -> days.add(term.from()));
            case TERM_END -> situation.calendar().terms().forEach(term -> days.add(term.to()));
            default -> fromPapers(kind, days);
        }
        return days;
    }

    private void noted(EventKind kind, List<LocalDate> days) {
        for (BookEvent event : situation.book().events()) {
            if (event.kind() == kind && situation.concerns(event.students())) {
                days.add(event.date());
            }
        }
    }

    private static void answersOf(YearRecords.Filing filing, EventKind kind, List<LocalDate> days) {
        for (YearRecords.Answer answer : filing.answers()) {
            if (matches(kind, answer.kind())) {
                addIfKnown(days, answer.date());
            }
        }
    }

    private void fromPapers(EventKind kind, List<LocalDate> days) {
        String notice = firstPaper();
        for (YearRecords year : situation.book().years().values()) {
            for (YearRecords.Filing filing : year.filings()) {
                if (!situation.concerns(filing.students())) {
                    continue;
                }
                boolean isNotice = filing.paper().equals(notice);
                if (kind == EventKind.NOTICE_SENT && isNotice) {
                    addIfKnown(days, filing.sent());
                }
                if (kind != EventKind.NOTICE_RECEIVED || isNotice) {
                    answersOf(filing, kind, days);
                }
            }
            if (kind == EventKind.TEST_GIVEN) {
                for (YearRecords.TestTaken test : year.tests()) {
                    if (test.student().equals(situation.studentId())) {
                        addIfKnown(days, test.date());
                    }
                }
            }
        }
        if (kind == EventKind.REQUEST_RECEIVED) {
            requests(request -> true, days);
        }
    }

    private void requests(Predicate<YearRecords.Request> meant, List<LocalDate> days) {
        for (YearRecords year : situation.book().years().values()) {
            for (YearRecords.Request request : year.requests()) {
                if (situation.concerns(request.students()) && meant.test(request)) {
                    addIfKnown(days, request.date());
                }
            }
        }
    }

    private static boolean matches(EventKind kind, String answer) {
        return switch (answer) {
            case "received" -> kind == EventKind.NOTICE_RECEIVED;
            case "materials" -> kind == EventKind.MATERIALS_RECEIVED;
            case "approved" -> kind == EventKind.APPROVED;
            case "refused" -> kind == EventKind.REFUSED;
            case "deficiency" -> kind == EventKind.DEFICIENCY_RECEIVED;
            case "answered" -> kind == EventKind.ANSWER_RECEIVED;
            default -> false;
        };
    }

    /** The first paper a pathway asks for is its notice. */
    String firstPaper() {
        for (Requirement requirement : situation.pathway().asks()) {
            if (requirement.kind() == RequirementKind.FILE
                    && requirement.shows() instanceof org.hearthrule.law.Evidence.Filing filing) {
                return filing.paper();
            }
        }
        return null;
    }

    private void ended(List<LocalDate> days, String why) {
        Placement placement = situation.placement();
        if (placement.to() != null && (why == null || why.equals(placement.ended()))) {
            days.add(placement.to());
        }
    }

    private void movedIn(List<LocalDate> days) {
        for (Placement other : situation.book().placements()) {
            if (other.student().equals(situation.studentId()) && "moved".equals(other.ended()) && other.to() != null
                    && other.to().isBefore(situation.placement().from())
                    && !other.to().isBefore(situation.placement().from().minusDays(60))) {
                days.add(situation.placement().from());
            }
        }
    }

    private void leftSchool(List<LocalDate> days) {
        if (situation.student().schools() != null) {
            for (Student.FormerSchool school : situation.student().schools()) {
                if (!school.kind().equals("home-program")) {
                    addIfKnown(days, school.to());
                }
            }
        }
    }

    private static void addIfKnown(List<LocalDate> days, LocalDate day) {
        if (day != null) {
            days.add(day);
        }
    }
}
