package org.hearthrule.suggest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is pasted into the field, by whomever, and by how many at once. */
class SuggesterHostileTest {

    private final Suggester suggester = Suggester.packaged();

    @ParameterizedTest
    @ValueSource(strings = {"🎨🖌️ painted 🚲", "\u202Epainted\u202C", "رسمت البحر painted", "ציירנו painted", "painted\u0000",
        "\uD83C painted", "painted \uDFA8", "<script>painted</script>", "''painted\"\"", "painted\u200B", "\uFEFFpainted",
        "${painted}", "%s painted %n", "../painted", "pa\u0301inted painted", "painted\r\n\r\n\u2028"})
    void findsTheWordAmongAnything(String words) {
        List<Suggestion> suggestions = suggester.of(words);

        assertThat(suggestions).extracting(Suggestion::subject).contains("visual-art");
        assertThat(suggestions).flatExtracting(Suggestion::because).allMatch(word -> words.contains((String) word));
    }

    /** Words of the line are shown to the parent: one that begins in the middle of a letter would show a broken sign. */
    @Test
    void randomTextNeverThrowsAndIsQuotedAsItStands() {
        Random random = new Random(11);
        for (int round = 0; round < 2_000; round++) {
            StringBuilder text = new StringBuilder();
            for (int i = random.nextInt(60); i > 0; i--) {
                text.append(random.nextInt(3) == 0 ? " painted " : String.valueOf((char) random.nextInt(0x10000)));
            }
            String words = text.toString();
            suggester.learn(new Confirmed(words, Set.of("music")));
            assertThat(suggester.of(words)).allSatisfy(one -> assertThat(one.because()).isNotEmpty()
                    .allMatch(words::contains));
        }
    }

    @Test
    void aVeryLongLineCostsNoMoreThanItsBeginning() {
        String line = "unheardofword misspeled reeding multiplacation ".repeat(100_000);
        suggester.of(line);

        long begun = System.nanoTime();
        List<Suggestion> suggestions = suggester.of(line);
        suggester.learn(new Confirmed(line, Set.of("reading")));

        assertThat(Duration.ofNanos(System.nanoTime() - begun)).isLessThan(Duration.ofSeconds(1));
        assertThat(suggestions).extracting(Suggestion::subject).contains("arithmetic");
    }

    @Test
    void aVeryLongWordIsPassedOver() {
        suggester.learn(new Confirmed("x".repeat(2_000_000), Set.of("reading")));

        assertThat(suggester.of("x".repeat(2_000_000) + " painted")).isEmpty();
        assertThat(suggester.of("x".repeat(3_000) + " painted")).extracting(Suggestion::subject)
                .containsExactly("visual-art");
        assertThat(suggester.words()).isZero();
    }

    /** A surrogate cut in two at the limit must not reach the reader of words. */
    @Test
    void theLimitMayFallIntoASign() {
        for (int before = 3_990; before < 4_010; before++) {
            String words = "painted " + "x ".repeat(before / 2 - 4) + (before % 2 == 0 ? "" : " ") + "🎨🎨🎨";
            assertThatCode(() -> suggester.of(words)).doesNotThrowAnyException();
        }
    }

    /** The page answers several requests at once, and one of them may be saving a line. */
    @Test
    void severalThreadsGetWhatOneGets() throws Exception {
        // given words that no count of which grows so far that it is halved: then no order matters
        List<Confirmed> lines = SuggesterSpeedTest.years(400);
        Suggester alone = Suggester.packaged();
        Suggester plain = Suggester.packaged();
        List<Confirmed> few = lines.subList(0, 24);
        few.forEach(alone::learn);
        List<List<Suggestion>> expected = lines.stream().map(line -> plain.of(line.words())).toList();
        Suggester reading = Suggester.packaged();

        // when
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            List<Callable<List<List<Suggestion>>>> work = IntStream.range(0, 8)
                    .<Callable<List<List<Suggestion>>>>mapToObj(thread -> () -> {
                        for (int i = thread; i < few.size(); i += 8) {
                            suggester.learn(few.get(i));
                        }
                        lines.forEach(line -> suggester.of(line.words()));
                        return lines.stream().map(line -> reading.of(line.words())).toList();
                    }).toList();
            for (Future<List<List<Suggestion>>> result : threads.invokeAll(work, 60, TimeUnit.SECONDS)) {
                assertThat(result.get()).isEqualTo(expected);
            }
        } finally {
            threads.shutdownNow();
        }

        // then
        assertThat(suggester.words()).isEqualTo(alone.words());
        assertThat(suggester.habits()).isEqualTo(alone.habits());
    }
}
