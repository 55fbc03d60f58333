package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Vector;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/** The eigenvalues of a symmetric matrix of three rows that has none below zero, the greatest first, with unit vectors. */
record Eigen(List<Double> values, List<Vector> vectors) {

    /** Below this share of the trace an eigenvalue is rounding. */
    private static final double ROUNDING = 1e-15;

    static Eigen of(RealMatrix matrix) {
        EigenDecomposition found = new EigenDecomposition(matrix);
        double trace = matrix.getTrace();
        List<Integer> order = IntStream.range(0, 3)
                .boxed()
                .sorted((i, j) -> Double.compare(found.getRealEigenvalue(j), found.getRealEigenvalue(i)))
                .toList();
        return new Eigen(
                order.stream()
                        .map(found::getRealEigenvalue)
                        .map(value -> value < ROUNDING * trace ? 0.0 : value)
                        .toList(),
                order.stream()
                        .map(i -> found.getEigenvector(i))
                        .map(v -> new Vector(v.getEntry(0), v.getEntry(1), v.getEntry(2)).unit())
                        .toList());
    }

    /** Of the mean of the products of the components. */
    static Eigen of(List<Vector> vectors) {
        double[][] sums = new double[3][3];
        for (Vector vector : vectors) {
            addProduct(sums, vector, 1.0 / vectors.size());
        }
        return of(new Array2DRowRealMatrix(sums));
    }

    static void addProduct(double[][] sums, Vector vector, double weight) {
        double[] components = components(vector);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                // the same both ways to the last bit: the library takes a matrix that is not for one without symmetry
                sums[i][j] += weight * (components[i] * components[j]);
            }
        }
    }

    static double[] components(Vector vector) {
        return new double[] {vector.north(), vector.east(), vector.down()};
    }
}
