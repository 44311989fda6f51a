package org.hearthrule.cli;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hearthrule.checklist.TextPage;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.law.UnknownJurisdictionException;
import org.hearthrule.records.Book;
import org.hearthrule.terms.Grades;
import org.hearthrule.terms.Wording;

/**
 * Asks one thing at a time for a new book and checks each answer at once. {@code back} goes one question back,
 * {@code quit} ends. Nothing is written here.
 */
final class NewDialog {

    /** The questions, in their order; those from NAME to ANOTHER come once for each child. */
    private enum Question { FAMILY, NAME, BORN, GRADE, STATE, PATHWAY, STARTS, ANOTHER, CONFIRM }

    private static final int OLDEST = 25;

    private final Terminal terminal;
    private final Profiles profiles;
    private final Wording wording = Wording.english();
    private final NewBook draft;
    private final Deque<Question> asked = new ArrayDeque<>();

    NewDialog(Terminal terminal, Profiles profiles) {
        this.terminal = terminal;
        this.profiles = profiles;
        this.draft = new NewBook(terminal.today());
    }

    /** @return the book, or empty when the parent ended it or the input did */
    Optional<Book> run() throws BadInputException {
        say(wording.say("new.welcome"));
        Question question = Question.FAMILY;
        while (question != null) {
            terminal.print('\n' + ask(question) + "\n> ");
            String answer = terminal.readLine();
            if (answer == null || answer.strip().equalsIgnoreCase("quit")) {
                say('\n' + wording.say("new.quit"));
                return Optional.empty();
            }
            if (answer.strip().equalsIgnoreCase("back")) {
                question = back(question);
                continue;
            }
            String complaint = take(question, answer.strip());
            if (complaint != null) {
                say(complaint);
                continue;
            }
            asked.push(question);
            question = next(question, answer.strip());
        }
        return Optional.of(draft.book());
    }

    private void say(String text) {
        TextPage page = new TextPage(terminal.style(), wording);
        terminal.print(page.paragraph(0, text).toString());
    }

    private Question back(Question question) {
        if (asked.isEmpty()) {
            say(wording.say("new.first"));
            return question;
        }
        if (question == Question.NAME && draft.children().size() > 1) {
            draft.children().remove(draft.children().size() - 1);
        }
        return asked.pop();
    }

    private Question next(Question question, String answer) {
        return switch (question) {
            case FAMILY -> anotherChild();
            case NAME -> Question.BORN;
            case BORN -> Question.GRADE;
            case GRADE -> Question.STATE;
            case STATE -> Question.PATHWAY;
            case PATHWAY -> Question.STARTS;
            case STARTS -> Question.ANOTHER;
            case ANOTHER -> yes(answer) ? anotherChild() : Question.CONFIRM;
            case CONFIRM -> null;
        };
    }

    private Question anotherChild() {
        // after 'back' to the family's name the first child is there already
        if (draft.children().isEmpty() || draft.child().starts != null) {
            draft.children().add(new NewBook.Child());
        }
        return Question.NAME;
    }

    private String ask(Question question) {
        String name = draft.children().isEmpty() ? "" : draft.child().name;
        return switch (question) {
            case FAMILY -> text(wording.say("new.family"));
            case NAME -> text(wording.say(draft.children().size() == 1 ? "new.name.first" : "new.name.next"));
            case BORN -> text(wording.say("new.born", name));
            case GRADE -> text(wording.say("new.grade", name, draft.year()));
            case STATE -> text(before() == null ? wording.say("new.state", String.join(", ", profiles.names().values()))
                    : wording.say("new.state.again", before().profile.name()));
            case PATHWAY -> pathways();
            case STARTS -> text(wording.say("new.starts", name));
            case ANOTHER -> text(wording.say("new.another"));
            case CONFIRM -> confirm();
        };
    }

    private String text(String sentence) {
        String set = new TextPage(terminal.style(), wording).paragraph(0, sentence).toString();
        return set.substring(0, set.length() - 1);
    }

    private String pathways() {
        TextPage page = new TextPage(terminal.style(), wording);
        page.paragraph(0, wording.say("new.pathway", draft.child().name, draft.child().profile.name()));
        List<Pathway> pathways = standing();
        for (int i = 0; i < pathways.size(); i++) {
            Pathway pathway = pathways.get(i);
            page.hanging(2, (i + 1) + "  ", pathway.name() + (pathway.usual() ? wording.say("deadlines.usual") : "")
                    + ": " + pathway.inShort());
        }
        String set = page.toString();
        return set.substring(0, set.length() - 1);
    }

