package org.hearthrule.rules;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.law.SchoolYear;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.records.YearLabel;
import org.hearthrule.records.YearRecords;
import org.hearthrule.terms.Grades;

/**
 * One child, on one pathway, in one school year, seen on one day: what a requirement's rule looks at first.
 *
 * <p>Confined to one thread: it remembers what was worked out once.
 */
public final class Situation {

    private final Profile profile;
    private final Pathway pathway;
    private final Student student;
    private final Placement placement;
    private final ProgramYear year;
    private final LocalDate today;
    private final Book book;
    private final boolean tellsOnce;
    private final Happenings happenings;
    private final Map<String, List<Occasion>> occasions = new HashMap<>();
    private final Map<ProgramYear, Optional<Integer>> grades = new HashMap<>();
    private Truth bound;

    Situation(Profile profile, Pathway pathway, Student student, Placement placement, ProgramYear year, LocalDate today,
              Book book, boolean tellsOnce) {
        this.profile = profile;
        this.pathway = pathway;
        this.student = student;
        this.placement = placement;
        this.year = year;
        this.today = today;
        this.book = book;
        this.tellsOnce = tellsOnce;
        this.happenings = new Happenings(this);
    }

    public String pathwayId() {
        return pathway.id();
    }

    public String studentId() {
        return student.id();
    }

    /** @return whether a record is about the child: one that names nobody is about all */
    boolean concerns(List<String> students) {
        return students.isEmpty() || students.contains(studentId());
    }

    Profile profile() {
        return profile;
    }

    Pathway pathway() {
        return pathway;
    }

    Student student() {
        return student;
    }

    Placement placement() {
        return placement;
    }

    public ProgramYear year() {
        return year;
    }

    public LocalDate today() {
        return today;
    }

    Book book() {
        return book;
    }

    /** @return true when duties that come once are told in this year and not in another one */
    boolean tellsOnce() {
        return tellsOnce;
    }

    Happenings happenings() {
        return happenings;
    }

    /** @return first day of the program under this pathway */
    LocalDate programStart() {
        return placement.started() != null ? placement.started() : placement.from();
    }

    /** @return 1 in the school year in which the program starts */
    int yearOfProgram() {
        ProgramYear first = ProgramYear.holding(pathway.year(), programStart());
        return year.start().getYear() - first.start().getYear() + 1;
    }

    /** @return first day of this year on which this law applied to the child */
    LocalDate firstDay() {
        return placement.from().isAfter(year.start()) ? placement.from() : year.start();
    }

    /** @return last day of this year on which this law applies to the child */
    LocalDate lastDay() {
        return placement.to() != null && placement.to().isBefore(year.end()) ? placement.to() : year.end();
    }

    /** @return true when the child leaves the pathway before this year's end */
    boolean endsEarly() {
        return lastDay().isBefore(year.end());
    }

    /** @return today, or the nearest day of this year */
    LocalDate thatDay() {
        if (today.isBefore(firstDay())) {
            return firstDay();
        }
        return today.isAfter(lastDay()) ? lastDay() : today;
    }

    /** @return last day of the year in law, or the family's own where no law has one and the book has it */
    LocalDate yearEnd() {
        return yearIsByLaw() || calendar().lastDay() == null ? year.end() : calendar().lastDay();
    }

    boolean yearEndIsKnown() {
        return yearIsByLaw() || calendar().lastDay() != null;
    }

    private boolean yearIsByLaw() {
        return pathway.year().given() == SchoolYear.Given.BY_LAW;
    }

    /** @return the same child on the same pathway, so many school years before */
    Situation earlier(int years) {
        return new Situation(profile, pathway, student, placement, year.plus(-years), today, book, false);
    }

    /**
     * @param file label of the book's file a record lies in
     * @param day  the record's day, or null
     * @return whether the record belongs to this school year. Where the law's year is that of the book, the file
     *     decides: a result that comes in July is kept with the year it closes. Elsewhere the day does
     */
    boolean holds(String file, LocalDate day) {
        boolean yearOfBook = year.start().equals(YearLabel.of(year.start()).first());
        return day == null || yearOfBook ? file.equals(year.fileLabel()) : year.holds(day);
    }

    Optional<YearRecords> records() {
        return Optional.ofNullable(book.years().get(year.fileLabel()));
    }

    YearRecords.Calendar calendar() {
        return records().map(YearRecords::calendar).orElse(YearRecords.Calendar.EMPTY);
    }

    /** @return the grade in this school year, 0 for kindergarten; empty when not known */
    Optional<Integer> grade() {
        return gradeIn(year);
    }

