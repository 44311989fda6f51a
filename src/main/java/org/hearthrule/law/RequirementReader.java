package org.hearthrule.law;

import java.util.List;
import org.hearthrule.input.Fields;
import org.hearthrule.input.Mapping;
import org.hearthrule.input.Node;
import org.hearthrule.input.Place;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Binding;
import org.hearthrule.terms.EventKind;

/** Reads one requirement of a pathway. */
final class RequirementReader {

    private static final List<String> KINDS = List.of("file", "approval", "record", "show", "time", "subjects",
            "assess", "qualify", "health", "standing", "contact", "step", "theirs", "standard");
    private static final List<String> OWED_BY =
            List.of("parent", "tutor", "school", "association", "evaluator", "authority");
    private static final List<String> RECURS = List.of("each-year", "once");
    private static final List<String> KIND_KEYS = List.of("list", "interval", "span", "words", "shows", "paper",
            "counts-from");

    private RequirementReader() { }

    /**
     * Reads one entry of {@code asks}.
     *
     * @return the requirement, or null when the value is no mapping
     */
    static Requirement read(Mapping.Entry entry, String pathwayId, Scope scope) {
        String localId = entry.key().text();
        scope.pathway.requirement = localId;
        Fields fields = Fields.of(entry.value(), scope.problems(), "the requirement");
        if (!fields.isMapping()) {
            return null;
        }
        String kindWord = fields.oneOf("kind", KINDS);
        RequirementKind kind = kindWord == null ? null : RequirementKind.values()[KINDS.indexOf(kindWord)];
        String title = fields.text("title", Forms.LONGEST_TITLE);
        Requirement.OwedFor owedFor = fields.optionalOneOf("for", Requirement.OwedFor.class)
                .orElse(Requirement.OwedFor.CHILD);
        String by = fields.optionalOneOf("by", OWED_BY).orElse("parent");
        String to = fields.optionalText("to", Forms.LONGEST_TITLE).orElse(null);
        Requirement.Ages ages = fields.optionalOneOf("ages", Requirement.Ages.class)
                .orElse(Requirement.Ages.COMPULSORY);
        Condition when = ConditionReader.optional(fields, "when", scope);
        Requirement.Recurs recurs = recurs(fields, scope);
        Due due = DueReader.optional(fields, scope);
        checkKeys(fields, kind, kindWord, scope);
        Evidence shows = shows(fields, kind, localId, when, scope);
        List<String> states = Forms.texts(fields, "states", scope);
        List<String> attaches = Forms.texts(fields, "attaches", scope);
        String form = fields.optionalText("form", Forms.LONGEST_LINE).orElse(null);
        List<String> needs = needs(fields, scope);
        String group = Forms.optionalName(fields, "group", scope);
        if (group != null) {
            scope.pathway.groups.add(scope.pathway.mention(fields.place("group"), group));
        }
        String countsFrom = countsFrom(fields, scope);
        Requirement.Retention keepFor = keepFor(fields, scope);
        String next = fields.text("next", Forms.LONGEST_LINE);
        String note = fields.optionalText("note", Forms.LONGEST_TEXT).orElse(null);
        String question = fields.optionalText("question", Forms.LONGEST_TEXT).orElse(null);
        String ask = fields.optionalText("ask", Forms.LONGEST_TITLE).orElse(null);
        checkQuestion(fields, scope);
        String confirmWith = fields.optionalText("confirm-with", Forms.LONGEST_TITLE).orElse(scope.confirmWith);
        List<Cite> cites = CiteReader.required(fields, "the requirement", scope);
        Basis basis = basis(fields, cites, scope);
        Binding binding = fields.optionalOneOf("binding", Binding.class)
                .orElse(cites.isEmpty() ? Binding.DISPUTED : cites.get(0).source().binding());
        Validity validity = ValidityReader.ofRequirement(fields, scope);
        List<String> waivedIn = schoolYears(fields, "waived-in", scope);
        fields.done();
        Requirement asked = new Requirement(pathwayId.concat("/").concat(localId), kind, title, owedFor, by, to, ages, when, recurs,
                due == null ? usualDue(kind) : due, shows, states, attaches, form, needs, group, countsFrom, keepFor,
                next, note, question, ask, confirmWith, cites, basis, binding, validity, waivedIn,
                entry.key().place());
        if (kind != null) {
            RecurrenceCheck.check(asked, fields.place(), scope);
        }
        return asked;
    }

