package org.hearthrule.page.year;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.checklist.year.YearView;
import org.hearthrule.input.BadInputException;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Desk;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;

/** {@code /year}: one school year drawn, and the days of its calendar to be noted. */
public final class YearPages implements Feature {

    @Override
    public void addTo(Routes routes) {
        routes.get("/year", call -> year(call, YearLabel.of(call.desk().today())));
        routes.get("/year/{label}", call -> at(call, label -> year(call, label)));
        routes.get("/year/{label}/days", call -> at(call, label -> days(call, label)));
        routes.post("/year/{label}/days", call -> at(call, label -> note(call, label)));
    }

    /** Answers for one year. */
    private interface OfYear {
        Answer answer(YearLabel label) throws BadInputException, IOException;
    }

    private static Answer at(Call call, OfYear page) throws BadInputException, IOException {
        Optional<YearLabel> label = YearLabel.parse(call.path("label"));
        return label.isEmpty() ? new Answer.Nothing() : page.answer(label.get());
    }

    private static Answer year(Call call, YearLabel label) throws BadInputException {
        Desk desk = call.desk();
        Book book = desk.book();
        String child = book.student(call.query("child")).isPresent() ? call.query("child") : null;
        YearPage page = made(desk, book, label, child);
        return Answer.page("year/year.jte", "The year " + page.words(), Part.YEAR, Map.of("page", page));
    }

    /** A year long past is judged as of the day it is seen from; what was done for it later has the last word. */
    private static YearPage made(Desk desk, Book book, YearLabel label, String child) throws BadInputException {
        LocalDate seen = YearView.seenFrom(label, desk.today());
        YearView view = seen.equals(desk.today()) ? YearView.of(book, desk.judgement(), child, label)
                : YearView.of(book, desk.judgement(seen), desk.checklist().lines(), child, label);
        return YearPage.of(view, book, desk.today());
    }

    private static Answer days(Call call, YearLabel label) {
        YearRecords year = call.desk().book().years().get(label.toString());
        Form form = YearDays.filled(year == null ? YearRecords.Calendar.EMPTY : year.calendar());
        return Answer.page("year/days.jte", title(label), Part.YEAR, Map.of("days", DaysPage.of(form, label)));
    }

    private static Answer note(Call call, YearLabel label) throws BadInputException, IOException {
        Optional<YearRecords.Calendar> calendar = YearDays.read(call.form(), label);
        if (calendar.isEmpty()) {
            return Answer.again("year/days.jte", title(label), Part.YEAR, Map.of("days", DaysPage.of(call.form(), label)));
        }
        String words = YearPage.words(label);
        call.desk().edit("the days of " + words, book -> BookEdits.inYear(book, label.toString(),
                year -> BookEdits.withCalendar(year, calendar.get())));
        return Answer.done("The days of " + words + " are noted.", "/year/" + label);
    }

    private static String title(YearLabel label) {
        return "The days of " + YearPage.words(label);
    }
}
