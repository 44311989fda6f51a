package org.hearthrule.page.records;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.frame.SubjectChoice;
import org.hearthrule.records.Book;
import org.hearthrule.records.BookEdits;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearRecords.Sample;
import org.hearthrule.terms.Subjects;
import org.hearthrule.terms.Wording;

/**
 * What was said about pieces of work, put into a book. A piece that is not as it was when it was shown is left alone:
 * what was said may no longer be meant.
 *
 * @param book  with what was said
 * @param saved how many pieces were changed
 * @param left  pieces left alone
 */
public record Settling(Book book, int saved, List<Left> left) {

    /** @param why a sentence for the parent */
    public record Left(Said said, String title, String why) { }

    /**
     * What was said about one piece; what was not is null or empty.
     *
     * @param ref   year and id, such as {@code 2026-27/sample-9}
     * @param print print of the piece as it was shown
     */
    public record Said(String ref, String print, LocalDate day, List<String> subjects, String title, String idea) {

        /** @return empty when nothing was said; the form knows what must be put right */
        static Optional<Said> of(Form form, String ref) {
            LocalDate typed = form.day("date:" + ref);
            Said said = new Said(ref, form.raw("print:" + ref), typed != null ? typed : form.day("offer:" + ref),
                    form.ticked("subject:" + ref, Subjects.ids()), form.text("title:" + ref), form.text("idea:" + ref));
            return said.words().isEmpty() ? Optional.empty() : Optional.of(said);
        }

        public List<String> words() {
            List<String> words = new ArrayList<>();
            if (day != null) {
                words.add(Wording.english().date(day));
            }
            if (!subjects.isEmpty()) {
                words.add(SubjectChoice.names(subjects));
            }
            if (title != null) {
                words.add(title);
            }
            if (idea != null) {
                words.add(idea);
            }
            return words;
        }

        /** Puts it into the fields again, for a piece that still is on the list. */
        void fill(Form form) {
            form.fill("date:" + ref, day).tick("subject:" + ref, subjects).fill("title:" + ref, title)
                    .fill("idea:" + ref, idea);
        }

        private Sample in(Sample was) {
            return new Sample(was.id(), was.student(), day == null ? was.date() : day,
                    subjects.isEmpty() ? was.subjects() : subjects, title == null ? was.title() : title, was.kind(),
                    idea == null ? was.idea() : idea, was.files(), was.chosen());
        }
    }

    static Settling of(Book book, List<Said> all) {
        Book now = book;
        int saved = 0;
        List<Left> left = new ArrayList<>();
        for (Said said : all) {
            String[] ref = said.ref().split("/", 2);
            Optional<Sample> found = BookEdits.find(book, ref[0], ref[ref.length - 1]).map(BookEdits.Found::record)
                    .filter(Sample.class::isInstance).map(Sample.class::cast);
            if (found.isEmpty()) {
                left.add(new Left(said, said.title() == null ? "A piece" : said.title(),
                        "It was taken out of the book, or put into another school year, after you opened this page."));
            } else if (!Print.of(found.get()).equals(said.print())) {
                left.add(new Left(said, found.get().title(), "It was changed elsewhere after you opened this page."));
            } else if (!said.in(found.get()).equals(found.get())) {
                now = moved(now, ref[0], said.in(found.get()));
                saved++;
            }
        }
        return new Settling(now, saved, List.copyOf(left));
    }

    /** A piece with a day goes into the school year of that day. */
    private static Book moved(Book book, String from, Sample is) {
        String to = BookEdits.label(is.date(), from);
        String id = to.equals(from) ? is.id() : BookEdits.newId(book, RecordKind.SAMPLES, to);
        return BookEdits.move(book, from, is.id(), to, new Sample(id, is.student(), is.date(), is.subjects(),
                is.title(), is.kind(), is.idea(), is.files(), is.chosen()));
    }
}
