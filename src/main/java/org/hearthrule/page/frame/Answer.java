package org.hearthrule.page.frame;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Map;

/** What a handler says. */
public sealed interface Answer {

    /**
     * A page from a template. The template gets the values and, as {@code frame}, what stands around every page.
     *
     * @param template such as {@code checklist/checklist.jte}
     * @param title    of the window, without the program's name
     * @param part     which part of the navigation it belongs to, such as {@code log}
     * @param values   parameters of the template by name
     * @param status   200; 422 when a form must be put right
     */
    record Shown(String template, String title, Part part, Map<String, Object> values, int status) implements Answer {
        public Shown {
            values = Map.copyOf(values);
        }
    }

    /**
     * A piece of a page, for the little script to put in its place.
     *
     * @param values parameters of the template by name
     */
    record Fragment(String template, Map<String, Object> values) implements Answer {
        public Fragment {
            values = Map.copyOf(values);
        }
    }

    /**
     * Another address of this page, after a change.
     *
     * @param path   with a slash in front
     * @param notice what was done, told at the top of the next page; or null
     */
    record Elsewhere(String path, String notice) implements Answer { }

    /**
     * A file to be saved, never opened in the page.
     *
     * @param name plain file name that is offered
     * @param type such as {@code text/csv}
     */
    record Download(String name, String type, Body body) implements Answer { }

    /**
     * A picture or paper shown within the page.
     *
     * @param type from our own list, never the sender's word
     */
    record Inline(String type, Body body) implements Answer { }

    /** There is nothing at this address. */
    record Nothing() implements Answer { }

    /** Writes a file. */
    interface Body {
        void write(OutputStream out) throws IOException;
    }

    static Shown page(String template, String title, Part part, Map<String, Object> values) {
        return new Shown(template, title, part, values, 200);
    }

    /** A form with its complaints. */
    static Shown again(String template, String title, Part part, Map<String, Object> values) {
        return new Shown(template, title, part, values, 422);
    }

    static Elsewhere see(String path) {
        return new Elsewhere(path, null);
    }

    static Elsewhere done(String notice, String path) {
        return new Elsewhere(path, notice);
    }
}
