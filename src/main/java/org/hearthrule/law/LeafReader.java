package org.hearthrule.law;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.input.Fields;

/** Reads single pieces of evidence; {@link TimeReader} those that are an amount of time. */
final class LeafReader {

    private static final int MOST = 1_000;

    private LeafReader() { }

    /** @return the evidence under the key {@code form}, or null */
    static Evidence read(String form, Fields fields, String method, Scope scope) {
        switch (form) {
            case "filing":
                return new Evidence.Filing(paper(fields, form, scope));
            case "approval":
                return new Evidence.Approval(paper(fields, form, scope));
            case "document":
                return new Evidence.Document(Forms.name(fields, form, scope));
            case "log":
                return log(fields.fields(form, "the evidence `log`"));
            case "samples":
                return samples(fields.fields(form, "the evidence `samples`"));
            case "readings":
                return readings(fields.fields(form, "the evidence `readings`"));
            case "time":
                return TimeReader.time(fields.fields(form, "the evidence `time`"), scope);
            case "test":
                return test(fields.fields(form, "the evidence `test`"), method, scope);
            case "evaluation":
                return evaluation(fields.fields(form, "the evidence `evaluation`"), method, scope);
            case "credential":
                return credential(fields.fields(form, "the evidence `credential`"), scope);
            case "health-paper":
                return new Evidence.HealthPaper(Forms.names(fields, form, scope));
            case "fact":
                return fact(fields.fields(form, "the evidence `fact`"), scope);
            case "visits":
                return TimeReader.visits(fields.fields(form, "the evidence `visits`"), scope);
            default:
                return new Evidence.Words(fields.text(form, Forms.LONGEST_TEXT));
        }
    }

    private static String paper(Fields fields, String key, Scope scope) {
        String paper = Forms.name(fields, key, scope);
        if (paper != null && scope.pathway != null) {
            scope.pathway.papers.add(paper);
        }
        return paper;
    }

    private static Evidence log(Fields fields) {
        int entries = fields.optionalInteger("entries", 1, MOST).orElse(1);
        Period per = TimeReader.period(fields);
        fields.done();
        return new Evidence.Log(entries, per == null ? Period.YEAR : per);
    }

    private static Evidence samples(Fields fields) {
        int least = fields.optionalInteger("least", 1, MOST).orElse(1);
        boolean perSubject = fields.optionalYesNo("per-subject").orElse(false);
        fields.done();
        return new Evidence.Samples(least, perSubject);
    }

    private static Evidence readings(Fields fields) {
        int least = fields.optionalInteger("least", 1, MOST).orElse(1);
        fields.done();
        return new Evidence.Readings(least);
    }

    private static Evidence test(Fields fields, String method, Scope scope) {
        String name = method(fields, method, "standardized-test", scope);
        List<String> list = Forms.texts(fields, "list", scope);
        List<String> areas = Forms.names(fields, "areas", scope);
        List<String> givenBy = Forms.names(fields, "given-by", scope);
        List<String> notBy = Forms.names(fields, "not-by", scope);
        String consent = fields.optionalText("consent", Forms.LONGEST_TITLE).orElse(null);
        List<Threshold> thresholds = new ArrayList<>();
        if (fields.has("scores")) {
            Forms.items(fields, "scores", scope);
            for (Fields score : fields.listOfFields("scores", "the threshold")) {
                thresholds.add(ThresholdReader.read(score, scope));
                score.done();
            }
        }
        fields.done();
        return new Evidence.Test(name, list, areas, givenBy, notBy, consent, List.copyOf(thresholds));
    }

    /** The word a record book uses for it: the one written here, else the name of the option, else the usual one. */
    private static String method(Fields fields, String option, String usual, Scope scope) {
        String written = Forms.optionalName(fields, "method", scope);
        String unwritten = option == null ? usual : option;
        String name = written == null ? unwritten : written;
        if (scope.pathway != null) {
            scope.pathway.addMethod(name);
        }
        return name;
    }

    private static Evidence evaluation(Fields fields, String method, Scope scope) {
        String name = method(fields, method, "evaluation", scope);
        List<String> by = Forms.names(fields, "by", scope);
        List<String> notBy = Forms.names(fields, "not-by", scope);
        String consent = fields.optionalText("consent", Forms.LONGEST_TITLE).orElse(null);
        List<String> includes = Forms.names(fields, "includes", scope);
        List<String> says = Forms.names(fields, "says", scope);
        fields.done();
        return new Evidence.Evaluation(name, by, notBy, consent, includes, says);
    }

    private static Evidence credential(Fields fields, Scope scope) {
        String of = Forms.name(fields, "of", scope);
        List<String> kinds = Forms.requiredNames(fields, "kinds", scope);
        fields.done();
        return new Evidence.Credential(of, kinds);
    }

    private static Evidence fact(Fields fields, Scope scope) {
        String name = fields.text("name", Forms.LONGEST_NAME);
        if (name != null) {
            scope.checkFact(fields.place("name"), name);
        }
        boolean is = fields.yesNo("is");
        fields.done();
        return new Evidence.Fact(name, is);
    }
}
