package org.hearthrule.pictures;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes the notes of a camera as Exif 2.3 lays them out (4.5.2 and 4.6.2): a TIFF header, the 0th IFD with a pointer to
 * the Exif IFD (tag 34665) and one to the GPS IFD (34853), values of more than four bytes after each IFD.
 */
final class ExifBytes {

    private static final int ASCII = 2;
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int RATIONAL = 5;

    private final ByteOrder order;
    private final List<Entry> main = new ArrayList<>();
    private final List<Entry> exif = new ArrayList<>();
    private final List<Entry> gps = new ArrayList<>();

    private record Entry(int tag, int type, int count, byte[] value) { }

    ExifBytes(ByteOrder order) {
        this.order = order;
    }

    static ExifBytes bigEndian() {
        return new ExifBytes(ByteOrder.BIG_ENDIAN);
    }

    ExifBytes orientation(int value) {
        main.add(new Entry(274, SHORT, 1, ByteBuffer.allocate(4).order(order).putShort((short) value).array()));
        return this;
    }

    ExifBytes original(String time) {
        return text(36867, time);
    }

    ExifBytes digitized(String time) {
        return text(36868, time);
    }

    /** Exif 2.31 added the distance from UTC. */
    ExifBytes originalOffset(String offset) {
        return text(36881, offset);
    }

    ExifBytes text(int tag, String text) {
        byte[] value = (text + "\0").getBytes(StandardCharsets.US_ASCII);
        exif.add(new Entry(tag, ASCII, value.length, value));
        return this;
    }

    /** A latitude in degrees, minutes, seconds. */
    ExifBytes north(int degrees, int minutes, int seconds) {
        gps.add(new Entry(1, ASCII, 2, new byte[] {'N', 0, 0, 0}));
        ByteBuffer value = ByteBuffer.allocate(24).order(order);
        for (int each : new int[] {degrees, minutes, seconds}) {
            value.putInt(each).putInt(1);
        }
        gps.add(new Entry(2, RATIONAL, 3, value.array()));
        return this;
    }

    /** Returns the TIFF part, as it stands in a PNG's eXIf and a WebP's EXIF. */
    byte[] tiff() {
        List<Entry> first = new ArrayList<>(main);
        int exifAt = 8 + size(main) + 12 * (exif.isEmpty() ? 0 : 1) + 12 * (gps.isEmpty() ? 0 : 1);
        int gpsAt = exifAt + (exif.isEmpty() ? 0 : size(exif));
        if (!exif.isEmpty()) {
            first.add(pointer(34665, exifAt));
        }
        if (!gps.isEmpty()) {
            first.add(pointer(34853, gpsAt));
        }
        ByteBuffer out = ByteBuffer.allocate(gpsAt + (gps.isEmpty() ? 0 : size(gps))).order(order);
        out.put((order == ByteOrder.BIG_ENDIAN ? "MM" : "II").getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
        for (List<Entry> ifd : List.of(first, exif, gps)) {
            if (!ifd.isEmpty()) {
                write(ifd, out);
            }
        }
        return out.array();
    }

    /** Returns a JPEG with these notes right after its first marker, in a segment APP1. */
    byte[] in(byte[] jpeg) {
        byte[] tiff = tiff();
        ByteBuffer out = ByteBuffer.allocate(jpeg.length + tiff.length + 10);
        out.put(jpeg, 0, 2).putShort((short) 0xFFE1).putShort((short) (tiff.length + 8));
        out.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff).put(jpeg, 2, jpeg.length - 2);
        return out.array();
    }

    private Entry pointer(int tag, int at) {
        return new Entry(tag, LONG, 1, ByteBuffer.allocate(4).order(order).putInt(at).array());
    }

    private static int size(List<Entry> ifd) {
        int size = 2 + 12 * ifd.size() + 4;
        for (Entry entry : ifd) {
            size += entry.value().length > 4 ? entry.value().length + entry.value().length % 2 : 0;
        }
        return size;
    }

    private static void write(List<Entry> ifd, ByteBuffer out) {
        int values = out.position() + 2 + 12 * ifd.size() + 4;
        out.putShort((short) ifd.size());
        for (Entry entry : ifd) {
            out.putShort((short) entry.tag()).putShort((short) entry.type()).putInt(entry.count());
            if (entry.value().length > 4) {
                out.putInt(values);
                values += entry.value().length + entry.value().length % 2;
            } else {
                out.put(java.util.Arrays.copyOf(entry.value(), 4));
            }
        }
        out.putInt(0);
        for (Entry entry : ifd) {
            if (entry.value().length > 4) {
                out.put(entry.value());
                if (entry.value().length % 2 == 1) {
                    out.put((byte) 0);
                }
            }
        }
    }
}
