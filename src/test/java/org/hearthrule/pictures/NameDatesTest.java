package org.hearthrule.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The forms of names are common practice, from memory. */
class NameDatesTest {

    private static DayCheck look(String name) {
        DayCheck check = new DayCheck(LocalDate.of(2026, 5, 20));
        NameDates.look(name, check);
        return check;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "IMG_20260514_160233.jpg|its name says May 14, 2026, 16:02",
        "20260514_160233.jpg|its name says May 14, 2026, 16:02",
        "20260514160233.jpg|its name says May 14, 2026, 16:02",
        "IMG_20260514_160233_1.jpg|its name says May 14, 2026, 16:02",
        "2026-05-14 16.02.33.jpg|its name says May 14, 2026, 16:02",
        "2026-05-14_16-02-33.png|its name says May 14, 2026, 16:02",
        "Screenshot_20260514-160233.png|its name says May 14, 2026, 16:02",
        "2026-05-14 the jetty.jpg|its name says May 14, 2026",
        "2026_05_14.jpg|its name says May 14, 2026",
        "Scan 2026.05.14.pdf|its name says May 14, 2026",
        "Ansel 2026-05-14.jpeg|its name says May 14, 2026",
        "IMG_20260514_996699.jpg|its name says May 14, 2026",
        "PXL_20260514_160233123.jpg|its name says May 14, 2026, perhaps in universal time, so that an evening may bear the next day",
        "IMG-20260514-WA0003.jpg|its name says May 14, 2026, the day it was sent"})
    void dayInANameIsOffered(String name, String words) {
        DayCheck check = look(name);

        assertThat(check.offers()).extracting(DateOffer::words).containsExactly(words);
        assertThat(check.offers()).extracting(DateOffer::day).containsExactly(LocalDate.of(2026, 5, 14));
        assertThat(check.notes()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"IMG_2041.HEIC", "20261399_000000.jpg", "2026-02-30.jpg", "2026-05_14.jpg", "120260514.jpg",
        "202605141.jpg", "5-14-2026.jpg", "photo.jpg", "2026-05.jpg", ""})
    void numbersThatAreNoDayAreNothing(String name) {
        assertThat(look(name).offers()).isEmpty();
        assertThat(look(name).notes()).isEmpty();
    }

    @Test
    void severalDaysTellNothing() {
        DayCheck check = look("tides 2026-05-11 to 2026-05-14.pdf");

        assertThat(check.offers()).isEmpty();
        assertThat(check.notes()).isEqualTo(List.of("Its name holds several days, so none of them is offered."));
    }

    @Test
    void sameDayTwiceIsOneDay() {
        assertThat(look("2026-05-14/IMG_20260514_160233.jpg").offers()).hasSize(1);
    }

    @Test
    void dayThatHasNotComeIsSaidAndNotOffered() {
        DayCheck check = look("IMG_20260521_080000.jpg");

        assertThat(check.offers()).isEmpty();
        assertThat(check.notes()).containsExactly(
                "Not offered as its day: its name says May 21, 2026, 08:00, which has not come yet.");
    }
}
