package org.hearthrule.pictures;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;

/**
 * Makes both previews of a file and tells how it went and what it took: a program of its own for
 * {@link PreviewMemoryTest} and for measuring by hand.
 */
final class PreviewMain {

    private PreviewMain() { }

    /** @param args the folder of a book, then a path within it, then how often (once when left out) */
    public static void main(String[] args) throws Exception {
        Path folder = Path.of(args[0]);
        int times = args.length > 2 ? Integer.parseInt(args[2]) : 1;
        for (int i = 0; i < times; i++) {
            Previews previews = new Previews(new Attachments(folder, Clock.systemDefaultZone()));
            StringBuilder said = new StringBuilder();
            StringBuilder took = new StringBuilder();
            for (Previews.Size size : Previews.Size.values()) {
                long start = System.nanoTime();
                Preview preview = previews.of(args[1], size);
                took.append(' ').append((System.nanoTime() - start) / 1_000_000).append(" ms");
                if (preview instanceof Preview.Ready ready) {
                    said.append("READY ");
                    Files.delete(ready.file());
                } else {
                    said.append(((Preview.None) preview).reason()).append(' ');
                }
            }
            System.out.println(said.toString() + took);
        }
        Path status = Path.of("/proc/self/status");
        if (Files.isReadable(status)) {
            Files.readAllLines(status).stream().filter(line -> line.startsWith("VmHWM")).forEach(System.out::println);
        }
    }
}
