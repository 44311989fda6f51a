package org.hearthrule.pictures;

import java.time.LocalDate;
import java.time.LocalTime;

/**
 * A day that a picture may be of, offered to the parent and never taken for granted.
 *
 * @param day    at the place where the picture was taken
 * @param time   of that day, or null when it is not known
 * @param origin where it comes from
 * @param words  the same in words, to follow a colon: {@code the camera noted May 14, 2026, 16:02}
 */
public record DateOffer(LocalDate day, LocalTime time, Origin origin, String words) {

    /** Where an offered day comes from, the strongest first. */
    public enum Origin {
        /** Exif's DateTimeOriginal: when the picture was taken. */
        TAKEN,
        /** Exif's DateTimeDigitized: when it was stored as digital data, for a scan the day of scanning. */
        DIGITIZED,
        /** The name that the file had. */
        FILE_NAME
    }
}
