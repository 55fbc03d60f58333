package io.github.kernlot.orientation.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.internal.Degrees;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Samples of angles in print, with their numbers from the sources that stand beside each. */
class CircularStatisticsTest {

    /** All samples whose name begins so, of circle-samples.csv. */
    static List<CircularSample> samples(String name) {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(CircularStatisticsTest.class.getResourceAsStream("circle-samples.csv")),
                StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> line.startsWith(name))
                    .map(line -> line.split(",")[1].split(" "))
                    .map(cells -> CircularSample.of(Arrays.stream(cells)
                            .mapToDouble(Double::parseDouble)
                            .toArray()))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "circle-statistics.csv", numLinesToSkip = 1)
    void samplesInPrintHaveTheirNumbers(String name, String quantity, double value, double tolerance, String source) {
        assertEquals(value, quantity(samples(name), quantity), tolerance, source);
    }

    private static double quantity(List<CircularSample> samples, String quantity) {
        CircularSample sample = samples.get(0);
        double resultant = sample.size() * sample.meanLength();
        return switch (quantity) {
            case "mean" -> sample.mean().orElseThrow();
            case "mean_radians" -> Math.toRadians(sample.mean().orElseThrow());
            case "mean_axis" -> sample.meanAxis().orElseThrow();
            case "length" -> sample.meanLength();
            case "variance" -> 1 - sample.meanLength();
            case "resultant" -> resultant;
            case "resultant_cosine" -> resultant * Degrees.cos(sample.mean().orElseThrow());
            case "resultant_sine" -> resultant * Degrees.sin(sample.mean().orElseThrow());
            case "median" -> sample.median().middle();
            case "standard_deviation" -> sample.standardDeviation();
            case "angular_deviation" -> sample.angularDeviation();
            case "mean_deviation" -> sample.meanDeviation();
            case "dispersion" -> sample.dispersion();
            case "range" -> sample.range();
            case "kappa" -> sample.concentration();
            case "bias_of_kappa" -> sample.unbiasedConcentration() / sample.concentration();
            case "rayleigh" -> sample.probabilityOfUniform();
            case "rayleigh_series" -> sample.rayleighSeries();
            case "rayleigh_z" -> resultant * resultant / sample.size();
            case "von_mises_U2" -> CircularTests.watsonVonMises(sample, 1, 1).value();
            case "equal_means" -> CircularSample.probabilityOfEqualMeans(samples);
            case "watson_U2" ->
                CircularTests.watsonTwoSamples(sample, samples.get(1)).value();
            case "watson_wheeler" -> CircularTests.watsonWheeler(samples).value();
            case "watson_wheeler_p" -> CircularTests.watsonWheeler(samples).probability();
            default -> moment(sample, quantity);
        };
    }

    /** {@code direction_2}, {@code length_2}: of the angles times two. */
    private static double moment(CircularSample sample, String quantity) {
        CircularSample multiplied = sample.times(Integer.parseInt(quantity.substring(quantity.length() - 1)));
        return quantity.startsWith("length")
                ? multiplied.meanLength()
                : Math.toRadians(multiplied.mean().orElseThrow());
    }
}
