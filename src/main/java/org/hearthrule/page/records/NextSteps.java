package org.hearthrule.page.records;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.checklist.Line;
import org.hearthrule.checklist.LineGroup;
import org.hearthrule.checklist.Section;
import org.hearthrule.input.BadInputException;
import org.hearthrule.law.ChoiceAsked;
import org.hearthrule.law.Evidence;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.page.frame.Call;
import org.hearthrule.page.frame.Field;
import org.hearthrule.page.frame.Form;
import org.hearthrule.page.frame.Option;
import org.hearthrule.page.frame.Print;
import org.hearthrule.page.sheet.Addresses;
import org.hearthrule.records.Student;
import org.hearthrule.rules.Finding;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.EventKind;
import org.hearthrule.terms.Prose;

/** Finds what can be done about a line of the checklist, from what would show it. Confined to one call. */
public final class NextSteps {

    private static final int MOST = 4;
    private static final List<Option> YES_NO = List.of(Option.of("yes", "Yes"), Option.of("no", "No"));

    private final Offered offered;
    private final String back;
    private final Map<String, Profile> profiles = new LinkedHashMap<>();
    private int forms;

    private NextSteps(Offered offered, List<Profile> profiles, String here) {
        this.offered = offered;
        this.back = Addresses.encoded(here);
        profiles.forEach(profile -> this.profiles.put(profile.slug(), profile));
    }

    public static NextSteps of(Call call) throws BadInputException {
        return new NextSteps(Offered.of(call), call.desk().judgement().profiles(), call.here());
    }

    /** @return what can be done, the likeliest first; nothing for what is done, not due or owed by others */
    public List<NextStep> of(LineGroup group) {
        Line line = group.line();
        Finding finding = line.finding();
        if (finding.theirs() || line.section().onlyOnRequest() || finding.status() == Status.MET) {
            return List.of();
        }
        List<NextStep> steps = new ArrayList<>();
        if (line.section() == Section.LAW_UNCLEAR) {
            steps.add(doubt(finding.requirement()));
            return steps;
        }
        missingFacts(group, steps);
        missingDays(group, steps);
        missingChoices(finding, steps);
        Requirement asked = line.asked();
        if (asked == null) {
            steps.add(new NextStep.Go(ofRecords(finding), "Look at the records"));
            return steps;
        }
        if (asked.question() != null) {
            steps.add(doubt(asked.id()));
        }
        for (Evidence leaf : Evidence.leaves(asked.shows(), Evidence.class)) {
            NextStep step = step(leaf, group, asked);
            if (step != null && !steps.contains(step) && steps.size() < MOST) {
                steps.add(step);
            }
        }
        return steps;
    }

    private static String ofRecords(Finding finding) {
        boolean samples = finding.records().stream().anyMatch(record -> record.id().startsWith("sample"));
        return samples ? "/unsettled" : finding.student() == null ? "/log" : "/log?child=" + finding.student();
    }

    private NextStep step(Evidence leaf, LineGroup group, Requirement asked) {
        Finding finding = group.line().finding();
        String child = finding.student() == null ? "" : finding.student();
        if (leaf instanceof Evidence.Filing filing) {
            return sent(filing.paper(), group, asked);
        } else if (leaf instanceof Evidence.Approval approval) {
            return new NextStep.Go("/papers?words=" + Addresses.encoded(offered.paper(approval.paper())), "Note what came back on the paper you sent");
        } else if (leaf instanceof Evidence.Document document) {
            return fill("/documents/new", "Note the paper that you keep", Map.of("kind", document.kind()), form -> List.of(
                    students(form, group), form.field("date", "Its day").type("date").must(),
                    form.field("scan", "A scan or photo of it").type("file")), "Save");
        } else if (leaf instanceof Evidence.HealthPaper paper) {
            return health(paper, group);
        } else if (leaf instanceof Evidence.Test test) {
            return new NextStep.Go("/tests/new?student=" + child + "&method=" + test.method() + "&back=" + back,
                    "Note the test" + which(asked, Evidence.Test.class, test.method()));
        } else if (leaf instanceof Evidence.Evaluation evaluation) {
            return new NextStep.Go("/evaluations/new?student=" + child + "&method=" + evaluation.method() + "&back=" + back,
                    "Note the evaluation" + which(asked, Evidence.Evaluation.class, evaluation.method()));
        } else if (leaf instanceof Evidence.Credential) {
            return new NextStep.Go("/family", "Note it with the person");
        } else if (leaf instanceof Evidence.Log || leaf instanceof Evidence.Time) {
            return new NextStep.Go(child.isEmpty() ? "/log" : "/log?child=" + child, "Log a day");
        } else if (leaf instanceof Evidence.Samples) {
            return new NextStep.Go("/work?child=" + child, "Add a piece of work");
        } else if (leaf instanceof Evidence.Subjects) {
            return new NextStep.Go("/readiness?child=" + child, "See each subject, and what is thin");
        } else if (leaf instanceof Evidence.Readings) {
            return new NextStep.Go("/books", "Add a book");
        }
        return null;
    }

    /** Says which one is meant where the law takes any of several. */
    private static String which(Requirement asked, Class<? extends Evidence> kind, String method) {
        return Evidence.leaves(asked.shows(), kind).size() < 2 ? "" : ": " + Prose.lowerFirst(Offered.plain(method));
    }

