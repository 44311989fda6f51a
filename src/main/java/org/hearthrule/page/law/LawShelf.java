package org.hearthrule.page.law;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.hearthrule.checklist.Reading;
import org.hearthrule.input.BadInputException;
import org.hearthrule.input.Nearest;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.page.frame.Form;
import org.hearthrule.terms.Basis;

/**
 * Every law there is, or those that were looked for.
 *
 * @param all     how many there are
 * @param nearest the state most likely meant when none was found, or null
 * @param form    in which one is looked for
 */
public record LawShelf(List<Row> rows, int all, Row nearest, Form form) {

    /**
     * One law. The four counts are of duties, each by its weakest source, and add up to {@code duties}.
     *
     * @param text      read in the law's own words
     * @param agency    read on a page of the state's agency
     * @param secondary read in a restatement
     * @param memory    recalled, not seen
     * @param doubts    open questions
     */
    public record Row(String code, String name, int ways, int duties, int text, int agency, int secondary, int memory,
                      LocalDate read, int doubts) { }

    static LawShelf of(Profiles profiles, Form form) throws BadInputException {
        List<Row> all = new ArrayList<>();
        for (String code : profiles.codes()) {
            all.add(row(profiles.known(code).orElseThrow()));
        }
        all.sort(Comparator.comparing(Row::name));
        String sought = form.raw("q").toLowerCase(Locale.ROOT);
        List<Row> rows = all.stream().filter(row -> row.name().toLowerCase(Locale.ROOT).contains(sought)
                || row.code().equals(sought) || row.code().equals("us-" + sought)).toList();
        Row nearest = !rows.isEmpty() ? null : Nearest.of(form.raw("q"), all.stream().map(Row::name).toList())
                .flatMap(name -> all.stream().filter(row -> row.name().equals(name)).findFirst()).orElse(null);
        return new LawShelf(rows, all.size(), nearest, form);
    }

    private static Row row(Profile law) {
        Reading reading = Reading.of(law);
        return new Row(law.slug(), law.name(), reading.pathways(), reading.requirements(),
                reading.byBasis().get(Basis.TEXT), reading.byBasis().get(Basis.AGENCY), reading.byBasis().get(Basis.SECONDARY),
                reading.byBasis().get(Basis.MEMORY), law.lastRead(), reading.doubts());
    }
}
