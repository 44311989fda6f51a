package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Due;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Wording;

/**
 * The coverage register as Markdown, for readers of the repository: how much of each law was read and how, where
 * sources differ, what rests on less than the law or its agency, and what is open.
 */
public final class LawRegister {

    private final Wording wording;
    private final List<Profile> profiles;
    private final StringBuilder out = new StringBuilder();

    private LawRegister(List<Profile> profiles, Wording wording) {
        this.profiles = profiles;
        this.wording = wording;
    }

    /** @return the whole text, its last line ended */
    public static String markdown(List<Profile> profiles, Wording wording) {
        return new LawRegister(profiles, wording).write();
    }

    private String write() {
        line("# " + wording.say("register.title"));
        paragraph(wording.say("register.made"));
        paragraph(wording.say("caution"));
        paragraph(wording.say("register.columns"));
        table();
        section("register.differ", "register.differ.about", this::differing);
        section("register.weak", "register.weak.about", this::weak);
        section("register.open", "register.open.about", this::open);
        return out.toString();
    }

    private void table() {
        line("| " + wording.say("register.head").replace("; ", " | ") + " |");
        line("|---|---:|---:|---:|---:|---:|---:|---|---:|");
        for (Profile profile : profiles) {
            row('[' + profile.name() + "](" + profile.file().substring(profile.file().lastIndexOf('/') + 1) + ')',
                    Reading.of(profile), profile.lastRead().toString());
        }
        row("**" + wording.say("law.list.sum") + "**", Reading.of(profiles), "");
        Reading all = Reading.of(profiles);
        paragraph(wording.say("register.sum", all.percentAtSource(), Wording.number(all.requirements())));
    }

    private void row(String name, Reading reading, String read) {
        List<String> cells = new ArrayList<>(List.of(name, "" + reading.pathways(), "" + reading.requirements()));
        for (Basis basis : Basis.values()) {
            cells.add("" + reading.byBasis().get(basis));
        }
        cells.add(read);
        cells.add("" + reading.doubts());
        line("| " + String.join(" | ", cells) + " |");
    }

    private void section(String title, String about, Function<Profile, List<String>> items) {
        line("");
        line("## " + wording.say(title));
        paragraph(wording.say(about));
        for (Profile profile : profiles) {
            List<String> found = items.apply(profile);
            if (!found.isEmpty()) {
                line("");
                line("**" + profile.name() + "**");
                line("");
                found.forEach(item -> line("- " + item));
            }
        }
    }

    /** Doubts between sources, and duties whose practice has another day than the law. */
    private List<String> differing(Profile profile) {
        List<String> found = new ArrayList<>();
        for (Profile.Doubt doubt : profile.doubts()) {
            if (doubt.differ()) {
                found.add(wording.say("register.doubt", doubt.about(), cites(doubt.cites()), doubt.ask()));
            }
        }
        for (Pathway pathway : profile.pathways()) {
            for (Requirement asked : pathway.asks()) {
                if (practice(asked.due()) != null) {
                    DueWords words = new DueWords(wording, profile, pathway);
                    found.add(wording.say("register.practice", name(pathway, asked), words.of(asked.due()), cites(asked.cites())));
                }
            }
        }
        return found;
    }

    private static Due practice(Due due) {
        if (due instanceof Due.Remarked remarked) {
            return remarked.practice() != null ? remarked.practice() : practice(remarked.due());
        }
        if (due instanceof Due.Cases cases) {
            return cases.cases().stream().map(one -> practice(one.due())).filter(found -> found != null).findFirst().orElse(null);
        }
        return null;
    }

    private List<String> weak(Profile profile) {
        List<String> found = new ArrayList<>();
        for (Pathway pathway : profile.pathways()) {
            for (Requirement asked : pathway.asks()) {
                if (asked.basis().weakerThan(Basis.AGENCY)) {
                    found.add(wording.say("register.rests", name(pathway, asked), asked.basis().slug(),
                            cites(asked.cites().stream().filter(cite -> cite.basis() == asked.basis()).toList())));
                }
            }
        }
        return found;
    }

    private List<String> open(Profile profile) {
        List<String> found = new ArrayList<>();
        for (Profile.Doubt doubt : profile.doubts()) {
            if (!doubt.differ()) {
                found.add(wording.say("law.doubt", doubt.about(), doubt.ask()));
            }
        }
        for (Pathway pathway : profile.pathways()) {
            for (Requirement asked : pathway.asks()) {
                if (asked.question() != null) {
                    found.add(wording.say("register.question", name(pathway, asked), asked.question(),
                            asked.ask() == null ? asked.confirmWith() : asked.ask()));
                } else if (asked.validity().unclearFrom() != null) {
                    found.add(wording.say("register.unclear", name(pathway, asked), wording.date(asked.validity().unclearFrom())));
                }
            }
        }
        return found;
    }

    private static String name(Pathway pathway, Requirement asked) {
        return pathway.name() + ": " + asked.title();
    }

    private static String cites(List<Cite> cites) {
        return String.join("; ", cites.stream().map(Cite::words).distinct().toList());
    }

    private void paragraph(String text) {
        line("");
        line(text);
        line("");
    }

    private void line(String text) {
        boolean second = text.isEmpty() && (out.length() == 0 || out.lastIndexOf("\n\n") == out.length() - 2);
        if (!second) {
            out.append(text.strip()).append('\n');
        }
    }
}
