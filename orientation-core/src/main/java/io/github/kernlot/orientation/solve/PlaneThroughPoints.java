package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.UpperTail;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The plane through points: exactly through three, by total least squares through more, each point weighted by its covariance across
 * the plane.
 */
public final class PlaneThroughPoints {

    /** Points fit a plane that are not rarer than this. */
    private static final double FITS = 0.001;

    /** The same where only the other plane tells how far points scatter. */
    private static final double FITS_BESIDE = 0.05;

    private final PlaneOrientation plane;
    private final Optional<PlaneEstimate> estimate;
    private final List<Double> distances;
    private final double chiSquare;
    private final double breadth;
    private final OptionalDouble planarity;

    private PlaneThroughPoints(
            PointFit fit, Optional<PlaneEstimate> estimate, double chiSquare, OptionalDouble planarity) {
        this.plane = Poles.plane(fit.normal());
        this.estimate = estimate;
        double side = fit.normal().dot(Poles.normal(plane)) < 0 ? -1 : 1;
        this.distances = Arrays.stream(fit.distances())
                .mapToObj(distance -> side * distance + 0.0)
                .toList();
        this.chiSquare = chiSquare;
        this.breadth = fit.spreads()[1] / fit.spreads()[0];
        this.planarity = planarity;
    }

    /**
     * The plane through places whose uncertainty is not known: all are taken to be alike and as uncertain in every direction. The
     * scatter about the plane then says how uncertain they are, from four places on, with as many degrees of freedom as there are
     * places more than three ({@link PlaneEstimate#cone95} allows for it); with three there is nothing to say.
     *
     * @param positions three places or more, not all on one line
     * @return the plane
     * @throws IllegalArgumentException if there are fewer than three places, they lie on one line (or at one place), or farther than 1e60 m apart
     */
    public static PlaneThroughPoints ofPositions(List<Position> positions) {
        PointFit fit = fit(positions, Collections.nCopies(positions.size(), PositionCovariance.ofSigma(1)));
        int free = positions.size() - 3;
        OptionalDouble planarity = Planarity.probability(fit);
        return free == 0
                ? new PlaneThroughPoints(fit, Optional.empty(), 0, planarity)
                : new PlaneThroughPoints(fit, estimate(fit, fit.chiSquare() / free, free), free, planarity);
    }

    /**
     * The plane through places whose covariances are known.
     *
     * @param points three points or more, not all on one line, each uncertain in every direction
     * @return the plane
     * @throws IllegalArgumentException if there are fewer than three points, they lie on one line (or at one place), or a point has
     *     no uncertainty in some direction, so that it could not be weighted against the others
     */
    public static PlaneThroughPoints of(List<ContactPoint> points) {
        List<PositionCovariance> covariances =
                points.stream().map(ContactPoint::covariance).toList();
        PointFit fit = fit(points.stream().map(ContactPoint::position).toList(), covariances);
        int free = points.size() - 3;
        OptionalDouble planarity =
                free == 0 ? OptionalDouble.empty() : OptionalDouble.of(UpperTail.ofChiSquare(fit.chiSquare(), free));
        return new PlaneThroughPoints(fit, estimate(fit, 1, Double.POSITIVE_INFINITY), fit.chiSquare(), planarity);
    }

    /**
     * The plane through two places whose strike is known.
     *
     * @param strike either end of the strike line, clockwise from north, degrees in [0, 360]
     * @param first a place on the plane
     * @param second another
     * @return the plane
     * @throws IllegalArgumentException if the strike lies outside [0, 360], or the places lie along strike at one height
     */
    public static PlaneOrientation ofStrike(double strike, Position first, Position second) {
        Vector line = Vector.ofAzimuth(Require.azimuth("strike", strike));
        Displacement way = second.minus(first);
        Vector between = new Vector(way.north(), way.east(), way.down());
        Vector normal = line.cross(between);
        if (!(normal.length() > PointFit.LINE * between.length())) {
            throw new IllegalArgumentException(
                    "the two places lie along strike at one height: every dip would do; expected places across strike");
        }
        return Poles.plane(normal);
    }

