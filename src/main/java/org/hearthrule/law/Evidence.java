package org.hearthrule.law;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hearthrule.terms.Grades;

/**
 * What in a record book shows that a requirement is met: a tree of any-of and all-of over leaves.
 *
 * <p>Every node may carry a condition of its own ({@link Option}).
 */
public sealed interface Evidence {

    /** @return the single pieces of one kind, in order, whatever the conditions on them; none of nothing */
    static <T extends Evidence> List<T> leaves(Evidence tree, Class<T> kind) {
        List<T> found = new ArrayList<>();
        addLeaves(tree, kind, found);
        return found;
    }

    private static <T extends Evidence> void addLeaves(Evidence tree, Class<T> kind, List<T> found) {
        if (tree instanceof AnyOf any) {
            any.parts().forEach(part -> addLeaves(part, kind, found));
        } else if (tree instanceof AllOf all) {
            all.parts().forEach(part -> addLeaves(part, kind, found));
        } else if (tree instanceof Option option) {
            addLeaves(option.part(), kind, found);
        } else if (kind.isInstance(tree)) {
            found.add(kind.cast(tree));
        }
    }

    record AnyOf(List<Evidence> parts) implements Evidence { }

    record AllOf(List<Evidence> parts) implements Evidence { }

    /**
     * A part that is open only under a condition, or that has a name of its own for the reader.
     *
     * @param when  open only then; {@link Condition#ALWAYS} when always
     * @param as    the law's or a plain name for it, or null
     * @param name  slug by which a choice or a later year refers to it, or null
     */
    record Option(Condition when, String as, String name, Evidence part) implements Evidence { }

    /** A paper that was sent. */
    record Filing(String paper) implements Evidence { }

    /** A filed paper that was answered with yes. */
    record Approval(String paper) implements Evidence { }

    /** A paper that is kept, not sent: a plan book, an attendance register. */
    record Document(String kind) implements Evidence { }

    /** Log entries: at least so many in every {@code per}. */
    record Log(int entries, Period per) implements Evidence { }

    /** Dated work samples: at least {@code least}, for each subject owed when {@code perSubject}. */
    record Samples(int least, boolean perSubject) implements Evidence { }

    /** Titles in the reading list. */
    record Readings(int least) implements Evidence { }

    /**
     * An amount of time taught.
     *
     * @param measure    what is counted
     * @param amount     by level name; the key {@code ""} stands for every level
     * @param per        the stretch in which the amount must be reached, every one of them
     * @param of         subject ids that count, or empty for all; {@code core} marks are the id {@code core}
     * @param at         place that counts ({@code home}), or null
     * @param dayHours   a day counts only with so many hours, or null
     * @param meanHours  hours a day on average over the days, or null
     * @param over       grades whose years are added up, or null for one school year
     * @param yardstick  how exactly the number is meant
     * @param setBy      who sets the number, or null when the law does; {@code amount} is then what holds while nothing
     *                   is entered, and may be empty
     */
    record Time(Measure measure, Map<String, BigDecimal> amount, Period per, List<String> of, String at,
                BigDecimal dayHours, BigDecimal meanHours, Grades over, Yardstick yardstick, SetBy setBy)
            implements Evidence {
        /**
         * A number that somebody else sets.
         *
         * @param who   in words
         * @param value name under which the family enters it among its choices
         */
        public record SetBy(String who, String value) { }

        public enum Measure {
            DAYS, HOURS, WEEKS, MONTHS;

            /** @return the spelling used in files, for example {@code days} */
            public String slug() {
                return name().toLowerCase(Locale.ROOT);
            }
        }

        /** Whether falling short is certain failure. */
        public enum Yardstick {
            EXACT,
            /** "The equivalent of" so much: just short of it nobody can tell. */
            SUBSTANTIAL,
            /** Less may do for a part of a year, and the law says by no rule how much less. */
            PRORATED
        }
    }

    /** A subject list: each item shown by log entries, samples or readings. */
    record Subjects(List<SubjectItem> items, Interval interval, Grades span) implements Evidence {
        public enum Interval { EACH_YEAR, OVER_LEVEL, ONCE_IN_SPAN, AS_FITS }
    }

    /**
     * A test with its report.
     *
     * @param method      slug of the method, {@code standardized-test} by default
     * @param list        tests the law names; empty when it is open
     * @param areas       areas that must be reported
     * @param givenBy     roles that may give it; empty when anyone may
     * @param notBy       roles or relations that may not
     * @param consent     who must agree first, or null
     * @param thresholds  all must hold for a sufficient result; empty when no score is asked
     */
    record Test(String method, List<String> list, List<String> areas, List<String> givenBy, List<String> notBy,
                String consent, List<Threshold> thresholds) implements Evidence { }

    /**
     * A judgement by a person.
     *
     * @param method   slug of the method, for example {@code portfolio-evaluation}
     * @param by       roles or credentials that may make it; empty when anyone may
     * @param notBy    roles or relations that may not
     * @param consent  who must agree first, or null
     * @param includes what it must rest on, for example {@code interview}, {@code portfolio}
     * @param says     outcome words that suffice; empty when the outcome is free
     */
    record Evaluation(String method, List<String> by, List<String> notBy, String consent, List<String> includes,
                      List<String> says) implements Evidence { }

    /** A person's credential: {@code of} is a role, {@code kinds} are slugs of which one suffices. */
    record Credential(String of, List<String> kinds) implements Evidence { }

    /** A health paper or exemption, of one of these kinds. */
    record HealthPaper(List<String> kinds) implements Evidence { }

    /** A declared fact that must be answered with {@code is}. */
    record Fact(String name, boolean is) implements Evidence { }

    /**
     * Contacts of a person with the child.
     *
     * @param amount     so many visits or hours
     * @param hours      true: hours, false: visits
     * @param perDays    in every so many days taught, or 0 when {@code per} says
     * @param per        the stretch, or null when {@code perDays} says
     * @param mean       the amount is an average over the stretches
     * @param monthly    the average is taken anew in each month, by the days in it
     * @param further    more hours for each further child of the family taught so, or null
     * @param faceToFace one of so many must be face to face; 0 when it does not matter
     * @param by         role of the visitor
     */
    record Visits(BigDecimal amount, boolean hours, int perDays, Period per, boolean mean, boolean monthly,
                  FurtherChild further, int faceToFace, String by) implements Evidence {

        /** So many hours more in each stretch for each child after the first. */
        public record FurtherChild(BigDecimal hours, Period per) { }
    }

    /** Words only: the parent or somebody else judges; never computed. */
    record Words(String words) implements Evidence { }
}
