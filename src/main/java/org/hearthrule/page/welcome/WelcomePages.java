package org.hearthrule.page.welcome;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.checklist.StateOutlook;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Choices;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Form;
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
        values.put("states", Choices.states(call.house().profiles()));
        values.put("hasBook", call.house().hasBook());
        values.put("addresses", new Addresses(null));
        Optional<Profile> law = call.house().profiles().known(call.query("state"));
        law.ifPresent(found -> {
            Pathway way = found.pathway(call.query("pathway")).orElse(found.usualPathway());
            values.put("outlook", StateOutlook.of(found, way, call.house().today(), Wording.english()));
            values.put("ways", found.pathwaysOn(call.house().today()));
        });
        return Answer.page("welcome/welcome.jte", "Welcome", null, values);
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
