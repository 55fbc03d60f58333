package io.github.kernlot.orientation.line.fit;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.MultivariateFunction;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.PointValuePair;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * The greatest value of a smooth function of a few coordinates between bounds, and the shape of the hill. Deterministic: a
 * derivative-free search by quadratic models (M. J. D. Powell 2009, BOBYQA), then Newton steps by differences.
 */
final class EvidencePeak {

    /** Half of 1.96 squared: how far the logarithm falls to the ends of a 95 % interval (from memory, S. S. Wilks 1938). */
    static final double FALL = 1.92;

    private static final int MOST_EVALUATIONS = 2000;
    private static final double WIDEST_STEP = 0.5;

    /** Per unit of a coordinate squared: less says that the coordinate may be anything. */
    private static final double LEAST_CURVED = 0.2;

    private final ToDoubleFunction<double[]> function;
    private final double[] lowest;
    private final double[] highest;
    private final double[] steps;
    private double[] best;
    private double height = Double.NEGATIVE_INFINITY;
    private RealMatrix curvature;

    /**
     * Climbs.
     *
     * @param function what is to be greatest
     * @param lowest the bounds of the coordinates; below 0 where the function is even about 0, and then minus that from above
     * @param highest the bounds from above
     * @param start from where to search, between the bounds
     * @param floor a point that the answer must not lie below
     */
    EvidencePeak(
            ToDoubleFunction<double[]> function, double[] lowest, double[] highest, double[] start, double[] floor) {
        this.function = function;
        this.lowest = lowest;
        this.highest = highest;
        this.best = start.clone();
        this.steps = new double[best.length];
        Arrays.fill(steps, 0.1);
        at(floor);
        search(start);
        searchOffZero(start);
        this.curvature = curvature();
        polish();
    }

    private double at(double[] point) {
        double value = function.applyAsDouble(point);
        if (value > height) {
            height = value;
            best = point.clone();
            for (int i = 0; i < best.length; i++) {
                best[i] = within(i, lowest[i] < 0 ? Math.abs(best[i]) : best[i]);
            }
        }
        return value;
    }

    /** At 0 an even function is level, top or not: what got there is tried again from where it began. */
    private void searchOffZero(double[] start) {
        double[] again = best.clone();
        for (int i = 0; i < again.length; i++) {
            if (lowest[i] < 0 && again[i] < 0.05) {
                again[i] = start[i] / 2;
            }
        }
        if (!Arrays.equals(again, best)) {
            search(again);
        }
    }

    private void search(double[] start) {
        at(start);
        if (start.length == 1) {
            new BrentOptimizer(1e-4, 1e-4)
                    .optimize(
                            new UnivariateObjectiveFunction((UnivariateFunction) x -> at(new double[] {x})),
                            GoalType.MAXIMIZE,
                            new SearchInterval(Math.max(lowest[0], 0), highest[0], start[0]),
                            new MaxEval(MOST_EVALUATIONS));
            return;
        }
        double radius = 0.3;
        for (int i = 0; i < start.length; i++) {
            radius = Math.min(radius, (highest[i] - lowest[i]) / 3);
        }
        try {
            new BOBYQAOptimizer(2 * start.length + 1, radius, 0.01)
                    .optimize(
                            new ObjectiveFunction((MultivariateFunction) this::at),
                            GoalType.MAXIMIZE,
                            new SimpleBounds(lowest, highest),
                            new InitialGuess(start),
                            new MaxEval(MOST_EVALUATIONS));
        } catch (MathIllegalStateException ignored) {
            // its own model of the hill failed near the top; the best point is kept and Newton's steps go on from there
        }
    }

