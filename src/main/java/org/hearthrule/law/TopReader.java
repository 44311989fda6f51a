package org.hearthrule.law;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Place;
import org.hearthrule.input.Scalar;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Binding;
import org.hearthrule.terms.Grades;

/** Reads the top of a profile: names that rules refer to first, then the rules. */
final class TopReader {

    private static final int NEWEST_FORMAT = 1;
    private static final int HIGHEST_FORMAT = 9_999;
    private static final int CODE_LENGTH = 5;
    private static final List<String> ABOUT = List.of("child", "parent", "teacher", "family", "place");

    private final Scope scope;

    TopReader(Scope scope) {
        this.scope = scope;
    }

    /** @return the profile, of use only when no error was recorded; null when the root is no mapping */
    Profile read(Node root, String file, String content) {
        Fields top = Fields.of(root, scope.problems(), "the profile");
        if (!top.isMapping()) {
            return null;
        }
        int format = top.integer("format", NEWEST_FORMAT, HIGHEST_FORMAT);
        if (format > NEWEST_FORMAT) {
            scope.error(top.place("format"), ProfileFault.UNKNOWN_FORMAT, "format " + format, "format "
                    + NEWEST_FORMAT, "a newer version of this program reads it");
        }
        String code = code(top, file);
        String name = top.text("name", Forms.LONGEST_NAME);
        String lawCallsIt = top.text("law-calls-it", Forms.LONGEST_TITLE);
        String agency = top.text("agency", Forms.LONGEST_TITLE);
        scope.confirmWith = top.text("confirm-with", Forms.LONGEST_TITLE);
        List<Mapping.Entry> sources = sources(top);
        scope.year = YearReader.read(top, scope);
        levels(top);
        Profile.GradeByAge gradeByAge = gradeByAge(top);
        List<Profile.OptIn> optIns = optIns(top);
        List<Mapping.Entry> facts = facts(top);
        scope.pathways.addAll(PathwayReader.names(top, "pathways"));
        List<AttendanceAge> ages = AgeReader.required(top, scope);
        List<Pathway> pathways = pathways(top);
        List<Profile.Doubt> doubts = new DoubtsReader(scope).read(top, pathways);
        List<Profile.Change> changes = changes(top);
        List<Profile.Announced> announced = announced(top);
        top.done();
        warnOfUnused(sources, facts);
        return new Profile(code, name, lawCallsIt, agency, scope.confirmWith,
                Collections.unmodifiableMap(scope.sources), Collections.unmodifiableMap(scope.levels), gradeByAge, ages,
                Collections.unmodifiableMap(scope.facts), pathways, doubts, changes, announced, optIns, file,
                content);
    }

    private String code(Fields top, String file) {
        String code = top.text("jurisdiction", Forms.LONGEST_NAME);
        if (code == null) {
            return null;
        }
        if (!isCode(code)) {
            scope.error(top.place("jurisdiction"), ProfileFault.WRONG_CODE, Say.code(code),
                    "US and two capital letters such as US-XX", null);
            return code;
        }
        scope.prefix = code.toLowerCase(Locale.ROOT);
        String fileName = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
        if (!fileName.equals(scope.prefix.concat(".yaml"))) {
            scope.error(top.place("jurisdiction"), ProfileFault.CODE_NOT_OF_FILE, Say.code(code) + " in the file "
                    + Say.code(fileName), "the file " + Say.code(scope.prefix + ".yaml"), null);
        }
        return code;
    }

    private static boolean isCode(String code) {
        return code.length() == CODE_LENGTH && code.startsWith("US-") && isCapital(code.charAt(CODE_LENGTH - 2))
                && isCapital(code.charAt(CODE_LENGTH - 1));
    }

    private static boolean isCapital(char c) {
        return c >= 'A' && c <= 'Z';
    }

    private List<Mapping.Entry> sources(Fields top) {
        Fields sources = top.fields("sources", "the sources");
        List<Mapping.Entry> entries = Forms.named(sources, scope);
        if (sources.isMapping() && entries.isEmpty()) {
            scope.error(sources.place(), ProfileFault.NO_SOURCES, "no sources", "at least one source", null);
        }
        for (Mapping.Entry entry : entries) {
            Fields source = Fields.of(entry.value(), scope.problems(), "the source");
            String key = entry.key().text();
            String title = source.text("title", Forms.LONGEST_LINE);
            String address = source.text("address", Forms.LONGEST_TEXT);
            LocalDate read = source.date("read");
            Basis basis = source.oneOf("basis", Basis.class);
            Binding binding = source.oneOf("binding", Binding.class);
            source.done();
            // what a wrong source lacks is taken at its weakest, so that reading can go on
            scope.sources.put(key, new Source(key, title, address, read, basis == null ? Basis.MEMORY : basis,
                    binding == null ? Binding.DISPUTED : binding, entry.key().place()));
        }
        return entries;
    }

    private void levels(Fields top) {
        Fields levels = top.optionalFields("levels", "the levels").orElse(null);
        if (levels == null) {
            return;
        }
        for (Mapping.Entry entry : Forms.named(levels, scope)) {
            Grades grades = GradeReader.list(levels, entry.key().text(), scope);
            // a level whose grades are wrong is still known by its name
            scope.levels.put(entry.key().text(), grades == null ? new Grades(new TreeSet<>()) : grades);
        }
    }

