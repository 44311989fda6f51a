package org.hearthrule.input;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaceTest {

    @Test
    void isShownAsFileLineColumn() {
        assertThat(new Place("law/mo.yaml", 3, 14)).hasToString("law/mo.yaml:3:14");
    }

    @Test
    void cellIsShownAsSpreadsheetsDo() {
        assertThat(new Place("autumn.xlsx", 7, 3, "Sheet1")).hasToString("autumn.xlsx:Sheet1!C7");
        assertThat(new Place("autumn.xlsx", 7, 3, "Ida's log")).hasToString("autumn.xlsx:'Ida''s log'!C7");
    }

    /** Columns of spreadsheets as ECMA-376 part 1 names them (18.3.1.4, attribute r): the last is XFD, the 16384th. */
    @ParameterizedTest
    @CsvSource({"1, A", "26, Z", "27, AA", "52, AZ", "53, BA", "702, ZZ", "703, AAA", "16384, XFD"})
    void columnsAreNamedByLetters(int column, String letters) {
        assertThat(Place.letters(column)).isEqualTo(letters);
    }
}