    private List<Pathway> standing() {
        return draft.child().profile.pathwaysOn(terminal.today());
    }

    private String confirm() {
        TextPage page = new TextPage(terminal.style(), wording);
        page.paragraph(0, wording.say("new.confirm", draft.family));
        for (NewBook.Child child : draft.children()) {
            page.hanging(2, "", wording.say("new.confirm.child", child.name, wording.date(child.born), child.grade,
                    child.profile.name(), child.pathway.name(), wording.date(child.starts)));
        }
        return page.toString() + wording.say("new.confirm.ask");
    }

    /** The child asked about before this one, or null. */
    private NewBook.Child before() {
        int size = draft.children().size();
        return size < 2 ? null : draft.children().get(size - 2);
    }

    /** Takes an answer in; returns null, or a kind word on what is wrong with it. */
    private String take(Question question, String answer) throws BadInputException {
        return switch (question) {
            case FAMILY -> name(answer, name -> draft.family = name);
            case NAME -> draft.children().stream().limit(draft.children().size() - 1L)
                    .anyMatch(other -> other.name.equalsIgnoreCase(answer)) ? wording.say("new.name.twice", answer)
                    : name(answer, name -> draft.child().name = name);
            case BORN -> born(answer);
            case GRADE -> grade(answer);
            case STATE -> state(answer);
            case PATHWAY -> pathway(answer);
            case STARTS -> starts(answer);
            case ANOTHER -> yes(answer) || no(answer) ? null : wording.say("new.yes-or-no");
            case CONFIRM -> yes(answer) ? null : no(answer) ? wording.say("new.confirm.no") : wording.say("new.yes-or-no");
        };
    }

    private String name(String answer, java.util.function.Consumer<String> taker) {
        String wrong = AnswerCheck.name(answer);
        if (wrong == null) {
            taker.accept(answer);
        }
        return wrong;
    }

    private String born(String answer) {
        AnswerCheck.Day day = AnswerCheck.day(answer);
        if (day.date() == null) {
            return day.complaint();
        }
        if (day.date().isAfter(terminal.today())) {
            return wording.say("new.born.future", wording.date(day.date()));
        }
        if (day.date().isBefore(terminal.today().minusYears(OLDEST))) {
            return wording.say("new.born.long-ago", wording.date(day.date()));
        }
        draft.child().born = day.date();
        return null;
    }

    private String grade(String answer) {
        Optional<Integer> grade = Grades.number(answer.toUpperCase(Locale.ROOT));
        grade.ifPresent(number -> draft.child().grade = Grades.name(number));
        return grade.isPresent() ? null : wording.say("new.grade.wrong");
    }

    private String state(String answer) throws BadInputException {
        if (answer.isEmpty() && before() != null) {
            return found(before().profile);
        }
        if (answer.isEmpty()) {
            return wording.say("new.state.none");
        }
        try {
            return found(profiles.find(answer));
        } catch (UnknownJurisdictionException e) {
            String known = String.join(", ", e.known().values());
            return e.nearest().map(code -> wording.say("new.state.perhaps", answer, e.known().get(code)))
                    .orElseGet(() -> wording.say("new.state.unknown", answer, known));
        }
    }

    private String found(Profile profile) {
        draft.child().profile = profile;
        return null;
    }

    private String pathway(String answer) {
        List<Pathway> pathways = standing();
        for (int i = 0; i < pathways.size(); i++) {
            Pathway pathway = pathways.get(i);
            if (answer.equals(Integer.toString(i + 1)) || answer.equalsIgnoreCase(pathway.slug())
                    || answer.equalsIgnoreCase(pathway.name())) {
                draft.child().pathway = pathway;
                return null;
            }
        }
        return wording.say("new.pathway.wrong", pathways.size());
    }

    private String starts(String answer) {
        AnswerCheck.Day day = AnswerCheck.day(answer);
        if (day.date() == null) {
            return day.complaint();
        }
        if (!day.date().isAfter(draft.child().born)) {
            return wording.say("new.starts.before-birth", wording.date(draft.child().born));
        }
        if (day.date().isAfter(terminal.today().plusYears(1))) {
            return wording.say("new.starts.far", wording.date(day.date()));
        }
        draft.child().starts = day.date();
        return null;
    }

    private static boolean yes(String answer) {
        return answer.equalsIgnoreCase("yes") || answer.equalsIgnoreCase("y");
    }

    private static boolean no(String answer) {
        return answer.equalsIgnoreCase("no") || answer.equalsIgnoreCase("n");
    }
}
