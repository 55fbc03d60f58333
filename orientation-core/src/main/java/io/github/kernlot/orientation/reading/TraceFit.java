package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.internal.Require;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The plane whose trace passes through points on the wall of core. The points may cover all of the wall or part of it, lie in any order,
 * and some of them may not belong.
 *
 * <p>On the wall the trace is {@code z = z0 + D / 2 cot(alpha) cos(x - beta)}; towards alpha 0 it becomes two straight lines along the
 * core, at alpha 90 a circle. What is fitted is therefore not this curve but the plane {@code n . p = c} through the points in space, by
 * maximum likelihood, each point counting by its sigma across the plane, which comes of the sigma of its depth and of its angle. Residuals
 * cost by Tukey's biweight with the constant 4.685 (95 % efficiency, Beaton and Tukey 1974, from memory), from the best of many planes
 * through three points each, so that three points in ten may be wrong. A point farther off than 4.685 sigmas is left out.
 */
public final class TraceFit {

    private final CorePlane plane;
    private final Optional<CorePlaneEstimate> estimate;
    private final WallCurve curve;
    private final OptionalDouble axisDepthSigma;
    private final Optional<WallSigmas> sigmas;
    private final List<Double> residuals;
    private final List<Integer> leftOut;
    private final double arcCovered;
    private final double chiSquare;

    private TraceFit(CoreDiameter core, List<WallPoint> points, TraceSolution solution) {
        this.plane = solution.plane();
        this.estimate = solution.estimate();
        this.curve = new WallCurve(plane, core, solution.datum(), solution.offsetMillimetres());
        this.axisDepthSigma = solution.axisDepthSigma();
        this.sigmas = solution.sigmas();
        this.residuals = solution.residuals();
        this.leftOut = solution.leftOut();
        int[] kept = kept(points.size(), leftOut);
        this.arcCovered =
                arc(Arrays.stream(kept).mapToDouble(i -> points.get(i).angle()).toArray());
        this.chiSquare = Arrays.stream(kept)
                .mapToDouble(i -> residuals.get(i) * residuals.get(i))
                .sum();
    }

    private static int[] kept(int size, List<Integer> leftOut) {
        Set<Integer> wrong = Set.copyOf(leftOut);
        return IntStream.range(0, size).filter(i -> !wrong.contains(i)).toArray();
    }

    /**
     * The plane through points whose sigmas are known.
     *
     * @param core the diameter of the core
     * @param points three or more different ones, not all at one angle
     * @param sigmas of one point, both above 0
     * @return the fit
     * @throws IllegalArgumentException if a sigma is 0, there are fewer than three different points, all lie on one line along the core, or
     *     so few of them agree on a plane within their sigmas that the others cannot be told to be wrong
     */
    public static TraceFit of(CoreDiameter core, List<WallPoint> points, WallSigmas sigmas) {
        return new TraceFit(core, points, TraceSolution.of(core, points, positive(sigmas), true));
    }

    /**
     * The plane through points whose sigmas are not known: they are taken to be the same length along and round the core, and the scatter
     * about the plane says how long. Three points leave nothing to say it, up to six none is left out, and of more a point is given up only
     * where chance would hardly give one so far off.
     *
     * <p>Of a plane along the core whose points lie mostly on one of its two lines, those on the other may be left out: the plane that
     * touches the wall fits the many so closely. Its sigma then tells that any plane about the line would do; sigmas that are given prevent it.
     *
     * @param core the diameter of the core
     * @param points three or more different ones, not all at one angle
     * @return the fit
     * @throws IllegalArgumentException if there are fewer than three different points, all lie on one line along the core, or fewer than
     *     half of them agree on a plane
     */
    public static TraceFit of(CoreDiameter core, List<WallPoint> points) {
        return inProportion(core, points, WallSigmas.onWall(1, core));
    }

    /**
     * The plane through points whose sigmas are known but for a factor that both share, which the scatter about the plane tells. Three
     * points leave nothing to tell it, up to six none is left out, and of more a point is given up only where chance would hardly give one so
     * far off.
     *
     * @param core the diameter of the core
     * @param points three or more different ones, not all at one angle
     * @param sigmas of one point, both above 0; only their proportion counts
     * @return the fit
     * @throws IllegalArgumentException if a sigma is 0, there are fewer than three different points, all lie on one line along the core, or
     *     fewer than half of them agree on a plane
     */
    public static TraceFit inProportion(CoreDiameter core, List<WallPoint> points, WallSigmas sigmas) {
        return new TraceFit(core, points, TraceSolution.of(core, points, positive(sigmas), false));
    }

