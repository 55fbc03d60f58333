package io.github.kernlot.orientation.rock;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Eigen;
import io.github.kernlot.orientation.internal.EvenPoles;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;

/**
 * The bias by which a hole meets planes the less often the smaller their alpha: a set of planes is met in proportion to sin(alpha), so
 * each plane that was met counts {@code 1 / sin(alpha)} (Terzaghi 1965, Geotechnique 15, from memory). The weight grows without bound
 * towards alpha 0 and is capped; below the alpha of the cap lies the blind zone, where planes may be missing and no weight brings
 * them back.
 *
 * @param cap the greatest weight, 1 or more
 */
public record OrientationBias(double cap) {

    /** The cap that is assumed where nothing better is known: the blind zone then begins below alpha 14.5. */
    public static final OrientationBias ASSUMED = new OrientationBias(4);

    private static final int POLES = 20_000;

    /**
     * Checks the cap.
     *
     * @throws IllegalArgumentException if the cap is not a finite number, 1 or above
     */
    public OrientationBias {
        Require.inRange("cap of the weight", cap, 1, Double.MAX_VALUE, "");
    }

    /**
     * A bias whose weights are capped below an alpha.
     *
     * @param alpha where the blind zone begins, degrees, above 0 and up to 90
     * @return the bias, with the cap 1 / sin(alpha)
     * @throws IllegalArgumentException if alpha lies outside its range
     */
    public static OrientationBias ofBlindAlpha(double alpha) {
        Require.positive("alpha", alpha, "degrees");
        return new OrientationBias(1 / Degrees.sin(Require.inRange("alpha", alpha, 0, 90, "degrees")));
    }

    /**
     * The alpha at which the cap is reached.
     *
     * @return {@code asin(1 / cap)}, degrees in (0, 90]
     */
    public double blindAlpha() {
        // asin by atan2, which keeps its digits near 90
        return Degrees.atan2(1, Math.sqrt(cap - 1) * Math.sqrt(cap + 1));
    }

    /**
     * How many planes a plane that was met stands for.
     *
     * @param alpha acute angle between plane and core axis, degrees in [0, 90]
     * @return {@code 1 / sin(alpha)}, at most the cap
     * @throws IllegalArgumentException if alpha lies outside [0, 90]
     */
    public double weight(double alpha) {
        double sine = Degrees.sin(Require.inRange("alpha", alpha, 0, 90, "degrees"));
        return sine * cap <= 1 ? cap : 1 / sine;
    }

    /**
     * Whether the weight of an alpha is held by the cap.
     *
     * @param alpha degrees in [0, 90]
     * @return true below the blind alpha
     * @throws IllegalArgumentException if alpha lies outside [0, 90]
     */
    public boolean isCapped(double alpha) {
        return Degrees.sin(Require.inRange("alpha", alpha, 0, 90, "degrees")) * cap < 1;
    }

    /**
     * Whether a set of that orientation may be missing from the core because all holes run along it.
     *
     * @param holes the directions of the holes, one or more
     * @param plane the orientation
     * @return true where alpha is below the blind alpha in every hole
     * @throws IllegalArgumentException if there is no hole
     */
    public boolean isBlindTo(List<HoleDirection> holes, PlaneOrientation plane) {
        checked(holes);
        return holes.stream().allMatch(hole -> isCapped(Ways.alpha(hole, plane)));
    }

    /**
     * How much of the hemisphere of poles lies in the blind zone of all holes: sin(blind alpha) for one hole.
     *
     * @param holes the directions of the holes, one or more
     * @return a share in [0, 1]; exact for one hole, for several within 0.002 by 20 000 poles spread evenly
     * @throws IllegalArgumentException if there is no hole
     */
    public double blindShare(List<HoleDirection> holes) {
        checked(holes);
        if (holes.size() == 1) {
            return 1 / cap;
        }
        List<Vector> axes = holes.stream().map(Ways::axis).toList();
        int blind = 0;
        for (int i = 0; i < POLES; i++) {
            Vector pole = EvenPoles.pole(i, POLES);
            blind += axes.stream().allMatch(axis -> Math.abs(pole.dot(axis)) * cap < 1) ? 1 : 0;
        }
        return blind / (double) POLES;
    }

    private static void checked(List<HoleDirection> holes) {
        if (holes.isEmpty()) {
            throw new IllegalArgumentException("there is no hole; expected one or more");
        }
    }

    /**
     * The mean plane of a set with its members weighted: the sum of their poles, each turned to the side of the sum, times its
     * weight. The sides are begun from the axis about which the weighted poles cluster, so that the order of the planes does not count.
     *
     * @param hole the direction of the hole in which all were met
     * @param planes the members of one set, one or more
     * @return the mean
     * @throws IllegalArgumentException if there is no plane
     */
    public PlaneOrientation weightedMean(HoleDirection hole, List<PlaneOrientation> planes) {
        if (planes.isEmpty()) {
            throw new IllegalArgumentException("there is no plane; expected one or more");
        }
        Vector mean = clusterAxis(hole, planes);
        for (int i = 0; i < 100; i++) {
            Vector sum = new Vector(0, 0, 0);
            for (PlaneOrientation plane : planes) {
                Vector pole = Ways.normal(plane);
                double weight = weight(Ways.alpha(hole, plane));
                sum = sum.plus(pole.times(pole.dot(mean) < 0 ? -weight : weight));
            }
            if (sum.equals(mean)) {
                break;
            }
            mean = sum;
        }
        return PlaneOrientation.ofNormal(mean.north(), mean.east(), mean.down());
    }

    /** The eigenvector of the greatest eigenvalue of the weighted orientation tensor. */
    private Vector clusterAxis(HoleDirection hole, List<PlaneOrientation> planes) {
        double[][] tensor = new double[3][3];
        for (PlaneOrientation plane : planes) {
            Eigen.addProduct(tensor, Ways.normal(plane), weight(Ways.alpha(hole, plane)));
        }
        return Eigen.of(new Array2DRowRealMatrix(tensor)).vectors().get(0);
    }

    /** The cap and what it hides: {@code weights up to 4.0, blind below alpha 14.5}. */
    @Override
    public String toString() {
        return "weights up to " + Degrees.text(cap) + ", blind below alpha " + Degrees.text(blindAlpha());
    }
}
