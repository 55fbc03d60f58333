package io.github.kernlot.orientation.internal;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The eigenvalues of a symmetric matrix of three rows that has none below zero, the greatest first, with unit vectors.
 *
 * @param values three, 0 or more
 * @param vectors the unit vector of each
 */
public record Eigen(List<Double> values, List<Vector> vectors) {

    /** Below this share of the trace an eigenvalue is rounding. */
    private static final double ROUNDING = 1e-15;

    /**
     * Of a matrix.
     *
     * @param matrix three rows, the same both ways to the last bit
     * @return its eigenvalues
     */
    public static Eigen of(RealMatrix matrix) {
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

    /**
     * Of the mean of the products of the components.
     *
     * @param vectors one or more
     * @return its eigenvalues
     */
    public static Eigen of(List<Vector> vectors) {
        double[][] sums = new double[3][3];
        for (Vector vector : vectors) {
            addProduct(sums, vector, 1.0 / vectors.size());
        }
        return of(new Array2DRowRealMatrix(sums));
    }

    /**
     * Adds the products of the components of a vector.
     *
     * @param sums three rows of three, to which is added
     * @param vector the vector
     * @param weight how much of the products is added
     */
    public static void addProduct(double[][] sums, Vector vector, double weight) {
        double[] components = components(vector);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                // the same both ways to the last bit: the library takes a matrix that is not for one without symmetry
                sums[i][j] += weight * (components[i] * components[j]);
            }
        }
    }

    /**
     * The components of a vector.
     *
     * @param vector the vector
     * @return north, east, down
     */
    public static double[] components(Vector vector) {
        return new double[] {vector.north(), vector.east(), vector.down()};
    }
}
