package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.QRDecomposition;

/** What a fit found: the plane at {@code n . p = offset} from the place on the axis at the datum, and how well. */
record TraceSolution(
        CorePlane plane,
        double datum,
        double offsetMillimetres,
        Optional<CorePlaneEstimate> estimate,
        OptionalDouble axisDepthSigma,
        Optional<WallSigmas> sigmas,
        List<Double> residuals,
        List<Integer> leftOut) {

    /** Points nearer to each other than this part of the radius lie at one place. */
    private static final double SAME = 1e-9;

    /** Up to so many points of unknown sigma are all kept: they could not tell a wrong one. */
    private static final int TOO_FEW_TO_JUDGE = 6;

    /** If points scatter no more than this share of all fits, none is looked at with suspicion. */
    private static final double UNSUSPICIOUS = 0.999;

    private static final double SINGULAR = 1e-11;

    /** A plane touches the wall where this share of the variance of its points is that of the bend of the wall. */
    private static final double BENT = 0.02;

    /** Of one of two planes beside the other, as a variance. */
    private static final double LEAST_SCATTER = 0.01;

    /** The sigma of a turn that the points leave open, in degrees: with it the cone of 95 % holds every pole. */
    private static final double OPEN = 90;

    static TraceSolution of(CoreDiameter core, List<WallPoint> points, WallSigmas sigmas, boolean known) {
        double radius = Require.inRange("core diameter", core.millimetres(), 1e-3, 1e6, "mm") / 2;
        int[] order = order(points);
        double datum =
                points.isEmpty() ? 0 : points.get(order[order.length / 2]).depth();
        double[] depths = Arrays.stream(order)
                .mapToDouble(i -> (points.get(i).depth() - datum) * 1000 / radius)
                .toArray();
        double[] angles =
                Arrays.stream(order).mapToDouble(i -> points.get(i).angle()).toArray();
        Wall wall = Wall.of(depths, angles, sigmas.depthMillimetres() / radius, Math.toRadians(sigmas.angle()));
        check(wall);
        Outcome outcome = known ? ofKnown(wall) : ofUnknown(wall);
        return outcome.solution(order, sigmas, datum, radius);
    }

    private static Outcome ofKnown(Wall wall) {
        Loss loss = new Loss(1);
        Cut squares = leastSquares(wall);
        boolean suspicious = isSuspicious(wall, squares);
        Cut start = suspicious
                ? new CutDescent(wall, loss.wider()).from(new CutSearch(wall).byCost(loss.wider()))
                : squares;
        Outcome robust = new Outcome(wall, new CutDescent(wall, loss).from(start), loss, true);
        // the biweight may rather give up one of few points that chance put three sigmas off than cut between them
        Outcome all = new Outcome(wall, squares, Loss.SQUARES, true);
        boolean isSound = suspicious ? robust.hasMajority() : robust.hasAll();
        return !isSound && all.isWithin(loss.limit()) ? all : robust;
    }

    private static Outcome ofUnknown(Wall wall) {
        if (wall.size() <= TOO_FEW_TO_JUDGE) {
            return new Outcome(wall, leastSquares(wall), Loss.SQUARES, false);
        }
        SoundPoints sound = SoundPoints.among(wall);
        Loss loss = new Loss(sound.scale());
        return new Outcome(wall, new CutDescent(wall, loss).from(sound.cut()), loss, false);
    }

    private static Cut leastSquares(Wall wall) {
        return new CutDescent(wall, Loss.SQUARES).from(new CutSearch(wall).byCost(Loss.SQUARES));
    }

    /** By depth and then by angle, so that the order in which points come does not matter. */
    private static int[] order(List<WallPoint> points) {
        return IntStream.range(0, points.size())
                .boxed()
                .sorted(Comparator.comparing(
                        points::get,
                        Comparator.comparingDouble(WallPoint::depth).thenComparingDouble(WallPoint::angle)))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static void check(Wall wall) {
        Optional<Vector> second = different(wall, Optional.empty());
        boolean three = second.isPresent() && different(wall, second).isPresent();
        if (!three) {
            throw new IllegalArgumentException("the points lie at "
                    + (wall.size() == 0 ? "no place" : second.isPresent() ? "two places" : "one place")
                    + "; expected three different places or more to fix a plane");
        }
        Vector first = wall.point(0);
        boolean oneLine = IntStream.range(1, wall.size())
                .mapToObj(i -> wall.point(i).minus(first))
                .allMatch(way -> Math.hypot(way.east(), way.down()) < SAME);
        if (oneLine) {
            throw new IllegalArgumentException(
                    "the points lie on one line along the core: every plane about it would do; expected"
                            + " points at different angles");
        }
    }

    private static Optional<Vector> different(Wall wall, Optional<Vector> second) {
        for (int i = 1; i < wall.size(); i++) {
            Vector point = wall.point(i);
            if (isApart(point, wall.point(0))
                    && second.map(other -> isApart(point, other)).orElse(true)) {
                return Optional.of(point);
            }
        }
        return Optional.empty();
    }

    private static boolean isApart(Vector one, Vector other) {
        return one.minus(other).length() > SAME;
    }

    private static boolean isSuspicious(Wall wall, Cut cut) {
        int free = wall.size() - 3;
        return free > 0 && isTooMuch(squares(wall, cut), free);
    }

    private static boolean isTooMuch(double chiSquare, int free) {
        return chiSquare > new ChiSquaredDistribution(null, free).inverseCumulativeProbability(UNSUSPICIOUS);
    }

    private static double squares(Wall wall, Cut cut) {
        return Arrays.stream(wall.residuals(cut)).map(r -> r * r).sum();
    }

    /** The cut that was found and what follows from it. */
    private record Outcome(Wall wall, Cut cut, Loss loss, boolean known) {

        TraceSolution solution(int[] order, WallSigmas given, double datum, double radius) {
            double[] residuals = wall.residuals(cut);
            int[] kept = kept(residuals);
            requireMajority(kept.length);
            CorePlane plane = CoreDirections.plane(cut.normal());
            double side = CoreDirections.normal(plane).dot(cut.normal()) < 0 ? -1 : 1;
            Cut named = new Cut(CoreDirections.normal(plane), side * cut.offset());
            DMatrixRMaj covariance = covariance(plane, named, kept);
            int free = kept.length - 3;
            boolean told = known || free > 0;
            double variance =
                    known ? (wall.size() > 3 ? loss.variance() : 1) : free > 0 ? variance(residuals, kept) : 0;
            double factor = known ? 1 : Math.sqrt(variance / loss.variance());
            double unit = known ? 1 : Math.max(SoundPoints.ROUNDING, factor);
            Double[] placed = new Double[residuals.length];
            for (int i = 0; i < residuals.length; i++) {
                placed[order[i]] = wall.size() == 3 ? 0 : side * residuals[i] / unit + 0.0;
            }
            List<Integer> leftOut = IntStream.range(0, residuals.length)
                    .filter(i -> !(loss.weight(residuals[i]) > 0))
                    .mapToObj(i -> order[i])
                    .sorted()
                    .toList();
            double squareDegrees = variance * Math.pow(Math.toDegrees(1), 2);
            Vector turn = told ? openTurn(named, kept) : new Vector(0, 0, 0);
            double withAlpha = OPEN * CoreDirections.withAlpha(plane).dot(turn);
            double withBeta = OPEN * CoreDirections.withBeta(plane).dot(turn);
            return new TraceSolution(
                    plane,
                    datum,
                    named.offset() * radius,
                    told
                            ? Optional.of(CorePlaneEstimate.of(
                                    plane,
                                    squareDegrees * covariance.get(0, 0) + withAlpha * withAlpha,
                                    squareDegrees * covariance.get(1, 1) + withBeta * withBeta,
                                    squareDegrees * covariance.get(0, 1) + withAlpha * withBeta,
                                    known ? Double.POSITIVE_INFINITY : free))
                            : Optional.empty(),
                    told ? axisDepthSigma(plane, named, covariance, variance, radius / 1000) : OptionalDouble.empty(),
                    told ? Optional.of(given.times(factor)) : Optional.empty(),
                    List.of(placed),
                    leftOut);
        }

        private int[] kept(double[] residuals) {
            return IntStream.range(0, residuals.length)
                    .filter(i -> loss.weight(residuals[i]) > 0)
                    .toArray();
        }

        boolean hasMajority() {
            return kept(wall.residuals(cut)).length >= CutSearch.majority(wall.size());
        }

        boolean hasAll() {
            return kept(wall.residuals(cut)).length == wall.size();
        }

        boolean isWithin(double limit) {
            return Arrays.stream(wall.residuals(cut)).allMatch(residual -> Math.abs(residual) < limit);
        }

        private void requireMajority(int kept) {
            int needed = CutSearch.majority(wall.size());
            if (kept < needed) {
                throw new IllegalArgumentException(
                        "only " + kept + " of " + wall.size() + " points agree on a plane within "
                                + Loss.TUNING + " sigmas; expected " + needed
                                + " or more, of one trace, and sigmas as large as the points are uncertain");
            }
        }

        /** Of alpha, the turn round the core and the offset, in square sigmas: the inverse of J'J by the triangle of J. */
        private DMatrixRMaj covariance(CorePlane plane, Cut named, int[] kept) {
            Vector withAlpha = CoreDirections.withAlpha(plane);
            Vector withBeta = CoreDirections.withBeta(plane);
            DMatrixRMaj design = new DMatrixRMaj(kept.length, 3);
            double[] row = new double[4];
            for (int i = 0; i < kept.length; i++) {
                wall.row(named, withAlpha, withBeta, kept[i], row);
                for (int k = 0; k < 3; k++) {
                    design.set(i, k, row[k + 1]);
                }
            }
            QRDecomposition<DMatrixRMaj> decomposition = DecompositionFactory_DDRM.qr(kept.length, 3);
            if (!decomposition.decompose(design)) {
                throw noPlane();
            }
            DMatrixRMaj triangle = decomposition.getR(null, true);
            double least = Double.POSITIVE_INFINITY;
            double greatest = 0;
            for (int k = 0; k < 3; k++) {
                least = Math.min(least, Math.abs(triangle.get(k, k)));
                greatest = Math.max(greatest, Math.abs(triangle.get(k, k)));
            }
            if (!(least > SINGULAR * greatest)) {
                throw noPlane();
            }
            CommonOps_DDRM.invert(triangle);
            DMatrixRMaj covariance = new DMatrixRMaj(3, 3);
            CommonOps_DDRM.multTransB(triangle, triangle, covariance);
            return covariance;
        }

        /**
         * The way in which the pole may turn freely, of length 1: across the line of the points where the plane touches the wall along it,
         * and the plane about it at right angles fits them too. The first order does not see it, since all derivatives by the angle vanish
         * there. The null vector where the points fix the plane.
         */
        private Vector openTurn(Cut named, int[] kept) {
            Wall sound = wall.only(kept);
            Vector turn = sound.longWay().cross(named.normal()).unit();
            double squares = squares(sound, sound.through(turn));
            boolean open;
            if (known) {
                open = !isTooMuch(squares, kept.length - 2) && sound.bent(named) > BENT;
            } else {
                // with the sigmas that the other plane would need, this one must not fit much better
                Wall wider = sound.scaled(squares / (kept.length - 2));
                open = squares(wider, named) > LEAST_SCATTER * (kept.length - 3) && wider.bent(named) > BENT;
            }
            return open ? turn : new Vector(0, 0, 0);
        }

        private static IllegalArgumentException noPlane() {
            return new IllegalArgumentException(
                    "the points that agree fix no plane: every plane about one line would do");
        }

        /** Of the estimate, for residuals of unknown scale: mean psi^2 / (mean psi')^2 (Huber 1981, from memory). */
        private double variance(double[] residuals, int[] kept) {
            if (loss.equals(Loss.SQUARES)) {
                return Arrays.stream(residuals).map(r -> r * r).sum() / (kept.length - 3);
            }
            double squares = 0;
            double slopes = 0;
            for (int i : kept) {
                squares += Math.pow(loss.weight(residuals[i]) * residuals[i], 2);
                slopes += loss.slope(residuals[i]) / kept.length;
            }
            return squares / (kept.length - 3) / (slopes * slopes);
        }

        /** z0 = c / n_t, and n_t = sin(alpha) moves with alpha alone. */
        private static OptionalDouble axisDepthSigma(
                CorePlane plane, Cut named, DMatrixRMaj covariance, double variance, double radius) {
            double axial = named.normal().north();
            if (plane.alpha() == 0) {
                return OptionalDouble.empty();
            }
            double byAlpha =
                    -named.offset() / axial * CoreDirections.withAlpha(plane).north() / axial;
            double byOffset = 1 / axial;
            double square = byAlpha * byAlpha * covariance.get(0, 0)
                    + 2 * byAlpha * byOffset * covariance.get(0, 2)
                    + byOffset * byOffset * covariance.get(2, 2);
            double sigma = radius * Math.sqrt(variance * Math.max(0, square));
            return sigma < Double.POSITIVE_INFINITY ? OptionalDouble.of(sigma) : OptionalDouble.empty();
        }
    }
}
