package org.hearthrule.page.log;

import java.util.List;
import java.util.Map;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.SubjectChoice;

/**
 * The form of an entry as its template sets it.
 *
 * @param days    offered to be chosen without typing, as lengths of time are then; empty for an entry that is mended, where what
 *                was typed before would go before a choice unseen
 * @param offered subjects that the words suggest, none of them ticked
 * @param action  where it is sent
 * @param print   print of the entry it was opened with, or empty
 * @param there   what the book holds now, where that is another version than the form was opened with; else null
 * @param gone    whether the entry was taken out since the form was opened
 * @param first   whether the first field is ready to type in when the page opens
 * @param back    where to go when it is saved, or empty
 */
public record EntryView(Form form, List<Option> children, List<Option> persons, List<SubjectChoice.Area> areas, List<Option> days,
                        List<Offered> offered, String action, String print, Map<String, String> there, boolean gone, boolean first,
                        String back) {

    /**
     * A subject that is offered.
     *
     * @param because the words that led to it, told to the parent
     */
    public record Offered(String subject, String name, String because) { }

    /** @return whether it was asked if a day to come is meant */
    public boolean asksAhead() {
        return form.complaint("ahead") != null || form.is("ahead");
    }

    /** @return whether the smaller fields hold something */
    public boolean hasMore() {
        return form.is("materials") || form.is("place") || form.is("by") || form.is("core") || form.complaint("materials") != null
                || form.complaint("place") != null || form.complaint("by") != null;
    }

    /** @return the subjects that are ticked, which stand by themselves, in the order of the vocabulary */
    public List<Option> chosen() {
        List<String> ticked = form.field("subjects", "").values();
        return SubjectChoice.all().stream().filter(one -> ticked.contains(one.value())).toList();
    }
}
