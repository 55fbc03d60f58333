package io.github.kernlot.orientation.internal.circle;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * A Gaussian turn of an angle that happens with a probability, and a uniform one else.
 *
 * <p>A Fourier transform is exact for what the grid resolves, but near the peak alone: what the grid does not resolve rings, and
 * rounding leaves noise, round the whole circle. Where many marks agree, what they leave far from them is much less, and it decides
 * when marks further on say something else. So what is far below the greatest value is worked out from neighbours, in terms that are
 * all positive and keep the small values as well as the great ones. A turn of middling size is a sum over neighbours everywhere.
 *
 * <p>For messages that the grid resolves ({@link CircleGrid#resolving}) a turn of any variance is within 2e-7 of the greatest value of
 * the wrapped Gaussian, whose harmonic k is exp(-variance k^2 / 2), and so are many turns of the wrapped Gaussian of their summed
 * variance. What is below 1e-7 of the greatest value is right within 6 in 100 of itself in the tail of a Gaussian, and within 3 in 100 a
 * turn where tails of several meet, as far as nine standard deviations of the turn reach. Nothing that was positive turns negative.
 */
public final class GaussianTurn implements Transition {

    /** The standard deviation, in steps of the grid, from which the sampled Gaussian is within 2e-7 of the wrapped one. */
    private static final double SAMPLED = 1.1;

    /**
     * From here on it is right within 4 exp(-2 pi^2 sigma^2), 3 in 100 and less, of what it makes of any exponential (Poisson's
     * summation formula).
     */
    private static final double SUMMED = 0.5;

    /** The sum over neighbours ends where a Gaussian is 1e-18 of its height, and where a transform is faster. */
    private static final double REACH_IN_SIGMAS = 9;

    private static final int MOST_NEIGHBOURS = 128;

    /** Below this part of the greatest value a transform's result is ringing and rounding, or nearly. */
    private static final double FAR = 1e-7;

    /** On a grid of fewer standard deviations nothing becomes as small as that. */
    private static final double ROUND_IN_SIGMAS = 12;

    /** Neighbours that differ by less lie on a straight line as well as on an exponential. */
    private static final double FLAT = 0.9;

    private final CircleGrid grid;
    private final double held;
    /** In steps of the grid, squared. */
    private final double variance;

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
        this.variance = variance / (grid.step() * grid.step());
        double sigma = Math.sqrt(this.variance);
        boolean summed = sigma >= SAMPLED && REACH_IN_SIGMAS * sigma <= Math.min(MOST_NEIGHBOURS, grid.size() / 2 - 1);
        this.kernel = sigma >= SUMMED && ROUND_IN_SIGMAS * sigma < grid.size() ? kernel(sigma) : new double[0];
        this.spectrum = summed ? new double[0] : gaussian(grid, variance);
    }

    /** The weights of the neighbours on one side, from the angle itself on. */
    private static double[] kernel(double sigma) {
        double[] kernel = new double[1 + (int) Math.ceil(REACH_IN_SIGMAS * sigma)];
        double sum = 0;
        for (int i = 0; i < kernel.length; i++) {
            kernel[i] = Math.exp(-i * i / (2 * sigma * sigma));
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
        double slipped = held < 1 ? (1 - held) * grid.mass(message) / 360 : 0;
        double[] turned = turned(message, slipped);
        if (held < 1) {
            Arrays.setAll(turned, i -> held * turned[i] + slipped);
        }
        return turned;
    }

    /** The Gaussian turn alone, which need not be exact far below something that will be added. */
    private double[] turned(double[] message, double added) {
        if (variance == 0) {
            return message.clone();
        }
        if (spectrum.length == 0) {
            return summed(message);
        }
        double[] turned = grid.function(grid.spectrum(message).damped(spectrum));
        double far = FAR * Arrays.stream(turned).max().orElse(0);
        boolean isNearlyUniform = kernel.length == 0 && variance > SUMMED;
        if (far > added && !isNearlyUniform) {
            IntToDoubleFunction beyond = kernel.length == 0 ? i -> parabolic(message, i) : sampled(message);
            Arrays.setAll(turned, i -> turned[i] > far ? turned[i] : beyond.applyAsDouble(i));
        } else {
            Arrays.setAll(turned, i -> Math.max(turned[i], 0));
        }
        return turned;
    }

    /**
     * The turn, by half a step or less, of the function whose logarithm is the parabola through a value and its neighbours: exact for
     * the tail of one Gaussian. At the single angle where that meets the level of something else it may be off by a factor of some.
     */
    private double parabolic(double[] message, int index) {
        double before = message[index == 0 ? message.length - 1 : index - 1];
        double here = message[index];
        double after = message[index == message.length - 1 ? 0 : index + 1];
        double greatest = Math.max(here, Math.max(before, after));
        double least = Math.min(here, Math.min(before, after));
        if (least > FLAT * greatest || !(least > 0)) {
            return here + variance / 2 * (before - 2 * here + after);
        }
        double rise = Math.log(after / here);
        double fall = Math.log(here / before);
        double slope = (rise + fall) / 2;
        // a parabola that rises as fast as the turn's Gaussian falls has no integral
        double rest = Math.max(0.5, 1 - variance * (rise - fall));
        return Math.min(greatest, here * Math.exp(variance * slope * slope / (2 * rest)) / Math.sqrt(rest));
    }

    /** The sum over neighbours: of a wide turn at some angles only, within a sixteenth of its width of any, and logarithms between. */
    private IntToDoubleFunction sampled(double[] message) {
        int every = Integer.highestOneBit(Math.max(1, (int) (Math.sqrt(variance) / 8)));
        if (every == 1 || message.length % every != 0) {
            double[] summed = summed(message);
            return i -> summed[i];
        }
        double[] round = round(message);
        double[] logs = new double[message.length / every + 1];
        Arrays.setAll(logs, i -> Math.log(sum(round, i * every % message.length)));
        return i -> {
            int below = i / every;
            double part = (double) (i % every) / every;
            return Math.exp(part == 0 ? logs[below] : (1 - part) * logs[below] + part * logs[below + 1]);
        };
    }

    /** The message with as much of itself at either end as the kernel reaches. */
    private double[] round(double[] message) {
        int size = message.length;
        int reach = kernel.length - 1;
        double[] round = new double[size + 2 * reach];
        System.arraycopy(message, size - reach, round, 0, reach);
        System.arraycopy(message, 0, round, reach, size);
        System.arraycopy(message, 0, round, reach + size, reach);
        return round;
    }

    private double[] summed(double[] message) {
        double[] round = round(message);
        int reach = kernel.length - 1;
        double[] summed = new double[message.length];
        for (int i = 0; i < summed.length; i++) {
            summed[i] = kernel[0] * round[reach + i];
        }
        // four neighbours at once: the sums are fetched and stored a quarter as often
        int j = 1;
        for (; j + 3 <= reach; j += 4) {
            double one = kernel[j];
            double two = kernel[j + 1];
            double three = kernel[j + 2];
            double four = kernel[j + 3];
            int left = reach - j;
            int right = reach + j;
            for (int i = 0; i < summed.length; i++) {
                summed[i] += one * (round[left + i] + round[right + i])
                        + two * (round[left - 1 + i] + round[right + 1 + i])
                        + three * (round[left - 2 + i] + round[right + 2 + i])
                        + four * (round[left - 3 + i] + round[right + 3 + i]);
            }
        }
        for (; j <= reach; j++) {
            for (int i = 0; i < summed.length; i++) {
                summed[i] += kernel[j] * (round[reach - j + i] + round[reach + j + i]);
            }
        }
        return summed;
    }

    private double sum(double[] round, int index) {
        int place = index + kernel.length - 1;
        double sum = kernel[0] * round[place];
        for (int j = 1; j < kernel.length; j++) {
            sum += kernel[j] * (round[place - j] + round[place + j]);
        }
        return sum;
    }
}
