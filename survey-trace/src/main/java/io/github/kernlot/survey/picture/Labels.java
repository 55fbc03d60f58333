package io.github.kernlot.survey.picture;

import java.util.ArrayList;
import java.util.List;

/** Finds room for names beside the things that they name, without one lying on another. */
final class Labels {

    private record Box(double left, double top, double right, double bottom) {
        boolean meets(Box other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        boolean holds(Box other) {
            return left <= other.left && top <= other.top && other.right <= right && other.bottom <= bottom;
        }
    }

    private final Box room;
    private final List<Box> taken = new ArrayList<>();

    Labels(double left, double top, double right, double bottom) {
        room = new Box(left, top, right, bottom);
    }

    /** Keeps names away from a thing. */
    void avoid(Point point, double radius) {
        taken.add(new Box(point.x() - radius, point.y() - radius, point.x() + radius, point.y() + radius));
    }

    /** Writes a name where there is room beside a place; nowhere if there is none, and then says false. */
    boolean write(Svg svg, Point beside, String name, double fontSize) {
        String text = Svg.shortened(name, fontSize, 150);
        double width = Svg.widthOf(text, fontSize);
        double ascent = 0.75 * fontSize;
        for (double away = 8; away <= 40; away += 8) {
            for (double[] side :
                    new double[][] {{1, 0}, {-1, 0}, {0, -1}, {0, 1}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}}) {
                double left = beside.x() + side[0] * away - (1 - side[0]) / 2 * width;
                double base = beside.y() + ascent / 2 + side[1] * (away + ascent / 2);
                Box box = new Box(left - 2, base - ascent - 2, left + width + 2, base + 4);
                if (room.holds(box) && taken.stream().noneMatch(box::meets)) {
                    taken.add(box);
                    // anchored on the side of the thing, so that a wrong estimate of the width opens no gap there
                    svg.text(
                            left + (1 - side[0]) / 2 * width,
                            base,
                            text,
                            "text-anchor",
                            side[0] > 0 ? "start" : side[0] < 0 ? "end" : "middle",
                            "font-size",
                            Svg.number(fontSize));
                    return true;
                }
            }
        }
        return false;
    }
}
