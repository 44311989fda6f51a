package org.hearthrule.page.readiness;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.checklist.Readiness;
import org.hearthrule.checklist.ReadinessCheck;
import org.hearthrule.input.BadInputException;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.records.NextSteps;
import org.hearthrule.pictures.Attachments;
import org.hearthrule.records.Book;
import org.hearthrule.records.Student;
import org.hearthrule.terms.Wording;

/** {@code /readiness}: what lies ready for one child's evaluation, one subject after another. */
public final class ReadinessPages implements Feature {

    @Override
    public void addTo(Routes routes) {
        routes.get("/readiness", ReadinessPages::readiness);
    }

    private static Answer readiness(Call call) throws BadInputException {
        Book book = call.desk().book();
        Optional<Student> child = book.student(call.query("child")).or(() -> book.students().stream().findFirst());
        if (child.isEmpty()) {
            return Answer.page("readiness/nobody.jte", "Readiness", Part.READINESS, Map.of());
        }
        Readiness ready = ReadinessCheck.of(call.desk().checklist(), book, child.get(), Wording.english());
        List<Option> children = Choices.children(book);
        ReadinessView view = ReadinessView.of(ready, child.get().id(), children, NextSteps.of(call), files(call));
        return Answer.page("readiness/readiness.jte", "Readiness", Part.READINESS, Map.of("view", view));
    }

    private static Files files(Call call) {
        Attachments attachments = new Attachments(call.desk().folder(), call.desk().clock());
        return attachments::open;
    }

    /** Knows the files of the book. */
    interface Files {
        Optional<Attachments.Opened> open(String path);

        default boolean has(String path) {
            return open(path).isPresent();
        }

        /** Whether a small picture of it can be shown. */
        default boolean hasPicture(String path) {
            return open(path).filter(opened -> opened.kind().hasPreview()).isPresent();
        }
    }
}
