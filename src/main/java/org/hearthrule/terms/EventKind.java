package org.hearthrule.terms;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * A kind of dated happening that a law hangs a date on. The spelling in files and on the command line is the
 * constant in lower case with hyphens ({@code left-school}).
 */
public enum EventKind {
    // the child and the home
    PROGRAM_START("the day home instruction starts"),
    DUTY_BEGINS("the day the law first binds this child"),
    FIRST_LESSON("the first lesson"),
    RESUMED("the day home instruction resumed"),
    STOPPED("the day home instruction stopped"),
    LEFT_SCHOOL("the day the child left school"),
    FIRST_ABSENCE("the first day missed at school"),
    ENTERED_SCHOOL("the day the child entered a school"),
    MOVED_IN("the day you moved in"),
    MOVING_OUT("the day you plan to move away"),
    NAME_OR_ADDRESS_CHANGED("the day a name or address changed"),
    TEACHER_CHANGED("the day the teacher changed"),
    OWNER_CHANGED("the day the school got a new owner"),
    CONTRACT_SIGNED("the day the contract was signed"),
    ENROLLED_IN_ASSOCIATION("the day of enrolment in an association"),
    DISCIPLINE_ENDED("the day a school's discipline ended"),
    GRADE_COMPLETED("the day the grade was completed"),
    CREDITS_COMPLETED("the day the credits were completed"),
    DIPLOMA("the day of the diploma"),
    WORK_PERMIT("the day of the work certificate"),
    // calendars
    SCHOOL_FIRST_DAY("the first day of school in your district"),
    SCHOOL_LAST_DAY("the last day of school in your district"),
    YEAR_FIRST_DAY("the first day of your school year"),
    YEAR_LAST_DAY("the last day of your school year"),
    TERM_START("the first day of a district term"),
    TERM_END("the last day of a district term"),
    STATE_TEST("the statewide test"),
    // papers and tests
    NOTICE_SENT("the day you sent the notice"),
    PLAN_SENT("the day you sent the plan"),
    REPORT_SENT("the day you sent the report"),
    TEST_GIVEN("the day of the test"),
    TEST_RESULT("the day the result came"),
    TEST_AGREED("the day a test was agreed on"),
    // the other side
    NOTICE_RECEIVED("the day they received your notice"),
    PLAN_RECEIVED("the day they received your plan"),
    MATERIALS_RECEIVED("the day you received their forms"),
    ANSWER_RECEIVED("the day their answer came"),
    APPROVED("the day of the approval"),
    REFUSED("the day of the refusal"),
    DEFICIENCY_RECEIVED("the day you received a notice of what is missing"),
    CERTIFIED_LETTER_RECEIVED("the day you received the certified letter"),
    REQUEST_RECEIVED("the day you received a written request"),
    DECISION_RECEIVED("the day of the decision"),
    HEARING("the day of the hearing"),
    PROBATION_STARTED("the day probation started"),
    PROBATION_ENDED("the day probation ended"),
    PLAN_ACCEPTED("the day the plan was accepted"),
    PROGRAM_ENDED_BY_AUTHORITY("the day the authority ended the program"),
    CONVICTION("the day of a conviction");

    private final String words;

    EventKind(String words) {
        this.words = words;
    }

    /** @return the event in plain words, fit for the middle of a sentence */
    public String words() {
        return words;
    }

    /** @return the kind that files spell so; empty when there is none */
    public static Optional<EventKind> of(String slug) {
        return Arrays.stream(values()).filter(kind -> kind.slug().equals(slug)).findFirst();
    }

    /** @return the spelling used in files, for example {@code left-school} */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