    private static WallSigmas positive(WallSigmas sigmas) {
        Require.positive("sigma of the depth", sigmas.depthMillimetres(), "mm");
        Require.positive("sigma of the angle", sigmas.angle(), "degrees");
        return sigmas;
    }

    /** 360 less the widest gap between neighbours. */
    private static double arc(double[] angles) {
        Arrays.sort(angles);
        double gap = 360 - angles[angles.length - 1] + angles[0];
        for (int i = 1; i < angles.length; i++) {
            gap = Math.max(gap, angles[i] - angles[i - 1]);
        }
        return 360 - gap;
    }

    /**
     * The plane.
     *
     * @return alpha and beta; at alpha 90 with 0 in the place of beta, at alpha 0 with beta in [0, 180)
     */
    public CorePlane plane() {
        return plane;
    }

    /**
     * The plane with the covariance of its pole. It is of first order: where a sigma comes near 20 degrees the points hardly fix a plane,
     * and the truth is wider still. Where the points lie on one line along the core within their sigmas, as on one of the two lines of a plane
     * along the core, the plane that touches the wall there fits best but any about that line would do, and the sigma across it is 90
     * degrees or more. Where the scatter tells the sigmas, the covariance is scaled by its unbiased variance, and the degrees of
     * freedom are the points that were not left out, less three.
     *
     * @return the estimate; empty for three points of unknown sigma
     */
    public Optional<CorePlaneEstimate> estimate() {
        return estimate;
    }

    /**
     * The trace of the plane, to draw or to compare.
     *
     * @return the curve on the wall, at alpha 0 two straight lines
     */
    public WallCurve curve() {
        return curve;
    }

    /**
     * Where the plane crosses the core axis: the depth that a log gives the structure.
     *
     * @return metres, counted as the depths of the points; empty where alpha lies within two sigmas of 0 and the plane may not cross it
     */
    public OptionalDouble axisDepth() {
        boolean crosses = plane.alpha()
                > CorePlaneEstimate.SIGMAS_AWAY
                        * estimate.map(CorePlaneEstimate::alphaSigma).orElse(0.0);
        return crosses ? curve.axisDepth() : OptionalDouble.empty();
    }

    /**
     * The standard deviation of the depth at the axis, with the degrees of freedom of the estimate.
     *
     * @return metres; empty where there is no such depth, or the sigmas are not known
     */
    public OptionalDouble axisDepthSigma() {
        return axisDepth().isPresent() ? axisDepthSigma : OptionalDouble.empty();
    }

    /**
     * How well one point was read: the sigmas given, or those that the scatter tells.
     *
     * @return the sigmas; empty for three points of unknown sigma
     */
    public Optional<WallSigmas> sigmas() {
        return sigmas;
    }

    /**
     * How far each point lies from the plane in its sigmas, positive on the side to which the pole points, which is down-hole.
     *
     * @return in the order of the points; zeros for three
     */
    public List<Double> residuals() {
        return residuals;
    }

    /**
     * The points that do not belong.
     *
     * @return their places in the list of points, the first being 0, in rising order
     */
    public List<Integer> leftOut() {
        return leftOut;
    }

    /**
     * How much of the wall the points cover that were not left out: a turn less the widest gap between neighbours.
     *
     * @return degrees in (0, 360)
     */
    public double arcCovered() {
        return arcCovered;
    }

    /**
     * The sum of the squares of the residuals of the points that were not left out. With sigmas given it is to be compared with the number
     * of these points less three.
     *
     * @return 0 or more
     */
    public double chiSquare() {
        return chiSquare;
    }

    /** The plane, with its sigmas where they are known, and what it stands on. */
    @Override
    public String toString() {
        String with = estimate.map(CorePlaneEstimate::toString).orElseGet(plane::toString);
        return String.format(
                Locale.ROOT,
                "%s, through %d of %d points over %.0f degrees of the wall",
                with,
                residuals.size() - leftOut.size(),
                residuals.size(),
                arcCovered);
    }
}
