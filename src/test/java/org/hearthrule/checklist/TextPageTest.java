package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextPageTest {

    private final TextPage page = new TextPage(Style.PLAIN, Wording.english());

    @Test
    void wrapsOnWords() {
        assertThat(page.wrap("one two three four", 9)).containsExactly("one two", "three", "four");
    }

    @Test
    void leavesAWordThatIsLongerThanALineWhole() {
        assertThat(page.wrap("see us-xx/home-instruction/time/ada now", 10))
                .containsExactly("see", "us-xx/home-instruction/time/ada", "now");
    }

    @Test
    void keepsMonthAndDayAndSectionSignAndNumberTogether() {
        assertThat(page.wrap("by June 30, 2027", 10)).containsExactly("by", "June 30,", "2027");
        assertThat(page.wrap("Code § 22-5", 8)).containsExactly("Code", "§ 22-5");
    }

    @Test
    void givesOneEmptyLineForNoText() {
        assertThat(page.wrap("", 10)).containsExactly("");
    }

    /** Widths from EastAsianWidth.txt (W and F are two columns) and the general category Mn (none). */
    @ParameterizedTest
    @CsvSource({"Ada,3", "Zoë,3", "Zoe\u0308,3", "海辺,4", "ｱ,1", "Ａ,2", "한글,4", "🦉,2", "◆,1", "👩‍🔬,2"})
    void countsColumns(String text, int columns) {
        assertThat(Width.of(text)).isEqualTo(columns);
    }

    @Test
    void wrapsWideCharactersByTheirColumns() {
        assertThat(page.wrap("海辺 観測", 5)).containsExactly("海辺", "観測");
    }

    @ParameterizedTest
    @CsvSource({"Zoë,Zoe", "Łukasz,Lukasz", "§ 5,Sec. 5", "a – b,a - b", "“so”,\"so\"", "海,?"})
    void findsPlainLetters(String text, String ascii) {
        assertThat(Ascii.of(text)).isEqualTo(ascii);
    }
}
