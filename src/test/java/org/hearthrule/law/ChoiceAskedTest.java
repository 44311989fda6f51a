package org.hearthrule.law;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import org.junit.jupiter.api.Test;

/** What the states' files leave open; each as their own law says it, with the section named here. */
class ChoiceAskedTest {

    private static Collection<ChoiceAsked> of(String code, String pathway) throws Exception {
        return ChoiceAsked.of(Packaged.profiles().find(code).pathway(pathway).orElseThrow());
    }

    @Test
    void aWayIsChosenAndDaysAreSettledByTheParent() throws Exception {
        // 24 P.S. § 13-1327.1(c): days or hours
        assertThat(of("us-pa", "home-education-program")).hasOnlyElementsOfType(ChoiceAsked.OneOf.class)
                .extracting(ChoiceAsked::name).containsExactly("time-count");
        // 8 NYCRR 100.10(d)(4): the dates of the quarterly reports stand in the plan
        assertThat(of("us-ny", "home-instruction")).filteredOn(ChoiceAsked.Days.class::isInstance)
                .extracting(ChoiceAsked::name).containsExactly("report-dates");
    }

    @Test
    void numbersAndDaysAreSetByOthers() throws Exception {
        // Ind. Code 20-33-2-5: as many days as the public schools of the place
        assertThat(of("us-in", "nonaccredited-nonpublic-school")).filteredOn(ChoiceAsked.NumberSet.class::isInstance).first()
                .isEqualTo(new ChoiceAsked.NumberSet("school-days", "the local school corporation", Evidence.Time.Measure.DAYS));
        // the agency's practice stands beside the law's own day: Alaska's form
        assertThat(Packaged.profiles().find("us-ak").pathways()).flatExtracting(ChoiceAsked::of)
                .contains(new ChoiceAsked.DaySet("enrollment-report-day", "the department"));
    }
}
