package org.hearthrule.page.records;

import java.util.Optional;
import org.hearthrule.records.AnsweredDoubt;
import org.hearthrule.records.AnsweredFact;
import org.hearthrule.records.Book;
import org.hearthrule.terms.Wording;

/** The answers a book holds, each as one form asks for it. */
public final class HeldAnswers {

    private HeldAnswers() { }

    /** @param about id of the child, or empty for the family */
    public static boolean answers(AnsweredFact one, String fact, String about) {
        return one.fact().equals(fact) && (about.isEmpty() || one.about() == null || one.about().equals(about));
    }

    public static Optional<AnsweredFact> fact(Book book, String fact, String about) {
        return book.facts().stream().filter(one -> answers(one, fact, about)).findFirst();
    }

    static Optional<AnsweredDoubt> doubt(Book book, String doubt) {
        return book.answers().stream().filter(one -> one.doubt().equals(doubt)).findFirst();
    }

    static String words(AnsweredFact one) {
        return (one.is() ? "Yes" : "No") + (one.date() == null ? "" : ", noted on " + Wording.english().date(one
                .date()));
    }

    static String words(AnsweredDoubt one) {
        return one.answer() + (one.from() == null ? "" : " (" + one.from() + ')')
                + (one.date() == null ? "" : ", noted on " + Wording.english().date(one.date()));
    }
}
