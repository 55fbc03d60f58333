package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The trace that a plane leaves on the wall of core: an ellipse that unrolls to {@code z = z0 + D / 2 cot(alpha) cos(x - beta)}, a circle at
 * alpha 90, two straight lines along the core at alpha 0.
 */
public final class WallCurve {

    private final CorePlane plane;
    private final CoreDiameter core;
    private final double datum;
    private final double offsetMillimetres;

    /** The plane n . p = offset, the points p counted from the place on the axis at the datum. */
    WallCurve(CorePlane plane, CoreDiameter core, double datum, double offsetMillimetres) {
        this.plane = plane;
        this.core = core;
        this.datum = datum;
        this.offsetMillimetres = offsetMillimetres;
    }

    /**
     * The trace of a plane that crosses the core axis.
     *
     * @param plane the plane, alpha above 0
     * @param core the diameter of the core
     * @param axisDepth where it crosses the axis, metres, any finite number
     * @return the trace
     * @throws IllegalArgumentException if alpha is 0, or the depth is not finite
     */
    public static WallCurve crossing(CorePlane plane, CoreDiameter core, double axisDepth) {
        Require.positive("alpha", plane.alpha(), "degrees");
        return new WallCurve(plane, core, Require.finite("depth", axisDepth, "m"), 0);
    }

    /**
     * The trace of a plane that runs along the core.
     *
     * @param side the wall direction at right angles to the plane, on its side of the axis: clockwise looking down-hole from the reference
     *     line, degrees in [0, 360]
     * @param distanceMillimetres how far the plane lies from the axis, 0 or more; beyond the wall it leaves no trace
     * @param core the diameter of the core
     * @return the trace
     * @throws IllegalArgumentException if the side lies outside its range, or the distance is negative or not finite
     */
    public static WallCurve alongCore(double side, double distanceMillimetres, CoreDiameter core) {
        double beta = Require.azimuth("side", side);
        double distance = Require.notNegative("distance from the axis", distanceMillimetres, "mm");
        return new WallCurve(CorePlane.of(0, beta), core, 0, 0.0 - distance);
    }

    /**
     * The plane.
     *
     * @return alpha and beta
     */
    public CorePlane plane() {
        return plane;
    }

    /**
     * Where the plane crosses the core axis.
     *
     * @return metres; empty at alpha 0
     */
    public OptionalDouble axisDepth() {
        return finite(datum + offsetMillimetres / 1000 / Degrees.sin(plane.alpha()));
    }

    /**
     * How deep the trace lies at an angle on the wall.
     *
     * @param angle clockwise looking down-hole from the reference line, degrees, any finite number
     * @return metres; empty at alpha 0
     * @throws IllegalArgumentException if the angle is not finite
     */
    public OptionalDouble depthAt(double angle) {
        return finite(depth(Require.finite("angle", angle, "degrees") - plane.beta()));
    }

    private double depth(double fromBeta) {
        double rise = core.millimetres() / 2 * Degrees.cos(plane.alpha()) * Degrees.cos(fromBeta);
        return datum + (offsetMillimetres + rise) / 1000 / Degrees.sin(plane.alpha());
    }

    private static OptionalDouble finite(double depth) {
        return Double.isFinite(depth) ? OptionalDouble.of(depth) : OptionalDouble.empty();
    }

    /**
     * The down-hole end of the ellipse, to which beta is read.
     *
     * @return the point; empty at alpha 0 and 90, and where it lies farther off than any core is long
     */
    public Optional<WallPoint> downHoleEnd() {
        return end(0);
    }

    /**
     * The up-hole end of the ellipse.
     *
     * @return the point; empty at alpha 0 and 90, and where it lies farther off than any core is long
     */
    public Optional<WallPoint> upHoleEnd() {
        return end(180);
    }

    private Optional<WallPoint> end(double fromBeta) {
        double depth = depth(fromBeta);
        return plane.hasBeta() && Math.abs(depth) <= WallPoint.DEEPEST
                ? Optional.of(WallPoint.of(Degrees.wrap360(plane.beta() + fromBeta), depth))
                : Optional.empty();
    }

