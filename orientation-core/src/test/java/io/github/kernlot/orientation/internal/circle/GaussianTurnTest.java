package io.github.kernlot.orientation.internal.circle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Reference: harmonic k of the wrapped Gaussian is exp(-k^2 sigma^2 / 2), and Gaussians turned by Gaussians are Gaussians (K. V.
 * Mardia and P. E. Jupp, Directional Statistics, 2000, from memory).
 */
class GaussianTurnTest {

    private static final CircleGrid GRID = new CircleGrid(512);

    /** The narrowest standard deviation that a grid is made for, in its steps. */
    private static final double NARROWEST = 1 / 0.6;

    private static final double MEAN = 201.3;

    /** Standard deviations of a turn in steps of the grid, from none to uniform, about every change of method among them. */
    static double[] sigmas() {
        return new double[] {
            0, 1e-6, 1e-3, 0.03, 0.1, 0.2, 0.3, 0.4, 0.499, 0.501, 0.57, 0.58, 0.65, 0.7, 0.79, 0.81, 0.9, 1, 1.099,
            1.101, 1.3, 2, 4, 9, 14.2, 14.3, 17, 25, 40, 43, 60, 100, 200, 1000
        };
    }

    private static GaussianTurn turn(double sigma, double held) {
        return new GaussianTurn(GRID, Math.pow(sigma * GRID.step(), 2), held);
    }

    private static double[] turned(double sigma, int times, double[] message) {
        GaussianTurn turn = turn(sigma, 1);
        double[] turned = message;
        for (int i = 0; i < times; i++) {
            turned = i % 2 == 0 ? turn.down(turned) : turn.up(turned);
        }
        return turned;
    }

    private static double[] onGrid(IntToDoubleFunction values) {
        double[] onGrid = new double[GRID.size()];
        Arrays.setAll(onGrid, values);
        return onGrid;
    }

    /** A wrapped Gaussian about the mean, summed over turns of the circle; sigma in steps. */
    private static double[] gaussian(double sigma) {
        double width = sigma * GRID.step();
        if (width > 600) {
            return GRID.uniform();
        }
        int turns = 2 + (int) (10 * width / 360);
        return onGrid(i -> {
            double sum = 0;
            for (int turn = -turns; turn <= turns; turn++) {
                double away = (GRID.angle(i) - MEAN + 360 * turn) / width;
                sum += Math.exp(-away * away / 2);
            }
            return sum / (width * Math.sqrt(2 * Math.PI));
        });
    }

    private static double greatest(double[] values) {
        return Arrays.stream(values).max().orElseThrow();
    }

    private static double farthest(double[] one, double[] other) {
        double farthest = 0;
        for (int i = 0; i < one.length; i++) {
            farthest = Math.max(farthest, Math.abs(one[i] - other[i]));
        }
        return farthest;
    }

    /** Each harmonic as strong as in the narrowest density that the grid resolves. */
    @ParameterizedTest
    @MethodSource("sigmas")
    void everyHarmonicIsDampedAsByTheWrappedGaussian(double sigma) {
        for (int k = 0; k < GRID.size() / 2; k++) {
            double radians = Math.toRadians(k * GRID.step());
            double strength = Math.exp(-radians * radians * NARROWEST * NARROWEST / 2);
            double damping = Math.exp(-radians * radians * sigma * sigma / 2);
            int harmonic = k;
            double[] before = onGrid(i -> 1 + strength * Math.cos(Math.toRadians(harmonic * (GRID.angle(i) - MEAN))));
            double[] after =
                    onGrid(i -> 1 + strength * damping * Math.cos(Math.toRadians(harmonic * (GRID.angle(i) - MEAN))));

            assertEquals(0, farthest(after, turned(sigma, 1, before)), 2e-7, "harmonic " + k);
        }
    }

    @ParameterizedTest
    @MethodSource("sigmas")
    void manyTurnsAreOneOfTheirSummedVariance(double sigma) {
        for (int times : new int[] {1, 2, 7, 100}) {
            double[] expected = gaussian(Math.sqrt(NARROWEST * NARROWEST + times * sigma * sigma));
            double[] found = turned(sigma, times, gaussian(NARROWEST));

            assertEquals(0, farthest(expected, found) / greatest(expected), 2e-7, times + " turns");
        }
    }

    @ParameterizedTest
    @MethodSource("sigmas")
    void noMassIsLostAndTheMeanStaysAndVariancesAdd(double sigma) {
        for (int times : new int[] {1, 50}) {
            double radians = Math.toRadians(GRID.step()) * Math.sqrt(NARROWEST * NARROWEST + times * sigma * sigma);
            double length = Math.exp(-radians * radians / 2);
            double[] found = turned(sigma, times, gaussian(NARROWEST));
            double cosine = 0;
            double sine = 0;
            for (int i = 0; i < found.length; i++) {
                cosine += found[i] * Math.cos(Math.toRadians(GRID.angle(i) - MEAN)) * GRID.step();
                sine += found[i] * Math.sin(Math.toRadians(GRID.angle(i) - MEAN)) * GRID.step();
            }

            assertEquals(1, GRID.mass(found), 1e-7);
            assertEquals(0, sine, 1e-9);
            assertEquals(length, cosine, 1e-7);
            if (length > 0.1) {
                double variance = -2 * Math.log(Math.hypot(cosine, sine));
                assertEquals(radians * radians, variance, 1e-7 + 2e-6 * times * Math.pow(Math.toRadians(sigma), 2));
            }
        }
    }

