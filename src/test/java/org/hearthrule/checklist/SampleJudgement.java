package org.hearthrule.checklist;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hearthrule.law.Cite;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.law.SchoolYear;
import org.hearthrule.law.Source;
import org.hearthrule.law.Validity;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.rules.Finding;
import org.hearthrule.rules.Judgement;
import org.hearthrule.rules.RecordRef;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Binding;

/** A judgement made by hand, with a line of every sort, for an invented family in an invented state. */
public final class SampleJudgement {

    public static final LocalDate AS_OF = LocalDate.of(2027, 6, 18);
    private static final String STATE = "us-xx";
    private static final String WAY = "home-instruction";
    private static final String CONFIRM = "the superintendent of your school district";

    private static final Source CODE = new Source("code-22-5", "Example Code § 22-5", "https://law.example/code/22-5",
            LocalDate.of(2026, 11, 25), Basis.TEXT, Binding.STATUTE, null);
    private static final Source GUIDE = new Source("guide", "Agency's guide to home instruction",
            "https://agency.example/guide", LocalDate.of(2026, 11, 25), Basis.AGENCY, Binding.AGENCY, null);
    private static final Source RECALLED = new Source("recalled", "Example Code § 22-9", "not seen",
            LocalDate.of(2026, 11, 25), Basis.MEMORY, Binding.STATUTE, null);

    private SampleJudgement() { }

    public static Profile profile() {
        Pathway pathway = new Pathway(STATE + '/' + WAY, "Home instruction", "A parent teaches at home.", true,
                "a parent", "a parent", List.of(), List.of(),
                new SchoolYear(MonthDay.of(7, 1), MonthDay.of(6, 30), SchoolYear.Given.BY_LAW), List.of(), Map.of(), List.of(),
                List.of(), List.of(code("(B)")), Validity.ALWAYS, null);
        return new Profile("US-XX", "Example", "home instruction", "Example Department of Education", CONFIRM,
                Map.of("code-22-5", CODE, "guide", GUIDE, "recalled", RECALLED), Map.of(), null, List.of(), Map.of(),
                List.of(pathway), List.of(), List.of(), List.of(), List.of(), "us-xx.yaml", "0");
    }

    public static Book book() {
        return new Book(null, "The Example family",
                List.of(new Student("ada", "Ada Example", LocalDate.of(2015, 4, 9), List.of()),
                        new Student("bo", "Bo Example", LocalDate.of(2018, 1, 20), List.of())),
                List.of(), List.of(placement("ada"), placement("bo")), List.of(), List.of(), List.of(),
                new TreeMap<>());
    }

    private static Placement placement(String student) {
        return new Placement(student, STATE, WAY, LocalDate.of(2024, 8, 26), null, null, null, null, null, null,
                List.of(), null);
    }

    public static Judgement judgement() {
        return new Judgement(AS_OF, List.of(profile()), findings());
    }

