package org.hearthrule.page.records;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.SubjectChoice;
import org.hearthrule.records.RecordKind;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords.Sample;
import org.hearthrule.terms.Subjects;

/** A piece of work. */
final class SampleForm extends RecordForm<Sample> {

    @Override
    RecordKind kind() {
        return RecordKind.SAMPLES;
    }

    @Override
    String path() {
        return "/work";
    }

    @Override
    String one() {
        return "a piece of work";
    }

    @Override
    String many() {
        return "Work";
    }

    @Override
    String about() {
        return "Pieces of work, made things and journal pages, with photos and scans. For many photos at once, begin with the photos.";
    }

    @Override
    List<Field> fields(Form form, Offered offered) {
        List<Field> fields = new ArrayList<>();
        fields.add(form.field("title", "What it is").must());
        fields.add(form.field("student", "Whose").options(offered.children()).type("one").must());
        fields.add(form.field("date", "Its day").type("date"));
        fields.add(form.field("subjects", "Subjects it shows").options(SubjectChoice.withAreas()).type("subjects"));
        fields.add(form.field("kind", "Kind").hint("For example drawing, journal page, made thing, photo."));
        fields.add(form.field("idea", "The idea in it"));
        fields.add(form.field("scan", "A photo or scan").type("file"));
        fields.add(form.field("chosen", "For the portfolio").options(List.of(Option.of("yes", "This piece is chosen for the portfolio")))
                .type("several"));
        return fields;
    }

    @Override
    Form fill(Sample one) {
        Form form = Form.empty().fill("title", one.title()).fill("student", one.student()).fill("date", one.date())
                .tick("subjects", one.subjects()).fill("kind", one.kind()).fill("idea", one.idea());
        if (!one.files().isEmpty()) {
            form.fill("copy", one.files().get(0));
        }
        return one.chosen() ? form.fill("chosen", "yes") : form;
    }

    @Override
    Sample read(Form form, Offered offered, String id, Sample before) {
        List<String> files = new ArrayList<>(before == null ? List.of() : before.files());
        String file = form.text("copy");
        if (file != null && !files.contains(file)) {
            files.add(0, file);
        }
        return new Sample(id, form.mustOneOf("student", offered.childIds(), "Choose whose piece it is."), form.day("date"),
                form.ticked("subjects", Subjects.ids()), form.must("title", "Type what it is, for example: plan of the jetty."),
                form.text("kind"), form.text("idea"), List.copyOf(files), form.is("chosen"));
    }

    @Override
    List<String> students(Sample one) {
        return List.of(one.student());
    }

    @Override
    List<String> subjects(Sample one) {
        return one.subjects();
    }

    @Override
    boolean hasMonths() {
        return true;
    }

    @Override
    List<Option> states() {
        return List.of(Option.of("chosen", "Chosen for the portfolio"), Option.of("other", "Not chosen"));
    }

    @Override
    String state(Sample one) {
        return one.chosen() ? "chosen" : "other";
    }

    @Override
    String title(Sample one, Offered offered) {
        return one.title();
    }

    @Override
    List<String> words(Sample one, Offered offered) {
        List<String> words = new ArrayList<>();
        words.add((one.date() == null ? "Without a day" : when(one.date())) + (one.kind() == null ? "." : ", " + one.kind() + '.'));
        words.add(one.subjects().isEmpty() ? "Without a subject." : SubjectChoice.names(one.subjects()) + '.');
        if (one.idea() != null) {
            words.add("The idea: " + one.idea() + '.');
        }
        if (one.chosen()) {
            words.add("Chosen for the portfolio.");
        }
        return words;
    }

    @Override
    List<String> pictures(Sample one) {
        return one.files();
    }

    /** A piece without a day stays in its file; a new one goes into this year's. */
    @Override
    String label(Sample one, String now, Offered offered) {
        return one.date() != null ? YearLabel.of(one.date()).toString() : now != null ? now : YearLabel.of(offered.today()).toString();
    }
}
