package org.hearthrule.pictures;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a picture tells of itself. The day on which its file was written is no part of it, and neither is the place where
 * it was taken.
 *
 * @param kind        what it is
 * @param width       pixels in a line as they are stored, before it is turned upright; 0 when not known
 * @param height      lines as they are stored; 0 when not known
 * @param orientation 1 to 8: which side of the stored picture is up (Exif 2.3, tag 274); 1 when nothing is said
 * @param offers      days it may be of, the strongest first; one from the camera at most, one from the name at most
 * @param notes       whole sentences about days that are not offered, and about damage
 */
public record PictureFacts(FileKind kind, int width, int height, int orientation, List<DateOffer> offers,
                           List<String> notes) {

    /** Exif 2.3, tag 36867: "YYYY:MM:DD HH:MM:SS"; some programs write other marks between the numbers. */
    private static final Pattern TIME = Pattern.compile(
            "(\\d{4})[:/-](\\d{2})[:/-](\\d{2})[ T](\\d{2}):(\\d{2}):(\\d{2}).*", Pattern.DOTALL);
    private static final Pattern OFFSET = Pattern.compile("[+-]\\d{2}:\\d{2}");
    private static final Pattern BLANK = Pattern.compile("[\\s:\\x000]*");
    private static final int FIRST_TURNED = 5;

    /** @return pixels in a line when it is upright */
    public int uprightWidth() {
        return orientation < FIRST_TURNED ? width : height;
    }

    /** @return lines when it is upright */
    public int uprightHeight() {
        return orientation < FIRST_TURNED ? height : width;
    }

    /** @return the day to offer first */
    public Optional<DateOffer> offer() {
        return offers.stream().findFirst();
    }

    /**
     * Reads what a picture or scan tells of itself. A damaged one only tells less.
     *
     * @param name  the name it had at home, or null
     * @param clock tells today: a later day is not offered
     */
    public static PictureFacts read(Path file, FileKind kind, String name, Clock clock) {
        CameraNotes notes = CameraNotes.read(file, kind);
        DayCheck days = new DayCheck(LocalDate.now(clock));
        look(notes.original(), notes.originalOffset(), DateOffer.Origin.TAKEN, days);
        if (!days.hasOffer()) {
            look(notes.digitized(), notes.digitizedOffset(), DateOffer.Origin.DIGITIZED, days);
        }
        NameDates.look(OriginalName.shown(name), days);
        int width = notes.width();
        int height = notes.height();
        if (kind.hasPreview()) {
            try (ImageFile image = ImageFile.open(file, kind)) {
                width = image.width();
                height = image.height();
            } catch (IOException e) {
                days.note("picture.note.damaged");
            }
        }
        return new PictureFacts(kind, width, height, notes.orientation(), days.offers(), days.notes());
    }

    private static void look(String noted, String offset, DateOffer.Origin origin, DayCheck days) {
        if (noted == null || BLANK.matcher(noted).matches()) {
            return; // left blank, a day is unknown (Exif 2.3, tag 36867); noughts are widespread for the same
        }
        Matcher parts = TIME.matcher(noted);
        LocalDateTime time = parts.matches() ? time(parts) : null;
        if (time == null) {
            days.note("picture.note.no-day");
            return;
        }
        String zone = offset != null && OFFSET.matcher(offset.strip()).matches() ? offset.strip() : null;
        days.found(time.toLocalDate(), time.toLocalTime(), zone, origin, null);
    }

    private static LocalDateTime time(Matcher parts) {
        int[] numbers = new int[6];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = Integer.parseInt(parts.group(i + 1));
        }
        try {
            return LocalDateTime.of(numbers[0], numbers[1], numbers[2], numbers[3], numbers[4], numbers[5]);
        } catch (DateTimeException e) {
            return null;
        }
    }
}