    /** However sharp, also where a mark is sharper than the grid resolves. */
    @ParameterizedTest
    @MethodSource("sigmas")
    void whatIsPositiveStaysPositive(double sigma) {
        for (double width : new double[] {0.4, 1, NARROWEST, 5}) {
            double[] message = onGrid(i -> 1e-120 + gaussian(width)[i]);
            for (double held : new double[] {1, 1 - 1e-12, 0.7, 0}) {
                double least =
                        Arrays.stream(turn(sigma, held).down(message)).min().orElseThrow();
                assertTrue(least > 0, width + " " + held + " " + least);
            }
        }
    }

    /** A Gaussian turned once, of which each value counts, as far as nine standard deviations of the turn reach. */
    @ParameterizedTest
    @MethodSource("sigmas")
    void aTailIsTurnedInProportion(double sigma) {
        double[] before = gaussian(NARROWEST);
        double[] expected = gaussian(Math.hypot(NARROWEST, sigma));
        double[] found = turned(sigma, 1, before);
        for (int i = 0; i < found.length; i++) {
            if (expected[i] > 1e-15 * greatest(expected)) {
                assertEquals(1, found[i] / expected[i], 0.06, "at " + GRID.angle(i));
            }
        }
    }

    @Test
    void turnsOfLessThanHalfAStepTurnATailExactly() {
        for (double sigma : new double[] {1e-6, 0.03, 0.1, 0.3, 0.499}) {
            double[] expected = gaussian(Math.hypot(NARROWEST, sigma));
            double[] found = turned(sigma, 1, gaussian(NARROWEST));
            for (int i = 0; i < found.length; i++) {
                double level = expected[i] / greatest(expected);
                if (level > 1e-40 && level < 1e-9) {
                    assertEquals(1, found[i] / expected[i], 1e-10, "at " + GRID.angle(i));
                }
            }
        }
    }

    /** exp(log - (x - mean)^2 / (2 variance)), in steps of the grid; level where the variance is infinite. */
    private record Part(double log, double mean, double variance) {

        Part times(double otherMean, double otherVariance) {
            if (Double.isInfinite(variance)) {
                return new Part(log, otherMean, otherVariance);
            }
            double away = mean - otherMean;
            double product = 1 / (1 / variance + 1 / otherVariance);
            return new Part(
                    log - away * away / (2 * (variance + otherVariance)),
                    product * (mean / variance + otherMean / otherVariance),
                    product);
        }

        Part turned(double by) {
            return Double.isInfinite(variance)
                    ? this
                    : new Part(log - Math.log1p(by / variance) / 2, mean, variance + by);
        }

        double logAt(double x) {
            return Double.isInfinite(variance) ? log : log - (x - mean) * (x - mean) / (2 * variance);
        }
    }

    private static double logAt(List<Part> parts, double x) {
        double greatest =
                parts.stream().mapToDouble(part -> part.logAt(x)).max().orElseThrow();
        double sum = parts.stream()
                .mapToDouble(part -> Math.exp(part.logAt(x) - greatest))
                .sum();
        return greatest + Math.log(sum);
    }

    /**
     * Nine marks that agree and may each be wrong, a turn after each: a mixture of Gaussians in closed form, whose level far from the
     * marks is 1e-27 of the peak and whose flanks bend wherever one more mark gives up.
     */
    @ParameterizedTest
    @MethodSource("sigmas")
    void aChainOfMarksIsTurnedInProportionAtEveryAngle(double sigma) {
        if (sigma > 17) {
            return;
        }
        double markSigma = 3 * NARROWEST;
        double wrong = 1e-3;
        Random random = new Random(4);
        List<Part> parts = new ArrayList<>(List.of(new Part(0, 0, Double.POSITIVE_INFINITY)));
        double[] message = onGrid(i -> 1);
        for (int mark = 0; mark < 9; mark++) {
            double mean = GRID.size() / 2.0 + 3 * random.nextGaussian();
            List<Part> observed = new ArrayList<>();
            for (Part part : parts) {
                observed.add(new Part(part.log + Math.log(wrong), part.mean, part.variance).turned(sigma * sigma));
                observed.add(part.times(mean, markSigma * markSigma).turned(sigma * sigma));
            }
            parts = observed;
            double[] before = message;
            double[] product = onGrid(i -> before[i] * (Math.exp(-Math.pow((i - mean) / markSigma, 2) / 2) + wrong));
            message = turn(sigma, 1).down(product);
        }
        // beyond, what comes from either side round the circle counts as much
        for (int i = 50; i < GRID.size() - 50; i++) {
            assertEquals(logAt(parts, i), Math.log(message[i]), 0.3, "at " + i);
        }
    }

    @ParameterizedTest
    @MethodSource("sigmas")
    void aTurnThatMayBeUniformIsAMixture(double sigma) {
        double[] message = gaussian(3);
        double[] held = turned(sigma, 1, message);
        double[] expected = onGrid(i -> 0.7 * held[i] + 0.3 / 360);

        assertEquals(0, farthest(expected, turn(sigma, 0.7).up(message)), 1e-9);
    }
}
