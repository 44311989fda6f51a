package org.hearthrule.pictures;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Previews in a process of their own with little memory: that they fit cannot be seen where there is plenty. */
class PreviewMemoryTest {

    @TempDir
    private Path folder;

    @Test
    void photoOfTwelveMegapixelsNeedsNoMoreThan64MegabytesOfHeap() throws Exception {
        // given: noise, so that nothing about it is small
        Files.write(folder.resolve("photo.jpg"), photo(4000, 3000));

        // when
        String said = inAProcess("64m", "photo.jpg");

        // then
        assertThat(said).startsWith("READY READY");
    }

    /** The largest picture that is taken on: 99 million pixels, here of one bit each. */
    @Test
    void largestPictureFitsToo() throws Exception {
        byte[] line = new byte[1 + 11_000 / 8];
        byte[][] lines = new byte[9_000][];
        java.util.Arrays.fill(lines, line);
        Files.write(folder.resolve("plan.png"), Samples.png(11_000, 9_000, 1, 0, "IDAT", Samples.deflated(lines)));

        assertThat(inAProcess("64m", "plan.png")).startsWith("READY READY");
    }

    static byte[] photo(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        Random random = new Random(1);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int noise = random.nextInt(1 << 18);
                int red = x * 190 / width + (noise & 63);
                int green = y * 190 / height + (noise >> 6 & 63);
                image.setRGB(x, y, red << 16 | green << 8 | (red + green) / 3 + (noise >> 12 & 63));
            }
        }
        return Samples.bytes(image, "jpeg");
    }

    private String inAProcess(String heap, String name) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx" + heap,
                "-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path"), PreviewMain.class.getName(), folder.toString(), name)
                .redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes());
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return said;
    }
}