    /**
     * The trace on a piece of core, as lines of points: one that ends where it began for a whole ellipse or a circle, one or two open ones
     * where the ends of the piece cut it, two straight ones at alpha 0 (one where the plane touches the wall).
     *
     * @param from depth where the piece begins, metres in [-100 000, 100 000]
     * @param to depth where it ends, metres, at least {@code from}
     * @param step the greatest angle between neighbours on a line, degrees in [0.01, 90]
     * @return the lines; none where the trace does not meet the piece
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public List<List<WallPoint>> polylines(double from, double to, double step) {
        Require.inRange("depth", from, -WallPoint.DEEPEST, WallPoint.DEEPEST, "m");
        Require.inRange("depth", to, from, WallPoint.DEEPEST, "m");
        Require.inRange("step", step, 0.01, 90, "degrees");
        if (!plane.hasBeta()) {
            double depth = depth(0);
            return depth >= from && depth <= to ? List.of(line(0, 360, depth, depth, step)) : List.of();
        }
        if (plane.alpha() == 0) {
            return straightLines(from, to);
        }
        double above = Math.max(-1, cosine(from));
        double below = Math.min(1, cosine(to));
        if (!(above < 1 && below > -1)) {
            return List.of();
        }
        double near = angle(below);
        double far = angle(above);
        if (near == 0 && far == 180) {
            return List.of(line(0, 360, depth(0), depth(0), step));
        }
        if (near == 0) {
            return List.of(line(-far, far, from, from, step));
        }
        return far == 180
                ? List.of(line(near, 360 - near, to, to, step))
                : List.of(line(near, far, to, from, step), line(-near, -far, to, from, step));
    }

    private List<List<WallPoint>> straightLines(double from, double to) {
        double cosine = cosine(0);
        if (!(Math.abs(cosine) <= 1)) {
            return List.of();
        }
        double away = angle(cosine);
        List<List<WallPoint>> lines = new ArrayList<>();
        for (double fromBeta : away == 0 || away == 180 ? new double[] {away} : new double[] {away, -away}) {
            double angle = Degrees.wrap360(plane.beta() + fromBeta);
            lines.add(List.of(WallPoint.of(angle, from), WallPoint.of(angle, to)));
        }
        return List.copyOf(lines);
    }

    /** The cosine of the angle from beta at which the trace lies at that depth: sin(alpha) z - cos(alpha) R cos = offset. */
    private double cosine(double depth) {
        double axial = Degrees.sin(plane.alpha()) * (depth - datum) * 1000;
        return (axial - offsetMillimetres) / (Degrees.cos(plane.alpha()) * core.millimetres() / 2);
    }

    private static double angle(double cosine) {
        return Degrees.atan2(Math.sqrt((1 - cosine) * (1 + cosine)), cosine);
    }

    /** The depths of both ends are given: where the trace is nearly straight, the angle does not tell them. */
    private List<WallPoint> line(double first, double last, double firstDepth, double lastDepth, double step) {
        int parts = Math.max(1, (int) Math.ceil(Math.abs(last - first) / step));
        List<WallPoint> points = new ArrayList<>();
        for (int i = 0; i <= parts; i++) {
            double fromBeta = first + (last - first) * i / parts;
            double depth = i == 0 ? firstDepth : i == parts ? lastDepth : depth(fromBeta);
            points.add(WallPoint.of(Degrees.wrap360(plane.beta() + fromBeta), depth));
        }
        return List.copyOf(points);
    }

    /** The plane and where it crosses: {@code alpha 41.0, beta 213.0 at 12.4035 m}. */
    @Override
    public String toString() {
        return axisDepth().isPresent()
                ? String.format(Locale.ROOT, "%s at %.4f m", plane, axisDepth().getAsDouble())
                : String.format(Locale.ROOT, "%s, %.1f mm from the axis", plane, Math.abs(offsetMillimetres));
    }
}
