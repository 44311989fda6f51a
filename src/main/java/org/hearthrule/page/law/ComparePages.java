package org.hearthrule.page.law;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.hearthrule.checklist.CompareSheet;
import org.hearthrule.checklist.Comparison;
import org.hearthrule.checklist.Sheet;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Part;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.sheet.Addresses;
import org.hearthrule.terms.Wording;

/** {@code /compare}: two states side by side, for one child of the book when named, and what a move brings it. */
public final class ComparePages implements Feature {

    @Override
    public void addTo(Routes routes) {
        routes.getWithoutBook("/compare", ComparePages::compare);
    }

    private static Answer compare(Call call) throws BadInputException {
        Profiles profiles = call.house().profiles();
        List<Option> states = Choices.states(profiles);
        List<String> codes = Choices.values(states);
        List<Mover> movers = call.house().hasBook() ? Mover.all(call.desk(), profiles) : List.of();
        Form form = call.queryForm();
        String here = form.oneOf("here", codes);
        String there = form.oneOf("there", codes);
        Mover mover = movers.stream().filter(one -> one.student().id().equals(form.raw("child"))).findFirst().orElse(null);
        LocalDate moves = form.day("moves");
        LocalDate on = form.day("on");
        check(form, here, there, mover, moves);
        LocalDate day = moves != null ? moves : on != null ? on : call.house().today();
        Sheet sheet = null;
        Comparison comparison = null;
        if (form.isFine() && there != null && (here != null || mover != null)) {
            Side left = mover == null ? side(profiles, here, form.raw("way-here")) : new Side(mover.law(), mover.pathway());
            Side right = side(profiles, there, form.raw("way-there"));
            comparison = mover == null ? new Comparison(day, Comparison.Side.of(left.law(), left.pathway(), day),
                    Comparison.Side.of(right.law(), right.pathway(), day), null)
                    : mover.comparison(right.law(), right.pathway(), day, moves != null, call.desk());
            sheet = CompareSheet.of(comparison, Wording.english());
        }
        form.fill("here", mover == null ? here : mover.code());
        CompareView view = new CompareView(form, states, movers.stream().map(Mover::option).toList(), comparison, sheet,
                new Addresses(moves != null ? moves : on));
        Map<String, Object> values = Map.of("view", view);
        return form.isFine() ? Answer.page("law/compare.jte", "Two states", Part.LAW, values)
                : Answer.again("law/compare.jte", "Two states", Part.LAW, values);
    }

    private static void check(Form form, String here, String there, Mover mover, LocalDate moves) {
        if (here != null && there == null && form.complaint("there") == null && !form.raw("look").isEmpty()) {
            form.complain("there", "Choose the other state.");
        }
        if (there != null && here == null && mover == null && form.complaint("here") == null) {
            form.complain("here", "Choose the state you live in, or the first of the two.");
        }
        if (mover != null && here != null && !here.equals(mover.code())) {
            form.complain("here", mover.student().name() + " is taught in " + mover.law().name()
                    + ". Choose that here, or leave the child out.");
        }
        if (moves != null && mover == null) {
            form.complain("child", "Choose the child who moves, or leave the day out.");
        }
        if (moves != null && mover != null && !moves.isAfter(mover.placement().from())) {
            form.complain("moves", "Home instruction there began on " + Wording.english().date(mover.placement().from())
                    + ". Type a later day.");
        }
    }

    private record Side(Profile law, Pathway pathway) { }

    private static Side side(Profiles profiles, String code, String way) throws BadInputException {
        Profile law = profiles.known(code).orElseThrow();
        return new Side(law, law.pathway(way).orElse(law.usualPathway()));
    }
}
