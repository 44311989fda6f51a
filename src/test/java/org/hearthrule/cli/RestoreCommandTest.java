package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RestoreCommandTest {

    @TempDir
    private Path folder;
    private Path book;
    private String before;

    @BeforeEach
    void importIntoANewBook() throws IOException {
        book = folder.resolve("book");
        Run.typing("Rowan family\nIda Rowan\n2016-05-14\n5\nExample\n1\n2026-09-01\nno\nyes\n", "new", book.toString(),
                "--jurisdictions", "test-fixtures/profiles");
        before = year();
        Path table = Files.writeString(folder.resolve("autumn.csv"), "Day,Who,Min,What\n2026-09-13,Ida,45,Fractions of a loaf\n");
        Run run = Run.of("import", "log", table.toString(), book.toString(), "--columns", "date=Day,students=Who,minutes=Min,did=What",
                "--yes");
        assertThat(run.out()).contains("hearthrule restore");
        assertThat(year()).contains("Fractions");
    }

    private String year() throws IOException {
        return Files.readString(book.resolve("2026-27.json"));
    }

    @Test
    void listsWhatIsKeptAndChangesNothing() throws IOException {
        Run run = Run.of("restore", book.toString());

        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains(" 1  2026-27.json as it was written on").doesNotContain(" 2  ");
        assertThat(year()).contains("Fractions");
    }

    @Test
    void putsAVersionBackAfterAsking() throws IOException {
        assertThat(Run.typing("no\n", "restore", book.toString(), "--copy", "1").out()).contains("Nothing was changed.");
        assertThat(year()).contains("Fractions");

        Run run = Run.typing("yes\n", "restore", book.toString(), "--copy", "1");

        assertThat(run.exit()).isZero();
        assertThat(year()).isEqualTo(before);
    }

    @Test
    void canItselfBeTakenBack() throws IOException {
        String after = year();
        Run.of("restore", book.toString(), "--copy", "1", "--yes");

        Run list = Run.of("restore", book.toString());
        int number = list.out().contains(" 2  ") ? number(after) : 1;
        Run.of("restore", book.toString(), "--copy", Integer.toString(number), "--yes");

        assertThat(year()).isEqualTo(after);
    }

    /** Both versions may be from the same second, so that their order in the list says nothing. */
    private int number(String wanted) throws IOException {
        try (var copies = Files.list(book.resolve(".copies"))) {
            var newestFirst = copies.sorted(java.util.Comparator.comparing(Path::toString).reversed()).toList();
            for (int i = 0; i < newestFirst.size(); i++) {
                if (Files.readString(newestFirst.get(i)).equals(wanted)) {
                    return i + 1;
                }
            }
        }
        throw new AssertionError("the version that was replaced is not kept");
    }

    @Test
    void worksWhenTheFileCanNoLongerBeRead() throws IOException {
        Files.writeString(book.resolve("2026-27.json"), "{\"hearthrule\": 1, \"ye");

        Run run = Run.of("restore", book.toString(), "--copy", "1", "--yes");

        assertThat(run.exit()).isZero();
        assertThat(year()).isEqualTo(before);
    }

    @Test
    void saysWhichNumbersThereAre() {
        Run run = Run.of("restore", book.toString(), "--copy", "7");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[NO-SUCH-COPY]", "a number from 1 to 1");
    }
}
