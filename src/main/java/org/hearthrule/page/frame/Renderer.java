package org.hearthrule.page.frame;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Sets templates. They are classes of the program: none is read or compiled when it runs. */
public final class Renderer {

    private static final String PACKAGE = "org.hearthrule.page.templates";
    private static final int USUAL_SIZE = 32_000;

    private final TemplateEngine engine = TemplateEngine.createPrecompiled(null, ContentType.Html,
            Renderer.class.getClassLoader(), PACKAGE);

    /** @return the page */
    public String set(String template, Map<String, Object> values) {
        StringOutput out = new StringOutput(USUAL_SIZE);
        engine.render(template, values, out);
        return out.toString();
    }
}