    /** Minus the second derivatives at the best point. */
    private RealMatrix curvature() {
        int size = best.length;
        double[] centre = best.clone();
        double[] up = new double[size];
        double[] down = new double[size];
        double top = height;
        RealMatrix matrix = new Array2DRowRealMatrix(size, size);
        for (int i = 0; i < size; i++) {
            for (int attempt = 0; attempt < 4; attempt++) {
                up[i] = at(moved(centre, i, steps[i], i, 0));
                down[i] = at(moved(centre, i, -steps[i], i, 0));
                double fall = top - (up[i] + down[i]) / 2;
                if (fall > 0.02 && fall < 0.3) {
                    break;
                }
                steps[i] *= Math.min(Math.max(Math.sqrt(0.1 / Math.max(fall, 1e-6)), 0.2), 4);
                steps[i] = Math.min(steps[i], 1);
                up[i] = Double.NaN;
            }
            if (Double.isNaN(up[i])) {
                up[i] = at(moved(centre, i, steps[i], i, 0));
                down[i] = at(moved(centre, i, -steps[i], i, 0));
            }
            matrix.setEntry(i, i, (2 * top - up[i] - down[i]) / (steps[i] * steps[i]));
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                double both =
                        at(moved(centre, i, steps[i], j, steps[j])) + at(moved(centre, i, -steps[i], j, -steps[j]));
                double entry = (up[i] + down[i] + up[j] + down[j] - both - 2 * top) / (2 * steps[i] * steps[j]);
                matrix.setEntry(i, j, entry);
                matrix.setEntry(j, i, entry);
            }
        }
        return matrix;
    }

    private static double[] moved(double[] point, int i, double byI, int j, double byJ) {
        double[] moved = point.clone();
        moved[i] += byI;
        moved[j] += byJ;
        return moved;
    }

    private void polish() {
        for (int round = 0; round < 4; round++) {
            double before = height;
            newton(-1, best.clone(), height);
            double gain = height - before;
            if (gain > 0.05) {
                curvature = curvature();
            } else if (gain < 1e-3) {
                return;
            }
        }
    }

    /** One Newton step of all coordinates but one; the better of where it began and where it ends. */
    private PointValuePair newton(int held, double[] from, double value) {
        double[] gradient = new double[from.length];
        for (int i = 0; i < from.length; i++) {
            if (i != held) {
                gradient[i] =
                        (at(moved(from, i, steps[i], i, 0)) - at(moved(from, i, -steps[i], i, 0))) / (2 * steps[i]);
            }
        }
        double[] to = from.clone();
        double[] step = inverse(held).operate(gradient);
        for (int i = 0; i < to.length; i++) {
            to[i] = within(i, to[i] + Math.min(Math.max(step[i], -WIDEST_STEP), WIDEST_STEP));
        }
        double reached = at(to);
        return reached > value ? new PointValuePair(to, reached) : new PointValuePair(from, value);
    }

    private double within(int index, double coordinate) {
        return Math.min(Math.max(coordinate, lowest[index]), highest[index]);
    }

    /** The inverse of the curvature without one coordinate, whose row and column are 0; flat directions count as faintly curved. */
    private RealMatrix inverse(int held) {
        int size = best.length;
        RealMatrix free = curvature.copy();
        if (held >= 0) {
            for (int i = 0; i < size; i++) {
                free.setEntry(i, held, 0);
                free.setEntry(held, i, 0);
            }
        }
        RealMatrix inverse = inverted(free);
        if (held >= 0) {
            for (int i = 0; i < size; i++) {
                inverse.setEntry(i, held, 0);
                inverse.setEntry(held, i, 0);
            }
        }
        return inverse;
    }

    private static RealMatrix inverted(RealMatrix matrix) {
        EigenDecomposition eigen = new EigenDecomposition(matrix);
        double[] inverted = new double[matrix.getRowDimension()];
        for (int i = 0; i < inverted.length; i++) {
            inverted[i] = 1 / Math.max(eigen.getRealEigenvalue(i), LEAST_CURVED);
        }
        return eigen.getV()
                .multiply(MatrixUtils.createRealDiagonalMatrix(inverted))
                .multiply(eigen.getVT());
    }

    /** The standard deviation of one coordinate, all others free. */
    double spread(int index) {
        return Math.sqrt(inverse(-1).getEntry(index, index));
    }

    double[] best() {
        return best.clone();
    }

    double height() {
        return height;
    }

    /** Whether the function has fallen by {@link #FALL} where a coordinate is at its least. */
    boolean excludesLeast(int index) {
        double least = Math.max(lowest[index], 0);
        double sigmas = (best[index] - least) / spread(index);
        return sigmas > 4 || (sigmas > 0.1 && fall(index, least) > FALL);
    }

    /** How far the function falls where one coordinate is held and the others do their best. */
    double fall(int index, double coordinate) {
        double[] from = best.clone();
        double away = coordinate - from[index];
        double[] pulled = inverse(index).operate(curvature.getColumn(index));
        for (int i = 0; i < from.length; i++) {
            from[i] = i == index ? coordinate : within(i, from[i] - pulled[i] * away);
        }
        PointValuePair point = new PointValuePair(from, at(from));
        double gain = 1;
        for (int step = 0; step < 3 && gain > 0.04 && best.length > 1; step++) {
            PointValuePair next = newton(index, point.getPoint(), point.getValue());
            gain = next.getValue() - point.getValue();
            point = next;
        }
        return height - point.getValue();
    }

    /** Where, above the best point, the function has fallen by {@link #FALL}; empty where it does not before the bound. */
    OptionalDouble upperEnd(int index) {
        double inside = best[index];
        double outside = highest[index];
        boolean fallen = false;
        double rootInside = 0;
        double next = inside + Math.sqrt(2 * FALL / Math.max(curvature.getEntry(index, index), 0.5));
        for (int step = 0; step < 30 && outside - inside > 1e-4; step++) {
            double tried = next > inside && next < outside ? next : fallen ? (inside + outside) / 2 : outside;
            double fall = fall(index, tried);
            if (Math.abs(fall - FALL) < 0.03) {
                return OptionalDouble.of(tried);
            }
            // the root of the fall is nearly straight
            double root = Math.sqrt(Math.max(fall, 0));
            double ahead = (Math.sqrt(FALL) - root) * (tried - inside) / Math.max(root - rootInside, 1e-3);
            next = tried + Math.min(ahead, 1);
            if (fall > FALL) {
                outside = tried;
                fallen = true;
            } else if (tried == highest[index]) {
                return OptionalDouble.empty();
            } else {
                inside = tried;
                rootInside = root;
            }
        }
        return fallen ? OptionalDouble.of((inside + outside) / 2) : OptionalDouble.empty();
    }

    /** The covariance of some coordinates, the others held; flat directions count as faintly curved. */
    RealMatrix covariance(int[] indices) {
        return indices.length == 0 ? new Array2DRowRealMatrix() : inverted(curvature.getSubMatrix(indices, indices));
    }
}
