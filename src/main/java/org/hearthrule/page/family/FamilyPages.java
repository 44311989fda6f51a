package org.hearthrule.page.family;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Profile;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.AnsweredFact;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Placements;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.terms.Wording;

/** {@code /family}: who is taught, by whom, where and under which law; the forms that change it stand in classes of their own. */
public final class FamilyPages implements Feature {

    private static final List<Feature> FORMS = List.of(new ChildPages(), new PersonPages(), new PlacePages(), new MovePages(),
            new EndPages(), new EventPages(), new GradePages());

    @Override
    public void addTo(Routes routes) {
        routes.get("/family", FamilyPages::family);
        FORMS.forEach(forms -> forms.addTo(routes));
    }

    /**
     * A child and its story.
     *
     * @param story    a sentence for each stretch, in the order of their days
     * @param goesOn   whether something goes on for it
     */
    public record ChildView(String id, String name, String born, String grade, List<String> story, boolean goesOn) { }

    /** A person in words. */
    public record PersonView(String id, String name, List<String> words) { }

    /**
     * A fact that a law asks about.
     *
     * @param about  id of the child, or empty for the family
     * @param answer {@code yes}, {@code no}, or what is taken while nobody has said it
     * @param said   whether it was answered
     */
    public record FactView(String fact, String question, String about, String who, String answer, boolean said) { }

    private static Answer family(Call call) throws BadInputException {
        Household house = Household.of(call);
        List<ChildView> children = new ArrayList<>();
        for (Student child : house.book().students()) {
            children.add(child(house, child));
        }
        List<PersonView> persons = house.book().persons().stream()
                .map(one -> new PersonView(one.id(), one.name(), PersonPages.words(one))).toList();
        return Answer.page("family/family.jte", "Family", Part.FAMILY, Map.of("children", children, "persons", persons, "events",
                EventPages.views(house), "facts", facts(call), "choices", GradePages.choices(house)));
    }

    private static ChildView child(Household house, Student child) throws BadInputException {
        String label = YearLabel.of(house.today()).toString();
        Book book = house.book();
        String grade = book.years().containsKey(label) ? book.years().get(label).grades().get(child.id()) : null;
        List<String> story = new ArrayList<>();
        List<Placement> placements = book.placements().stream().filter(one -> one.student().equals(child.id()))
                .sorted(Comparator.comparing(Placement::from)).toList();
        for (Placement one : placements) {
            story.add(house.stretch(one));
        }
        return new ChildView(child.id(), child.name(), child.born() == null ? "not entered" : Wording.english().date(child.born()),
                grade == null ? "not entered for " + label : grade.equals("K") ? "kindergarten" : "grade " + grade, story,
                Placements.open(book, child.id()).isPresent());
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
        Optional<AnsweredFact> answer = book.facts().stream().filter(one -> GradePages.answers(one, asked.name(), about)).findFirst();
        String taken = asked.presume() == null ? "not said yet" : "not said yet, taken as " + (asked.presume() ? "yes" : "no");
        return new FactView(asked.name(), asked.question(), about, who, answer.map(one -> one.is() ? "yes" : "no").orElse(taken),
                answer.isPresent());
    }
}