    Optional<Integer> gradeIn(ProgramYear asked) {
        Optional<Integer> grade = grades.get(asked);
        if (grade == null) {
            grade = workOutGrade(asked);
            grades.put(asked, grade);
        }
        return grade;
    }

    private Optional<Integer> workOutGrade(ProgramYear asked) {
        Optional<Integer> set = gradeSet(asked.fileLabel());
        if (set.isPresent()) {
            return set;
        }
        // a grade set for a neighbouring year says the grade of this one: one year more or less. A parent's placement
        // comes before the grade that a law works out from the age
        for (int away = 1; away <= Grades.LAST; away++) {
            for (int side : new int[] {-away, away}) {
                Optional<Integer> other = gradeSet(asked.plus(side).fileLabel());
                if (other.isPresent()) {
                    int grade = other.get() - side;
                    return grade >= Grades.KINDERGARTEN && grade <= Grades.LAST ? Optional.of(grade) : Optional.empty();
                }
            }
        }
        return gradeByAge(asked);
    }

    private Optional<Integer> gradeSet(String label) {
        YearRecords records = book.years().get(label);
        String grade = records == null ? null : records.grades().get(student.id());
        return grade == null ? Optional.empty() : Grades.number(grade);
    }

    private Optional<Integer> gradeByAge(ProgramYear asked) {
        if (profile.gradeByAge() == null || student.born() == null) {
            return Optional.empty();
        }
        LocalDate day = asked.day(profile.gradeByAge().on());
        int age = Ages.on(student.born(), day);
        int grade = profile.gradeByAge().grade() + age - profile.gradeByAge().age();
        return grade >= Grades.KINDERGARTEN && grade <= Grades.LAST ? Optional.of(grade) : Optional.empty();
    }

    /** @return whether the child is of compulsory age at some time of this year's stay on the pathway */
    Truth bound() {
        if (bound == null) {
            bound = CompulsoryAge.binds(this);
        }
        return bound;
    }

    /** @return the times the requirement comes up in this year, those that do not apply included */
    List<Occasion> occasions(Requirement requirement) {
        List<Occasion> known = occasions.get(requirement.id());
        if (known == null) {
            known = Occasions.of(requirement, this);
            occasions.put(requirement.id(), known);
        }
        return known;
    }

    Optional<Requirement> requirement(String localId) {
        for (Requirement requirement : pathway.asks()) {
            if (requirement.localId().equals(localId)) {
                return Optional.of(requirement);
            }
        }
        return Optional.empty();
    }

    /** @return the choice made for this year, or the last one made before it */
    Optional<YearRecords.ChoiceMade> choice(String name) {
        return choiceIn(year.fileLabel(), name);
    }

    private Optional<YearRecords.ChoiceMade> choiceIn(String label, String name) {
        YearRecords records = book.years().get(label);
        YearRecords.ChoiceMade found = null;
        if (records != null) {
            for (YearRecords.ChoiceMade choice : records.choices()) {
                if (choice.choice().equals(name) && (choice.student() == null || choice.student().equals(student.id()))) {
                    found = choice;
                }
            }
        }
        return Optional.ofNullable(found);
    }

    /** @return whether the family chose the way of this name among those that its pathway offers */
    boolean isChosen(String name) {
        for (var choice : pathway.choices().values()) {
            if (choice.options().containsKey(name)) {
                return choice(choice.name()).filter(made -> name.equals(made.value())).isPresent();
            }
        }
        return false;
    }

    /** @return the answer to a fact a profile asks, what it presumes, or unknown with the question */
    Truth fact(String name) {
        Profile.FactAsked asked = profile.facts().get(name);
        List<String> about = new ArrayList<>();
        about.add(student.id());
        book.persons().forEach(person -> about.add(person.id()));
        for (var answer : book.facts()) {
            if (answer.fact().equals(name) && (answer.about() == null || about.contains(answer.about()))
                    && !(asked.about().equals("child") && answer.about() != null && !answer.about().equals(student.id()))) {
                return answer.is() ? Truth.yes(Say.it("fact.yes", asked.question()))
                        : Truth.no(Say.it("fact.no", asked.question()));
            }
        }
        if (asked.presume() != null) {
            return asked.presume() ? Truth.yes(Say.it("fact.presumed-yes", asked.question()))
                    : Truth.no(Say.it("fact.presumed-no", asked.question()));
        }
        return Truth.unknown(Say.it("fact.unknown", asked.question()), asked.question());
    }
}
