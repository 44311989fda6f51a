package org.hearthrule.page.browser;

import java.nio.file.Files;
import java.nio.file.Path;
import org.hearthrule.page.Visit;
import org.openqa.selenium.OutputType;

/** Makes the pictures that the README shows: {@code .pictures/make}. */
final class Screenshots {

    private Screenshots() { }

    public static void main(String[] arguments) throws Exception {
        Path target = Files.createDirectories(Path.of(arguments[0]));
        Path folder = Files.createTempDirectory("hearthrule-pictures-");
        try (Visit visit = Visit.demo(folder); Chromium chromium = new Chromium()) {
            chromium.driver().get(visit.server().newStartAddress());
            shoot(visit, chromium, "/checklist", "checklist", 1_000, 900, "light", target);
            shoot(visit, chromium, "/log", "log", 1_000, 900, "light", target);
            shoot(visit, chromium, "/year/2025-26?child=wren", "year", 1_000, 1_100, "light", target);
            shoot(visit, chromium, "/readiness?child=wren", "readiness", 1_000, 900, "light", target);
            shoot(visit, chromium, "/checklist", "checklist-dark-phone", 360, 800, "dark", target);
        }
    }

    private static void shoot(Visit visit, Chromium chromium, String path, String name, int width, int height, String theme,
                              Path target) throws Exception {
        chromium.size(width, height);
        chromium.theme(theme);
        chromium.driver().get(visit.address() + path);
        Files.write(target.resolve(name + ".png"), chromium.driver().getScreenshotAs(OutputType.BYTES));
    }
}
