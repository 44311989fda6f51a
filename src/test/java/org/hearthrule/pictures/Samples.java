package org.hearthrule.pictures;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;

/** Files made for the tests. */
final class Samples {

    /** Noon on May 20, 2026. */
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-20T12:00:00Z"), ZoneOffset.UTC);

    static final byte[] PDF = "%PDF-1.7\n%âãÏÓ\n1 0 obj\n".getBytes(StandardCharsets.ISO_8859_1);

    private Samples() { }

    /** Returns a picture with a colour in each quarter: red, green above; blue, yellow below. */
    static BufferedImage quarters(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        Color[] colors = {Color.RED, Color.GREEN, Color.BLUE, Color.YELLOW};
        for (int i = 0; i < 4; i++) {
            pen.setColor(colors[i]);
            pen.fillRect(i % 2 * width / 2, i / 2 * height / 2, width - width / 2, height - height / 2);
        }
        pen.dispose();
        return image;
    }

    static byte[] bytes(BufferedImage image, String format) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(image, format, out)) {
                throw new IllegalArgumentException("cannot be written as " + format);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    static byte[] jpeg() {
        return bytes(quarters(60, 40), "jpeg");
    }

    /** Returns a small JPEG whose content differs for each number. */
    static byte[] jpeg(int number) {
        BufferedImage image = quarters(60, 40);
        for (int bit = 0; bit < 16; bit++) {
            if ((number >> bit & 1) == 1) {
                image.getGraphics().fillRect(bit % 4 * 15, bit / 4 * 10, 12, 8);
            }
        }
        return bytes(image, "jpeg");
    }

    static Upload upload(String name, byte[] content) {
        return new Upload(name, () -> new ByteArrayInputStream(content));
    }

    /** Returns a PNG with these parts (ISO/IEC 15948 5.3) between its beginning and its end. */
    static byte[] png(int width, int height, int bits, int colorType, Object... parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});
        ByteArrayOutputStream header = new ByteArrayOutputStream();
        try (DataOutputStream data = new DataOutputStream(header)) {
            data.writeInt(width);
            data.writeInt(height);
            data.write(new byte[] {(byte) bits, (byte) colorType, 0, 0, 0});
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        part(out, "IHDR", header.toByteArray());
        for (int i = 0; i < parts.length; i += 2) {
            part(out, (String) parts[i], (byte[]) parts[i + 1]);
        }
        part(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    static byte[] deflated(byte[]... content) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflater = new DeflaterOutputStream(out)) {
            for (byte[] each : content) {
                deflater.write(each);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static void part(ByteArrayOutputStream out, String type, byte[] data) {
        byte[] name = type.getBytes(StandardCharsets.ISO_8859_1);
        CRC32 sum = new CRC32();
        sum.update(name);
        sum.update(data);
        try (DataOutputStream to = new DataOutputStream(out)) {
            to.writeInt(data.length);
            to.write(name);
            to.write(data);
            to.writeInt((int) sum.getValue());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
