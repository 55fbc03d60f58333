package io.github.kernlot.survey.docs;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.DirectedCoreLine;
import io.github.kernlot.orientation.HoleSense;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Core as a cylinder in a scene, with what is drawn and measured on it. Where depends on {@link CoreFrame} alone. */
final class CoreDrawing {

    private final Scene scene;
    private final CoreFrame frame;
    private final double radius;
    private final Vector axis;

    /** Core whose middle lies at the origin of the scene. */
    CoreDrawing(Scene scene, CoreFrame frame, double radius) {
        this.scene = scene;
        this.frame = frame;
        this.radius = radius;
        this.axis = Sight.vector(frame.direction());
    }

    Vector axis() {
        return axis;
    }

    /** A place on the wall, clockwise of the reference line, so far down-hole of the middle. */
    Vector wall(double angle, double along) {
        return axis.times(along).plus(Sight.wall(frame, angle).times(radius));
    }

    /** The core as one sees it who looks along it. */
    void end() {
        scene.area(Pen.of(Pen.INK).wide(1.2).filled(Pen.CORE, 1), round(angle -> 0));
    }

    private boolean isBefore(double angle) {
        // seen along the core, nothing stands before anything
        return Sight.wall(frame, angle).dot(scene.sight().towardsOnlooker()) > -1e-9;
    }

    /** The direction of an arrow through the core. */
    Vector arrow(DirectedCoreLine line) {
        return Sight.vector(frame.toGeographic(line));
    }

    /** The direction of a line from the middle of the core by its angle to the axis and its delta. */
    Vector arrow(double axisAngle, double delta) {
        return arrow(DirectedCoreLine.ofAxisAngleAndDelta(axisAngle, Degrees.wrap360(delta)));
    }

    /** The direction of a line in a plane. */
    Vector inPlane(CorePlane plane, double gamma) {
        return Sight.vector(frame.toGeographic(plane.directedLine(Degrees.wrap360(gamma))));
    }

    /** The pole of a plane on its down-hole side. */
    Vector normal(CorePlane plane) {
        return arrow(plane.facing(HoleSense.DOWN_HOLE));
    }

    /** Where a line in a plane through the middle meets the wall. */
    Vector onWall(CorePlane plane, double gamma) {
        Vector along = inPlane(plane, gamma);
        return along.times(radius / along.across(axis).length());
    }

    /** Where the plane through the middle cuts the wall. */
    DoubleUnaryOperator trace(CorePlane plane) {
        Vector normal = normal(plane);
        return angle -> -radius * normal.dot(Sight.wall(frame, angle)) / normal.dot(axis);
    }

    /** The core between two ends, each given by its distance from the middle at an angle. */
    void body(DoubleUnaryOperator upper, DoubleUnaryOperator lower) {
        double edge = Degrees.azimuth(
                Sight.wall(frame, 0).dot(scene.sight().towardsOnlooker()),
                -Sight.wall(frame, 90).dot(scene.sight().towardsOnlooker()));
        Pen rock = Pen.area(Pen.CORE, 1);
        scene.area(rock, round(lower));
        scene.area(
                rock,
                List.of(
                        wall(edge, upper.applyAsDouble(edge)),
                        wall(edge, lower.applyAsDouble(edge)),
                        wall(edge + 180, lower.applyAsDouble(edge + 180)),
                        wall(edge + 180, upper.applyAsDouble(edge + 180))));
        boolean upperFaces = axis.dot(scene.sight().towardsOnlooker()) < 0;
        Pen outline = Pen.of(Pen.INK).wide(1.2);
        scene.area(upperFaces ? Pen.area(Pen.FACE, 1) : rock, round(upper));
        for (double side : new double[] {edge, edge + 180}) {
            scene.line(outline, wall(side, upper.applyAsDouble(side)), wall(side, lower.applyAsDouble(side)));
        }
        scene.area(outline, round(upperFaces ? upper : lower));
        around(upperFaces ? lower : upper, 0, 360, 1, outline, null);
    }

    /** The core between two ends that are square to it. */
    void body(double upper, double lower) {
        body(angle -> upper, angle -> lower);
    }

    private List<Vector> round(DoubleUnaryOperator along) {
        List<Vector> places = new ArrayList<>();
        for (int angle = 0; angle < 360; angle += 4) {
            places.add(wall(angle, along.applyAsDouble(angle)));
        }
        return places;
    }

    /** A curve round the wall or outside it; what lies behind the core is drawn otherwise, or not at all. */
    private void around(
            DoubleUnaryOperator along, double from, double to, double swell, Pen before, @Nullable Pen behind) {
        int steps = (int) Math.ceil(Math.abs(to - from) / 2);
        List<Vector> run = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double angle = from + (to - from) * i / steps;
            double middle = angle + (to - from) / steps / 2;
            run.add(out(angle, along.applyAsDouble(angle), swell));
            boolean front = isBefore(middle);
            boolean ends = i == steps || isBefore(middle - (to - from) / steps) != front && run.size() > 1;
            if (ends) {
                boolean wasFront = isBefore(middle - (to - from) / steps);
                draw(wasFront ? before : behind, run);
                run = new ArrayList<>(List.of(run.get(run.size() - 1)));
            }
        }
    }

    private void draw(@Nullable Pen pen, List<Vector> run) {
        if (pen != null && run.size() > 1) {
            scene.line(pen, run);
        }
    }

    private Vector out(double angle, double along, double swell) {
        return axis.times(along).plus(Sight.wall(frame, angle).times(radius * swell));
    }

    /** A plane through the middle: its trace on the wall and its area inside. */
    void plane(CorePlane plane) {
        scene.area(Pen.area(Pen.PLANE, 0.16), round(trace(plane)));
        around(
                trace(plane),
                0,
                360,
                1,
                Pen.of(Pen.PLANE).wide(1.8),
                Pen.of(Pen.PLANE).hidden());
    }

    /** The face of core that was cut along a plane through the middle. */
    void face(CorePlane plane) {
        scene.area(Pen.of(Pen.PLANE).wide(1.8).filled(Pen.PLANE, 0.16), round(trace(plane)));
    }

    /** A line along the wall from the face of a cut core. */
    void alongWallBelow(double angle, DoubleUnaryOperator from, double to, String colour) {
        alongWall(angle, from.applyAsDouble(angle), to, colour);
    }

    /** A line along the wall. */
    void alongWall(double angle, double from, double to, String colour) {
        Pen pen = Pen.of(colour).wide(2);
        scene.line(isBefore(angle) ? pen : pen.hidden(), wall(angle, from), wall(angle, to));
    }

    /** A barb on a line along the wall that points to a place on it; down-hole for a positive length. */
    void barb(double angle, double along, double length, String colour) {
        double spread = 14;
        scene.line(
                Pen.of(colour).wide(2),
                wall(angle - spread, along - length),
                wall(angle, along),
                wall(angle + spread, along - length));
    }

    /** An angle round the core, drawn outside the wall as an arrow, dashed where the core stands before it. */
    void turn(String colour, double along, double from, double to, double swell) {
        Pen pen = Pen.of(colour).wide(1.8);
        double head = to - Math.signum(to - from) * 12;
        if (Math.abs(to - from) > 14) {
            around(angle -> along, from, head, swell, pen, pen.hidden());
        }
        List<Vector> last = new ArrayList<>();
        for (int i = 0; i <= 6; i++) {
            double begin = Math.abs(to - from) > 14 ? head : from;
            last.add(out(begin + (to - begin) * i / 6, along, swell));
        }
        scene.arrow(pen, last);
    }
}
