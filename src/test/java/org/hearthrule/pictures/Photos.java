package org.hearthrule.pictures;

/** Photos for tests of other packages. */
public final class Photos {

    private Photos() { }

    /** @return a small JPEG in which the camera noted a time such as {@code 2026:05:14 16:02:00} */
    public static byte[] taken(String time, int number) {
        return ExifBytes.bigEndian().original(time).in(Samples.jpeg(number));
    }

    /** @return a small JPEG without any notes of a camera */
    public static byte[] plain(int number) {
        return Samples.jpeg(number);
    }
}
