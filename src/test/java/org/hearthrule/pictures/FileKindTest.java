package org.hearthrule.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FileKindTest {

    @Test
    void picturesWrittenByJavaAreKnown() {
        BufferedImage image = Samples.quarters(8, 8);

        assertThat(FileKind.of(Samples.bytes(image, "jpeg"))).contains(FileKind.JPEG);
        assertThat(FileKind.of(Samples.bytes(image, "png"))).contains(FileKind.PNG);
        assertThat(FileKind.of(Samples.bytes(image, "gif"))).contains(FileKind.GIF);
        assertThat(FileKind.of(Samples.PDF)).contains(FileKind.PDF);
    }

    // RFC 9649, 2.4: "RIFF", a length, "WEBP"
    @Test
    void webpIsKnownByItsTwoWords() {
        assertThat(FileKind.of("RIFF\1\2\3\4WEBPVP8 ".getBytes(StandardCharsets.ISO_8859_1))).contains(FileKind.WEBP);
        assertThat(FileKind.of("RIFF\1\2\3\4WAVEfmt ".getBytes(StandardCharsets.ISO_8859_1))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\u00FF", "\u00FF\u00D8", "\u0089PNG", "GIF88a", "RIFF", "%PDF", " %PDF-1.7", "PNG"})
    void partOfABeginningIsNoBeginning(String head) {
        assertThat(FileKind.of(head.getBytes(StandardCharsets.ISO_8859_1))).isEmpty();
    }

    // the brands of image/heic, image/heif, image/heic-sequence and image/heif-sequence, as registered with IANA
    @ParameterizedTest
    @ValueSource(strings = {"heic", "heix", "heim", "heis", "mif1", "hevc", "hevx", "hevm", "hevs", "msf1"})
    void heicIsKnownByEachOfItsBrandsAndIsNotTaken(String brand) {
        byte[] major = box(brand, "xxxx");
        byte[] compatible = box("xxxx", "yyyy", brand);

        assertThat(FileKind.of(major)).isEmpty();
        assertThat(OtherKind.of(major)).isEqualTo(OtherKind.HEIC);
        assertThat(OtherKind.of(compatible)).isEqualTo(OtherKind.HEIC);
    }

    @Test
    void otherFilesOfBoxesAreNotHeic() {
        assertThat(OtherKind.of(box("avif", "mif1", "miaf"))).isEqualTo(OtherKind.AVIF);
        assertThat(OtherKind.of(box("isom", "isom", "mp42"))).isEqualTo(OtherKind.VIDEO);
        assertThat(OtherKind.of(box("qt  "))).isEqualTo(OtherKind.VIDEO);
    }

    /** A brand that stands after the first box is picture data, and may spell anything. */
    @Test
    void brandsAreReadInTheFirstBoxOnly() {
        byte[] video = box("isom", "mp42");
        byte[] longer = java.util.Arrays.copyOf(video, video.length + 8);
        System.arraycopy("heicheic".getBytes(StandardCharsets.US_ASCII), 0, longer, video.length, 8);

        assertThat(OtherKind.of(longer)).isEqualTo(OtherKind.VIDEO);
    }

    private static byte[] box(String... brands) {
        String list = brands[0] + "\0\0\0\0" + String.join("", java.util.Arrays.asList(brands).subList(1, brands.length));
        return ("\0\0\0" + (char) (8 + list.length()) + "ftyp" + list).getBytes(StandardCharsets.ISO_8859_1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<svg xmlns='http://www.w3.org/2000/svg'/>|SVG", "<?xml version='1.0'?>  <svg>|SVG", "<!-- x --><svg>|SVG",
        "<!DOCTYPE html><title>x</title>|WEB_PAGE", "<HTML>|WEB_PAGE", "<script>alert(1)</script>|WEB_PAGE",
        "<?xml version='1.0'?><note/>|XML", "{\\rtf1 x}|RICH_TEXT", "MZ binary|PROGRAM", "#!/bin/sh|PROGRAM",
        "Dear superintendent,|TEXT", "ID3 song|SOUND"})
    void writtenFilesAreNamed(String content, OtherKind kind) {
        byte[] bytes = content.getBytes(StandardCharsets.UTF_8);

        assertThat(OtherKind.of(bytes)).isEqualTo(kind);
        assertThat(FileKind.of(bytes)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"49492A00,TIFF", "4D4D002A,TIFF", "424D36000000,BITMAP", "D0CF11E0A1B11AE1,OLD_OFFICE", "1F8B08,ARCHIVE",
        "7F454C46,PROGRAM", "00010203,UNKNOWN", "C0C1F5FFFE,UNKNOWN"})
    void filesOfBytesAreNamed(String hex, OtherKind kind) {
        assertThat(OtherKind.of(HexFormat.of().parseHex(hex))).isEqualTo(kind);
    }

    @Test
    void whatLiesInAZipTellsWhatItIs() throws IOException {
        assertThat(OtherKind.of(zip("[Content_Types].xml", "_rels/.rels", "word/document.xml"))).isEqualTo(OtherKind.WORD);
        assertThat(OtherKind.of(zip("[Content_Types].xml", "xl/workbook.xml"))).isEqualTo(OtherKind.TABLE);
        assertThat(OtherKind.of(zip("[Content_Types].xml", "ppt/presentation.xml"))).isEqualTo(OtherKind.SLIDES);
        assertThat(OtherKind.of(zip("photo.jpg"))).isEqualTo(OtherKind.ARCHIVE);
    }

    private static byte[] zip(String... names) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (String name : names) {
                out.putNextEntry(new ZipEntry(name));
                out.write(name.getBytes(StandardCharsets.UTF_8));
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}