    private static List<String> schoolYears(Fields fields, String key, Scope scope) {
        List<String> years = Forms.texts(fields, key, scope);
        Node node = fields.optionalNode(key).orElse(null);
        for (int i = 0; i < years.size(); i++) {
            if (!isSchoolYear(years.get(i))) {
                scope.error(Forms.place(node, i), ProfileFault.WRONG_SCHOOL_YEAR, Say.code(years.get(i)),
                        "a school year such as \"2019-20\"", null);
            }
        }
        return years;
    }

    /** Four digits, a hyphen and the last two digits of the year after. */
    private static boolean isSchoolYear(String text) {
        if (text.length() != "2019-20".length() || text.charAt(4) != '-') {
            return false;
        }
        int[] digits = new int[text.length()];
        for (int i = 0; i < text.length(); i++) {
            digits[i] = text.charAt(i) - '0';
            if (i != 4 && (digits[i] < 0 || digits[i] > 9)) {
                return false;
            }
        }
        return (10 * digits[2] + digits[3] + 1) % 100 == 10 * digits[5] + digits[6];
    }

    private static Due usualDue(RequirementKind kind) {
        boolean yearEnd = kind == RequirementKind.TIME || kind == RequirementKind.SUBJECTS
                || kind == RequirementKind.RECORD || kind == RequirementKind.ASSESS;
        return yearEnd ? new Due.YearEnd() : new Due.None(null);
    }

    private static Requirement.Recurs recurs(Fields fields, Scope scope) {
        Node node = fields.optionalNode("recurs").orElse(null);
        if (node == null) {
            return Requirement.Recurs.YEARLY;
        }
        if (Forms.isScalar(node)) {
            String word = fields.oneOf("recurs", RECURS);
            return "once".equals(word)
                    ? new Requirement.Recurs(Requirement.Recurs.Each.ONCE, List.of())
                    : Requirement.Recurs.YEARLY;
        }
        Fields each = fields.fields("recurs", "the recurrence");
        List<EventKind> events = EventReader.list(each, "each", scope);
        each.done();
        return new Requirement.Recurs(Requirement.Recurs.Each.EVENT, events);
    }

    /** Refuses keys that would be lost, because requirements of this kind have no use for them. */
    private static void checkKeys(Fields fields, RequirementKind kind, String word, Scope scope) {
        for (String key : KIND_KEYS) {
            if (fields.has(key) && kind != null && !belongs(key, kind)) {
                scope.error(fields.place(key), ProfileFault.KEY_OF_ANOTHER_KIND,
                        Say.code(key) + " in a requirement of kind " + word, kindsOf(key), null);
            }
        }
    }

    private static boolean belongs(String key, RequirementKind kind) {
        switch (key) {
            case "list":
            case "interval":
            case "span":
                return kind == RequirementKind.SUBJECTS;
            case "words":
                return kind == RequirementKind.STANDARD;
            case "shows":
                return kind != RequirementKind.SUBJECTS && kind != RequirementKind.STANDARD;
            case "paper":
                return isPaper(kind);
            default:
                return kind == RequirementKind.TIME || kind == RequirementKind.SUBJECTS
                        || kind == RequirementKind.RECORD;
        }
    }

    private static String kindsOf(String key) {
        StringBuilder out = new StringBuilder(Say.code(key)).append(" only in kinds ");
        String comma = "";
        for (int i = 0; i < KINDS.size(); i++) {
            if (belongs(key, RequirementKind.values()[i])) {
                out.append(comma).append(KINDS.get(i));
                comma = ", ";
            }
        }
        return out.toString();
    }

