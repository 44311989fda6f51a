package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.Period;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TimeZone;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Trigger;
import org.hearthrule.law.RequirementKind;
import org.hearthrule.rules.Finding;
import org.hearthrule.rules.Judgement;
import org.hearthrule.rules.Status;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Calendar files read back by ical4j, which had no part in writing them. Section numbers are those of RFC 5545. */
class CalendarWriterTest {

    private static final String KEY = "book\nThe Example family";
    private static final LocalDate DUE = LocalDate.of(2027, 6, 30);

    @Test
    void holdsAnAllDayEventForEachLineThatIsOpenOrLateAndHasADay() throws Exception {
        Calendar calendar = read(write(checklist(SampleJudgement.judgement()), false, CalendarFile.NONE));

        assertThat(events(calendar)).extracting(CalendarWriterTest::start).containsExactlyInAnyOrder(
                LocalDate.of(2026, 8, 15), LocalDate.of(2027, 6, 25), DUE, LocalDate.of(2027, 8, 1));
    }

    /** 3.6.1: DTEND is exclusive; 3.3.4: VALUE=DATE has no time. */
    @Test
    void endsOnTheDayAfterSinceTheEndIsExclusive() throws Exception {
        String text = write(list(open("time", DUE)), false, CalendarFile.NONE);
        VEvent event = events(read(text)).get(0);

        assertThat(start(event)).isEqualTo(DUE);
        assertThat(LocalDate.from(event.getEndDate(false).orElseThrow().getDate())).isEqualTo(DUE.plusDays(1));
        assertThat(text).contains("DTSTART;VALUE=DATE:20270630\r\n", "DTEND;VALUE=DATE:20270701\r\n");
    }

    /** 3.8.6.3: a duration before the start, which for a DATE is the midnight where the reader is. */
    @Test
    void ringsThirtySevenAndOneDayBefore() throws Exception {
        VEvent event = events(read(write(list(open("time", DUE)), false, CalendarFile.NONE))).get(0);

        assertThat(event.getAlarms()).extracting(alarm -> alarm.getRequiredProperty("TRIGGER"))
                .extracting(trigger -> ((Trigger) trigger).getDuration())
                .containsExactly(Period.ofDays(-30), Period.ofDays(-7), Period.ofDays(-1));
    }

    @Test
    void namesNoChild() {
        String text = unfolded(write(named(), false, CalendarFile.NONE));

        assertThat(text).doesNotContain("Ada").contains("SUMMARY:Results for your child").contains("your child's report");
    }

    @Test
    void namesTheChildOnRequest() {
        String text = unfolded(write(named(), true, CalendarFile.NONE));

        assertThat(text).contains("SUMMARY:Results for Ada · Ada Example", "Send Ada's report");
    }

    private static Checklist named() {
        return list(SampleJudgement.finding("results", "ada", RequirementKind.FILE, "Results for Ada", "2026-27")
                .status(Status.OPEN).due(DUE).why("Open.").next("Send Ada's report; the adamant way.").make());
    }

    @Test
    void tellsSeveralChildrenApartByTheirOrder() {
        String text = write(checklist(SampleJudgement.judgement()), false, CalendarFile.NONE);

        assertThat(text).contains("SUMMARY:Notice of intent (child 2)", "SUMMARY:Days of instruction (child 1)");
    }

    @Test
    void keepsTheUidWhenTheDayMovesAndCountsTheChange() throws Exception {
        String first = write(list(open("time", DUE)), false, CalendarFile.NONE);
        String second = write(list(open("time", DUE.plusDays(5))), false, CalendarFile.read(first).orElseThrow());

        VEvent before = events(read(first)).get(0);
        VEvent after = events(read(second)).get(0);
        assertThat(uid(after)).isEqualTo(uid(before));
        assertThat(sequence(before)).isZero();
        assertThat(sequence(after)).isEqualTo(1);
        assertThat(start(after)).isEqualTo(DUE.plusDays(5));
    }

    @Test
    void leavesTheSequenceWhenNothingMoved() throws Exception {
        String first = write(list(open("time", DUE)), false, CalendarFile.NONE);
        String second = write(list(open("time", DUE)), false, CalendarFile.read(first).orElseThrow());

        assertThat(second).isEqualTo(first);
    }

