package org.hearthrule.page.welcome;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.checklist.StateOutlook;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.UnknownJurisdictionException;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Routes;
import org.hearthrule.page.sheet.Addresses;
import org.hearthrule.terms.Wording;

/** {@code /welcome}: what a state asks before anything is entered; and the way into the invented family and out of it. */
public final class WelcomePages implements Feature {

    @Override
    public void addTo(Routes routes) {
        routes.getWithoutBook("/welcome", WelcomePages::welcome);
        new BeginPages().addTo(routes);
        routes.postWithoutBook("/demo", WelcomePages::demo);
        routes.postWithoutBook("/demo/leave", WelcomePages::leave);
    }

    private static Answer welcome(Call call) throws BadInputException {
        Map<String, Object> values = new HashMap<>();
        values.put("folder", call.house().ownFolder().toString());
        values.put("form", Form.empty().fill("state", call.query("state")));
        values.put("states", states(call));
        values.put("hasBook", call.house().hasBook());
        values.put("addresses", new Addresses(null));
        Optional<Profile> law = law(call, call.query("state"));
        law.ifPresent(found -> {
            Pathway way = found.pathway(call.query("pathway")).orElse(found.usualPathway());
            values.put("outlook", StateOutlook.of(found, way, call.house().today(), Wording.english()));
            values.put("ways", standing(found, call.house().today()));
        });
        return Answer.page("welcome/welcome.jte", "Welcome", null, values);
    }

    private static List<Option> states(Call call) {
        return call.house().profiles().names().entrySet().stream()
                .map(one -> Option.of(one.getKey().toLowerCase(Locale.ROOT), one.getValue())).toList();
    }

    static Optional<Profile> law(Call call, String code) throws BadInputException {
        if (code.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(call.house().profiles().find(code));
        } catch (UnknownJurisdictionException e) {
            return Optional.empty();
        }
    }

    static List<Pathway> standing(Profile law, LocalDate day) {
        return law.pathways().stream().filter(way -> way.validity().inForceOn(day)).toList();
    }

    private static Answer demo(Call call) throws Exception {
        call.house().openDemo(call.form().is("afresh"));
        return Answer.see("/checklist");
    }

    private static Answer leave(Call call) {
        call.house().leaveDemo();
        return Answer.see("/");
    }
}
