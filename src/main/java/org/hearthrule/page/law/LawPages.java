package org.hearthrule.page.law;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.checklist.LawFolio;
import org.hearthrule.checklist.MistakeReport;
import org.hearthrule.checklist.StateOutlook;
import org.hearthrule.checklist.WaysBeside;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.sheet.Addresses;
import org.hearthrule.terms.Wording;

/** {@code /law}: every state's law, one law, its ways side by side, and how to report a mistake in a rule. */
public final class LawPages implements Feature {

    private static final Wording WORDING = Wording.english();

    @Override
    public void addTo(Routes routes) {
        routes.getWithoutBook("/law", LawPages::all);
        routes.getWithoutBook("/law/{code}", LawPages::one);
        routes.getWithoutBook("/law/{code}/ways", LawPages::ways);
        routes.getWithoutBook("/law/{code}/mistake/{pathway}/{rule}", call -> mistake(call, false));
        routes.getWithoutBook("/law/{code}/mistake/{pathway}/{rule}/text", call -> mistake(call, true));
    }

    private static Answer all(Call call) throws BadInputException {
        return Answer.page("law/all.jte", "The law", Part.LAW, Map.of("view", LawShelf.of(call.house().profiles(), call.queryForm())));
    }

    private static Answer one(Call call) throws BadInputException {
        Optional<Profile> found = law(call);
        if (found.isEmpty()) {
            return new Answer.Nothing();
        }
        Profile law = found.get();
        Form form = call.queryForm();
        LocalDate on = form.day("on");
        LocalDate day = on == null ? call.house().today() : on;
        Optional<Pathway> pathway = pathway(law, call.query("pathway"), day);
        if (pathway.isEmpty()) {
            return new Answer.Nothing();
        }
        LawView view = new LawView(law, pathway.get(), day, LawFolio.of(law, pathway.get(), day, WORDING),
                StateOutlook.of(law, pathway.get(), day, WORDING), new Addresses(on), form);
        Map<String, Object> values = Map.of("view", view);
        return form.isFine() ? Answer.page("law/law.jte", law.name(), Part.LAW, values)
                : Answer.again("law/law.jte", law.name(), Part.LAW, values);
    }

    private static Answer ways(Call call) throws BadInputException {
        Optional<Profile> law = law(call);
        if (law.isEmpty()) {
            return new Answer.Nothing();
        }
        LocalDate on = call.queryForm().day("on");
        return Answer.page("law/ways.jte", law.get().name(), Part.LAW, Map.of("law", law.get(), "code", call.path("code"), "beside",
                WaysBeside.of(law.get(), on == null ? call.house().today() : on, WORDING), "addresses", new Addresses(on)));
    }

    private static Answer mistake(Call call, boolean asFile) throws BadInputException {
        String id = call.path("code") + '/' + call.path("pathway") + '/' + call.path("rule");
        Optional<Profile> law = law(call);
        Optional<Requirement> asked = law.stream().flatMap(one -> one.pathways().stream())
                .flatMap(way -> way.asks().stream()).filter(rule -> rule.id().equals(id)).findFirst();
        if (asked.isEmpty()) {
            return new Answer.Nothing();
        }
        String text = MistakeReport.of(law.orElseThrow(), asked.get(), WORDING);
        if (asFile) {
            return new Answer.Download(MistakeReport.fileName(asked.get()), "text/plain; charset=utf-8",
                    out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
        }
        return Answer.page("law/mistake.jte", "A mistake in a rule", Part.LAW,
                Map.of("law", law.orElseThrow(), "code", call.path("code"), "asked", asked.get(), "text", text, "here", call.path()));
    }

    /** Only the code itself is an address; a name is looked for in the list. */
    private static Optional<Profile> law(Call call) throws BadInputException {
        String code = call.path("code");
        return call.house().profiles().known(code).filter(law -> law.slug().equals(code));
    }

    /** @return the way that is named; without a name the usual one, or one that was open when that was not */
    private static Optional<Pathway> pathway(Profile law, String slug, LocalDate day) {
        if (!slug.isEmpty()) {
            return law.pathway(slug);
        }
        List<Pathway> open = law.pathwaysOn(day).stream()
                .sorted(Comparator.comparing(way -> !way.usual())).toList();
        return Optional.of(open.isEmpty() ? law.usualPathway() : open.get(0));
    }
}
