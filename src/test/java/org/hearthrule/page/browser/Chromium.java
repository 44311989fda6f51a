package org.hearthrule.page.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;

/** A real, headless Chromium with an empty profile of its own. */
final class Chromium implements AutoCloseable {

    private static final List<String> DRIVERS = List.of("/usr/bin/chromedriver", "/usr/lib/chromium/chromedriver");

    private final ChromeDriver driver;
    private final Path profile;

    Chromium() {
        try {
            profile = Files.createTempDirectory("hearthrule-chromium-");
            Path driverFile = DRIVERS.stream().map(Path::of).filter(Files::isExecutable).findFirst().orElseThrow(() ->
                    new IllegalStateException("no chromedriver: these tests need Debian's packages chromium and chromium-driver"));
            ChromeDriverService service = new ChromeDriverService.Builder().usingDriverExecutable(driverFile.toFile()).build();
            ChromeOptions options = new ChromeOptions();
            options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                    "--disable-background-networking", "--disable-component-update", "--disable-sync", "--hide-scrollbars",
                    "--user-data-dir=" + profile);
            driver = new ChromeDriver(service, options);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        size(1_000, 1_200);
    }

    ChromeDriver driver() {
        return driver;
    }

    void size(int width, int height) {
        driver.manage().window().setSize(new Dimension(width, height));
        // a window has a least width; what the page sees is set apart
        driver.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height", height,
                "deviceScaleFactor", 1, "mobile", false));
    }

    void theme(String lightOrDark) {
        driver.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features",
                List.of(Map.of("name", "prefers-color-scheme", "value", lightOrDark))));
    }

    @Override
    public void close() {
        driver.quit();
        try (Stream<Path> files = Files.walk(profile)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | UncheckedIOException e) {
            // a process of the browser that still ends may write there; it is no test's matter
            return;
        }
    }
}
