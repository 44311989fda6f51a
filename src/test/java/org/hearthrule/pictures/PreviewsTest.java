package org.hearthrule.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.icc.IccDirectory;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PreviewsTest {

    private static final List<Color> QUARTERS = List.of(Color.RED, Color.GREEN, Color.BLUE, Color.YELLOW);

    @TempDir
    private Path folder;
    private Previews previews;

    @BeforeEach
    void ofABook() {
        previews = new Previews(new Attachments(folder, Samples.CLOCK));
    }

    private Preview preview(String name, byte[] content, Previews.Size size) throws IOException {
        Files.write(folder.resolve(name), content);
        return previews.of(name, size);
    }

    private BufferedImage shown(byte[] content, Previews.Size size) throws IOException {
        Preview preview = preview("picture", content, size);
        assertThat(preview).isInstanceOf(Preview.Ready.class);
        return ImageIO.read(((Preview.Ready) preview).file().toFile());
    }

    /**
     * What the standard says of each value: where the stored row 0 and the stored column 0 are seen (Exif 2.2, JEITA
     * CP-3451, 4.6.4 A, tag 274, which is TIFF 6.0's). The stored picture is made from that, pixel by pixel.
     */
    @ParameterizedTest
    @CsvSource({"1,top,left", "2,top,right", "3,bottom,right", "4,bottom,left", "5,left,top", "6,right,top",
        "7,right,bottom", "8,left,bottom"})
    void eachOfTheEightSidesIsTurnedUpright(int orientation, String row0, String column0) throws IOException {
        // given
        BufferedImage upright = Samples.quarters(300, 200);
        boolean rowsAreLines = row0.equals("top") || row0.equals("bottom");
        BufferedImage stored = new BufferedImage(rowsAreLines ? 300 : 200, rowsAreLines ? 200 : 300, BufferedImage.TYPE_INT_RGB);
        for (int row = 0; row < stored.getHeight(); row++) {
            for (int column = 0; column < stored.getWidth(); column++) {
                int across = rowsAreLines ? column : row;
                int down = rowsAreLines ? row : column;
                boolean mirroredAcross = (rowsAreLines ? column0 : row0).equals("right");
                boolean mirroredDown = (rowsAreLines ? row0 : column0).equals("bottom");
                int x = mirroredAcross ? 299 - across : across;
                int y = mirroredDown ? 199 - down : down;
                stored.setRGB(column, row, upright.getRGB(x, y));
            }
        }
        byte[] jpeg = ExifBytes.bigEndian().orientation(orientation).in(Samples.bytes(stored, "jpeg"));

        // when
        BufferedImage shown = shown(jpeg, Previews.Size.SMALL);

        // then
        assertThat(shown.getWidth()).isEqualTo(300);
        assertThat(shown.getHeight()).isEqualTo(200);
        assertQuarters(shown);
    }

    private static void assertQuarters(BufferedImage image) {
        for (int i = 0; i < 4; i++) {
            assertColor(image, (1 + i % 2 * 2) * image.getWidth() / 4, (1 + i / 2 * 2) * image.getHeight() / 4, QUARTERS.get(i));
        }
    }

    /** A JPEG's colours are a little off. */
    private static void assertColor(BufferedImage image, int x, int y, Color color) {
        Color seen = new Color(image.getRGB(x, y));
        assertThat(Math.max(Math.abs(seen.getRed() - color.getRed()), Math.max(Math.abs(seen.getGreen() - color.getGreen()),
                Math.abs(seen.getBlue() - color.getBlue())))).as("%s at %d, %d", seen, x, y).isLessThan(30);
    }

    @ParameterizedTest
    @CsvSource({"SMALL,2000,1000,480,240", "SMALL,1000,2000,240,480", "LARGE,2000,1000,1600,800", "SMALL,481,10,480,10",
        "SMALL,480,480,480,480", "LARGE,300,200,300,200", "SMALL,4000,1,480,1"})
    void longerSideIsAtMostWhatIsAskedFor(Previews.Size size, int width, int height, int newWidth, int newHeight) throws IOException {
        BufferedImage shown = shown(Samples.bytes(Samples.quarters(width, height), "jpeg"), size);

        assertThat(shown.getWidth()).isEqualTo(newWidth);
        assertThat(shown.getHeight()).isEqualTo(newHeight);
    }

    @ParameterizedTest
    @CsvSource({"jpeg", "png", "gif"})
    void eachKindIsRead(String format) throws IOException {
        assertQuarters(shown(Samples.bytes(Samples.quarters(1000, 800), format), Previews.Size.SMALL));
    }

    @Test
    void whatIsClearBecomesPaper() throws IOException {
        BufferedImage image = new BufferedImage(100, 100, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.BLUE);
        pen.fillRect(0, 0, 50, 100);
        pen.dispose();

        BufferedImage shown = shown(Samples.bytes(image, "png"), Previews.Size.SMALL);

        assertColor(shown, 25, 50, Color.BLUE);
        assertColor(shown, 75, 50, Color.WHITE);
    }

    @Test
    void clearPartsOfALargePictureBecomePaperToo() throws IOException {
        BufferedImage image = new BufferedImage(1500, 900, BufferedImage.TYPE_INT_ARGB);

        assertColor(shown(Samples.bytes(image, "png"), Previews.Size.SMALL), 200, 100, Color.WHITE);
        assertColor(shown(Samples.bytes(image, "gif"), Previews.Size.LARGE), 200, 100, Color.WHITE);
    }

    @Test
    void sixteenBitsAndGreysAreRead() throws IOException {
        byte[] line = {0, (byte) 0xFF, (byte) 0xFF, 0, 0};

        BufferedImage shown = shown(Samples.png(2, 1, 16, 0, "IDAT", Samples.deflated(line)), Previews.Size.SMALL);

        // two pixels lie within one block of a JPEG, which blends their colours but not their light
        assertThat(new Color(shown.getRGB(0, 0)).getRed()).isGreaterThan(200);
        assertThat(new Color(shown.getRGB(1, 0)).getRed()).isLessThan(50);
    }

    /** A preview goes into papers and onto screens of others: it must not say where a child was. */
    @Test
    void previewHoldsNoNotesOfTheCamera() throws Exception {
        byte[] jpeg = ExifBytes.bigEndian().orientation(6).original("2026:05:14 16:02:33").north(47, 11, 59).in(Samples.jpeg());

        Preview preview = preview("picture", jpeg, Previews.Size.SMALL);

        Path file = ((Preview.Ready) preview).file();
        var metadata = ImageMetadataReader.readMetadata(file.toFile());
        assertThat(metadata.getDirectoriesOfType(ExifDirectoryBase.class)).isEmpty();
        assertThat(metadata.getDirectoriesOfType(IccDirectory.class)).isEmpty();
        assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1)).doesNotContain("Exif");
        assertThat(folder.resolve("picture")).hasBinaryContent(jpeg);
    }

    @Test
    void previewIsMadeOnceAndLiesBelowThePageFolder() throws IOException {
        byte[] content = Samples.jpeg();
        Path first = ((Preview.Ready) preview("picture", content, Previews.Size.SMALL)).file();
        FileTime long0 = FileTime.from(Instant.parse("2026-01-01T00:00:00Z"));
        Files.setLastModifiedTime(first, long0);

        Path again = ((Preview.Ready) new Previews(new Attachments(folder, Samples.CLOCK)).of("picture", Previews.Size.SMALL)).file();

        assertThat(again).isEqualTo(first);
        assertThat(Files.getLastModifiedTime(first)).isEqualTo(long0);
        assertThat(folder.relativize(first).toString().replace('\\', '/')).matches("\\.page/previews/[0-9a-f]{64}-480\\.jpg");
    }

    /** Somebody turns the file in another program: the old preview would show it lying on its side for ever. */
    @Test
    void fileThatChangesGetsANewPreview() throws IOException {
        // as long as each other, so that only the time tells them apart
        Path before = ((Preview.Ready) preview("picture", Arrays.copyOf(Samples.jpeg(1), 5_000), Previews.Size.SMALL)).file();
        Files.write(folder.resolve("picture"), Arrays.copyOf(Samples.jpeg(2), 5_000));
        Files.setLastModifiedTime(folder.resolve("picture"), FileTime.from(Instant.parse("2026-05-20T00:00:00Z")));

        assertThat(((Preview.Ready) previews.of("picture", Previews.Size.SMALL)).file()).isNotEqualTo(before);
    }

    @Test
    void scanAndWebpHaveNone() throws IOException {
        assertThat(preview("scan", Samples.PDF, Previews.Size.SMALL)).isInstanceOfSatisfying(Preview.None.class,
                none -> assertThat(none.reason()).isEqualTo(Preview.Reason.OF_THIS_KIND));
        assertThat(preview("web", "RIFF\1\2\3\4WEBPVP8 ".getBytes(StandardCharsets.ISO_8859_1), Previews.Size.SMALL))
                .isInstanceOfSatisfying(Preview.None.class,
                        none -> assertThat(none.words()).isEqualTo("There is no small picture of a file of this kind. It opens as it is."));
    }

    @Test
    void fileThatIsNotThereIsSaid() throws IOException {
        assertThat(previews.of("work/none.jpg", Previews.Size.SMALL)).isInstanceOfSatisfying(Preview.None.class,
                none -> assertThat(none.reason()).isEqualTo(Preview.Reason.NOT_THERE));
        assertThat(folder.resolve(".page")).doesNotExist();
    }

    /** Readers meet a damaged picture with exceptions of many kinds; one that gets through ends the page. */
    @Test
    void damageAnywhereIsSaidAndNeverThrown() throws IOException {
        byte[] jpeg = Samples.bytes(Samples.quarters(300, 200), "jpeg");
        byte[] png = Samples.bytes(Samples.quarters(300, 200), "png");
        byte[] gif = Samples.bytes(Samples.quarters(300, 200), "gif");
        int damaged = 0;
        for (byte[] whole : List.of(jpeg, png, gif)) {
            for (int at = 12; at < whole.length; at += 1 + whole.length / 60) {
                byte[] spoiled = whole.clone();
                Arrays.fill(spoiled, at, Math.min(whole.length, at + 9), (byte) 0xD9);
                damaged += preview("spoiled", spoiled, Previews.Size.SMALL) instanceof Preview.None ? 1 : 0;
                damaged += preview("cut", Arrays.copyOf(whole, at), Previews.Size.SMALL) instanceof Preview.None ? 1 : 0;
            }
        }

        assertThat(damaged).isGreaterThan(20);
        assertThat(preview("noise", "GIF89a and then nothing".getBytes(StandardCharsets.US_ASCII), Previews.Size.SMALL))
                .isEqualTo(new Preview.None(Preview.Reason.DAMAGED, "No small picture could be made of this one. It may be"
                        + " damaged; look at it on the device it came from."));
    }

    /** A few hundred bytes may claim pixels that would fill any memory. */
    @Test
    void pictureOfTooManyPixelsIsRefusedByItsHeader() throws IOException {
        byte[] huge = Samples.png(60_000, 60_000, 8, 6, "IDAT", Samples.deflated(new byte[1000]));
        byte[] justTooLarge = Samples.png(10_001, 10_000, 1, 0, "IDAT", Samples.deflated(new byte[1000]));

        for (byte[] content : List.of(huge, justTooLarge)) {
            assertThat(preview("huge", content, Previews.Size.SMALL)).isInstanceOfSatisfying(Preview.None.class,
                    none -> assertThat(none.reason()).isEqualTo(Preview.Reason.TOO_LARGE));
        }
    }

    /** A JPEG in passes is kept whole outside of the heap, where no limit of Java's holds. */
    @Test
    void pictureInPassesTakesMemoryAsideAndSaysSo() throws IOException {
        byte[] plain = written(Samples.quarters(160, 80), ImageWriteParam.MODE_DISABLED);
        byte[] passes = written(Samples.quarters(160, 80), ImageWriteParam.MODE_DEFAULT);

        try (ImageFile one = ImageFile.open(Files.write(folder.resolve("one"), plain), FileKind.JPEG);
             ImageFile many = ImageFile.open(Files.write(folder.resolve("many"), passes), FileKind.JPEG)) {
            assertThat(one.bytesAside()).isZero();
            // two bytes for each coefficient; with 2 by 2 samples of light to one of each colour, 1.5 coefficients a pixel
            assertThat(many.bytesAside()).isEqualTo(160 * 80 * 2 * 6 / 4);
        }
        assertThat(preview("many", passes, Previews.Size.SMALL)).isInstanceOf(Preview.Ready.class);
    }

    private static byte[] written(BufferedImage image, int passes) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (var out = ImageIO.createImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setProgressiveMode(passes);
            writer.setOutput(out);
            writer.write(null, new javax.imageio.IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    @Test
    void oldestPreviewsAreLetGoWhenAllTogetherAreTooLarge() throws IOException {
        Path kept = Files.createDirectories(folder.resolve(".page/previews"));
        Path old = Files.write(kept.resolve("old-480.jpg"), new byte[5_000]);
        Path newer = Files.write(kept.resolve("newer-480.jpg"), new byte[5_000]);
        Path half = Files.write(kept.resolve("half-1.tmp"), new byte[10]);
        Files.setLastModifiedTime(old, FileTime.from(Instant.parse("2026-01-01T00:00:00Z")));
        Files.setLastModifiedTime(newer, FileTime.from(Instant.parse("2026-01-02T00:00:00Z")));
        Files.setLastModifiedTime(half, FileTime.from(Instant.parse("2026-01-01T00:00:00Z")));
        previews = new Previews(new Attachments(folder, Samples.CLOCK), 9_000);

        Preview made = preview("picture", Samples.jpeg(), Previews.Size.SMALL);

        assertThat(old).doesNotExist();
        assertThat(half).doesNotExist();
        assertThat(newer).exists();
        assertThat(((Preview.Ready) made).file()).exists();
        try (Stream<Path> files = Files.list(kept)) {
            assertThat(files).hasSize(2);
        }
    }

    @ParameterizedTest
    @EnumSource(Previews.Size.class)
    void manyAskedForAtOnceAreAllMade(Previews.Size size) {
        for (int i = 0; i < 8; i++) {
            write("picture-" + i, Samples.jpeg(i));
        }

        List<Preview> made = java.util.stream.IntStream.range(0, 32).parallel().mapToObj(i -> of("picture-" + i % 8, size)).toList();

        assertThat(made).allMatch(preview -> preview instanceof Preview.Ready ready && Files.isRegularFile(ready.file()));
        assertThat(made.stream().distinct()).hasSize(8);
    }

    private void write(String name, byte[] content) {
        try {
            Files.write(folder.resolve(name), content);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private Preview of(String name, Previews.Size size) {
        try {
            return previews.of(name, size);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
