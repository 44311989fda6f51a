package org.hearthrule.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code copy}, and {@code restore --from}. */
class WholeCopyTest {

    @TempDir
    private Path folder;
    private Path book;
    private Path zip;

    @BeforeEach
    void newBook() {
        book = folder.resolve("our book");
        zip = folder.resolve("copy.zip");
        Run.typing("Rowan family\nIda Rowan\n2016-05-14\n5\nExample\n1\n2026-09-01\nno\nyes\n", "new", book.toString(),
                "--jurisdictions", "test-fixtures/profiles");
        assertThat(family()).contains("Rowan family");
    }

    private String family() {
        try {
            return Files.readString(book.resolve("family.json"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private void change() throws IOException {
        Files.writeString(book.resolve("family.json"), family().replace("Rowan family", "Rowan-Hale family"));
    }

    private Run copy() {
        return Run.of("copy", book.toString(), "--out", zip.toString());
    }

    @Test
    void writesTheWholeBookIntoOneFile() throws IOException {
        Run run = copy();

        assertThat(run.exit()).isZero();
        assertThat(run.out().replaceAll("\\s+", " ")).startsWith("A copy of the whole book is in " + zip + ": 2 files, ");
        try (Stream<Path> beside = Files.list(folder)) {
            assertThat(beside.map(path -> path.getFileName().toString())).containsExactlyInAnyOrder("our book", "copy.zip");
        }
    }

    @Test
    void tellsWhatIsNotInTheCopy() throws IOException {
        Files.createSymbolicLink(book.resolve("out.jpg"), Files.writeString(folder.resolve("x.jpg"), "x"));

        assertThat(copy().out()).contains("Not in the copy", "\n  out.jpg\n");
    }

    @Test
    void neverWritesOverAFile() throws IOException {
        Files.writeString(zip, "something else");

        Run run = copy();

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[FILE-EXISTS]");
        assertThat(zip).hasContent("something else");
    }

    @Test
    void wantsAPlaceThatIsThereAndOutsideOfTheBook() {
        Run inside = Run.of("copy", book.toString(), "--out", book.resolve("copy.zip").toString());
        Run nowhere = Run.of("copy", book.toString(), "--out", folder.resolve("none").resolve("copy.zip").toString());

        assertThat(inside.err()).contains("[IN-THE-BOOK]");
        assertThat(nowhere.err()).contains("[NO-FOLDER]", "make the folder first");
        assertThat(book.resolve("copy.zip")).doesNotExist();
    }

    @Test
    void copiesNothingThatIsNoBook(@TempDir Path elsewhere) throws IOException {
        Run run = Run.of("copy", folder.toString(), "--out", elsewhere.resolve("copy.zip").toString());

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[NO-FAMILY-FILE]", "you meant the folder " + book);
        try (Stream<Path> made = Files.list(elsewhere)) {
            assertThat(made).isEmpty();
        }
    }

    @Test
    void putsACopyBackAfterShowingItAndAsking() throws IOException {
        String before = family();
        copy();
        change();

        Run no = Run.typing("no\n", "restore", book.toString(), "--from", zip.toString());
        assertThat(no.out()).startsWith("A copy of 2 files (").contains("It is whole", "Put it back into " + book, "Nothing was changed.");
        assertThat(family()).contains("Rowan-Hale");

        Run yes = Run.typing("yes\n", "restore", book.toString(), "--from", zip.toString());
        assertThat(yes.exit()).isZero();
        assertThat(family()).isEqualTo(before);
    }

    /** The line that takes it back is there to be typed. */
    @Test
    void tellsHowToTakeItBackAndThatWorks() throws IOException {
        copy();
        change();
        Run run = Run.of("restore", book.toString(), "--from", zip.toString(), "--yes");
        assertThat(run.out()).contains("One file was replaced or taken out.");
        String earlier = run.out().substring(run.out().indexOf("--from \"") + 8, run.out().lastIndexOf('"'));
        assertThat(Run.of("restore", book.toString()).out()).contains("COPIES OF THE WHOLE BOOK", earlier);

        Run.of("restore", book.toString(), "--from", earlier, "--yes");

        assertThat(family()).contains("Rowan-Hale");
    }

    @Test
    void makesANewFolderForTheBook() throws IOException {
        copy();
        Path fresh = folder.resolve("fresh");

        Run run = Run.of("restore", fresh.toString(), "--from", zip.toString(), "--yes");

        assertThat(run.exit()).isZero();
        assertThat(fresh.resolve("family.json")).hasContent(family());
    }

    @Test
    void saysWhatIsWrongWithACopyAndChangesNothing() throws IOException {
        copy();
        byte[] bytes = Files.readAllBytes(zip);
        Files.write(zip, java.util.Arrays.copyOf(bytes, bytes.length / 2));

        Run run = Run.of("restore", book.toString(), "--from", zip.toString(), "--yes");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[NOT-A-COPY]");
        assertThat(Run.of("restore", book.toString(), "--from", folder.resolve("none.zip").toString()).err())
                .contains("nothing of that name");
    }

    /** A sentence about the book is no fault inside the program. */
    @Test
    void leavesABookOfANewerProgramAloneAndSaysSo() throws IOException {
        copy();
        Files.writeString(book.resolve("family.json"), "{\"hearthrule\": 2}");

        Run run = Run.of("restore", book.toString(), "--from", zip.toString(), "--yes");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).isEqualTo(book.resolve("family.json") + " was written by a newer Hearthrule. Nothing was changed.\n");
        assertThat(family()).isEqualTo("{\"hearthrule\": 2}");
    }

    @Test
    void takesOneKindOfCopyAtATime() {
        Run run = Run.of("restore", book.toString(), "--from", zip.toString(), "--copy", "1");

        assertThat(run.exit()).isEqualTo(Exit.BAD_INPUT);
        assertThat(run.err()).contains("[TWO-COPIES]");
    }

    @ParameterizedTest
    @CsvSource({"0,0 bytes", "999,999 bytes", "1000,1.0 KB", "9949,9.9 KB", "999499,999 KB", "999500,1.0 MB", "12345678,12 MB",
        "2000000000,2.0 GB", "5000000000000,5.0 TB"})
    void lengthIsToldInUnitsOfAThousand(long bytes, String words) {
        assertThat(WholeCopy.size(bytes)).isEqualTo(words);
    }
}
