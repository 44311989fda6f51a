package org.hearthrule.page.frame;

import java.util.List;

/**
 * One field of a form as a template sets it.
 *
 * @param name     as sent
 * @param id       in the page; the same as the name unless a form stands several times in a page
 * @param label    in plain words
 * @param hint     what to type, or null
 * @param type     of the input: {@code text}, {@code date}, {@code number}, {@code search}, {@code email}
 * @param required whether it must be filled in; the others say that they may be left empty
 * @param values   what was entered
 * @param error    what is wrong with it and what to type, or null
 * @param options  answers to choose from; empty for a field that is typed in
 * @param longest  most characters
 * @param list     id of a datalist with suggestions, or null
 */
public record Field(String name, String id, String label, String hint, String type, boolean required,
                    List<String> values, String error, List<Option> options, int longest, String list) {

    private static final int LONGEST = 200;

    static Field of(String name, String label, List<String> values, String error) {
        return new Field(name, name, label, null, "text", false, values, error, List.of(), LONGEST, null);
    }

    /** @return what was entered first; never null */
    public String value() {
        return values.isEmpty() ? "" : values.get(0);
    }

    public boolean has(String value) {
        return values.contains(value);
    }

    /** @return ids of what describes it, for a reader who listens; null when nothing does */
    public String describedBy() {
        String ids = (hint == null ? "" : id + "-hint ") + (error == null ? "" : id + "-error");
        return ids.isEmpty() ? null : ids.strip();
    }

    public Field hint(String words) {
        return new Field(name, id, label, words, type, required, values, error, options, longest, list);
    }

    public Field must() {
        return new Field(name, id, label, hint, type, true, values, error, options, longest, list);
    }

    public Field type(String kind) {
        return new Field(name, id, label, hint, kind, required, values, error, options, longest, list);
    }

    public Field options(List<Option> answers) {
        return new Field(name, id, label, hint, type, required, values, error, List.copyOf(answers), longest, list);
    }

    public Field longest(int characters) {
        return new Field(name, id, label, hint, type, required, values, error, options, characters, list);
    }

    /** Sets it into a form that stands several times in a page. */
    public Field in(String prefix) {
        return new Field(name, prefix + '-' + name, label, hint, type, required, values, error, options, longest, list);
    }

    /** Names a datalist of the page that offers what was entered before. */
    public Field offering(String datalist) {
        return new Field(name, id, label, hint, type, required, values, error, options, longest, datalist);
    }
}
