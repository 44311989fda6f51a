package org.hearthrule.pictures;

import com.drew.imaging.ImageProcessingException;
import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.webp.WebpDirectory;
import com.drew.metadata.webp.WebpRiffHandler;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/**
 * What a camera wrote into a picture: days and which side is up. Where it was taken is not asked for.
 *
 * @param original  Exif's DateTimeOriginal as it stands there, or null
 * @param originalOffset its distance from UTC, such as {@code -04:00}, or null
 * @param digitized Exif's DateTimeDigitized, or null
 * @param digitizedOffset its distance from UTC, or null
 * @param orientation 1 to 8 as in Exif; 1 when nothing is said
 * @param width     in pixels, 0 when it is not known here
 * @param height    in pixels, 0 when it is not known here
 */
record CameraNotes(String original, String originalOffset, String digitized, String digitizedOffset, int orientation,
                   int width, int height) {

    /** Reads the notes of a picture; one without any, or with notes that make no sense, has none. */
    static CameraNotes read(Path file, FileKind kind) {
        Metadata metadata = new Metadata();
        try {
            switch (kind) {
                case JPEG -> {
                    try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
                        JpegMetadataReader.process(metadata, in, List.of(new ExifReader()));
                    }
                }
                case PNG -> Chunks.ofPng(file, Set.of("eXIf"),
                        (type, bytes) -> new ExifReader().extract(new ByteArrayReader(bytes), metadata));
                case WEBP -> {
                    WebpRiffHandler handler = new WebpRiffHandler(metadata);
                    Chunks.ofWebp(file, Set.of("VP8X", "VP8 ", "VP8L", "EXIF"), handler::processChunk);
                }
                default -> { }
            }
        } catch (ImageProcessingException | IOException | RuntimeException e) {
            // notes are made by many hands; a picture is not worse for those that nobody can read
        }
        return of(metadata);
    }

    private static CameraNotes of(Metadata metadata) {
        Directory days = metadata.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
        Directory main = metadata.getFirstDirectoryOfType(ExifIFD0Directory.class);
        Directory web = metadata.getFirstDirectoryOfType(WebpDirectory.class);
        return new CameraNotes(text(days, ExifDirectoryBase.TAG_DATETIME_ORIGINAL),
                text(days, ExifDirectoryBase.TAG_TIME_ZONE_ORIGINAL),
                text(days, ExifDirectoryBase.TAG_DATETIME_DIGITIZED),
                text(days, ExifDirectoryBase.TAG_TIME_ZONE_DIGITIZED), orientation(main),
                number(web, WebpDirectory.TAG_IMAGE_WIDTH), number(web, WebpDirectory.TAG_IMAGE_HEIGHT));
    }

    private static String text(Directory directory, int tag) {
        return directory == null ? null : directory.getString(tag);
    }

    private static int number(Directory directory, int tag) {
        Integer number = directory == null ? null : directory.getInteger(tag);
        return number == null ? 0 : number;
    }

    private static int orientation(Directory main) {
        int side = number(main, ExifDirectoryBase.TAG_ORIENTATION);
        return side >= 1 && side <= 8 ? side : 1;
    }
}
