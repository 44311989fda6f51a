package org.hearthrule.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AttachmentsTest {

    @TempDir
    private Path parent;
    private Path folder;
    private Attachments attachments;

    @BeforeEach
    void ofABookBesideOtherThings() throws IOException {
        folder = Files.createDirectory(parent.resolve("book"));
        Files.write(parent.resolve("secret.jpg"), Samples.jpeg());
        Files.createDirectories(folder.resolve(".copies/attachments"));
        Files.write(folder.resolve(".copies/attachments/x.jpg"), Samples.jpeg());
        Files.createDirectories(folder.resolve("photos"));
        Files.write(folder.resolve("photos/jetty.jpg"), Samples.jpeg());
        Files.writeString(folder.resolve("family.json"), "{\"hearthrule\": 1, \"students\": []}");
        attachments = new Attachments(folder, Samples.CLOCK);
    }

    private String stored(int number, Duration ago) throws IOException {
        Taken taken = attachments.store(Samples.upload("x.jpg", Samples.jpeg(number)), "drawing");
        String path = ((Taken.Stored) taken).path();
        Files.setLastModifiedTime(folder.resolve(path), FileTime.from(Samples.CLOCK.instant().minus(ago)));
        return path;
    }

    private String stored(int number) throws IOException {
        return stored(number, Duration.ofDays(2));
    }

    @Test
    void fileOfTheBookIsFound() throws IOException {
        String path = stored(1);

        assertThat(attachments.open(path)).get().satisfies(opened -> {
            assertThat(opened.path()).isEqualTo(path);
            assertThat(opened.file()).hasBinaryContent(Samples.jpeg(1));
            assertThat(opened.kind().mediaType()).isEqualTo("image/jpeg");
            assertThat(opened.bytes()).isEqualTo(Samples.jpeg(1).length);
        });
        assertThat(attachments.open("photos/jetty.jpg")).isPresent();
    }

    /** Each of these leads to a picture that is there, on one system or another, if the path is taken at its word. */
    @ParameterizedTest
    @ValueSource(strings = {"../secret.jpg", "photos/../../secret.jpg", "photos/../photos/jetty.jpg", "./photos/jetty.jpg",
        "photos//jetty.jpg", "/photos/jetty.jpg", "photos/jetty.jpg/", "photos\\jetty.jpg", "..\\secret.jpg", "C:photos/jetty.jpg",
        "C:/secret.jpg", "photos/jetty.jpg\0", "photos/jetty.jpg\0.png", "photos/jetty.jpg:x", ".copies/attachments/x.jpg",
        ".copies", "photos", "", ".", "..", "/", "photos/%2e%2e/%2e%2e/secret.jpg", "..%2fsecret.jpg", "file:photos/jetty.jpg"})
    void pathThatIsNotPlainFindsNothing(String path) {
        assertThat(attachments.open(path)).isEmpty();
    }

    @Test
    void absolutePathFindsNothingEvenWithinTheBook() {
        assertThat(attachments.open(parent.resolve("secret.jpg").toString())).isEmpty();
        assertThat(attachments.open(folder.resolve("photos/jetty.jpg").toString())).isEmpty();
        assertThat(attachments.open(null)).isEmpty();
    }

    @Test
    void linkThatLeadsOutFindsNothing() throws IOException {
        Files.createSymbolicLink(folder.resolve("out.jpg"), parent.resolve("secret.jpg"));
        Files.createSymbolicLink(folder.resolve("up"), parent);
        Files.createSymbolicLink(folder.resolve("hidden"), folder.resolve(".copies"));
        Files.createSymbolicLink(folder.resolve("nowhere.jpg"), folder.resolve("none.jpg"));

        assertThat(List.of("out.jpg", "up/secret.jpg", "up/book/photos/jetty.jpg/../../../secret.jpg",
                "hidden/attachments/x.jpg", "nowhere.jpg")).allSatisfy(path -> assertThat(attachments.open(path)).isEmpty());
    }

    @Test
    void linkWithinTheBookIsFollowed() throws IOException {
        Files.createSymbolicLink(folder.resolve("cover.jpg"), folder.resolve("photos/jetty.jpg"));

        assertThat(attachments.open("cover.jpg")).isPresent();
    }

    @Test
    void bookReachedThroughALinkIsTheSameBook() throws IOException {
        Path link = Files.createSymbolicLink(parent.resolve("link"), folder);

        assertThat(new Attachments(link, Samples.CLOCK).open("photos/jetty.jpg")).isPresent();
    }

    /** The records themselves, or anything else that lies in the folder, are not for showing. */
    @Test
    void fileOfAnotherKindIsNotFoundWhateverItsName() throws IOException {
        Files.writeString(folder.resolve("page.jpg"), "<html><script>alert(1)</script>");

        assertThat(attachments.open("family.json")).isEmpty();
        assertThat(attachments.open("page.jpg")).isEmpty();
        assertThat(attachments.open(".lock")).isEmpty();
    }

    @Test
    void filesThatNoRecordNamesAreTold() throws IOException {
        String named = stored(1);
        String unnamed = stored(2);

        assertThat(attachments.unreferenced(Books.naming(named))).containsExactly(unnamed);
        assertThat(attachments.unreferenced(Books.naming(named, unnamed.toUpperCase().replace("WORK", "work")))).isEmpty();
    }

    @Test
    void filesThatAreNamedAndNotThereAreTold() throws IOException {
        String there = stored(1);

        assertThat(attachments.missing(Books.naming(there, "work/gone.jpg", "photos/jetty.jpg", "photos")))
                .containsExactly("photos", "work/gone.jpg");
    }

    @Test
    void tidyPutsAsideWhatNoRecordNamesAndLeavesTheRest() throws IOException {
        String named = stored(1);
        String unnamed = stored(2);

        assertThat(attachments.tidy(Books.naming(named))).containsExactly(unnamed);

        assertThat(folder.resolve(named)).exists();
        assertThat(folder.resolve("photos/jetty.jpg")).exists();
        assertThat(folder.resolve(unnamed)).doesNotExist();
        assertThat(folder.resolve(".copies/attachments").resolve(unnamed)).hasBinaryContent(Samples.jpeg(2));
    }

    /** Between the storing of a file and the writing of its record, somebody else may tidy up. */
    @Test
    void tidyLeavesWhatWasJustStored() throws IOException {
        String fresh = stored(1, Duration.ofHours(23));

        assertThat(attachments.tidy(Books.naming())).isEmpty();
        assertThat(folder.resolve(fresh)).exists();
    }

    @Test
    void deletionThatIsUndoneAfterTidyingGetsItsFileBack() throws IOException {
        String path = stored(1);
        attachments.tidy(Books.naming());
        assertThat(attachments.missing(Books.naming(path))).containsExactly(path);

        assertThat(attachments.bringBack(Books.naming(path))).containsExactly(path);

        assertThat(folder.resolve(path)).hasBinaryContent(Samples.jpeg(1));
        assertThat(attachments.missing(Books.naming(path))).isEmpty();
    }

    @Test
    void twoContentsOfOneNameAreBothKeptAside() throws IOException {
        String path = stored(1);
        attachments.tidy(Books.naming());
        Files.createDirectories(folder.resolve(path).getParent());
        Files.write(folder.resolve(path), Samples.jpeg(2));
        Files.setLastModifiedTime(folder.resolve(path), FileTime.from(Samples.CLOCK.instant().minus(Duration.ofDays(2))));

        attachments.tidy(Books.naming());

        Path aside = folder.resolve(".copies/attachments");
        assertThat(aside.resolve(path)).hasBinaryContent(Samples.jpeg(1));
        assertThat(aside.resolve(path.replace(".jpg", "-2.jpg"))).hasBinaryContent(Samples.jpeg(2));
    }

    /** A record may name any path of the book; nothing but a file of ours is fetched for it, and over nothing. */
    @Test
    void onlyFilesOfOursAreBroughtBack() throws IOException {
        assertThat(attachments.bringBack(Books.naming("x.jpg", "family.json"))).isEmpty();
        assertThat(folder.resolve("x.jpg")).doesNotExist();
    }
}
