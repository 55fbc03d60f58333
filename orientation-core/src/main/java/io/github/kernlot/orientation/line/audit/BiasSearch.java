package io.github.kernlot.orientation.line.audit;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.UpperTail;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/** The turn of a group of marks that makes all marks most probable. */
final class BiasSearch {

    /** How far from a guess the turn is looked for, degrees. */
    private static final double AROUND = 8;

    private static final double STEP = 0.25;

    /** Half of the 95 % interval in standard errors. */
    private static final double NORMAL_95 = 1.959963984540054;

    /** Below this curvature, per square degree, the evidence does not depend on the turn. */
    private static final double FLAT = 1e-6;

    private BiasSearch() {}

    /**
     * The turn near a guess or near none, whichever is the more probable; its standard error by the curvature of the evidence, and
     * the likelihood ratio against chi-square with one degree of freedom (Wilks 1938, from memory).
     *
     * @param logEvidence of all marks with the group turned back by some degrees
     * @param guess degrees
     * @return the bias; empty where the evidence does not depend on it
     */
    static Optional<GroupBias> find(DoubleUnaryOperator logEvidence, double guess) {
        double none = logEvidence.applyAsDouble(0);
        double near = logEvidence.applyAsDouble(guess);
        double start = near > none ? Degrees.wrap180(guess) : 0;
        double peak = new BrentOptimizer(1e-6, 0.02)
                .optimize(
                        new MaxEval(200),
                        GoalType.MAXIMIZE,
                        new UnivariateObjectiveFunction(logEvidence::applyAsDouble),
                        new SearchInterval(start - AROUND, start + AROUND, start))
                .getPoint();
        double middle = logEvidence.applyAsDouble(peak);
        double below = logEvidence.applyAsDouble(peak - STEP);
        double above = logEvidence.applyAsDouble(peak + STEP);
        double curvature = (2 * middle - below - above) / (STEP * STEP);
        if (!(curvature > FLAT)) {
            return Optional.empty();
        }
        // the parabola through the three points
        double slope = (above - below) / (2 * STEP);
        double best = peak + slope / curvature;
        double top = middle + slope * slope / (2 * curvature);
        double ratio = Math.max(0, 2 * (top - none));
        double probability = UpperTail.ofChiSquare(ratio, 1);
        return Optional.of(new GroupBias(Degrees.wrap180(best), NORMAL_95 / Math.sqrt(curvature), probability));
    }
}
