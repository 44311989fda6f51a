package org.hearthrule.law;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hearthrule.input.Place;

/**
 * One lawful way to teach a child.
 *
 * @param id         whole id, for example {@code us-xx/home-instruction}
 * @param name       plain name
 * @param inShort    one line for a list of pathways
 * @param usual      the one most families take; exactly one in a profile
 * @param openTo     who may use it
 * @param instructor what the teacher must be, in words
 * @param excludes   slugs of pathways that cannot be followed beside it
 * @param combines   slugs of pathways that may be
 * @param year       the school year it counts in
 * @param attendance compulsory ages of its own, in place of those of the profile; empty when it has none
 * @param choices    choices a parent makes, by name
 * @param asks       what it asks
 * @param doesNotAsk what it does not ask
 */
public record Pathway(String id, String name, String inShort, boolean usual, String openTo, String instructor,
                      List<String> excludes, List<String> combines, SchoolYear year, List<AttendanceAge> attendance,
                      Map<String, ChoiceOffered> choices, List<Requirement> asks, List<NotAsked> doesNotAsk,
                      List<Cite> cites, Validity validity, Place place) {

    /** Something the law does not ask, said outright. */
    public record NotAsked(String id, String what, Cite cite, Validity validity) { }

    /** @return what it does not ask on that day, in the order of its file */
    public List<NotAsked> doesNotAskOn(LocalDate day) {
        return doesNotAsk.stream().filter(not -> not.validity().inForceOn(day)).toList();
    }

    /**
     * A choice a parent makes.
     *
     * @param options  value to plain words
     * @param dates    true when the choice is a list of dates (the report dates of a plan)
     */
    public record ChoiceOffered(String name, String question, Map<String, String> options, boolean dates) { }

    /** @return last part of the id */
    public String slug() {
        return id.substring(id.lastIndexOf('/') + 1);
    }
}