    /** Kinds that a paper shows when nothing else is said. */
    private static boolean isPaper(RequirementKind kind) {
        return kind == RequirementKind.FILE || kind == RequirementKind.APPROVAL || kind == RequirementKind.SHOW
                || kind == RequirementKind.STEP || kind == RequirementKind.THEIRS;
    }

    private static Evidence shows(Fields fields, RequirementKind kind, String localId, Condition when, Scope scope) {
        String paper = Forms.optionalName(fields, "paper", scope);
        Node node = fields.optionalNode("shows").orElse(null);
        if (node != null && fields.has("paper") && kind != null && isPaper(kind)) {
            scope.error(fields.place("paper"), ProfileFault.PAPER_AND_SHOWS, "`paper` beside `shows`",
                    "one of the two", "name the paper under `shows` as a filing");
        }
        if (node != null) {
            return EvidenceReader.read(node, kind, scope);
        }
        if (kind == RequirementKind.SUBJECTS) {
            return SubjectsReader.read(fields, when, scope);
        }
        if (kind == RequirementKind.STANDARD) {
            return new Evidence.Words(fields.text("words", Forms.LONGEST_TEXT));
        }
        if (kind == null) {
            return null;
        }
        if (!isPaper(kind)) {
            fields.node("shows");
            return null;
        }
        String name = paper == null ? localId : paper;
        scope.pathway.papers.add(name);
        return kind == RequirementKind.APPROVAL ? new Evidence.Approval(name) : new Evidence.Filing(name);
    }

    private static List<String> needs(Fields fields, Scope scope) {
        List<String> needs = Forms.texts(fields, "needs", scope);
        Node node = fields.optionalNode("needs").orElse(null);
        for (int i = 0; i < needs.size(); i++) {
            Place place = Forms.place(node, i);
            if (scope.checkRequirement(place, needs.get(i))) {
                scope.pathway.needs.add(scope.pathway.mention(place, needs.get(i)));
            }
        }
        return needs;
    }

    private static String countsFrom(Fields fields, Scope scope) {
        if (!fields.has("counts-from")) {
            return null;
        }
        Fields from = fields.fields("counts-from", "the key `counts-from`");
        String paper = Forms.name(from, "filing", scope);
        if (paper != null) {
            scope.pathway.papersMentioned.add(scope.pathway.mention(from.place("filing"), paper));
        }
        from.done();
        return paper;
    }

    private static Requirement.Retention keepFor(Fields fields, Scope scope) {
        if (!fields.has("keep-for")) {
            return null;
        }
        Fields keep = fields.fields("keep-for", "the key `keep-for`");
        String words = keep.optionalText("words", Forms.LONGEST_LINE).orElse(null);
        Span span = keep.has("words") ? SpanReader.optional(keep, scope) : SpanReader.required(keep, scope);
        keep.done();
        return new Requirement.Retention(span, words);
    }

    private static void checkQuestion(Fields fields, Scope scope) {
        boolean question = fields.has("question");
        if (question != fields.has("ask")) {
            scope.error(fields.place(question ? "question" : "ask"), ProfileFault.QUESTION_AND_ASK,
                    question ? "`question` without `ask`" : "`ask` without `question`", "both, or neither", null);
        }
    }

    private static Basis basis(Fields fields, List<Cite> cites, Scope scope) {
        Basis weakest = CiteReader.weakest(cites);
        Basis said = fields.optionalOneOf("basis", Basis.class).orElse(weakest);
        if (!cites.isEmpty() && weakest.weakerThan(said)) {
            scope.error(fields.place("basis"), ProfileFault.BASIS_TOO_STRONG, Say.code(said.slug())
                    + " for a source that was read as " + Say.code(weakest.slug()), Say.code(weakest.slug())
                    + " or weaker", "leave it out");
        }
        return said;
    }
}
