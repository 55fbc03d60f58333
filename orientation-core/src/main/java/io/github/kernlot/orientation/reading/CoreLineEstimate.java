package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CoreLine;
import io.github.kernlot.orientation.DirectedCoreLine;
import io.github.kernlot.orientation.internal.CoreVectors;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.OptionalDouble;

/**
 * A line on core with the covariance of its direction, to first order, in the plane that touches the sphere there: one component as the
 * axis angle grows, the other round the core as delta grows. A trace on a cut face is such a line.
 *
 * @param line the line
 * @param axisSigma standard deviation of the line as its axis angle grows, which is that of the axis angle, degrees, 0 or more
 * @param roundSigma standard deviation of the line round the core, which is that of delta times sin(axis angle), degrees, 0 or more
 * @param correlation of the two, in [-1, 1]
 */
public record CoreLineEstimate(CoreLine line, double axisSigma, double roundSigma, double correlation) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if a sigma is negative or not finite, or the correlation lies outside [-1, 1]
     */
    public CoreLineEstimate {
        axisSigma = Require.notNegative("sigma of the axis angle", axisSigma, "degrees");
        roundSigma = Require.notNegative("sigma round the core", roundSigma, "degrees");
        correlation = Require.inRange("correlation", correlation, -1, 1, "");
    }

    /**
     * A line whose two angles were read one by one.
     *
     * @param line the line
     * @param axisSigma standard deviation of the axis angle, degrees, 0 or more
     * @param deltaSigma standard deviation of delta, degrees, 0 or more
     * @return the estimate, without correlation
     * @throws IllegalArgumentException if a sigma is negative or not finite
     */
    public static CoreLineEstimate ofAxisAngleAndDelta(CoreLine line, double axisSigma, double deltaSigma) {
        double delta = Require.notNegative("sigma of delta", deltaSigma, "degrees");
        return new CoreLineEstimate(line, axisSigma, Degrees.sin(line.axisAngle()) * delta, 0);
    }

    /**
     * A trace on a cut that holds the core axis.
     *
     * @param apparentAngle acute angle between the trace and the core axis, degrees in [0, 90]
     * @param towards the edge of the cut to which the trace runs as it goes down-hole: its angle on the wall, clockwise looking down-hole
     *     from the reference line, degrees in [0, 360]
     * @param angleSigma standard deviation of the apparent angle, degrees, 0 or more
     * @param cutSigma standard deviation of where the cut lies, degrees, 0 or more
     * @return the trace as a line
     * @throws IllegalArgumentException if an angle lies outside its range, or a sigma is negative or not finite
     */
    public static CoreLineEstimate onCutFace(double apparentAngle, double towards, double angleSigma, double cutSigma) {
        Require.inRange("apparent angle", apparentAngle, 0, 90, "degrees");
        Require.azimuth("edge of the cut", towards);
        return ofAxisAngleAndDelta(CoreLine.ofAxisAngleAndDelta(apparentAngle, towards), angleSigma, cutSigma);
    }

    /**
     * A trace on a cut at right angles to the core axis.
     *
     * @param towards either end of the trace: its angle on the wall, clockwise looking down-hole from the reference line, degrees in
     *     [0, 360]
     * @param traceSigma standard deviation of that angle, degrees, 0 or more
     * @param squareSigma standard deviation of the cut from a right angle, degrees, 0 or more
     * @return the trace as a line
     * @throws IllegalArgumentException if the angle lies outside its range, or a sigma is negative or not finite
     */
    public static CoreLineEstimate onCrossCut(double towards, double traceSigma, double squareSigma) {
        Require.azimuth("end of the trace", towards);
        return ofAxisAngleAndDelta(CoreLine.ofAxisAngleAndDelta(90, towards), squareSigma, traceSigma);
    }

    /**
     * The line through two points of the wall, where a fibre, an edge or a hinge enters the core and leaves it.
     *
     * @param first one end
     * @param second the other
     * @param core the diameter of the core
     * @param sigmas how well each end is read, independently of the other
     * @return the line; along the core where both ends lie at one angle
     * @throws IllegalArgumentException if both ends lie at one place
     */
    public static CoreLineEstimate throughWall(
            WallPoint first, WallPoint second, CoreDiameter core, WallSigmas sigmas) {
        double radius = core.millimetres() / 2;
        Vector chord = chord(first, second, core);
        double length = chord.length();
        CoreLine line = CoreDirections.line(chord.times(1 / length));
        Vector withAxisAngle = CoreDirections.withAxisAngle(line);
        Vector withDelta = CoreDirections.withDelta(line);
        double depthSigma = sigmas.depthMillimetres() / length;
        double wallSigma = radius / length * Math.toRadians(sigmas.angle());
        double axis = 0;
        double round = 0;
        double both = 0;
        for (WallPoint end : new WallPoint[] {first, second}) {
            Vector way = CoreVectors.wall(end.angle() + 90);
            double axisByDepth = withAxisAngle.north() * depthSigma;
            double axisByAngle = withAxisAngle.dot(way) * wallSigma;
            double roundByAngle = withDelta.dot(way) * wallSigma;
            axis += axisByDepth * axisByDepth + axisByAngle * axisByAngle;
            round += roundByAngle * roundByAngle;
            both += axisByAngle * roundByAngle;
        }
        double axisSigma = Math.sqrt(axis);
        double roundSigma = Math.sqrt(round);
        return new CoreLineEstimate(
                line,
                Math.toDegrees(axisSigma),
                Math.toDegrees(roundSigma),
                CorePlaneEstimate.correlation(both, axisSigma, roundSigma));
    }

    /**
     * The arrow from one point of the wall to another; its sigmas are those of the line without arrow, {@link #throughWall}.
     *
     * @param first where the arrow begins
     * @param second where it points to
     * @param core the diameter of the core
     * @return the arrow; with an axis angle of 0 or 180 where both points lie at one angle
     * @throws IllegalArgumentException if both points lie at one place
     */
    public static DirectedCoreLine arrowThroughWall(WallPoint first, WallPoint second, CoreDiameter core) {
        return CoreDirections.arrow(chord(first, second, core).unit());
    }

    /** From one point to the other, millimetres. */
    private static Vector chord(WallPoint first, WallPoint second, CoreDiameter core) {
        double along = (second.depth() - first.depth()) * 1000;
        // u(b) - u(a) = 2 sin((b - a) / 2) u((a + b) / 2 + 90), which keeps the digits of ends that lie near each other
        double half = (second.angle() - first.angle()) / 2;
        Vector chord = new Vector(along, 0, 0)
                .plus(CoreVectors.wall(first.angle() + half + 90).times(core.millimetres() * Degrees.sin(half)));
        if (!(chord.length() > 0)) {
            throw new IllegalArgumentException(
                    "both ends of the line lie at " + first + "; expected two places on the wall");
        }
        return chord;
    }

    /**
     * The standard deviation of delta, {@code sigma round the core / sin(axis angle)}.
     *
     * @return degrees; empty where the line lies within two sigmas of the core axis, so that delta is not told
     */
    public OptionalDouble deltaSigma() {
        return line.axisAngle() > CorePlaneEstimate.SIGMAS_AWAY * Math.max(axisSigma, roundSigma)
                ? OptionalDouble.of(roundSigma / Degrees.sin(line.axisAngle()))
                : OptionalDouble.empty();
    }

    /** The covariance of the line's components along two vectors, in square degrees. */
    double covariance(Vector first, Vector second) {
        Vector withAxisAngle = CoreDirections.withAxisAngle(line);
        Vector withDelta = CoreDirections.withDelta(line);
        return Ellipse.covariance(
                first.dot(withAxisAngle) * axisSigma,
                first.dot(withDelta) * roundSigma,
                second.dot(withAxisAngle) * axisSigma,
                second.dot(withDelta) * roundSigma,
                correlation);
    }

    /** The line and its sigmas: {@code axis angle 51.1, delta 167.4, sigma 0.8 in axis angle and 1.5 round the core}. */
    @Override
    public String toString() {
        return line + ", sigma " + Degrees.text(axisSigma) + " in axis angle and " + Degrees.text(roundSigma)
                + " round the core";
    }
}
