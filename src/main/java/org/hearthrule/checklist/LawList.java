package org.hearthrule.checklist;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Wording;

/** Lists the laws there are: how many pathways and requirements each has, and how its requirements were read. */
public final class LawList {

    private static final int[] COLUMNS = {28, 6, 8, 13, 12, 8};

    private LawList() { }

    /** @return a table, each line ended */
    public static String text(List<Profile> profiles, Wording wording, Style style) {
        Page page = new Page(style, wording);
        page.heading(wording.say("law.list.title"));
        page.line(style.dim(row(page, wording.say("law.list.state"), wording.say("law.list.pathways"),
                wording.say("law.list.requirements"), wording.say("law.list.text"), wording.say("law.list.read"),
                wording.say("law.list.doubts"))));
        for (Profile profile : profiles) {
            int requirements = requirements(profile);
            page.line(row(page, profile.code().toLowerCase(Locale.ROOT) + "  " + profile.name(),
                    Integer.toString(profile.pathways().size()), Integer.toString(requirements),
                    wording.say("law.list.of", byBasis(profile).get(Basis.TEXT), requirements),
                    profile.lastRead().toString(), Integer.toString(profile.doubts().size())));
        }
        page.blank().paragraph(0, wording.say("law.list.foot"));
        return page.toString();
    }

    private static String row(Page page, String... cells) {
        StringBuilder row = new StringBuilder();
        for (int i = 0; i < cells.length; i++) {
            String cell = page.clean(cells[i]);
            String space = " ".repeat(Math.max(1, COLUMNS[i] - Width.of(cell)));
            row.append(i == 0 ? cell + space : space + cell);
        }
        return row.toString();
    }

    /** @return the object that {@code law --list --format json} gives, its last line ended */
    public static String json(List<Profile> profiles) {
        return Json.write(json -> {
            json.writeStartObject();
            json.writeArrayFieldStart("jurisdictions");
            for (Profile profile : profiles) {
                json.writeStartObject();
                Json.text(json, "jurisdiction", profile.code().toLowerCase(Locale.ROOT));
                Json.text(json, "name", profile.name());
                Json.texts(json, "pathways", profile.pathways().stream().map(Pathway::slug).toList());
                json.writeNumberField("requirements", requirements(profile));
                json.writeObjectFieldStart("byBasis");
                for (Map.Entry<Basis, Integer> entry : byBasis(profile).entrySet()) {
                    json.writeNumberField(entry.getKey().name().toLowerCase(Locale.ROOT), entry.getValue());
                }
                json.writeEndObject();
                Json.day(json, "lastRead", profile.lastRead());
                json.writeNumberField("openDoubts", profile.doubts().size());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private static int requirements(Profile profile) {
        return profile.pathways().stream().mapToInt(pathway -> pathway.asks().size()).sum();
    }

    private static Map<Basis, Integer> byBasis(Profile profile) {
        Map<Basis, Integer> counts = new EnumMap<>(Basis.class);
        for (Basis basis : Basis.values()) {
            counts.put(basis, 0);
        }
        for (Pathway pathway : profile.pathways()) {
            for (Requirement asked : pathway.asks()) {
                counts.merge(asked.basis(), 1, Integer::sum);
            }
        }
        return counts;
    }
}
