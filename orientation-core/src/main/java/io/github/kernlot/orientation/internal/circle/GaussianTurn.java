package io.github.kernlot.orientation.internal.circle;

import java.util.Arrays;

/**
 * A Gaussian turn of an angle that happens with a probability, and a uniform one else.
 *
 * <p>A Fourier transform leaves 1e-16 of the greatest value of a message as noise everywhere. Where many marks agree, what they
 * leave far from them is much less, and it decides when marks further on say something else: so a narrow turn is a sum over
 * neighbours, whose terms are all positive and which keeps the small values as exactly as the great ones.
 */
public final class GaussianTurn implements Transition {

    /** The standard deviation, in steps of the grid, from which the sampled Gaussian has the right variance. */
    private static final double SAMPLED = 0.8;

    /** From here on five angles can have the second and the fourth moment of a Gaussian with no weight below 0. */
    private static final double FIVE = Math.sqrt(1 / 3.0);

    /** The sum over neighbours ends where a Gaussian is 1e-18 of its height, and where a transform is faster. */
    private static final double REACH_IN_SIGMAS = 9;

    private static final int MOST_NEIGHBOURS = 128;

    /** Below this part of the greatest value a transform's result is noise, or nearly. */
    private static final double NOISE = 1e-10;

    private final CircleGrid grid;
    private final double held;
    private final double[] kernel;
    private final double[] spectrum;

    /**
     * A turn.
     *
     * @param grid the grid of the angles
     * @param variance of the Gaussian turn, square degrees
     * @param held how probable the Gaussian turn is
     */
    public GaussianTurn(CircleGrid grid, double variance, double held) {
        this.grid = grid;
        this.held = held;
        double sigma = Math.sqrt(variance) / grid.step();
        boolean narrow = REACH_IN_SIGMAS * sigma <= Math.min(MOST_NEIGHBOURS, grid.size() / 2 - 1);
        this.kernel = narrow ? kernel(sigma) : new double[0];
        this.spectrum = narrow && (sigma >= FIVE || sigma == 0) ? new double[0] : gaussian(grid, variance);
    }

    /** The weights of the neighbours on one side, from the angle itself on. */
    private static double[] kernel(double sigma) {
        double variance = sigma * sigma;
        if (sigma < FIVE) {
            return new double[] {1 - variance, variance / 2};
        }
        if (sigma < SAMPLED) {
            double far = (3 * variance * variance - variance) / 24;
            double near = variance / 2 - 4 * far;
            return new double[] {1 - 2 * near - 2 * far, near, far};
        }
        double[] kernel = new double[1 + (int) Math.ceil(REACH_IN_SIGMAS * sigma)];
        double sum = 0;
        for (int i = 0; i < kernel.length; i++) {
            kernel[i] = Math.exp(-i * i / (2 * variance));
            sum += i == 0 ? kernel[i] : 2 * kernel[i];
        }
        double all = sum;
        Arrays.setAll(kernel, i -> kernel[i] / all);
        return kernel;
    }

    private static double[] gaussian(CircleGrid grid, double variance) {
        double[] gaussian = new double[grid.size() / 2 + 1];
        double rate = variance * Math.pow(Math.PI / 180, 2) / 2;
        Arrays.setAll(gaussian, k -> Math.exp(-rate * k * k));
        return gaussian;
    }

    @Override
    public double[] up(double[] message) {
        return down(message);
    }

    @Override
    public double[] down(double[] message) {
        double[] turned = turned(message);
        if (held < 1) {
            double slipped = (1 - held) * grid.mass(message) / 360;
            Arrays.setAll(turned, i -> held * turned[i] + slipped);
        }
        return turned;
    }

    private double[] turned(double[] message) {
        if (spectrum.length == 0) {
            return kernel.length == 1 ? message.clone() : summed(message);
        }
        double[] transformed = grid.function(grid.spectrum(message).damped(spectrum));
        if (kernel.length == 0 || held < 1) {
            return transformed;
        }
        double greatest = 0;
        for (double value : transformed) {
            greatest = Math.max(greatest, Math.abs(value));
        }
        double noise = NOISE * greatest;
        double[] summed = summed(message);
        Arrays.setAll(transformed, i -> Math.abs(transformed[i]) > noise ? transformed[i] : summed[i]);
        return transformed;
    }

    private double[] summed(double[] message) {
        int size = message.length;
        int reach = kernel.length - 1;
        double[] round = new double[size + 2 * reach];
        System.arraycopy(message, size - reach, round, 0, reach);
        System.arraycopy(message, 0, round, reach, size);
        System.arraycopy(message, 0, round, reach + size, reach);
        double[] summed = new double[size];
        for (int j = 0; j <= reach; j++) {
            double weight = j == 0 ? kernel[0] / 2 : kernel[j];
            for (int i = 0; i < size; i++) {
                summed[i] += weight * (round[reach + i - j] + round[reach + i + j]);
            }
        }
        return summed;
    }
}
