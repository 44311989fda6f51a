package org.hearthrule.page.family;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Part;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Placements;
import org.hearthrule.records.Student;
import org.hearthrule.terms.Prose;
import org.hearthrule.terms.Wording;

/** What the forms of the family offer and say: the children of the open book, the states and their ways. */
record Household(Book book, Profiles profiles, LocalDate today) {

    static Household of(Call call) {
        return new Household(call.desk().book(), call.desk().profiles(), call.desk().today());
    }

    List<Option> children() {
        return Choices.children(book);
    }

    List<String> ids() {
        return Choices.childIds(book);
    }

    String names(List<String> students) {
        return Wording.english().and(students.stream().map(id -> book.student(id).map(Student::name).orElse(id)).toList());
    }

    List<Option> states() {
        return Choices.states(profiles);
    }

    Optional<Profile> law(String code) throws BadInputException {
        return profiles.known(code);
    }

    /** @return ways of a law on a day, each with what it is in short; none without a law */
    static List<Option> ways(Optional<Profile> law, LocalDate day) {
        return law.map(one -> Choices.ways(one, day)).orElse(List.of());
    }

    /** @return a stretch of a child's story, in a sentence */
    String stretch(Placement one) throws BadInputException {
        Optional<Profile> law = law(one.jurisdiction());
        String way = law.flatMap(found -> found.pathway(one.pathway())).map(Pathway::name).orElse(one.pathway());
        String place = one.district() == null ? "" : ", " + one.district() + " school district";
        String until = one.to() == null ? "" : ", until " + Wording.english().date(one.to()) + why(one.ended());
        return law.map(Profile::name).orElse(one.jurisdiction()) + ", " + Prose.lowerFirst(way) + ", from "
                + Wording.english().date(one.from()) + until + place + '.';
    }

    /** @return a child's whole story, a sentence for each stretch; never empty */
    List<String> story(String student) throws BadInputException {
        List<String> story = new ArrayList<>();
        for (Placement one : Placements.of(book, student)) {
            story.add(stretch(one));
        }
        return story.isEmpty() ? List.of("Nothing is noted of where and how " + names(List.of(student)) + " is taught.")
                : story;
    }

    private static String why(String ended) {
        return switch (ended == null ? "" : ended) {
            case "" -> "";
            case "moved" -> ", when you moved";
            case "changed-pathway" -> ", when the way to teach changed";
            case "entered-school" -> ", when school began";
            case "stopped" -> ", when home instruction stopped";
            default -> " (" + ended.replace('-', ' ') + ')';
        };
    }

    static Answer shown(String what, String title, Form form, int status, Map<String, Object> more) {
        Map<String, Object> values = new LinkedHashMap<>(more);
        values.put("form", form);
        return new Answer.Shown("family/" + what + ".jte", title, Part.FAMILY, values, status);
    }
}
