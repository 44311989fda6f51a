package org.hearthrule.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import com.drew.imaging.ImageMetadataReader;
import com.drew.lang.Rational;
import com.drew.metadata.exif.GpsDirectory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The notes are written by {@link ExifBytes} after the standard and read by a library. */
class PictureFactsTest {

    private static final String NAMELESS = "photo.jpg";

    @TempDir
    private Path folder;

    private PictureFacts facts(byte[] content, FileKind kind, String name) throws IOException {
        Path file = Files.write(folder.resolve("stored"), content);
        return PictureFacts.read(file, kind, name, Samples.CLOCK);
    }

    private PictureFacts facts(ExifBytes notes) throws IOException {
        return facts(notes.in(Samples.jpeg()), FileKind.JPEG, NAMELESS);
    }

    @Test
    void dayTheCameraNotedIsOfferedWithItsOrigin() throws IOException {
        PictureFacts facts = facts(ExifBytes.bigEndian().original("2026:05:14 16:02:33"));

        assertThat(facts.offers()).containsExactly(new DateOffer(LocalDate.of(2026, 5, 14), LocalTime.of(16, 2, 33),
                DateOffer.Origin.TAKEN, "the camera noted May 14, 2026, 16:02"));
        assertThat(facts.notes()).isEmpty();
    }

    @Test
    void notesInTheOtherOrderOfBytesAreRead() throws IOException {
        PictureFacts facts = facts(new ExifBytes(ByteOrder.LITTLE_ENDIAN).orientation(6).original("2026:05:14 16:02:33"));

        assertThat(facts.offer()).get().extracting(DateOffer::day).isEqualTo(LocalDate.of(2026, 5, 14));
        assertThat(facts.orientation()).isEqualTo(6);
    }

    /** Exif's days are local ones: a photo of the evening must not move to the next day. */
    @Test
    void distanceFromUtcIsSaidAndMovesNothing() throws IOException {
        PictureFacts facts = facts(ExifBytes.bigEndian().original("2026:05:14 23:30:00").originalOffset("-04:00"));

        assertThat(facts.offer()).get().isEqualTo(new DateOffer(LocalDate.of(2026, 5, 14), LocalTime.of(23, 30),
                DateOffer.Origin.TAKEN, "the camera noted May 14, 2026, 23:30 (UTC-04:00)"));
    }

    @Test
    void dayOfScanningComesSecond() throws IOException {
        assertThat(facts(ExifBytes.bigEndian().digitized("2026:05:15 09:00:00")).offers())
                .extracting(DateOffer::words).containsExactly("it was scanned or stored on May 15, 2026, 09:00");
        assertThat(facts(ExifBytes.bigEndian().original("2026:05:14 16:02:33").digitized("2026:05:15 09:00:00")).offers())
                .extracting(DateOffer::origin).containsExactly(DateOffer.Origin.TAKEN);
    }

