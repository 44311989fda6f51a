package org.hearthrule.checklist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.Validity;
import org.hearthrule.terms.Wording;

/**
 * A text in which somebody reports a mistake in a rule: what the program says and from where it has it, then blanks for
 * what the law says. It is made of the law alone; a family's records are out of its reach.
 */
public final class MistakeReport {

    private static final int COLUMNS = 76;
    private static final int BLANK_LINES = 3;

    private final Profile law;
    private final Requirement asked;
    private final Wording wording;
    private final TextPage page;

    private MistakeReport(Profile law, Requirement asked, Wording wording) {
        this.law = law;
        this.asked = asked;
        this.wording = wording;
        this.page = new TextPage(new Style(COLUMNS, true, false), wording);
    }

    /** @return the text, each line ended */
    public static String of(Profile law, Requirement asked, Wording wording) {
        return new MistakeReport(law, asked, wording).write();
    }

    /** @return a name for a file of it, for example {@code mistake-us-xx-home-instruction-portfolio.txt} */
    public static String fileName(Requirement asked) {
        return "mistake-" + asked.id().replace('/', '-') + ".txt";
    }

    private String write() {
        page.paragraph(0, wording.say("law.mistake.title", law.name(), asked.title())).blank();
        fact("rule", asked.id());
        fact("file", law.slug() + ".yaml, SHA-256 " + law.contentHash());
        fact("version", version());
        said("says", sentences());
        said("from", from());
        for (String blank : List.of("law", "where", "change")) {
            page.blank().paragraph(0, wording.say("law.mistake." + blank));
            for (int i = 0; i < BLANK_LINES; i++) {
                page.blank();
            }
        }
        page.blank().paragraph(0, wording.say("law.mistake.foot"));
        return page.toString();
    }

    private static String version() {
        String version = MistakeReport.class.getPackage().getImplementationVersion();
        return version == null ? "-" : version;
    }

    private void fact(String key, String value) {
        page.hanging(0, wording.say("law.mistake." + key) + ' ', value);
    }

    private void said(String key, List<String> sentences) {
        page.blank().paragraph(0, wording.say("law.mistake." + key));
        sentences.forEach(sentence -> page.hanging(2, "", sentence));
    }

    private List<String> sentences() {
        Pathway pathway = law.pathways().stream().filter(way -> way.asks().contains(asked)).findFirst().orElseThrow();
        List<String> said = new ArrayList<>(new Duty(wording, law).sentences(asked, pathway));
        said.addAll(inForce(asked.validity(), wording));
        said.add(wording.say("law.mistake.next", asked.next()));
        return said;
    }

    /** @return from when and until when a rule holds, in sentences; none when always */
    static List<String> inForce(Validity validity, Wording wording) {
        List<String> said = new ArrayList<>();
        add(said, "law.in-force.from", validity.from(), wording);
        add(said, "law.in-force.until", validity.until(), wording);
        return said;
    }

    private static void add(List<String> said, String key, LocalDate day, Wording wording) {
        if (day != null) {
            said.add(wording.say(key, wording.date(day)));
        }
    }

    private List<String> from() {
        List<String> from = new ArrayList<>();
        for (Cite cite : asked.cites()) {
            from.add(String.join(" ", new Sources(wording).sentences(List.of(cite))) + ' ' + cite.source().address());
        }
        from.add(wording.say("explain.binding", asked.binding().words()));
        return from;
    }
}
