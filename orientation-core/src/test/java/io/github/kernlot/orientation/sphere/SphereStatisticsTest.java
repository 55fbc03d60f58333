package io.github.kernlot.orientation.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.orientation.sphere.distribution.KentDistribution;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Samples in print, with their numbers from the sources that stand beside each. */
class SphereStatisticsTest {

    static DirectionSample sample(String name) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(SphereStatisticsTest.class.getResourceAsStream("sphere-data.csv")),
                StandardCharsets.UTF_8))) {
            List<DirectedLine> directions = reader.lines()
                    .filter(line -> line.startsWith(name + ","))
                    .map(line -> line.split(","))
                    .map(cells ->
                            DirectedLine.ofPlungeAndTrend(Double.parseDouble(cells[2]), Double.parseDouble(cells[1])))
                    .toList();
            return DirectionSample.of(directions);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "sphere-statistics.csv", numLinesToSkip = 1)
    void samplesInPrintHaveTheirNumbers(String name, String quantity, double value, double tolerance, String source) {
        assertEquals(value, quantity(sample(name), quantity), tolerance, source);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "rayleigh-sphere.csv", numLinesToSkip = 1)
    void theTableOfTheRayleighTestIsMet(int n, double five, double one, String source) {
        assertEquals(five, DirectionSample.criticalResultant(n, 0.05), 5.1e-5, source);
        assertEquals(one, DirectionSample.criticalResultant(n, 0.01), 5.1e-5, source);
    }

    private static double quantity(DirectionSample sample, String quantity) {
        DirectedLine mean = sample.mean().orElseThrow();
        OrientationTensor tensor = sample.tensor();
        AxisEllipse ellipse = sample.meanEllipse(0.95).orElseThrow();
        List<DirectionSample> parts = sample.size() > 9
                ? List.of()
                : List.of(
                        DirectionSample.of(sample.directions().subList(0, 5)),
                        DirectionSample.of(sample.directions().subList(5, 9)));
        return switch (quantity) {
            case "mean_north" -> mean.north();
            case "mean_east" -> mean.east();
            case "mean_down" -> mean.down();
            case "mean_azimuth" -> mean.trend();
            case "mean_plunge" -> mean.plunge();
            case "resultant" -> sample.resultant();
            case "mean_length" -> sample.meanLength();
            case "unbiased_concentration" -> sample.unbiasedConcentration().orElseThrow();
            case "concentration" -> sample.concentration();
            case "cone95" -> sample.meanCone95();
            case "shape" -> tensor.shape().orElseThrow();
            case "strength" -> tensor.strength();
            case "point" -> tensor.pointIndex();
            case "girdle" -> tensor.girdleIndex();
            case "random" -> tensor.randomIndex();
            case "bingham" -> sample.axes().uniformity().value();
            case "kent_kappa" -> sample.kent().orElseThrow().concentration();
            case "kent_beta" -> sample.kent().orElseThrow().ovalness();
            case "kent_likelihood_kappa" -> likely(sample).concentration();
            case "kent_likelihood_beta" -> likely(sample).ovalness();
            case "watson_F" -> EqualMeans.watsonWilliams(parts).value();
            case "watson_p" -> EqualMeans.watsonWilliams(parts).probability();
            case "watson_V" -> EqualMeans.watsonUnequalConcentrations(parts).value();
            case "fisher_D" -> DirectionTests.fisherColatitudes(sample, 1, 1).value();
            case "kuiper_V" -> DirectionTests.symmetryOfBearings(sample, 1, 1).value();
            case "elongation" -> DirectionTests.elongation(sample).value();
            case "eigenvalue_first" -> tensor.first();
            case "eigenvalue_second" -> tensor.second();
            case "eigenvalue_third" -> tensor.third();
            case "axis_first_azimuth" -> tensor.firstAxis().trend();
            case "axis_second_azimuth" -> tensor.secondAxis().trend();
            case "axis_third_azimuth" -> tensor.thirdAxis().trend();
            case "axis_first_plunge" -> tensor.firstAxis().plunge();
            case "axis_second_plunge" -> tensor.secondAxis().plunge();
            case "axis_third_plunge" -> tensor.thirdAxis().plunge();
            case "ellipse_long" -> ellipse.longRadius();
            case "ellipse_short" -> ellipse.shortRadius();
            case "median_plunge" -> sample.median().plunge();
            case "median_azimuth" -> sample.median().trend();
            case "median_axis_plunge" -> sample.axes().median().plunge();
            case "median_axis_azimuth" -> sample.axes().median().trend();
            case "median_sum" ->
                sample.directions().stream()
                        .mapToDouble(direction -> Math.toRadians(direction.angleTo(sample.median())))
                        .sum();
            case "watson_cluster" -> sample.axes().watsonCluster().orElseThrow().concentration();
            case "watson_girdle" -> sample.axes().watsonGirdle().orElseThrow().concentration();
            default -> tensor(tensor, quantity.charAt(7), quantity.charAt(8));
        };
    }

    private static KentDistribution likely(DirectionSample sample) {
        return sample.kentOfGreatestLikelihood().orElseThrow();
    }

    /** The tensor put together again from its eigenvalues and axes. */
    private static double tensor(OrientationTensor tensor, char row, char column) {
        return tensor.first() * product(tensor.firstAxis(), row, column)
                + tensor.second() * product(tensor.secondAxis(), row, column)
                + tensor.third() * product(tensor.thirdAxis(), row, column);
    }

    private static double product(LineOrientation axis, char row, char column) {
        return component(Unit.of(axis), row) * component(Unit.of(axis), column);
    }

    private static double component(Vector vector, char which) {
        return which == 'n' ? vector.north() : which == 'e' ? vector.east() : vector.down();
    }
}
