package org.hearthrule.input;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NearestTest {

    private static final List<String> KNOWN = List.of("due", "hours", "subject", "requirement");

    @ParameterizedTest
    @CsvSource({
        "dues,due", "deu,due", "DUE,due", "hour,hours", "huors,hours", "subjects,subject", "requirment,requirement",
        "due-date,due", "req,requirement"
    })
    void findsTheWordMeant(String found, String meant) {
        assertThat(Nearest.of(found, KNOWN)).contains(meant);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "teacher", "du1x9", "zzz"})
    void findsNothingForWordsThatAreFar(String found) {
        assertThat(Nearest.of(found, KNOWN)).isEmpty();
    }

    @Test
    void findsNothingForVeryLongWords() {
        assertThat(Nearest.of("due" + "e".repeat(100), KNOWN)).isEmpty();
    }

    @Test
    void ofEqualsTheEarlierIsFound() {
        assertThat(Nearest.of("bat", List.of("cat", "hat"))).contains("cat");
    }
}