    private NextStep sent(String paper, LineGroup group, Requirement asked) {
        Finding finding = group.line().finding();
        Map<String, String> hidden = new LinkedHashMap<>(Map.of("paper", paper));
        if (finding.year() != null && finding.year().matches("\\d{4}-\\d\\d")) {
            hidden.put("for", finding.year());
        }
        String key = finding.id().substring(finding.id().lastIndexOf('/') + 1);
        if (key.matches("\\d{1,3}")) {
            hidden.put("part", key);
        }
        return fill("/papers/new", "Mark it as sent", hidden, form -> List.of(students(form, group),
                form.field("sent", "Sent on").type("date").must(), form.field("how", "How").hint("For example certified mail, by hand."),
                form.field("to", "To whom").hint(asked.to() == null ? null : "The law says: " + asked.to() + '.'),
                form.field("scan", "A scan or photo of it").type("file")), "Mark as sent");
    }

    private NextStep health(Evidence.HealthPaper paper, LineGroup group) {
        List<Option> kinds = paper.kinds().stream().map(kind -> Option.of(kind, Offered.plain(kind))).toList();
        List<Option> children = children(group);
        return fill("/health/new", "Note the paper", Map.of(), form -> List.of(
                form.field("student", "Whose").options(children).type("one").must(),
                form.field("kind", "What it is").options(kinds).type("one").must(),
                form.field("date", "The day that stands on it").type("date").must()), "Save");
    }

    private Field students(Form form, LineGroup group) {
        return form.field("students", "For whom").options(children(group)).type("several")
                .hint("None ticked: it is for all children.");
    }

    private List<Option> children(LineGroup group) {
        List<Option> named = offered.book().students().stream().filter(s -> group.names().contains(s.name()))
                .map(s -> Option.of(s.id(), s.name())).toList();
        return named.isEmpty() ? offered.children() : named;
    }

    /** A question of the law's file that stands in the line is one the book does not answer. */
    private void missingFacts(LineGroup group, List<NextStep> steps) {
        Profile profile = profiles.get(group.line().finding().jurisdiction());
        if (profile == null || group.line().finding().status() != Status.UNCLEAR) {
            return;
        }
        for (Profile.FactAsked fact : profile.facts().values()) {
            if (fact.presume() == null && group.line().finding().why().stream().anyMatch(why -> why.contains(fact.question()))) {
                boolean ofChild = fact.about().equals("child");
                for (Student child : ofChild ? ofGroup(group) : List.<Student>of()) {
                    steps.add(answer(fact, child));
                }
                if (!ofChild) {
                    steps.add(answer(fact, null));
                }
            }
        }
    }

    private List<Student> ofGroup(LineGroup group) {
        return offered.book().students().stream().filter(s -> group.names().contains(s.name())).toList();
    }

    private NextStep answer(Profile.FactAsked fact, Student child) {
        Map<String, String> hidden = new LinkedHashMap<>(Map.of("fact", fact.name(), "question", fact.question()));
        if (child != null) {
            hidden.put("about", child.id());
        }
        String about = child == null ? "" : child.id();
        hidden.put("print", Print.ofHeld(HeldAnswers.fact(offered.book(), fact.name(), about)));
        String asks = child == null ? fact.question() : child.name() + ": " + Prose.lowerFirst(fact.question());
        return fill("/answers/fact", asks, hidden, form -> List.of(form.field("is", "Your answer").options(YES_NO).type("one").must()), "Save");
    }

    /** A day that a line names as not noted yet. */
    private void missingDays(LineGroup group, List<NextStep> steps) {
        Finding finding = group.line().finding();
        if (finding.due() != null || finding.status() == Status.MET) {
            return;
        }
        List<String> said = said(finding);
        for (EventKind kind : EventKind.values()) {
            if (said.stream().anyMatch(why -> why.contains("hangs on " + kind.words()))) {
                steps.add(fill("/answers/event", Prose.upperFirst(kind.words()), Map.of("kind", kind.slug()), form -> List.of(
                        form.field("date", "Which day").type("date").must(),
                        form.field("students", "About whom").options(children(group)).type("several").hint("None ticked: about the whole family.")),
                        "Save"));
                return;
            }
        }
    }

    private static List<String> said(Finding finding) {
        List<String> said = new ArrayList<>(finding.why());
        if (finding.dueNote() != null) {
            said.add(finding.dueNote());
        }
        return said;
    }

    /** A line names what is not settled yet by its question, or by the name under which it is noted. */
    private void missingChoices(Finding finding, List<NextStep> steps) {
        Profile profile = profiles.get(finding.jurisdiction());
        Optional<Pathway> way = profile == null ? Optional.empty() : profile.pathway(finding.pathway());
        List<String> all = said(finding);
        all.addAll(finding.wouldChange());
        String said = String.join(" ", all);
        for (ChoiceAsked choice : way.map(ChoiceAsked::of).orElse(List.of())) {
            if (said.contains('"' + choice.name() + '"') || choice instanceof ChoiceAsked.OneOf one && said.contains(one.question())
                    || choice instanceof ChoiceAsked.Days days && said.contains(days.question())) {
                steps.add(new NextStep.Go("/family/choice?choice=" + choice.name() + "&back=" + back, "Note what is settled"));
            }
        }
    }

    private NextStep doubt(String id) {
        return fill("/answers/doubt", "Have you asked? Note what you were told", Map.of("doubt", id, "print",
                Print.ofHeld(HeldAnswers.doubt(offered.book(), id))), form -> List.of(
                form.field("answer", "What you were told").type("area").must(), form.field("from", "By whom")), "Save");
    }

    private interface Fields {
        List<Field> of(Form form);
    }

    private NextStep fill(String action, String asks, Map<String, String> hidden, Fields fields, String button) {
        String prefix = "step" + ++forms;
        return new NextStep.Fill(action, asks, hidden, fields.of(Form.empty()).stream().map(field -> field.in(prefix)).toList(), button);
    }
}
