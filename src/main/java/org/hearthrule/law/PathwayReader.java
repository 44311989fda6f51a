package org.hearthrule.law;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;

/** Reads one pathway. */
final class PathwayReader {

    /** Parts of ids that are not written in files. */
    private static final String NOT_ASKED = "not-asked";

    private PathwayReader() { }

    /** @return the pathway, or null when the value is no mapping */
    static Pathway read(Mapping.Entry entry, Scope scope) {
        Fields fields = Fields.of(entry.value(), scope.problems(), "the pathway");
        if (!fields.isMapping()) {
            return null;
        }
        String slug = entry.key().text();
        String id = scope.prefix.concat("/").concat(slug);
        SchoolYear year = fields.has("year") ? YearReader.read(fields, scope) : scope.year;
        scope.pathway = new PathwayScope(slug, year, names(fields, "asks"));
        String name = fields.text("name", Forms.LONGEST_TITLE);
        String inShort = fields.text("in-short", Forms.LONGEST_LINE);
        boolean usual = fields.optionalYesNo("usual").orElse(false);
        String openTo = fields.text("open-to", Forms.LONGEST_LINE);
        String instructor = fields.optionalText("instructor", Forms.LONGEST_LINE).orElse(null);
        List<String> excludes = others(fields, "excludes", slug, scope);
        List<String> combines = others(fields, "combines", slug, scope);
        for (String other : combines) {
            if (excludes.contains(other)) {
                scope.error(fields.place("combines"), ProfileFault.EXCLUDED_AND_COMBINED, Say.code(other)
                        + " under `combines` and `excludes`", "one of the two", null);
            }
        }
        readChoices(fields, scope);
        List<AttendanceAge> attendance = AgeReader.optional(fields, scope);
        List<Requirement> asks = asks(fields, id, scope);
        List<Pathway.NotAsked> doesNotAsk = doesNotAsk(fields, id, scope);
        List<Cite> cites = CiteReader.required(fields, "the pathway", scope);
        Validity validity = ValidityReader.read(fields, true, scope);
        fields.done();
        PathwayCheck.check(scope);
        Pathway pathway = new Pathway(id, name, inShort, usual, openTo, instructor, excludes, combines, year,
                attendance, Collections.unmodifiableMap(scope.pathway.choices), asks, doesNotAsk, cites, validity,
                entry.key().place());
        scope.readPathways.put(slug, scope.pathway);
        scope.pathway = null;
        return pathway;
    }

    /** @return the keys of a mapping, before it is read */
    static List<String> names(Fields fields, String key) {
        Node node = fields.optionalNode(key).orElse(null);
        if (!(node instanceof Mapping)) {
            return List.of();
        }
        List<String> names = new ArrayList<>();
        for (Mapping.Entry entry : ((Mapping) node).entries()) {
            names.add(entry.key().text());
        }
        return names;
    }

    private static List<String> others(Fields fields, String key, String slug, Scope scope) {
        List<String> others = fields.texts(key);
        Node node = fields.optionalNode(key).orElse(null);
        for (int i = 0; i < others.size(); i++) {
            if (others.get(i).equals(slug)) {
                scope.error(Forms.place(node, i), ProfileFault.EXCLUDES_ITSELF, Say.code(slug) + ", the pathway itself",
                        "another pathway", null);
            } else if (!scope.pathways.contains(others.get(i))) {
                List<String> known = new ArrayList<>(scope.pathways);
                known.remove(slug);
                scope.unknown(Forms.place(node, i), ProfileFault.UNKNOWN_PATHWAY, "other pathway", others.get(i),
                        known);
            }
        }
        return others;
    }

    private static void readChoices(Fields fields, Scope scope) {
        Fields choices = fields.optionalFields("choices", "the choices").orElse(null);
        if (choices == null) {
            return;
        }
        for (Mapping.Entry entry : Forms.named(choices, scope)) {
            Fields choice = Fields.of(entry.value(), scope.problems(), "the choice");
            String question = choice.text("question", Forms.LONGEST_LINE);
            boolean dates = choice.optionalYesNo("dates").orElse(false);
            Map<String, String> options = options(choice, scope);
            if (choice.isMapping() && dates && choice.has("options")) {
                scope.error(choice.place("options"), ProfileFault.OPTIONS_AND_DATES, "`options` beside `dates: yes`",
                        "one of the two", null);
            } else if (choice.isMapping() && !dates && options.size() < 2) {
                scope.error(choice.place("options"), ProfileFault.NO_OPTIONS, options.isEmpty() ? "no options"
                        : "one option", "two options or more, or `dates: yes`", null);
            }
            choice.done();
            scope.pathway.choices.put(entry.key().text(),
                    new Pathway.ChoiceOffered(entry.key().text(), question, options, dates));
        }
    }

    private static Map<String, String> options(Fields choice, Scope scope) {
        Optional<Fields> fields = choice.optionalFields("options", "the options");
        Map<String, String> options = new LinkedHashMap<>();
        if (fields.isPresent()) {
            for (Mapping.Entry entry : Forms.named(fields.get(), scope)) {
                options.put(entry.key().text(), fields.get().text(entry.key().text(), Forms.LONGEST_TITLE));
            }
        }
        return Collections.unmodifiableMap(options);
    }

    private static List<Requirement> asks(Fields fields, String id, Scope scope) {
        Fields asks = fields.optionalFields("asks", "what the pathway asks").orElse(null);
        if (asks == null) {
            return List.of();
        }
        List<Requirement> requirements = new ArrayList<>();
        for (Mapping.Entry entry : Forms.named(asks, scope)) {
            if (entry.key().text().equals(NOT_ASKED)) {
                scope.error(entry.key().place(), ProfileFault.RESERVED_NAME, Say.code(NOT_ASKED), "another id", null);
            }
            Requirement requirement = RequirementReader.read(entry, id, scope);
            if (requirement != null) {
                requirements.add(requirement);
            }
        }
        return List.copyOf(requirements);
    }

    private static List<Pathway.NotAsked> doesNotAsk(Fields fields, String id, Scope scope) {
        List<Pathway.NotAsked> list = new ArrayList<>();
        for (Fields item : fields.listOfFields("does-not-ask", "what is not asked")) {
            String what = item.text("what", Forms.LONGEST_REMARK);
            Cite cite = CiteReader.one(item, "what is not asked", scope);
            Validity validity = ValidityReader.read(item, false, scope);
            item.done();
            String number = Integer.toString(list.size() + 1);
            list.add(new Pathway.NotAsked(id.concat("/").concat(NOT_ASKED).concat("/").concat(number), what, cite,
                    validity));
        }
        return List.copyOf(list);
    }
}
