package org.hearthrule.records;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The numbers are the examples that are used to explain check digits of ISO 2108 (from memory). */
class IsbnTest {

    @ParameterizedTest
    @ValueSource(strings = {"978-0-306-40615-7", "0-306-40615-2", "9783161484100", "080442957X", "0-8044-2957-x", "978 0 306 40615 7"})
    void aNumberWhoseCheckDigitFitsIsOne(String typed) {
        assertThat(Isbn.complaint(typed)).isNull();
    }

    @Test
    void aWrongCheckDigitSaysWhichItWouldBe() {
        assertThat(Isbn.complaint("978-0-306-40615-6")).contains("it would be 7");
        assertThat(Isbn.complaint("0-306-40615-3")).contains("it would be 2");
    }

    @Test
    void itSaysWhatElseIsWrong() {
        assertThat(Isbn.complaint("978-0-306-40615")).contains("12 digits");
        assertThat(Isbn.complaint("978-0-306-4O615-7")).contains("“O” does not belong");
        assertThat(Isbn.complaint("1230306406157")).contains("begins with 978 or 979");
    }

    @Test
    void hyphensAndSpacesAreLeftOut() {
        assertThat(Isbn.digits("0-8044 2957-x")).isEqualTo("080442957X");
    }
}
