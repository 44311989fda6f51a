package org.hearthrule.law;

import java.util.List;
import java.util.Optional;
import org.hearthrule.input.Place;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Binding;
import org.hearthrule.terms.EventKind;

/**
 * One thing a pathway asks.
 *
 * @param id          whole id, for example {@code us-xx/home-instruction/yearly-notice}
 * @param kind        what kind of duty
 * @param title       short name for a line
 * @param owedFor     whom it is owed for
 * @param by          role of who owes it: {@code parent}, {@code tutor}, {@code school}, {@code association},
 *                    {@code evaluator}, {@code authority}
 * @param to          who receives it, or null
 * @param ages        which children it binds, before {@code when}
 * @param when        when it applies
 * @param recurs      how often it comes up
 * @param due         when it is due
 * @param shows       what shows that it is met
 * @param states      what a paper must say
 * @param attaches    what goes with it
 * @param form        how it must be made and sent, in words, or null
 * @param needs       local ids of requirements that come first
 * @param group       requirements of one group are alternatives: one met closes the others; null when alone
 * @param countsFrom  paper before whose sending nothing counts, or null
 * @param keepFor     how long the record is kept, or null
 * @param next        one next step for the parent
 * @param note        plain words on the rule, or null
 * @param ask         whom to ask because the rule cannot be settled here, or null
 * @param question    the open question that goes with {@code ask}, or null
 * @param confirmWith whom to confirm with
 * @param cites       at least one
 * @param basis       weakest reading among the cites
 * @param binding     how binding
 * @param validity    days in force
 * @param waivedIn    labels of school years in which it was not asked, such as {@code 2019-20}
 */
public record Requirement(String id, RequirementKind kind, String title, OwedFor owedFor, String by, String to,
                          Ages ages, Condition when, Recurs recurs, Due due, Evidence shows, List<String> states,
                          List<String> attaches, String form, List<String> needs, String group, String countsFrom, Retention keepFor,
                          String next, String note, String question, String ask, String confirmWith,
                          List<Cite> cites, Basis basis, Binding binding, Validity validity,
                          List<String> waivedIn, Place place) {

    public enum OwedFor { CHILD, FAMILY, SCHOOL }

    /** Which children are bound, seen from the compulsory ages of the profile. */
    public enum Ages {
        /** Only while the child is of compulsory age. */
        COMPULSORY,
        /** Whatever the age, as long as the pathway is followed. */
        ANY
    }

    /**
     * How often a duty comes up.
     *
     * @param each   once a school year, once for the pathway, or on each event
     * @param events the events, for {@link Each#EVENT}
     */
    public record Recurs(Each each, List<EventKind> events) {
        public enum Each { YEAR, ONCE, EVENT }

        public static final Recurs YEARLY = new Recurs(Each.YEAR, List.of());
    }

    /**
     * How long something is kept.
     *
     * @param span  so long after the school year, or null
     * @param words in the law's sense, for example {@code permanently}
     */
    public record Retention(Span span, String words) { }

    /** @return last part of the id, for example {@code yearly-notice} */
    public String localId() {
        return id.substring(id.lastIndexOf('/') + 1);
    }

    /** @return the first cite */
    public Cite cite() {
        return cites.get(0);
    }

    public Optional<String> optionalNote() {
        return Optional.ofNullable(note);
    }
}