    /** A file copied today looks as if it were made today. */
    @Test
    void dayOnWhichTheFileWasWrittenIsNoOffer() throws IOException {
        Path file = Files.write(folder.resolve("old.jpg"), Samples.jpeg());
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2025-10-01T00:00:00Z")));

        assertThat(PictureFacts.read(file, FileKind.JPEG, NAMELESS, Samples.CLOCK).offers()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "2026:05:21 00:00:00|Not offered as its day: the camera noted May 21, 2026, 00:00, which has not come yet.",
        "1989:12:31 23:59:59|Not offered as its day: the camera noted December 31, 1989, 23:59, which is too long ago for such a picture.",
        "1970:01:01 00:00:00|Not offered as its day: the camera noted January 1, 1970, 00:00, as a camera does whose clock was never set.",
        "2000:01:01 00:03:12|Not offered as its day: the camera noted January 1, 2000, 00:03, as a camera does whose clock was never set.",
        "2026:02:30 12:00:00|The camera noted something that is no day.",
        "2026:05:14 24:00:00|The camera noted something that is no day.",
        "last Tuesday|The camera noted something that is no day."})
    void dayThatCannotBeIsSaidAndNotOffered(String noted, String words) throws IOException {
        PictureFacts facts = facts(ExifBytes.bigEndian().original(noted));

        assertThat(facts.offers()).isEmpty();
        assertThat(facts.notes()).containsExactly(words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026:05:20 23:59:59", "1990:01:01 00:00:00", "2000:01:02 00:00:00"})
    void daysAtTheEdgesAreOffered(String noted) throws IOException {
        assertThat(facts(ExifBytes.bigEndian().original(noted)).offers()).hasSize(1);
    }

    // Exif 2.3, tag 36867: "When the date and time are unknown, all the character spaces except colons may be filled with
    // blank characters"; noughts are common practice
    @ParameterizedTest
    @ValueSource(strings = {"    :  :     :  :  ", "                   ", "0000:00:00 00:00:00"})
    void dayLeftBlankIsNothing(String noted) throws IOException {
        PictureFacts facts = facts(ExifBytes.bigEndian().original(noted).digitized("2026:05:15 09:00:00"));

        assertThat(facts.offers()).extracting(DateOffer::origin).containsExactly(DateOffer.Origin.DIGITIZED);
        assertThat(facts.notes()).isEmpty();
    }

    @Test
    void unsetClockGivesWayToALaterNote() throws IOException {
        PictureFacts facts = facts(ExifBytes.bigEndian().original("1970:01:01 00:00:00").digitized("2026:05:15 09:00:00"));

        assertThat(facts.offers()).extracting(DateOffer::day).containsExactly(LocalDate.of(2026, 5, 15));
        assertThat(facts.notes()).hasSize(1);
    }

    /** Where a child was is nobody's business, and not this program's either. */
    @Test
    void placeIsNoPartOfTheFacts() throws Exception {
        byte[] withPlace = ExifBytes.bigEndian().original("2026:05:14 16:02:33").north(47, 11, 59).in(Samples.jpeg());
        byte[] without = ExifBytes.bigEndian().original("2026:05:14 16:02:33").in(Samples.jpeg());

        // the test's own notes really hold a place
        assertThat(ImageMetadataReader.readMetadata(new ByteArrayInputStream(withPlace)).getFirstDirectoryOfType(GpsDirectory.class)
                .getRationalArray(GpsDirectory.TAG_LATITUDE)).extracting(Rational::intValue).containsExactly(47, 11, 59);
        assertThat(facts(withPlace, FileKind.JPEG, NAMELESS)).isEqualTo(facts(without, FileKind.JPEG, NAMELESS));
    }

    @ParameterizedTest
    @CsvSource({"1,60,40", "3,60,40", "6,40,60", "8,40,60"})
    void sizeIsToldAsStoredAndUpright(int orientation, int uprightWidth, int uprightHeight) throws IOException {
        PictureFacts facts = facts(ExifBytes.bigEndian().orientation(orientation));

        assertThat(facts.width()).isEqualTo(60);
        assertThat(facts.height()).isEqualTo(40);
        assertThat(facts.uprightWidth()).isEqualTo(uprightWidth);
        assertThat(facts.uprightHeight()).isEqualTo(uprightHeight);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 9, 300})
    void sideThatIsNoneCountsAsUpright(int orientation) throws IOException {
        assertThat(facts(ExifBytes.bigEndian().orientation(orientation)).orientation()).isEqualTo(1);
    }

    // PNG, third edition, 11.3.3.6 eXIf
    @Test
    void notesInAPngAreRead() throws IOException {
        byte[] notes = ExifBytes.bigEndian().orientation(6).original("2026:05:14 16:02:33").tiff();
        byte[] png = Samples.png(2, 1, 8, 0, "eXIf", notes, "IDAT", Samples.deflated(new byte[3]));

        PictureFacts facts = facts(png, FileKind.PNG, NAMELESS);

        assertThat(facts.offer()).get().extracting(DateOffer::day).isEqualTo(LocalDate.of(2026, 5, 14));
        assertThat(facts.orientation()).isEqualTo(6);
        assertThat(facts.uprightHeight()).isEqualTo(2);
    }

    // RFC 9649, 2.7: VP8X holds width and height less one in 24 bits each, EXIF the notes
    @Test
    void notesAndSizeOfAWebpAreRead() throws IOException {
        byte[] notes = ExifBytes.bigEndian().original("2026:05:14 16:02:33").tiff();
        String extended = "VP8X\12\0\0\0" + "\10\0\0\0" + "\117\2\0" + "\337\1\0";
        String head = "EXIF" + (char) notes.length + "\0\0\0";
        byte[] body = ("WEBP" + extended + head).getBytes(StandardCharsets.ISO_8859_1);
        byte[] webp = new byte[8 + body.length + notes.length];
        System.arraycopy(("RIFF" + (char) (body.length + notes.length) + "\0\0\0").getBytes(StandardCharsets.ISO_8859_1), 0, webp, 0, 8);
        System.arraycopy(body, 0, webp, 8, body.length);
        System.arraycopy(notes, 0, webp, 8 + body.length, notes.length);

        PictureFacts facts = facts(webp, FileKind.WEBP, NAMELESS);

        assertThat(facts.offer()).get().extracting(DateOffer::day).isEqualTo(LocalDate.of(2026, 5, 14));
        assertThat(facts.width()).isEqualTo(0x24F + 1);
        assertThat(facts.height()).isEqualTo(0x1DF + 1);
    }

    @Test
    void damagedPictureTellsSo() throws IOException {
        byte[] whole = ExifBytes.bigEndian().original("2026:05:14 16:02:33").in(Samples.jpeg());

        PictureFacts cut = facts(Arrays.copyOf(whole, 20), FileKind.JPEG, NAMELESS);
        PictureFacts noise = facts("\u00FF\u00D8\u00FFnot a picture".getBytes(StandardCharsets.ISO_8859_1), FileKind.JPEG, NAMELESS);

        assertThat(cut.notes()).containsExactly(
                "This picture cannot be opened. It may be damaged; look at it on the device it came from.");
        assertThat(noise.notes()).isEqualTo(cut.notes());
        assertThat(noise.width()).isZero();
    }

    /** A part may claim any length; to believe it would fill the memory. */
    @Test
    void lengthsThatAPngClaimsAreNotBelieved() throws IOException {
        byte[] png = Samples.png(2, 1, 8, 0, "eXIf", new byte[100], "IDAT", Samples.deflated(new byte[3]));
        int length = new String(png, StandardCharsets.ISO_8859_1).indexOf("eXIf") - 4;
        System.arraycopy(new byte[] {0x7F, (byte) 0xFF, (byte) 0xFF, (byte) 0xF0}, 0, png, length, 4);

        assertThat(facts(png, FileKind.PNG, NAMELESS).offers()).isEmpty();
    }

    @Test
    void scanHasOnlyItsName() throws IOException {
        PictureFacts facts = facts(Samples.PDF, FileKind.PDF, "Scan 2026-05-12.pdf");

        assertThat(facts.offers()).containsExactly(new DateOffer(LocalDate.of(2026, 5, 12), null,
                DateOffer.Origin.FILE_NAME, "its name says May 12, 2026"));
        assertThat(facts.notes()).isEmpty();
    }

    @Test
    void nameComesAfterTheCamera() throws IOException {
        byte[] jpeg = ExifBytes.bigEndian().original("2026:05:14 16:02:33").in(Samples.jpeg());

        assertThat(facts(jpeg, FileKind.JPEG, "IMG_20260513_090000.jpg").offers())
                .extracting(DateOffer::origin).containsExactly(DateOffer.Origin.TAKEN, DateOffer.Origin.FILE_NAME);
    }
}
