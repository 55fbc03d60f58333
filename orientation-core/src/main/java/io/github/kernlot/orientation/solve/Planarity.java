package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.internal.UpperTail;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** The F test of a surface of second order over the fitted plane against the plane itself. */
final class Planarity {

    private static final int LINEAR = 3;
    private static final int QUADRATIC = 6;

    private Planarity() {}

    /** How probable so much curvature is if there is none; empty below seven points, or where they do not spread enough to tell. */
    static OptionalDouble probability(PointFit fit) {
        Vector[] points = fit.points();
        int free = points.length - QUADRATIC;
        if (free < 1) {
            return OptionalDouble.empty();
        }
        Vector normal = fit.normal();
        Vector one = (Math.abs(normal.down()) < 0.7 ? Vector.DOWN : Vector.ofAzimuth(0))
                .across(normal)
                .unit();
        Vector two = normal.cross(one);
        double scale = fit.spreads()[0];
        double[] heights = Arrays.stream(points).mapToDouble(normal::dot).toArray();
        double flat = squares(points, heights, one, two, scale, LINEAR);
        double curved = squares(points, heights, one, two, scale, QUADRATIC);
        if (Double.isNaN(curved)) {
            return OptionalDouble.empty();
        }
        double rounding = points.length * Math.pow(4 * fit.resolution() + 1e-14 * scale, 2);
        if (flat - curved <= rounding) {
            return OptionalDouble.of(1);
        }
        if (curved <= rounding) {
            return OptionalDouble.of(0);
        }
        double ratio = (flat - curved) / (QUADRATIC - LINEAR) / (curved / free);
        return OptionalDouble.of(UpperTail.ofF(ratio, QUADRATIC - LINEAR, free));
    }

    /** The sum of squares that a surface with that many terms leaves; NaN where the points do not fix it. */
    private static double squares(Vector[] points, double[] heights, Vector one, Vector two, double scale, int terms) {
        RealMatrix design = new Array2DRowRealMatrix(points.length, terms);
        for (int i = 0; i < points.length; i++) {
            double u = points[i].dot(one) / scale;
            double v = points[i].dot(two) / scale;
            double[] row = {1, u, v, u * u, u * v, v * v};
            design.setRow(i, Arrays.copyOf(row, terms));
        }
        DecompositionSolver solver = new QRDecomposition(design, 1e-9).getSolver();
        if (!solver.isNonSingular()) {
            return Double.NaN;
        }
        RealVector left = new ArrayRealVector(heights);
        RealVector off = left.subtract(design.operate(solver.solve(left)));
        return off.dotProduct(off);
    }
}
