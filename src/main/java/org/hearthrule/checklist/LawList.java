package org.hearthrule.checklist;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Wording;

/** Lists the laws there are: how many pathways and requirements each has, and how its requirements were read. */
public final class LawList {

    private static final int[] COLUMNS = {25, 5, 7, 5, 7, 6, 7, 11, 7};

    private LawList() { }

    /** @return a table, each line ended */
    public static String text(List<Profile> profiles, Wording wording, Style style) {
        Page page = new Page(style, wording);
        page.heading(wording.say("law.list.title"));
        page.line(style.dim(row(page, wording.say("law.list.state"), wording.say("law.list.pathways"),
                wording.say("law.list.requirements"), wording.say("law.list.text"), wording.say("law.list.agency"),
                wording.say("law.list.secondary"), wording.say("law.list.memory"), wording.say("law.list.read"),
                wording.say("law.list.doubts"))));
        for (Profile profile : profiles) {
            String code = profile.code().substring("us-".length()).toLowerCase(Locale.ROOT);
            page.line(row(page, code + "  " + profile.name(), Reading.of(profile), profile.lastRead().toString()));
        }
        page.line(style.dim(row(page, wording.say("law.list.sum"), Reading.of(profiles), "")));
        page.blank().paragraph(0, wording.say("law.list.foot"));
        return page.toString();
    }

    private static String row(Page page, String name, Reading reading, String read) {
        return row(page, name, Integer.toString(reading.pathways()), Integer.toString(reading.requirements()),
                reading.percent(Basis.TEXT) + "%", reading.percent(Basis.AGENCY) + "%",
                reading.percent(Basis.SECONDARY) + "%", reading.percent(Basis.MEMORY) + "%", read,
                Integer.toString(reading.doubts()));
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
                Reading reading = Reading.of(profile);
                json.writeNumberField("requirements", reading.requirements());
                json.writeObjectFieldStart("byBasis");
                for (Map.Entry<Basis, Integer> entry : reading.byBasis().entrySet()) {
                    json.writeNumberField(entry.getKey().slug(), entry.getValue());
                }
                json.writeEndObject();
                Json.day(json, "lastRead", profile.lastRead());
                json.writeNumberField("openDoubts", reading.doubts());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }
}
