package org.hearthrule.pictures;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import net.coobird.thumbnailator.Thumbnails;
import net.coobird.thumbnailator.util.exif.ExifFilterUtils;
import net.coobird.thumbnailator.util.exif.Orientation;

/**
 * Makes a small upright JPEG of a large picture in little memory: of a picture that is much larger than needed only
 * every second, third … pixel is kept while it is read.
 */
final class Shrinking {

    /** The most pixels of a picture that is taken on. */
    static final long MOST_PIXELS = 100_000_000;

    /** Bytes of pixels in the heap; the library needs as much again to blend them. */
    private static final long MOST_BYTES = 20_000_000;
    private static final int BYTES_ON_PAPER = 4;
    private static final long MOST_BYTES_ASIDE = 128_000_000;
    private static final double QUALITY = 0.85;

    private Shrinking() { }

    /** Thrown for a picture that would take more memory than there is for it. */
    static final class TooLargeException extends IOException {
        private static final long serialVersionUID = 1L;
    }

    /**
     * Returns the small picture, as a JPEG.
     *
     * @param longest pixels of the longer side at most; a smaller picture keeps its size
     * @throws TooLargeException when it has too many pixels
     * @throws IOException       when it is damaged
     */
    static byte[] of(Path file, FileKind kind, int longest) throws IOException {
        int orientation = CameraNotes.read(file, kind).orientation();
        BufferedImage image;
        try (ImageFile source = ImageFile.open(file, kind)) {
            image = onPaper(source.read(step(source, longest)));
        }
        int now = Math.max(image.getWidth(), image.getHeight());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        var task = Thumbnails.of(image);
        if (now > longest) {
            task.size(longest, longest);
        } else {
            task.scale(1);
        }
        task.addFilter(ExifFilterUtils.getFilterForOrientation(Orientation.typeOf(orientation)))
                .outputFormat("jpg").outputQuality(QUALITY).toOutputStream(out);
        return out.toByteArray();
    }

    /** Returns which pixels to keep: twice as many as needed in each direction, so that the rest can be blended. */
    private static int step(ImageFile source, int longest) throws IOException {
        int width = source.width();
        int height = source.height();
        if ((long) width * height > MOST_PIXELS || source.bytesAside() > MOST_BYTES_ASIDE) {
            throw new TooLargeException();
        }
        int step = Math.max(1, Math.max(width, height) / (2 * longest));
        long bytes = source.bytesPerPixel() + (source.isPlain() ? 0 : BYTES_ON_PAPER);
        while (pixels(width, height, step) * bytes > MOST_BYTES) {
            step++;
        }
        return step;
    }

    private static long pixels(long width, long height, int step) {
        return (width + step - 1) / step * ((height + step - 1) / step);
    }

    /**
     * A JPEG knows no transparency: what is clear becomes paper, not black. Palettes and more than eight bits become plain
     * colours, since not all of the library knows them.
     */
    private static BufferedImage onPaper(BufferedImage image) {
        if (image.getType() == BufferedImage.TYPE_3BYTE_BGR) {
            return image;
        }
        BufferedImage paper = new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = paper.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, image.getWidth(), image.getHeight());
        pen.drawImage(image, 0, 0, null);
        pen.dispose();
        return paper;
    }
}
