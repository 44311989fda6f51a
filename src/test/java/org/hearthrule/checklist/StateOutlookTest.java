package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.hearthrule.checklist.StateOutlook.Entry;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Pathway;
import org.hearthrule.law.Profile;
import org.hearthrule.law.Requirement;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;

/** What is due in a state of which nothing else is said. Expected days are those of the sections named. */
class StateOutlookTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 26);

    private static StateOutlook of(String state, LocalDate today) throws Exception {
        Profile law = Packaged.profiles().find(state);
        return StateOutlook.of(law, law.usualPathway(), today, Wording.english());
    }

    private static Entry one(List<Entry> entries, String localId) {
        return entries.stream().filter(entry -> entry.asked().localId().equals(localId)).findFirst().orElseThrow();
    }

    /** 24 P.S. § 13-1327.1 (b)(1): annually by August 1; (h.1): the certificate by June 30. */
    @Test
    void ordersTheDaysOfTheComingYearAsTheyCome() throws Exception {
        StateOutlook outlook = of("pa", TODAY);

        assertThat(one(outlook.coming(), "evaluation-certificate").day()).isEqualTo("2027-06-30");
        assertThat(one(outlook.coming(), "affidavit").day()).isEqualTo("2027-08-01");
        assertThat(one(outlook.coming(), "affidavit").said()).as("the day says it").isEmpty();
        assertThat(outlook.coming()).extracting(Entry::day).isSorted();
        assertThat(one(of("pa", LocalDate.of(2026, 7, 15)).coming(), "affidavit").day()).isEqualTo("2026-08-01");
    }

    /** The same section: on or before the day a program begins. */
    @Test
    void tellsTheCaseThatHangsOnTheStartApart() throws Exception {
        Entry first = one(of("pa", TODAY).hanging(), "affidavit");

        assertThat(first.day()).isNull();
        assertThat(first.said()).isEqualTo("Due on or before the day home instruction starts.");
        assertThat(first.whose()).contains("it is the first year of home instruction");
    }

    /** 8 NYCRR 100.10 (b)(1), (2): by July 1; within 14 days of a start in the year. */
    @Test
    void saysForWhomEachCaseIs() throws Exception {
        StateOutlook outlook = of("ny", TODAY);

        assertThat(one(outlook.coming(), "notice-of-intention").day()).isEqualTo("2027-07-01");
        assertThat(one(outlook.coming(), "notice-of-intention").whose()).isEqualTo("In all other cases.");
        assertThat(one(outlook.hanging(), "notice-of-intention").said()).isEqualTo("Due within 14 days after the day home instruction starts.");
    }

    /** Cal. Educ. Code § 33190: between the first and the fifteenth day of October. */
    @Test
    void aWindowIsStillOpenOnItsLastDay() throws Exception {
        Profile law = Packaged.profiles().find("ca");
        for (LocalDate today : List.of(LocalDate.of(2026, 9, 1), LocalDate.of(2026, 10, 15))) {
            Entry affidavit = StateOutlook.of(law, law.usualPathway(), today, Wording.english()).coming().stream()
                    .filter(entry -> entry.opens() != null).findFirst().orElseThrow();

            assertThat(affidavit.opens()).isEqualTo("2026-10-01");
            assertThat(affidavit.day()).isEqualTo("2026-10-15");
        }
    }

    /** 16 V.S.A. § 166b (a): a notice at least ten business days before; (a) 175 days; no notice to the district. */
    @Test
    void tellsOnceThroughTheYearAndNotAskedApart() throws Exception {
        StateOutlook outlook = of("vt", TODAY);

        assertThat(one(outlook.once(), "notice").said()).isEqualTo("Due at least 10 business days before the day home instruction starts.");
        assertThat(outlook.allYear()).anyMatch(entry -> entry.said().startsWith("175 days"));
        assertThat(outlook.notAsked()).contains("A notice to the district.");
        assertThat(outlook.ages()).singleElement().asString().contains("on turning 6", "on turning 16");
    }

    /** Fla. Stat. § 1002.41 (1)(c): an evaluation each year. Its file says for each year of the program when districts ask for it. */
    @Test
    void casesThatDifferInARemarkAreOneLine() throws Exception {
        assertThat(of("fl", TODAY).allYear().stream().filter(entry -> entry.asked().localId().equals("annual-evaluation")))
                .hasSize(1);
    }

    /** A day that no law names would look like one if it were told like one. */
    @Test
    void aDayThatOnlyAnAgencyNamesIsToldAsSuch() throws Exception {
        Profile law = Packaged.profiles().find("pa");
        StateOutlook tutor = StateOutlook.of(law, law.pathway("private-tutor").orElseThrow(), TODAY, Wording.english());

        Entry assurance = tutor.coming().get(0);

        assertThat(assurance.custom()).isTrue();
        assertThat(assurance.day()).isEqualTo("2027-06-30");
        assertThat(assurance.said()).contains("names no day");
        assertThat(of("pa", TODAY).coming()).noneMatch(Entry::custom);
    }

    /** Mo. Rev. Stat. § 167.042 as amended by SB 63: from August 28, 2025. */
    @Test
    void aRuleIsTakenOnItsOwnDay() throws Exception {
        StateOutlook before = of("mo", LocalDate.of(2025, 8, 1));

        for (Entry entry : all(before)) {
            LocalDate day = entry.day() == null ? before.today() : entry.day();
            assertThat(entry.asked().validity().inForceOn(day)).as(entry.asked().id()).isTrue();
        }
        assertThat(all(before)).noneMatch(entry -> entry.asked().validity().announced());
    }

    /** A duty in no list is one a parent never hears of. */
    @Test
    void everyDutyInForceOfEveryWayIsTold() throws Exception {
        for (Profile law : Packaged.all()) {
            for (Pathway way : law.pathwaysOn(TODAY)) {
                StateOutlook outlook = StateOutlook.of(law, way, TODAY, Wording.english());
                List<Requirement> told = all(outlook).stream().map(Entry::asked).toList();
                List<Requirement> inForce = outlook.pathway().asks().stream()
                        .filter(asked -> asked.validity().inForceOn(TODAY) && asked.validity().until() == null).toList();

                assertThat(told).as(outlook.pathway().id()).containsAll(inForce);
                assertThat(outlook.coming()).allMatch(entry -> entry.day() != null && !entry.day().isBefore(TODAY)
                        && entry.day().isBefore(TODAY.plusYears(1)));
                assertThat(all(outlook)).allMatch(entry -> !entry.source().isEmpty());
            }
        }
    }

    private static List<Entry> all(StateOutlook outlook) {
        return Stream.of(outlook.coming(), outlook.hanging(), outlook.allYear(), outlook.once(), outlook.special())
                .flatMap(List::stream).toList();
    }
}
