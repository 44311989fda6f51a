package org.hearthrule.cli;

import java.util.List;
import org.hearthrule.checklist.Style;
import org.hearthrule.checklist.TextPage;
import org.hearthrule.terms.Wording;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Help that teaches by example. The options come from the command itself, the words from
 * {@code shared/wording/help.properties}, which is read only here.
 */
final class Help {

    static final String RESOURCE = "shared/wording/help.properties";
    private static final int NAMES = 24;

    private Help() { }

    /** @return one line such as {@code hearthrule check BOOK [--as-of DATE]} */
    static String usage(String name) {
        return Wording.load(RESOURCE).say(key(name) + ".usage");
    }

    private static String key(String name) {
        return name.replace(' ', '-');
    }

    static String all(Style style) {
        Wording help = Wording.load(RESOURCE);
        TextPage page = new TextPage(style, Wording.english());
        page.paragraph(0, help.say("all.about")).blank().heading(help.say("heading.usage"));
        page.paragraph(2, help.say("all.usage")).blank().heading(help.say("heading.commands"));
        for (String name : Commands.names()) {
            entry(page, name, help.say(key(name) + ".in-short"));
        }
        page.blank();
        examples(page, help, "all");
        page.heading(help.say("heading.exit"));
        exits(page, help, List.of("0", "2", "3", "70"));
        page.blank().paragraph(0, Wording.english().say("caution.foot"));
        return page.toString();
    }

    static String of(String name, CommandSpec spec, Style style) {
        Wording help = Wording.load(RESOURCE);
        TextPage page = new TextPage(style, Wording.english());
        String key = key(name);
        page.paragraph(0, help.say(key + ".about")).blank().heading(help.say("heading.usage"));
        page.hanging(2, "", help.say(key + ".usage")).blank();
        spec.positionalParameters().forEach(p -> entry(page, p.paramLabel(), option(help, key, p.paramLabel())));
        for (OptionSpec option : spec.options()) {
            String names = option.arity().max() == 0 ? option.longestName()
                    : option.longestName() + ' ' + option.paramLabel();
            entry(page, names, option(help, key, option.longestName()));
        }
        page.blank();
        examples(page, help, key);
        page.heading(help.say("heading.exit"));
        boolean strict = spec.findOption("--strict") != null;
        exits(page, help, strict ? List.of("0", "1", "2", "3", "70") : List.of("0", "2", "3", "70"));
        return page.toString();
    }

    /** The command's own words for an option, or those all commands share. */
    private static String option(Wording help, String key, String name) {
        String own = key + ".option." + name;
        return help.say(help.has(own) ? own : "option." + name);
    }

    private static void examples(TextPage page, Wording help, String key) {
        page.heading(help.say("heading.examples"));
        for (int i = 1; help.has(key + ".example." + i); i++) {
            page.line("  " + page.style().bold(page.clean(help.say(key + ".example." + i))));
            page.paragraph(6, help.say(key + ".example." + i + ".says"));
        }
        page.blank();
    }

    private static void exits(TextPage page, Wording help, List<String> codes) {
        codes.forEach(code -> entry(page, code, help.say("exit." + code), 4));
    }

    private static void entry(TextPage page, String name, String words) {
        entry(page, name, words, NAMES);
    }

    private static void entry(TextPage page, String name, String words, int column) {
        String plain = page.clean(name);
        if (plain.length() > column - 2) {
            page.line("  " + plain);
            page.paragraph(2 + column, words);
        } else {
            page.hanging(2, plain + " ".repeat(column - plain.length()), words);
        }
    }
}
