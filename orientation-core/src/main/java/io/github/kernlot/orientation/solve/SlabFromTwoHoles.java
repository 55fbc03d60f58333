package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Locale;

/**
 * The slab between two parallel walls that two holes have pierced: the line from top to top lies in one wall and that from base to
 * base in the other, so its normal is the vector product of the two. Its thickness is then the same in both holes, whatever was
 * measured: two holes cannot show that the walls are not parallel.
 *
 * @param estimate the orientation of the walls with the covariance of their pole, to first order
 * @param thickness across the slab, metres
 * @param thicknessSigma its standard deviation, to first order, metres
 */
public record SlabFromTwoHoles(PlaneEstimate estimate, double thickness, double thicknessSigma) {

    /** Lines from hole to hole nearer to parallel than this, as a sine, fix no plane. */
    private static final double PARALLEL = 1e-9;

    /**
     * Finds the slab.
     *
     * @param first where one hole pierces it
     * @param second where another does
     * @return the slab; with sigmas of 0 if the points have none
     * @throws IllegalArgumentException if the tops or the bases coincide, or the line from top to top is parallel to the line from
     *     base to base, so that every plane about it would do
     */
    public static SlabFromTwoHoles of(Intercept first, Intercept second) {
        Vector tops = way(first.top(), second.top());
        Vector bases = way(first.base(), second.base());
        Vector product = tops.cross(bases);
        if (!(product.length() > PARALLEL * tops.length() * bases.length())) {
            throw new IllegalArgumentException(
                    "the line from top to top is parallel to that from base to base: every plane about it would do;"
                            + " expected holes that are skew or far from parallel");
        }
        PlaneOrientation plane = Poles.plane(product);
        Vector normal = Poles.normal(plane);
        double length = product.length() * Math.signum(product.dot(normal));
        Vector through = way(first.top(), first.base());
        double across = normal.dot(through);
        Vector dip = Poles.withDip(plane);
        Vector strike = Poles.withDipDirection(plane);
        // d(P x Q) . e = dP . (Q x e) + dQ . (e x P)
        Vector topOnDip = bases.cross(dip).times(1 / length);
        Vector topOnStrike = bases.cross(strike).times(1 / length);
        Vector baseOnDip = dip.cross(tops).times(1 / length);
        Vector baseOnStrike = strike.cross(tops).times(1 / length);
        double[] sums = new double[4];
        Vector turn = new Vector(through.dot(dip), through.dot(strike), 0);
        add(sums, first.top(), topOnDip.negated(), topOnStrike.negated(), turn, normal.negated());
        add(sums, second.top(), topOnDip, topOnStrike, turn, new Vector(0, 0, 0));
        add(sums, first.base(), baseOnDip.negated(), baseOnStrike.negated(), turn, normal);
        add(sums, second.base(), baseOnDip, baseOnStrike, turn, new Vector(0, 0, 0));
        return new SlabFromTwoHoles(
                PlaneEstimate.ofRadians(plane, sums[0], sums[1], sums[2]), Math.abs(across), Math.sqrt(sums[3]));
    }

    /** Adds one point's share: variance in dip, along strike, covariance, and variance of the thickness. */
    private static void add(
            double[] sums, ContactPoint point, Vector onDip, Vector onStrike, Vector turn, Vector direct) {
        PositionCovariance covariance = point.covariance();
        Vector onThickness =
                onDip.times(turn.north()).plus(onStrike.times(turn.east())).plus(direct);
        sums[0] += onDip.dot(covariance.times(onDip));
        sums[1] += onStrike.dot(covariance.times(onStrike));
        sums[2] += onDip.dot(covariance.times(onStrike));
        sums[3] += Math.max(0, onThickness.dot(covariance.times(onThickness)));
    }

    private static Vector way(ContactPoint from, ContactPoint to) {
        Displacement way = to.position().minus(from.position());
        return new Vector(way.north(), way.east(), way.down());
    }

    /**
     * The orientation of the walls.
     *
     * @return the plane
     */
    public PlaneOrientation plane() {
        return estimate.plane();
    }

    /** The walls and the thickness: {@code 50.4/029.7 (dip/dip direction), 18.92 m thick}. */
    @Override
    public String toString() {
        return plane() + ", " + String.format(Locale.ROOT, "%.2f", thickness) + " m thick"
                + (thicknessSigma == 0 ? "" : String.format(Locale.ROOT, " +- %.2f m", thicknessSigma))
                + (estimate.greatestSigma() == 0
                        ? ""
                        : ", sigma of the pole up to " + Degrees.text(estimate.greatestSigma()));
    }
}
