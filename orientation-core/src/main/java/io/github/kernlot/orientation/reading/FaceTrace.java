package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CoreLine;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.CoreVectors;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The trace of a plane on the cut face of half core, where nothing else of the plane is seen. The angle between trace and core axis is not
 * alpha but an apparent angle a, and every plane about the trace would show it: {@code tan(alpha) = tan(a) cos(beta - c)}, so that alpha
 * lies in [0, a] and beta within 90 degrees of c, the edge of the face to which the trace runs as it goes down-hole.
 *
 * @param apparentAngle acute angle a between the trace and the core axis, which is the greatest alpha that the plane may have, at right
 *     angles to the face; degrees in [0, 90]
 * @param towards the edge c: its angle on the wall, clockwise looking down-hole from the reference line, degrees in [0, 360)
 */
public record FaceTrace(double apparentAngle, double towards) {

    /**
     * Checks both angles.
     *
     * @throws IllegalArgumentException if the apparent angle lies outside [0, 90] or the edge outside [0, 360]; an edge of 360 becomes 0
     */
    public FaceTrace {
        apparentAngle = Require.inRange("apparent angle", apparentAngle, 0, 90, "degrees");
        towards = Require.azimuth("edge of the cut", towards);
    }

    /**
     * A trace by its angle and the edge that it runs to.
     *
     * @param apparentAngle acute angle between the trace and the core axis, degrees in [0, 90]
     * @param towards the edge of the face to which the trace runs as it goes down-hole: its angle on the wall, clockwise looking down-hole
     *     from the reference line, degrees in [0, 360]
     * @return the trace
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static FaceTrace of(double apparentAngle, double towards) {
        return new FaceTrace(apparentAngle, towards);
    }

    /**
     * The trace as a line through the core. In the ground ({@code frame.toGeographic}) no plane that holds it dips less than it plunges.
     *
     * @return the line
     */
    public CoreLine line() {
        return CoreLine.ofAxisAngleAndDelta(apparentAngle, towards);
    }

    /**
     * The alpha of a plane whose beta is known from elsewhere.
     *
     * @param beta degrees in [0, 360]
     * @return {@code atan(tan(a) cos(beta - c))}, degrees in [0, 90]; empty where no plane of that beta shows this trace, and where every
     *     alpha would, a quarter turn from the edge at an apparent angle of 90
     * @throws IllegalArgumentException if beta lies outside its range
     */
    public OptionalDouble alphaAt(double beta) {
        double cosine = Degrees.cos(Require.azimuth("beta", beta) - towards);
        boolean everyAlpha = apparentAngle == 90 && cosine == 0;
        return cosine < 0 || everyAlpha
                ? OptionalDouble.empty()
                : OptionalDouble.of(Degrees.atan2(Degrees.sin(apparentAngle) * cosine, Degrees.cos(apparentAngle)));
    }

    /**
     * The betas of a plane whose alpha is known from elsewhere.
     *
     * @param alpha degrees in [0, 90]
     * @return two betas, to either side of the edge, the first anticlockwise of it; one at the greatest alpha; none above it, at alpha 90,
     *     and where every beta would do, at an apparent angle of 0
     * @throws IllegalArgumentException if alpha lies outside its range
     */
    public List<Double> betasAt(double alpha) {
        Require.inRange("alpha", alpha, 0, 90, "degrees");
        if (alpha > apparentAngle || alpha == 90 || apparentAngle == 0) {
            return List.of();
        }
        // cos x = tan(alpha) / tan(a), sin x by the sum and the difference of the angles, which keeps its digits near
        // the limit
        double cosine = Degrees.sin(alpha) * Degrees.cos(apparentAngle);
        double sine = Math.sqrt(Degrees.sin(apparentAngle - alpha) * Degrees.sin(apparentAngle + alpha));
        double away = Degrees.atan2(sine, cosine);
        return away == 0 ? List.of(towards) : List.of(Degrees.wrap360(towards - away), Degrees.wrap360(towards + away));
    }

    /**
     * One of the planes that show this trace.
     *
     * @param turn how far it is turned about the trace from the plane at right angles to the face, positive for a beta clockwise of the
     *     edge, degrees in [-90, 90]; both ends are the face itself
     * @return the plane, {@code sin(alpha) = sin(a) cos(turn)}
     * @throws IllegalArgumentException if the turn lies outside its range
     */
    public CorePlane planeAt(double turn) {
        Require.inRange("turn", turn, -90, 90, "degrees");
        Vector square = CoreDirections.normal(CorePlane.of(apparentAngle, towards));
        Vector face = CoreVectors.wall(towards + 90);
        return CoreDirections.plane(square.times(Degrees.cos(turn)).minus(face.times(Degrees.sin(turn))));
    }

    /**
     * The planes that show this trace, turned evenly about it, the first being the face itself.
     *
     * @param count how many, 1 or more
     * @return the planes
     * @throws IllegalArgumentException if the count is below 1
     */
    public List<CorePlane> planes(int count) {
        Require.inRange("number of planes", count, 1, Double.MAX_VALUE, "");
        return IntStream.range(0, count)
                .mapToObj(i -> planeAt(-90 + 180.0 * i / count))
                .toList();
    }

    /**
     * The same planes in the ground.
     *
     * @param frame where the core stood
     * @param count how many, 1 or more
     * @return the planes
     * @throws IllegalArgumentException if the count is below 1
     */
    public List<PlaneOrientation> toGeographic(CoreFrame frame, int count) {
        return planes(count).stream().map(frame::toGeographic).toList();
    }

    /** The reading and what it leaves open: {@code apparent angle 40.0 towards 030.0, alpha 40.0 at most}. */
    @Override
    public String toString() {
        return "apparent angle " + Degrees.text(apparentAngle) + " towards " + Degrees.azimuthText(towards) + ", alpha "
                + Degrees.text(apparentAngle) + " at most";
    }
}