    /** 3.8.1.11: STATUS:CANCELLED. */
    @Test
    void callsOffWhatIsGoneAndBringsItBackWithAHigherSequence() throws Exception {
        String first = write(list(open("time", DUE), open("plan", DUE)), false, CalendarFile.NONE);
        String second = write(list(open("plan", DUE)), false, CalendarFile.read(first).orElseThrow());
        String third = write(list(open("plan", DUE)), false, CalendarFile.read(second).orElseThrow());
        String fourth = write(list(open("time", DUE), open("plan", DUE)), false, CalendarFile.read(third).orElseThrow());

        String uid = CalendarWriter.uid(KEY, "us-xx/home-instruction/time/ada/2026-27");
        assertThat(status(second, uid)).isEqualTo("CANCELLED 1");
        assertThat(status(third, uid)).isEqualTo("CANCELLED 1");
        assertThat(status(fourth, uid)).isEqualTo("CONFIRMED 2");
    }

    @Test
    void forgetsACancelledEventAYearAfterItsDay() throws Exception {
        String first = write(list(open("time", LocalDate.of(2026, 6, 17))), false, CalendarFile.NONE);

        String second = write(list(open("plan", DUE)), false, CalendarFile.read(first).orElseThrow());

        assertThat(events(read(second))).hasSize(1);
    }

    @Test
    void givesDifferentFamiliesDifferentUids() {
        assertThat(CalendarWriter.uid("book\nOne", "id")).isNotEqualTo(CalendarWriter.uid("book\nOther", "id"));
    }

    @Test
    void doesNotTakeAnotherProgramsCalendarForItsOwn() {
        assertThat(CalendarFile.read("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Other//EN\r\nEND:VCALENDAR\r\n")).isEmpty();
        assertThat(CalendarFile.read("Dear diary")).isEmpty();
    }

    /** 3.1: lines of at most 75 octets; a wide character is not torn apart. */
    @Test
    void foldsLinesByOctets() {
        String text = write(list(SampleJudgement.finding("time", "ada", RequirementKind.TIME, "観測".repeat(60), "2026-27")
                .status(Status.OPEN).due(DUE).why("Open.").make()), false, CalendarFile.NONE);

        assertThat(Arrays.stream(text.split("\r\n")).filter(line -> line.getBytes(StandardCharsets.UTF_8).length > 75))
                .isEmpty();
        assertThat(unfolded(text)).contains("SUMMARY:" + "観測".repeat(60));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTC", "America/New_York", "Pacific/Apia", "America/Sao_Paulo"})
    void givesTheSameFileWhereverItIsWritten(String zone) {
        TimeZone before = TimeZone.getDefault();
        String expected = write(checklist(SampleJudgement.judgement()), false, CalendarFile.NONE);
        try {
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            assertThat(write(checklist(SampleJudgement.judgement()), false, CalendarFile.NONE)).isEqualTo(expected);
        } finally {
            TimeZone.setDefault(before);
        }
    }

    private static Finding open(String requirement, LocalDate due) {
        return SampleJudgement.finding(requirement, "ada", RequirementKind.TIME, "Title of " + requirement, "2026-27")
                .status(Status.OPEN).due(due).why("Open.").next("Go on.").make();
    }

    private static Checklist list(Finding... findings) {
        return checklist(new Judgement(SampleJudgement.AS_OF, List.of(SampleJudgement.profile()), List.of(findings)))
                .forStudent("ada");
    }

    private static Checklist checklist(Judgement judgement) {
        return Checklist.of(judgement, SampleJudgement.book());
    }

    private static String write(Checklist checklist, boolean names, CalendarFile previous) {
        return new CalendarWriter(Wording.english(), names).write(checklist, KEY, previous);
    }

    private static String unfolded(String text) {
        return text.replace("\r\n ", "");
    }

    private static Calendar read(String text) throws IOException, ParserException {
        return new CalendarBuilder().build(new StringReader(text));
    }

    private static List<VEvent> events(Calendar calendar) {
        return calendar.getComponents("VEVENT");
    }

    private static LocalDate start(VEvent event) {
        return LocalDate.from(event.getStartDate().orElseThrow().getDate());
    }

    private static String uid(VEvent event) {
        return event.getRequiredProperty("UID").getValue();
    }

    private static int sequence(VEvent event) {
        return Integer.parseInt(event.getRequiredProperty("SEQUENCE").getValue());
    }

    private static String status(String text, String uid) throws IOException, ParserException {
        Map<String, VEvent> byUid = events(read(text)).stream()
                .collect(Collectors.toMap(CalendarWriterTest::uid, Function.identity()));
        VEvent event = byUid.get(uid);
        return event.getRequiredProperty("STATUS").getValue() + ' ' + sequence(event);
    }
}
