package org.hearthrule.page.welcome;

import java.util.Map;
import org.hearthrule.page.frame.Answer;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Feature;
import org.hearthrule.page.frame.Routes;

/** {@code /welcome}, and the way into the demo and out of it. */
public final class WelcomePages implements Feature {

    @Override
    public void addTo(Routes routes) {
        routes.getWithoutBook("/welcome", WelcomePages::welcome);
        routes.postWithoutBook("/demo", WelcomePages::demo);
        routes.postWithoutBook("/demo/leave", WelcomePages::leave);
    }

    private static Answer welcome(Call call) {
        return Answer.page("welcome/welcome.jte", "Welcome", null, Map.of("folder", call.house().ownFolder().toString()));
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