    /** In an order other than that of a checklist. */
    private static List<Finding> findings() {
        List<Finding> all = new ArrayList<>();
        all.add(finding("does-not-ask-1", null, RequirementKind.NOT_REQUIRED, "Approval before you start", null)
                .status(Status.NOT_DUE).why("The law does not ask for approval before you start.").make());
        all.add(finding("yearly-notice", "bo", RequirementKind.FILE, "Notice of intent", "2026-27")
                .status(Status.LATE).due(LocalDate.of(2026, 8, 15))
                .why("Your records show no notice of intent for 2026-27.", "It was due by August 15, 2026.")
                .next("Send the notice to the superintendent and keep a copy with the day you sent it.").make());
        all.add(finding("time", "ada", RequirementKind.TIME, "Days of instruction", "2026-27")
                .status(Status.OPEN).due(LocalDate.of(2027, 6, 30))
                .why("Your records show 171 of 180 days.", "Nine more by June 30 would do it.").next("Keep logging")
                .counted("days", 171).counted("needed", 180).counted("pace", "3.8 days a week")
                .counted("missing", List.of("9 days"))
                .record(new RecordRef("2026-27", "log-1", LocalDate.of(2026, 8, 31), "Measured the jetty"))
                .arithmetic("171 days with an entry, of 180", "180 - 171 = 9").cite(code("(E)")).make());
        all.add(finding("results", "ada", RequirementKind.FILE, "Results of the assessment", "2026-27")
                .status(Status.OPEN).due(LocalDate.of(2027, 8, 1)).opens(LocalDate.of(2027, 7, 1))
                .why("The results are sent after the year.").next("Send the results.").cite(code("(D)"))
                .cite(new Cite(GUIDE, "page 4", Basis.AGENCY)).make());
        all.add(finding("withdrawal", "bo", RequirementKind.FILE, "Letter of withdrawal", "2026-27")
                .status(Status.OPEN).dueNote("The law gives no number of days").why("Nothing was sent yet.")
                .next("Tell the school in writing that the child will be taught at home.")
                .cite(new Cite(GUIDE, "page 4", Basis.AGENCY)).make());
        all.add(finding("yearly-notice", "ada", RequirementKind.FILE, "Notice of intent", "2026-27")
                .status(Status.MET).due(LocalDate.of(2026, 8, 15)).why("You sent it on July 20, 2026.").make());
        all.add(finding("portfolio", "ada", RequirementKind.RECORD, "Portfolio", "2026-27").status(Status.THIN)
                .why("It holds no work in music since November.").next("Put one or two dated pieces in.")
                .cite(code("(G)")).make());
        all.add(finding("city-rule", "ada", RequirementKind.STANDARD, "Leaving age in the city", "2026-27")
                .status(Status.UNCLEAR).why("Does the city's rule reach a child taught at home?")
                .next("Ask the superintendent.").cite(new Cite(RECALLED, "(2)", Basis.MEMORY)).make());
        all.add(finding("their-answer", "ada", RequirementKind.THEIRS, "The superintendent's answer", "2026-27")
                .status(Status.OPEN).due(LocalDate.of(2027, 6, 25)).theirs().why("Their answer is due in ten days.")
                .next("If nothing has come, ask kindly.").make());
        all.add(finding("assessment", "bo", RequirementKind.ASSESS, "Yearly assessment", "2026-27")
                .status(Status.NOT_DUE).why("It is asked in grades 3, 5 and 8; Bo is in grade 2.").cite(code("(H)"))
                .make());
        return all;
    }

    private static Cite code(String section) {
        return new Cite(CODE, section, Basis.TEXT);
    }

    public static Draft finding(String requirement, String student, RequirementKind kind, String title, String year) {
        return new Draft(requirement, student, kind, title, year);
    }

    /** A finding in the making. */
    public static final class Draft {
        private final String requirement;
        private final String student;
        private final RequirementKind kind;
        private final String title;
        private final String year;
        private Status status = Status.OPEN;
        private LocalDate due;
        private String dueNote;
        private LocalDate opens;
        private boolean theirs;
        private List<String> why = List.of();
        private String next;
        private final Map<String, Object> counted = new LinkedHashMap<>();
        private final List<RecordRef> records = new ArrayList<>();
        private List<String> arithmetic = List.of();
        private final List<Cite> cites = new ArrayList<>();

        private Draft(String requirement, String student, RequirementKind kind, String title, String year) {
            this.requirement = requirement;
            this.student = student;
            this.kind = kind;
            this.title = title;
            this.year = year;
        }

        public Draft status(Status is) {
            status = is;
            return this;
        }

        public Draft due(LocalDate day) {
            due = day;
            return this;
        }

        public Draft dueNote(String note) {
            dueNote = note;
            return this;
        }

        public Draft opens(LocalDate day) {
            opens = day;
            return this;
        }

        public Draft theirs() {
            theirs = true;
            return this;
        }

        public Draft why(String... sentences) {
            why = List.of(sentences);
            return this;
        }

        public Draft next(String step) {
            next = step;
            return this;
        }

        public Draft counted(String name, Object value) {
            counted.put(name, value);
            return this;
        }

        public Draft record(RecordRef record) {
            records.add(record);
            return this;
        }

        public Draft arithmetic(String... lines) {
            arithmetic = List.of(lines);
            return this;
        }

        public Draft cite(Cite cite) {
            cites.add(cite);
            return this;
        }

        public Finding make() {
            String whole = STATE + '/' + WAY + '/' + requirement;
            String id = whole + (student == null ? "" : '/' + student) + (year == null ? "" : '/' + year);
            String name = student == null ? null : student.equals("ada") ? "Ada Example" : "Bo Example";
            List<Cite> sources = cites.isEmpty() ? List.of(code("(B)")) : List.copyOf(cites);
            return new Finding(id, whole, STATE, WAY, student, name, kind, title, year, status, due, dueNote, opens,
                    theirs, why, next, counted, records, arithmetic, List.of(), List.of(whole), sources, CONFIRM);
        }
    }
}
