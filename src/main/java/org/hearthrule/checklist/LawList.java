package org.hearthrule.checklist;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.hearthrule.checklist.Sheet.Column;
import org.hearthrule.checklist.Sheet.Span;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Wording;

/** Lists the laws there are: how many pathways and requirements each has, and how its requirements were read. */
public final class LawList {

    private static final int NUMBERS = 7;

    private LawList() { }

    /** @return a table */
    public static Sheet sheet(List<Profile> profiles, Wording wording) {
        List<List<Span>> rows = new ArrayList<>();
        for (Profile profile : profiles) {
            String code = profile.code().substring("us-".length()).toLowerCase(Locale.ROOT);
            rows.add(row(new Sheet.See(code + "  " + profile.name(), new Sheet.Link(profile.name(),
                    new Sheet.Reference.Law(profile.slug(), null))), Reading.of(profile),
                    profile.lastRead().toString()));
        }
        rows.add(row(new Sheet.Text(wording.say("law.list.sum")), Reading.of(profiles), ""));
        String title = wording.say("law.list.title");
        return new SheetBuilder().heading(title).add(new Sheet.Table(title, columns(wording), rows, true))
                .foot().say(wording.say("law.list.foot")).sheet("");
    }

    private static List<Column> columns(Wording wording) {
        return List.of(new Column(wording.say("law.list.state"), "", 25, Column.Align.LEFT),
                number(wording, "pathways", 5), number(wording, "requirements", NUMBERS), number(wording, "text", 5),
                number(wording, "agency", NUMBERS), number(wording, "secondary", 6), number(wording, "memory", NUMBERS),
                number(wording, "read", 11), number(wording, "doubts", NUMBERS));
    }

    private static Column number(Wording wording, String key, int width) {
        return new Column(wording.say("law.list." + key), "", width, Column.Align.RIGHT);
    }

    private static List<Span> row(Span name, Reading reading, String read) {
        List<Span> cells = new ArrayList<>(List.of(name));
        Stream.of(Integer.toString(reading.pathways()), Integer.toString(reading.requirements()),
                reading.percent(Basis.TEXT) + "%", reading.percent(Basis.AGENCY) + "%",
                reading.percent(Basis.SECONDARY) + "%", reading.percent(Basis.MEMORY) + "%", read,
                Integer.toString(reading.doubts())).map(Sheet.Text::new).forEach(cells::add);
        return cells;
    }

    /** @return the object that {@code law --list --format json} gives, its last line ended */
    public static String json(List<Profile> profiles) {
        return Json.write(json -> {
            json.writeStartObject();
            json.writeArrayFieldStart("jurisdictions");
            for (Profile profile : profiles) {
                json.writeStartObject();
                Json.text(json, "jurisdiction", profile.slug());
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
