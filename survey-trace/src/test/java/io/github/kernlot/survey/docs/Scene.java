package io.github.kernlot.survey.docs;

import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.docs.Sheet.Anchor;
import io.github.kernlot.survey.docs.Sheet.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Draws what lies in space on a sheet. Lengths are pixels, directions are vectors of the library. */
final class Scene {

    static final Vector ORIGIN = new Vector(0, 0, 0);

    private final Sheet sheet;
    private final Sight sight;
    private final double x;
    private final double y;

    /** A scene whose origin lies at a place of the sheet. */
    Scene(Sheet sheet, Sight sight, double x, double y) {
        this.sheet = sheet;
        this.sight = sight;
        this.x = x;
        this.y = y;
    }

    Sight sight() {
        return sight;
    }

    Point at(Vector place) {
        return new Point(x + place.dot(sight.right()), y - place.dot(sight.up()));
    }

    private List<Point> at(List<Vector> places) {
        return places.stream().map(this::at).toList();
    }

    void line(Pen pen, Vector... places) {
        sheet.line(pen, at(List.of(places)));
    }

    void line(Pen pen, List<Vector> places) {
        sheet.line(pen, at(places));
    }

    void area(Pen pen, List<Vector> places) {
        sheet.area(pen, at(places));
    }

    void arrow(Pen pen, Vector from, Vector to) {
        sheet.arrow(pen, at(List.of(from, to)));
    }

    void arrow(Pen pen, List<Vector> places) {
        sheet.arrow(pen, at(places));
    }

    /** Places on a circle, a degree or two apart, by what gives the direction of an angle. */
    static List<Vector> arc(Vector centre, double radius, double from, double to, DoubleFunction<Vector> direction) {
        int steps = (int) Math.max(8, Math.ceil(Math.abs(to - from) / 3));
        List<Vector> places = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            places.add(
                    centre.plus(direction.apply(from + (to - from) * i / steps).times(radius)));
        }
        return places;
    }

    /** The angle that a drawing is about, as an arrow from one direction to the other. */
    void angle(String colour, Vector centre, double radius, double from, double to, DoubleFunction<Vector> direction) {
        arrow(Pen.of(colour).wide(1.8), arc(centre, radius, from, to, direction));
    }

    void dot(String colour, Vector place) {
        sheet.circle(Pen.area(colour, 1), at(place), 3.2);
    }

    void ring(String colour, Vector place) {
        sheet.circle(Pen.of(colour).filled(Pen.PAPER, 1), at(place), 3.2);
    }

    /** Text beside a place: to the right of it, to the left of it or centred, by the sign of the shift. */
    void label(Vector place, double right, double down, String text, String colour) {
        Anchor anchor = right > 0 ? Anchor.START : right < 0 ? Anchor.END : Anchor.MIDDLE;
        sheet.text(at(place).plus(right, down), text, anchor, colour);
    }

    /** An eye that looks along a direction. */
    void eye(Vector place, Vector towards) {
        double right = towards.dot(sight.right());
        double down = -towards.dot(sight.up());
        double length = Math.sqrt(right * right + down * down);
        sheet.eye(at(place), right / length, down / length);
    }

    /** A horizontal square that stands for the ground, and its edge. */
    void ground(double half) {
        area(
                Pen.of(Pen.GROUND).wide(0.8).filled(Pen.GROUND, 0.1),
                List.of(
                        new Vector(half, half, 0),
                        new Vector(half, -half, 0),
                        new Vector(-half, -half, 0),
                        new Vector(-half, half, 0)));
    }
}
