package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.LineOrientation;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/**
 * The ellipsoid that holds a place with a given confidence.
 *
 * @param axes three, perpendicular to each other, the longest first
 * @param confidence the share of places that it holds, in (0, 1)
 */
public record ErrorEllipsoid(List<Axis> axes, double confidence) {

    /**
     * One axis.
     *
     * @param semiLength half of its length, in the unit of the covariance (metres for places)
     * @param orientation how it lies
     */
    public record Axis(double semiLength, LineOrientation orientation) {

        /** The half length and how it lies. */
        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%.2f along %s", semiLength, orientation);
        }
    }

    /** Copies the list. */
    public ErrorEllipsoid {
        axes = List.copyOf(axes);
    }

    static ErrorEllipsoid of(double[][] covariance, double confidence) {
        double radius = Quantiles.radius(confidence, 3);
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(3, true, true);
        if (!eigen.decompose(new DMatrixRMaj(covariance))) {
            throw new IllegalStateException("the axes of an ellipsoid were not found");
        }
        return new ErrorEllipsoid(
                IntStream.range(0, 3)
                        .mapToObj(i -> axis(eigen, i, radius))
                        .sorted((one, other) -> Double.compare(other.semiLength(), one.semiLength()))
                        .toList(),
                confidence);
    }

    private static Axis axis(EigenDecomposition_F64<DMatrixRMaj> eigen, int i, double radius) {
        DMatrixRMaj vector = eigen.getEigenVector(i);
        double variance = Math.max(0, eigen.getEigenvalue(i).getReal());
        return new Axis(
                radius * Math.sqrt(variance), LineOrientation.ofVector(vector.get(0), vector.get(1), vector.get(2)));
    }

    /** The axes and the confidence. */
    @Override
    public String toString() {
        String text = axes.stream().map(Axis::toString).collect(Collectors.joining(", "));
        return String.format(Locale.ROOT, "%s (%s %%)", text, Quantiles.percent(confidence));
    }
}
