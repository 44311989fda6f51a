package org.hearthrule.page.family;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Profile;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.records.HeldAnswers;
import org.hearthrule.records.AnsweredFact;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Placements;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.terms.Wording;

/** {@code /family}: who is taught, by whom, where and under which law; the forms that change it stand in classes of their own. */
public final class FamilyPages implements Feature {

    private static final List<Feature> FORMS = List.of(new ChildPages(), new ChildOutPages(), new PersonPages(),
            new PlacePages(), new MovePages(), new EndPages(), new EventPages(), new GradePages(),
            new ChoicePages());

    @Override
    public void addTo(Routes routes) {
        routes.get("/family", FamilyPages::family);
        FORMS.forEach(forms -> forms.addTo(routes));
    }

    /**
     * A child and its story.
     *
     * @param story in the order of its days
     */
    public record ChildView(String id, String name, String born, String grade, List<StretchView> story) { }

    /** A stretch of a child's story, in a sentence. */
    public record StretchView(String words, String address) { }

    /** A person in words. */
    public record PersonView(String id, String name, List<String> words) { }

    /**
     * A fact that a law asks about.
     *
     * @param about  id of the child, or empty for the family
     * @param answer {@code yes}, {@code no}, or what is taken while nobody has said it
     * @param said   whether it was answered
     * @param print  of the answer there is, or empty
     */
    public record FactView(String fact, String question, String about, String who, String answer, boolean said,
                           String print) { }

    private static Answer family(Call call) throws BadInputException {
        Household house = Household.of(call);
        List<ChildView> children = new ArrayList<>();
        for (Student child : house.book().students()) {
            children.add(child(house, child));
        }
        List<PersonView> persons = house.book().persons().stream()
                .map(one -> new PersonView(one.id(), one.name(), PersonPages.words(one))).toList();
        return Answer.page("family/family.jte", "Family", Part.FAMILY, Map.of("children", children, "persons", persons, "events",
                EventPages.views(house), "facts", facts(call), "asked", ChoicePages.views(call), "choices", ChoicePages.made(call)));
    }

    private static ChildView child(Household house, Student child) throws BadInputException {
        String label = YearLabel.of(house.today()).toString();
        Book book = house.book();
        String grade = book.years().containsKey(label) ? book.years().get(label).grades().get(child.id()) : null;
        List<StretchView> story = new ArrayList<>();
        for (Placement one : Placements.of(book, child.id())) {
            story.add(new StretchView(house.stretch(one), PlacePages.address(one)));
        }
        return new ChildView(child.id(), child.name(), child.born() == null ? "not entered" : Wording.english().date(child.born()),
                grade == null ? "not entered for " + label : grade.equals("K") ? "kindergarten" : "grade " + grade,
                story);
    }

    private static List<FactView> facts(Call call) throws BadInputException {
        Book book = call.desk().book();
        List<FactView> facts = new ArrayList<>();
        for (Profile law : call.desk().judgement().profiles()) {
            for (Profile.FactAsked fact : law.facts().values()) {
                if (fact.about().equals("child")) {
                    book.students().forEach(child -> facts.add(fact(book, fact, child.id(), child.name())));
                } else {
                    facts.add(fact(book, fact, "", ""));
                }
            }
        }
        return facts.stream().distinct().toList();
    }

    private static FactView fact(Book book, Profile.FactAsked asked, String about, String who) {
        Optional<AnsweredFact> answer = HeldAnswers.fact(book, asked.name(), about);
        String taken = asked.presume() == null ? "not said yet" : "not said yet, taken as " + (asked.presume() ? "yes" : "no");
        return new FactView(asked.name(), asked.question(), about, who, answer.map(one -> one.is() ? "yes" : "no").orElse(taken),
                answer.isPresent(), Print.ofHeld(answer));
    }
}
