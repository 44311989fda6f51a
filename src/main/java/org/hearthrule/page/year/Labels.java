package org.hearthrule.page.year;

import java.util.ArrayList;
import java.util.List;
import org.hearthrule.page.year.CurveDrawing.Label;

/** Puts labels where they cover no other: each has a few places to choose from, the best first. */
final class Labels {

    /** What a letter takes, generously; how high it stands above its line. */
    private static final double LETTER = 6.8;
    private static final double HEIGHT = 10;

    private final List<Label> placed = new ArrayList<>();
    private final List<Box> taken = new ArrayList<>();

    /** A place for a label: its text begins there, or ends there. */
    record Spot(double x, double y, boolean ends) {
        static Spot from(double x, double y) {
            return new Spot(x, y, false);
        }

        static Spot upTo(double x, double y) {
            return new Spot(x, y, true);
        }
    }

    private record Box(double left, double right, double top, double bottom) {
        boolean covers(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        boolean isInside() {
            return left >= 0 && right <= CurveDrawing.WIDTH && top >= 0;
        }
    }

    /** @param spots at least one; the last is taken where none is free */
    void put(String text, Spot... spots) {
        Spot chosen = spots[spots.length - 1];
        for (Spot spot : spots) {
            Box box = box(text, spot);
            if (box.isInside() && taken.stream().noneMatch(box::covers)) {
                chosen = spot;
                break;
            }
        }
        taken.add(box(text, chosen));
        placed.add(new Label(Num.of(chosen.x), Num.of(chosen.y), chosen.ends ? "end" : "start", text));
    }

    private static Box box(String text, Spot spot) {
        double width = text.length() * LETTER;
        double left = spot.ends ? spot.x - width : spot.x;
        return new Box(left, left + width, spot.y - HEIGHT, spot.y + 1);
    }

    List<Label> placed() {
        return List.copyOf(placed);
    }
}