    private static PointFit fit(List<Position> positions, List<PositionCovariance> covariances) {
        if (positions.size() < 3) {
            throw new IllegalArgumentException(
                    "number of points is " + positions.size() + "; expected 3 or above to carry a plane");
        }
        for (int i = 0; i < covariances.size(); i++) {
            if (!covariances.get(i).isUncertainInEveryDirection()) {
                throw new IllegalArgumentException(
                        "point " + (i + 1)
                                + " has no uncertainty in some direction; expected sigmas above 0 and no full correlation, or PlaneThroughPoints.ofPositions");
            }
        }
        PointFit fit = new PointFit(positions, covariances);
        if (fit.isLine()) {
            throw new IllegalArgumentException(
                    "the points lie on one line, or at one place: every plane about it would do");
        }
        return fit;
    }

    private static Optional<PlaneEstimate> estimate(PointFit fit, double variance, double freedom) {
        PlaneOrientation plane = Poles.plane(fit.normal());
        Vector normal = Poles.normal(plane);
        double offset = fit.normal().dot(normal) < 0 ? -fit.offset() : fit.offset();
        RealMatrix information = fit.information(normal, offset, Poles.withDip(plane), Poles.withDipDirection(plane));
        // the distance apart by elimination, which keeps the digits of the two angles
        double dip = information.getEntry(0, 0) - square(information.getEntry(0, 2)) / information.getEntry(2, 2);
        double strike = information.getEntry(1, 1) - square(information.getEntry(1, 2)) / information.getEntry(2, 2);
        double both = information.getEntry(0, 1)
                - information.getEntry(0, 2) * information.getEntry(1, 2) / information.getEntry(2, 2);
        double determinant = dip * strike - both * both;
        Vector roll = mayRoll(fit, freedom) ? fit.across().times(Math.PI / 2) : new Vector(0, 0, 0);
        double rollDip = roll.dot(Poles.withDip(plane));
        double rollStrike = roll.dot(Poles.withDipDirection(plane));
        return Optional.of(PlaneEstimate.ofRadians(
                        plane,
                        variance * strike / determinant + rollDip * rollDip,
                        variance * dip / determinant + rollStrike * rollStrike,
                        -variance * both / determinant + rollDip * rollStrike)
                .withDegreesOfFreedom(freedom));
    }

    /**
     * Whether a plane at right angles about the long axis of the points fits them too: their breadth is then error, of which the first
     * order takes the place of every point for exact.
     */
    private static boolean mayRoll(PointFit fit, double freedom) {
        double across = fit.chiSquareAcross();
        int free = fit.points().length - 2;
        return freedom == Double.POSITIVE_INFINITY
                ? UpperTail.ofChiSquare(across, free) > FITS
                : UpperTail.ofF(across / free / (fit.chiSquare() / freedom), free, freedom) > FITS_BESIDE;
    }

    private static double square(double value) {
        return value * value;
    }

    /**
     * The plane.
     *
     * @return its orientation
     */
    public PlaneOrientation plane() {
        return plane;
    }

    /**
     * The plane with the covariance of its pole. It is of first order: where the breadth of the points across their long axis comes within
     * two or three of their sigmas it is too small. Where the points may as well lie on one line, so that a plane at right angles about it
     * fits them too, the plane may roll about it, and the sigma across it is 90 degrees or more.
     *
     * @return the estimate; empty for three places of unknown uncertainty
     */
    public Optional<PlaneEstimate> estimate() {
        return estimate;
    }

    /**
     * How far each point lies from the plane, positive below it.
     *
     * @return metres, in the order of the points; zeros for three
     */
    public List<Double> distances() {
        return distances;
    }

    /**
     * The sum of the squares of the distances over their sigmas, the sigmas being those given, or those that the scatter suggests.
     *
     * @return 0 or more; 0 for three points, the number of points less three where no sigmas were given
     */
    public double chiSquare() {
        return chiSquare;
    }

    /**
     * How broad the cloud of points is beside its length, both as root mean squares: near 0 the points lie nearly on a line and the
     * plane may roll about it.
     *
     * @return a number in (0, 1]
     */
    public double breadth() {
        return breadth;
    }

    /**
     * How probable points at least so far from a plane are if they do lie on one. With sigmas given: the chi-square test with three
     * degrees of freedom less than points. Without: the F test of a curved surface of second order against the plane, from seven
     * places on; it sees curvature alone, since scatter without a sigma to compare it with says nothing.
     *
     * @return a probability in [0, 1]; empty where there are too few points to test
     */
    public OptionalDouble planarityProbability() {
        return planarity;
    }

    /** The plane, with its sigmas where they are known. */
    @Override
    public String toString() {
        return estimate.map(PlaneEstimate::toString).orElseGet(plane::toString) + ", through " + distances.size()
                + " points, breadth " + Degrees.text(100 * breadth) + " %";
    }
}
