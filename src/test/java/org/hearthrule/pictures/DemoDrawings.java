package org.hearthrule.pictures;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Consumer;
import javax.imageio.ImageIO;

/**
 * Draws the invented photos and scans of the demo family's work, the same each time: {@code java DemoDrawings.java
 * test-fixtures/books/tennick-landing/photos}. Lines shake a little, as a hand does; there are no letters, since fonts
 * differ from machine to machine.
 */
final class DemoDrawings {

    private static final int WIDTH = 640;
    private static final int HEIGHT = 460;
    private static final Color PAPER = new Color(0xF7F1E1);
    private static final Color PENCIL = new Color(0x3A3733);
    private static final Color WATER = new Color(0x6F95A8);
    private static final Color NIGHT = new Color(0x1E2A3E);
    private static final Color LAMP = new Color(0xEBCB6B);
    private static final Color RUST = new Color(0xA65A3A);

    private final BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    private final Graphics2D pen = image.createGraphics();
    private final Random hand;

    private DemoDrawings(Color paper, long seed) {
        hand = new Random(seed);
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setColor(paper);
        pen.fillRect(0, 0, WIDTH, HEIGHT);
    }

    public static void main(String[] folder) throws IOException {
        Path to = Files.createDirectories(Path.of(folder[0]));
        Map<String, Consumer<DemoDrawings>> all = new TreeMap<>(Map.of(
                "2024-09-05-heron", DemoDrawings::heron, "2025-07-24-mail-receipt", DemoDrawings::mailReceipt,
                "2025-08-13-meteors", DemoDrawings::meteors,
                "2025-08-22-milky-way", DemoDrawings::milkyWay, "2025-08-29-landing", DemoDrawings::landing,
                "2025-09-30-moon-page", DemoDrawings::moonPage, "2025-10-16-gears", DemoDrawings::gears,
                "2026-02-09-curve", DemoDrawings::curve, "undated-ferry", drawing -> drawing.ferry(false),
                "undated-fog", drawing -> drawing.ferry(true)));
        for (Map.Entry<String, Consumer<DemoDrawings>> one : all.entrySet()) {
            boolean night = one.getKey().contains("milky");
            DemoDrawings drawing = new DemoDrawings(night ? NIGHT : PAPER, one.getKey().hashCode());
            one.getValue().accept(drawing);
            ImageIO.write(drawing.image, "jpg", to.resolve(one.getKey() + ".jpg").toFile());
        }
    }

