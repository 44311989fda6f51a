package org.hearthrule.page.readiness;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.hearthrule.checklist.LineGroup;
import org.hearthrule.checklist.Readiness;
import org.hearthrule.checklist.ReadinessSheet;
import org.hearthrule.checklist.Sheet;
import org.hearthrule.law.Cite;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.PageWords;
import org.hearthrule.page.records.NextStep;
import org.hearthrule.page.records.NextSteps;
import org.hearthrule.page.sheet.Addresses;
import org.hearthrule.records.YearRecords.Reading;
import org.hearthrule.records.YearRecords.Sample;
import org.hearthrule.terms.Wording;

/**
 * The check before an evaluation as the template sets it.
 *
 * @param child    id of the child looked at
 * @param children all children of the book
 * @param subjects one part for each subject the law names
 * @param tests    tests, evaluations and who may make them
 * @param items    the portfolio, item by item
 */
public record ReadinessView(Readiness ready, String child, List<Option> children, List<Subject> subjects, List<Step> steps,
                            Sheet items, Sheet tests) {

    private static final int BOOKS_SHOWN = 8;

    /**
     * One subject.
     *
     * @param anchor  name in the page
     * @param rule    the duty that names it, and its section
     * @param logged  days and hours, in words
     * @param thirds  of the year
     * @param undated pieces without a date
     * @param books   titles, the last ones perhaps counted only
     */
    public record Subject(String anchor, String name, boolean may, Sheet.Reference.Rule to, String rule, String logged,
                          List<Third> thirds, List<Piece> undated, List<String> books) { }

    /**
     * @param words such as {@code First third, until November 16, 2025}
     * @param over  whether it lies behind
     */
    public record Third(String words, boolean over, List<Piece> pieces) { }

    /**
     * A piece of work.
     *
     * @param day      or null
     * @param idea     what it shows, or null
     * @param pictures addresses of small pictures of it
     * @param chosen   whether it was chosen for the portfolio
     */
    public record Piece(String title, LocalDate day, String idea, List<String> pictures, boolean chosen) { }

    /**
     * One thing to do.
     *
     * @param go where it can be done, each with its address; never empty
     */
    public record Step(Readiness.Step step, List<Option> go) { }

    static ReadinessView of(Readiness ready, String child, List<Option> children, NextSteps next,
                            ReadinessPages.Files files) {
        List<Subject> subjects = new ArrayList<>();
        for (Readiness.SubjectRow row : ready.subjects()) {
            subjects.add(subject(row, "subject-" + (subjects.size() + 1), ready, files));
        }
        Wording wording = Wording.english();
        return new ReadinessView(ready, child, children, subjects, ready.steps().stream().map(step -> step(step, child, next)).toList(),
                ReadinessSheet.items(ready, wording, files::has), ReadinessSheet.tests(ready, wording, files::has));
    }

    private static Step step(Readiness.Step step, String child, NextSteps next) {
        if (step.line() == null) {
            return new Step(step, List.of(Option.of("/work?child=" + child, PageWords.say("readiness.go.work"))));
        }
        List<Option> go = new ArrayList<>();
        String line = "/checklist?child=" + child + '#' + step.line().id();
        for (NextStep one : next.of(LineGroup.of(List.of(step.line())).get(0))) {
            go.add(one instanceof NextStep.Go page ? Option.of(page.path(), page.words())
                    : Option.of(line, ((NextStep.Fill) one).asks()));
        }
        if (go.isEmpty()) {
            go.add(Option.of(line, PageWords.say("readiness.go.line")));
        }
        return new Step(step, go.stream().distinct().toList());
    }

    private static Subject subject(Readiness.SubjectRow row, String anchor, Readiness ready,
                                   ReadinessPages.Files files) {
        Wording wording = Wording.english();
        List<Third> thirds = new ArrayList<>();
        for (int i = 0; i < row.samples().size(); i++) {
            LocalDate to = ready.thirds().get(i).to();
            thirds.add(new Third(PageWords.say("readiness.third." + (i + 1), wording.date(to)), to.isBefore(ready.asOf()),
                    row.samples().get(i).stream().map(sample -> piece(sample, files)).toList()));
        }
        String cites = row.asked().cites().stream().map(Cite::words).distinct().collect(Collectors.joining("; "));
        return new Subject(anchor, row.name(), row.may(), new Sheet.Reference.Rule(row.asked().id()),
                PageWords.say("readiness.rule", row.asked().title(), cites), PageWords.count("readiness.days", row.days(),
                ReadinessSheet.hours(row.minutes())), thirds, row.undated().stream().map(sample -> piece(sample, files)).toList(),
                books(row.books()));
    }

    private static List<String> books(List<Reading> books) {
        List<String> titles = new ArrayList<>(books.stream().limit(BOOKS_SHOWN).map(book -> book.author() == null ? book.title()
                : PageWords.say("readiness.book", book.title(), book.author())).toList());
        if (books.size() > BOOKS_SHOWN) {
            titles.add(PageWords.count("readiness.books-more", books.size() - BOOKS_SHOWN));
        }
        return titles;
    }

    private static Piece piece(Sample sample, ReadinessPages.Files files) {
        return new Piece(sample.title(), sample.date(), sample.idea(), sample.files().stream().filter(files::hasPicture)
                .map(Addresses::ofPicture).toList(), sample.chosen());
    }
}
