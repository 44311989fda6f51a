package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Recur;
import net.fortuna.ical4j.model.component.VEvent;
import org.hearthrule.law.Due;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Profiles;
import org.hearthrule.law.Requirement;
import org.hearthrule.records.Book;
import org.hearthrule.records.Placement;
import org.hearthrule.records.Student;
import org.hearthrule.rules.Judge;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Duties that come up each year on a fixed day, over seven years of calendar files, against the days that ical4j's
 * recurrence engine works out from the rule FREQ=YEARLY (RFC 5545, section 3.3.10).
 */
class RecurringDutiesTest {

    private static final LocalDate FIRST = LocalDate.of(2026, 9, 1);
    private static final int YEARS = 7;

    @TestFactory
    Stream<DynamicTest> yearlyDaysAreThoseOfTheRecurrenceEngine() throws Exception {
        Profiles profiles = Packaged.profiles();
        List<DynamicTest> tests = new ArrayList<>();
        for (String code : profiles.codes()) {
            Profile profile = profiles.find(code);
            Pathway pathway = profile.usualPathway();
            Map<String, TreeSet<LocalDate>> found = found(profile, pathway);
            for (Requirement requirement : pathway.asks()) {
                TreeSet<LocalDate> days = found.get(requirement.id());
                if (days != null && requirement.due() instanceof Due.By by && by.dates().size() == 1) {
                    tests.add(DynamicTest.dynamicTest(requirement.id(), () -> assertThat(days)
                            .isNotEmpty().isSubsetOf(recurring(by.dates().get(0)))));
                }
            }
        }
        assertThat(tests).as("duties with a fixed day").hasSizeGreaterThan(5);
        return tests.stream();
    }

    /** The days of the events of each requirement, from the calendar files of seven years. */
    private static Map<String, TreeSet<LocalDate>> found(Profile profile, Pathway pathway) throws Exception {
        Map<String, TreeSet<LocalDate>> found = new TreeMap<>();
        Student student = new Student("child", "Your child", LocalDate.of(2017, 3, 4), List.of());
        Placement placement = new Placement("child", profile.slug(), pathway.slug(), FIRST, null,
                null, null, null, null, null, List.of(), null);
        Book book = new Book(null, "Family", List.of(student), List.of(), List.of(placement), List.of(), List.of(),
                List.of(), new TreeMap<>());
        for (int month = 0; month < 12 * YEARS; month += 3) {
            Checklist checklist = Checklist.of(new Judge(List.of(profile)).judge(book, FIRST.plusMonths(month)), book);
            String text = new CalendarWriter(Wording.english(), false).write(checklist, "key", CalendarFile.NONE);
            Map<String, LocalDate> byUid = new TreeMap<>();
            for (VEvent event : new CalendarBuilder().build(new StringReader(text)).<VEvent>getComponents("VEVENT")) {
                byUid.put(event.getRequiredProperty("UID").getValue(),
                        LocalDate.from(event.getStartDate().orElseThrow().getDate()));
            }
            for (Line line : checklist.lines()) {
                LocalDate day = byUid.get(CalendarWriter.uid("key", line.id()));
                if (day != null) {
                    found.computeIfAbsent(line.finding().requirement(), id -> new TreeSet<>()).add(day);
                }
            }
        }
        return found;
    }

    private static List<LocalDate> recurring(MonthDay day) {
        Recur<LocalDate> rule = new Recur<>("FREQ=YEARLY;BYMONTH=" + day.getMonthValue() + ";BYMONTHDAY="
                + day.getDayOfMonth());
        LocalDate seed = LocalDate.of(FIRST.getYear() - 1, 1, 1);
        return rule.getDates(seed, seed, seed.plusYears(YEARS + 4));
    }
}