    private void line(Color color, double thick, double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(shaken(points[0]), shaken(points[1]));
        for (int i = 2; i < points.length; i += 2) {
            double middleX = (points[i - 2] + points[i]) / 2;
            double middleY = (points[i - 1] + points[i + 1]) / 2;
            path.quadTo(shaken(middleX), shaken(middleY), shaken(points[i]), shaken(points[i + 1]));
        }
        pen.setColor(color);
        pen.setStroke(new BasicStroke((float) thick, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        pen.draw(path);
    }

    private double shaken(double at) {
        return at + hand.nextGaussian() * 1.2;
    }

    private void disc(Color color, double x, double y, double radius) {
        pen.setColor(color);
        pen.fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }

    private void ring(double x, double y, double radius) {
        double[] points = new double[2 * 33];
        for (int i = 0; i <= 32; i++) {
            points[2 * i] = x + radius * Math.cos(i * Math.PI / 16);
            points[2 * i + 1] = y + radius * Math.sin(i * Math.PI / 16);
        }
        line(PENCIL, 2, points);
    }

    private void water(int from) {
        for (int y = from; y < HEIGHT - 10; y += 18) {
            for (int x = 20 + (y % 4) * 9; x < WIDTH - 60; x += 84) {
                line(WATER, 2, x, y, x + 16, y - 5, x + 32, y, x + 48, y - 5);
            }
        }
    }

    private void heron() {
        water(350);
        line(PENCIL, 3, 312, 270, 305, 360, 300, 420);
        line(PENCIL, 3, 335, 268, 340, 330, 322, 352);
        line(new Color(0x74859A), 30, 270, 255, 330, 235, 385, 215);
        line(new Color(0x4E5D73), 9, 255, 272, 320, 262, 390, 222);
        line(new Color(0x74859A), 12, 385, 212, 425, 180, 402, 140, 416, 95);
        disc(new Color(0x74859A), 420, 88, 17);
        line(LAMP.darker(), 6, 434, 88, 505, 98);
        line(PENCIL, 4, 412, 78, 376, 64);
        disc(PENCIL, 425, 84, 3);
        for (int x = 60; x < 220; x += 19) {
            line(new Color(0x7C8A4E), 4, x, 430, x + 5, 330, x + 20, 240 + x % 50);
        }
    }

    /** A green card with a stamp: lines stand for words. */
    private void mailReceipt() {
        Color green = new Color(0x7FA287);
        line(green, 6, 60, 70, 580, 70, 580, 390, 60, 390, 60, 70);
        line(green, 2, 330, 70, 330, 390);
        for (int y = 120; y < 360; y += 44) {
            line(PENCIL, 3, 90, y, 90 + 200 - y % 60, y - 2);
            line(green, 2, 84, y + 12, 310, y + 12);
        }
        ring(455, 180, 62);
        ring(455, 180, 44);
        line(PENCIL, 5, 400, 168, 510, 168);
        line(PENCIL, 5, 404, 192, 506, 192);
        line(NIGHT, 3, 360, 330, 400, 300, 420, 345, 455, 305, 480, 340, 540, 318);
        line(green, 2, 352, 352, 556, 352);
    }

    private void meteors() {
        int[] counted = {7, 11, 16, 5, 9};
        Color[] colors = {RUST, WATER, NIGHT, LAMP.darker(), new Color(0x7C8A4E)};
        line(PENCIL, 3, 80, 40, 80, 400, 600, 400);
        for (int i = 1; i <= 16; i++) {
            line(PENCIL, 1, 72, 400 - 21 * i, 80, 400 - 21 * i);
        }
        for (int i = 0; i < counted.length; i++) {
            int x = 120 + i * 95;
            for (int y = 400 - 21 * counted[i]; y < 398; y += 5) {
                line(colors[i], 4, x, y + 2, x + 56, y + 3);
            }
            line(PENCIL, 2, x, 400, x, 400 - 21 * counted[i], x + 58, 400 - 21 * counted[i], x + 58, 400);
        }
    }

    private void milkyWay() {
        for (int i = 0; i < 420; i++) {
            double along = hand.nextDouble();
            double x = along * WIDTH;
            double y = 60 + along * 230 + hand.nextGaussian() * 46;
            disc(new Color(0xDDE3EE), x, y, 0.6 + hand.nextDouble() * 1.1);
        }
        line(NIGHT, 15, 130, 110, 300, 165, 460, 230);
        for (int i = 0; i < 60; i++) {
            disc(Color.WHITE, hand.nextInt(WIDTH), hand.nextInt(330), 1 + hand.nextDouble());
        }
        pen.setColor(new Color(0x0E141F));
        pen.fill(new Ellipse2D.Double(-80, 340, 520, 320));
        pen.fill(new Ellipse2D.Double(330, 380, 460, 240));
        pen.fill(new Ellipse2D.Double(168, 300, 90, 90));
        line(LAMP, 4, 214, 304, 236, 322);
    }

    private void landing() {
        for (int x = 20; x < WIDTH; x += 20) {
            line(new Color(0xD9D2BE), 1, x, 8, x, HEIGHT - 8);
        }
        for (int y = 20; y < HEIGHT; y += 20) {
            line(new Color(0xD9D2BE), 1, 8, y, WIDTH - 8, y);
        }
        line(WATER, 5, 180, 10, 205, 150, 190, 300, 215, 450);
        line(WATER, 5, 440, 10, 425, 150, 450, 300, 430, 450);
        line(PENCIL, 3, 120, 200, 240, 200, 240, 260, 120, 260, 120, 200);
        for (int x = 132; x < 240; x += 12) {
            line(PENCIL, 1, x, 200, x, 260);
        }
        line(PENCIL, 3, 410, 205, 520, 205, 520, 255, 410, 255, 410, 205);
        line(RUST, 2, 240, 230, 410, 230);
        line(PENCIL, 3, 290, 208, 360, 208, 360, 252, 290, 252, 290, 208);
        line(PENCIL, 3, 40, 110, 110, 110, 110, 170, 40, 170, 40, 110, 75, 80, 110, 110);
        line(PENCIL, 3, 60, 420, 160, 420);
        for (int x = 60; x <= 160; x += 20) {
            line(PENCIL, 2, x, 412, x, 428);
        }
        line(PENCIL, 3, 570, 110, 570, 40, 556, 62);
        line(PENCIL, 3, 570, 40, 584, 62);
    }

    private void moonPage() {
        for (int night = 0; night < 21; night++) {
            int x = 62 + night % 7 * 84;
            int y = 100 + night / 7 * 116;
            line(PENCIL, 1.5, x - 38, y - 48, x + 38, y - 48, x + 38, y + 48, x - 38, y + 48, x - 38, y - 48);
            if (night % 9 == 5) {
                line(WATER, 4, x - 22, y + 6, x - 6, y - 8, x + 10, y + 4, x + 24, y - 6);
                continue;
            }
            double lit = Math.sin(Math.PI * (night + 0.5) / 21);
            pen.setClip(new Ellipse2D.Double(x - 28, y - 28, 56, 56));
            disc(LAMP, x, y, 28);
            disc(NIGHT, x + (night < 10 ? -1 : 1) * 56 * lit, y, 28);
            pen.setClip(null);
            ring(x, y, 28);
        }
    }

    private void gears() {
        gear(210, 240, 120, 24);
        gear(393, 240, 60, 12);
        gear(485, 160, 60, 12);
        line(RUST, 3, 160, 90, 210, 72, 262, 88, 250, 74);
        line(RUST, 3, 262, 88, 246, 96);
        line(RUST, 3, 430, 338, 393, 346, 356, 334, 368, 346);
        line(RUST, 3, 356, 334, 372, 326);
    }

    private void gear(double x, double y, double radius, int teeth) {
        double[] points = new double[2 * (4 * teeth + 1)];
        for (int i = 0; i <= 4 * teeth; i++) {
            double far = i % 4 < 2 ? radius + 8 : radius - 8;
            double angle = 2 * Math.PI * i / (4 * teeth);
            points[2 * i] = x + far * Math.cos(angle);
            points[2 * i + 1] = y + far * Math.sin(angle);
        }
        line(PENCIL, 2, points);
        ring(x, y, radius * 0.2);
        for (int i = 0; i < 5; i++) {
            double angle = 2 * Math.PI * i / 5;
            line(PENCIL, 2, x + radius * 0.2 * Math.cos(angle), y + radius * 0.2 * Math.sin(angle),
                    x + radius * 0.85 * Math.cos(angle), y + radius * 0.85 * Math.sin(angle));
        }
    }

    /** A variable star rises quickly and fades slowly; the dots are guesses by eye. */
    private void curve() {
        line(PENCIL, 3, 70, 30, 70, 410, 610, 410);
        for (int i = 0; i < 64; i++) {
            double phase = hand.nextDouble() * 2;
            double part = phase % 1;
            double bright = part < 0.28 ? part / 0.28 : 1 - (part - 0.28) / 0.72;
            disc(NIGHT, 80 + phase * 255, 350 - bright * 230 + hand.nextGaussian() * 15, 4);
        }
        line(RUST, 2.5, 80, 350, 151, 120, 335, 350, 406, 120, 590, 350);
    }

    private void ferry(boolean inFog) {
        water(330);
        line(PENCIL, 3, 0, 150, 320, 176, WIDTH, 150);
        line(PENCIL, 2, 230, 172, 240, 290);
        line(PENCIL, 2, 410, 172, 400, 290);
        pen.setColor(RUST);
        pen.fillRect(180, 292, 280, 34);
        line(PENCIL, 3, 150, 285, 180, 328, 460, 328, 490, 285);
        line(PENCIL, 3, 180, 292, 460, 292);
        line(PENCIL, 3, 290, 290, 290, 225, 350, 225, 350, 290);
        line(PENCIL, 3, 280, 226, 320, 204, 360, 226);
        disc(LAMP, 320, 252, 12);
        for (int x = 10; x < WIDTH; x += 46) {
            line(new Color(0x7C8A4E), 5, x, 132 + x % 13, x + 20, 96 + x % 31, x + 40, 132 + x % 11);
        }
        if (inFog) {
            for (int i = 0; i < 16; i++) {
                pen.setColor(new Color(0xEE, 0xEC, 0xE4, 70));
                pen.fill(new Ellipse2D.Double(hand.nextInt(WIDTH) - 260, 40 + hand.nextInt(300), 520, 110));
            }
        }
    }
}
