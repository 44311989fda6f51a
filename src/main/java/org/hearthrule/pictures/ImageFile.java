package org.hearthrule.pictures;

import com.drew.imaging.ImageProcessingException;
import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.jpeg.JpegComponent;
import com.drew.metadata.jpeg.JpegDirectory;
import com.drew.metadata.jpeg.JpegReader;
import java.awt.image.BufferedImage;
import java.io.BufferedInputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.FileImageInputStream;

/**
 * A picture's file opened for reading. Its size is known from its header, before a single pixel takes up memory.
 *
 * <p>Any fault of the picture is an IOException. Not safe for use by several threads at once.
 */
final class ImageFile implements Closeable {

    static {
        // nothing is ever shown on a screen here; without this a Mac puts a second program into its dock
        if (System.getProperty("java.awt.headless") == null) {
            System.setProperty("java.awt.headless", "true");
        }
    }

    private static final int UNSURE = 8;
    private static final int PROGRESSIVE = 2;
    private static final int BYTES_OF_A_COEFFICIENT = 2;

    private final Path file;
    private final FileKind kind;
    private final ImageReader reader;
    private final FileImageInputStream in;

    private ImageFile(Path file, FileKind kind, ImageReader reader, FileImageInputStream in) {
        this.file = file;
        this.kind = kind;
        this.reader = reader;
        this.in = in;
    }

    /** Opens a file of a kind that has previews. */
    static ImageFile open(Path file, FileKind kind) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName(kind.name().toLowerCase(Locale.ROOT)).next();
        FileImageInputStream in = new FileImageInputStream(file.toFile());
        // texts in a picture are left unread: they may unpack to gigabytes
        reader.setInput(in, true, true);
        return new ImageFile(file, kind, reader, in);
    }

    int width() throws IOException {
        return guarded(() -> reader.getWidth(0));
    }

    int height() throws IOException {
        return guarded(() -> reader.getHeight(0));
    }

    /** Returns how many bytes the picture takes for each pixel that is kept, as it is read. */
    int bytesPerPixel() throws IOException {
        return guarded(() -> {
            var types = reader.getImageTypes(0);
            return types.hasNext() ? (types.next().getColorModel().getPixelSize() + 7) / 8 : UNSURE;
        });
    }

    /** Returns whether it is read as three plain bytes of colour for each pixel. */
    boolean isPlain() throws IOException {
        return guarded(() -> {
            var types = reader.getImageTypes(0);
            return types.hasNext() && types.next().getBufferedImageType() == BufferedImage.TYPE_3BYTE_BGR;
        });
    }

    /**
     * Returns how many bytes the reader sets aside outside of the heap. A JPEG that comes in passes (ITU-T T.81 G) is
     * kept whole until the last of them; others are read line by line.
     */
    long bytesAside() throws IOException {
        if (kind != FileKind.JPEG) {
            return 0;
        }
        Metadata metadata = new Metadata();
        try (InputStream bytes = new BufferedInputStream(Files.newInputStream(file))) {
            JpegMetadataReader.process(metadata, bytes, List.of(new JpegReader()));
        } catch (ImageProcessingException | RuntimeException e) {
            throw new IOException("no header of a JPEG", e);
        }
        JpegDirectory header = metadata.getFirstDirectoryOfType(JpegDirectory.class);
        Integer passes = header == null ? null : header.getInteger(JpegDirectory.TAG_COMPRESSION_TYPE);
        if (passes == null || passes != PROGRESSIVE) {
            return 0;
        }
        long all = 0;
        long most = 1;
        for (int i = 0; header.getComponent(i) != null; i++) {
            JpegComponent part = header.getComponent(i);
            long samples = (long) part.getHorizontalSamplingFactor() * part.getVerticalSamplingFactor();
            all += samples;
            most = Math.max(most, samples);
        }
        return (long) width() * height() * BYTES_OF_A_COEFFICIENT * all / most;
    }

    /** Reads every so-manieth pixel of every so-manieth line. */
    BufferedImage read(int step) throws IOException {
        return guarded(() -> {
            ImageReadParam param = reader.getDefaultReadParam();
            param.setSourceSubsampling(step, step, 0, 0);
            return reader.read(0, param);
        });
    }

    /** Readers meet a damaged picture with exceptions of many kinds. */
    private static <T> T guarded(Reading<T> reading) throws IOException {
        try {
            return reading.run();
        } catch (RuntimeException e) {
            throw new IOException("a damaged picture", e);
        }
    }

    @Override
    public void close() throws IOException {
        reader.dispose();
        in.close();
    }

    private interface Reading<T> {
        T run() throws IOException;
    }
}