    private Profile.GradeByAge gradeByAge(Fields top) {
        Fields fields = top.optionalFields("grade-by-age", "the grade by age").orElse(null);
        if (fields == null) {
            return null;
        }
        int grade = GradeReader.one(fields, "grade", scope);
        int age = fields.integer("age", 1, 20);
        MonthDay on = fields.monthDay("on");
        fields.done();
        return new Profile.GradeByAge(grade, age, on);
    }

    private List<Mapping.Entry> facts(Fields top) {
        Fields facts = top.optionalFields("facts", "the facts").orElse(null);
        if (facts == null) {
            return List.of();
        }
        List<Mapping.Entry> entries = Forms.named(facts, scope);
        for (Mapping.Entry entry : entries) {
            Fields fact = Fields.of(entry.value(), scope.problems(), "the fact");
            String about = fact.oneOf("about", ABOUT);
            String question = fact.text("question", Forms.LONGEST_LINE);
            Boolean presume = fact.optionalYesNo("presume").orElse(null);
            fact.done();
            scope.facts.put(entry.key().text(), new Profile.FactAsked(entry.key().text(), about, question, presume));
        }
        return entries;
    }

    private List<Profile.OptIn> optIns(Fields top) {
        Fields optIns = top.optionalFields("opt-ins", "the optional programs").orElse(null);
        if (optIns == null) {
            return List.of();
        }
        List<Profile.OptIn> list = new ArrayList<>();
        for (Mapping.Entry entry : Forms.named(optIns, scope)) {
            Fields program = Fields.of(entry.value(), scope.problems(), "the optional program");
            String what = program.text("what", Forms.LONGEST_REMARK);
            Cite cite = CiteReader.one(program, "the optional program", scope);
            program.done();
            scope.optIns.add(entry.key().text());
            list.add(new Profile.OptIn(entry.key().text(), what, cite));
        }
        return List.copyOf(list);
    }

    private List<Pathway> pathways(Fields top) {
        Fields pathways = top.fields("pathways", "the pathways");
        List<Mapping.Entry> entries = Forms.named(pathways, scope);
        List<Pathway> list = new ArrayList<>(entries.size());
        Pathway usual = null;
        for (Mapping.Entry entry : entries) {
            if (entry.key().text().equals(DoubtsReader.DOUBTS)) {
                scope.error(entry.key().place(), ProfileFault.RESERVED_NAME, Say.code(DoubtsReader.DOUBTS), "another name", null);
            }
            Pathway pathway = PathwayReader.read(entry, scope);
            if (pathway == null) {
                continue;
            }
            list.add(pathway);
            if (pathway.usual() && usual != null) {
                scope.error(pathway.place(), ProfileFault.SEVERAL_USUAL_PATHWAYS, "a second usual pathway "
                        + Say.code(pathway.slug()), "one; the first is " + Say.code(usual.slug()), null);
            } else if (pathway.usual()) {
                usual = pathway;
            }
        }
        if (pathways.isMapping() && entries.isEmpty()) {
            scope.error(pathways.place(), ProfileFault.NO_PATHWAYS, "no pathways", "at least one pathway", null);
        } else if (usual == null && !list.isEmpty()) {
            scope.error(pathways.place(), ProfileFault.NO_USUAL_PATHWAY, "no usual pathway",
                    "`usual: yes` in one pathway", null);
        }
        return List.copyOf(list);
    }

    private List<Profile.Change> changes(Fields top) {
        List<Profile.Change> list = new ArrayList<>();
        for (Fields change : top.listOfFields("changes", "the change")) {
            Profile.Effective effective = EffectiveReader.read(change, scope);
            String what = change.text("what", Forms.LONGEST_REMARK);
            Cite cite = CiteReader.one(change, "the change", scope);
            change.done();
            list.add(new Profile.Change(effective, what, cite));
        }
        return List.copyOf(list);
    }

    private List<Profile.Announced> announced(Fields top) {
        List<Profile.Announced> list = new ArrayList<>();
        for (Fields notice : top.listOfFields("announced", "the announced change")) {
            LocalDate from = notice.optionalDate("from").orElse(null);
            String what = notice.text("what", Forms.LONGEST_REMARK);
            Cite cite = CiteReader.one(notice, "the announced change", scope);
            notice.done();
            list.add(new Profile.Announced(from, what, cite));
        }
        return List.copyOf(list);
    }

    private void warnOfUnused(List<Mapping.Entry> sources, List<Mapping.Entry> facts) {
        for (Mapping.Entry entry : sources) {
            if (!scope.citedSources.contains(entry.key().text())) {
                warn(entry.key(), ProfileFault.SOURCE_NEVER_CITED, "a source that nothing cites", "a citation of it");
            }
        }
        for (Mapping.Entry entry : facts) {
            if (!scope.usedFacts.contains(entry.key().text())) {
                warn(entry.key(), ProfileFault.FACT_NEVER_USED, "a fact that no rule turns on", "a rule that does");
            }
        }
    }

    private void warn(Scalar key, ProfileFault fault, String found, String expected) {
        Place place = key.place();
        scope.warning(place, fault, found, expected, "remove it");
    }
}
