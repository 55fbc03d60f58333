package io.github.kernlot.orientation.internal.circle;

import io.github.kernlot.orientation.internal.Degrees;
import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Functions on a circle, sampled at evenly spaced angles from 0, and their Fourier coefficients. Densities are per degree.
 *
 * @param size the number of angles, 4 or more; a power of two is fast
 */
public record CircleGrid(int size) {

    private static final int LEAST = 64;
    private static final int GREATEST = 1 << 13;

    /**
     * The step that a density needs, in its standard deviations: exp(-(pi / 0.6)^2 / 2), 1e-6, of its coefficients is then beyond the
     * grid.
     */
    private static final double STEP_IN_SIGMAS = 0.6;

    /** A wrapped Gaussian wider than this, degrees, is uniform to more digits than a double has. */
    private static final double UNIFORM_SIGMA = 600;

    /** A Gaussian ends where it is 1e-31 of its height: what several messages leave of it is lost in rounding long before. */
    private static final double REACH_IN_SIGMAS = 12;

    /**
     * The grid that resolves densities whose standard deviation is not below sigma.
     *
     * @param sigma degrees, above 0
     * @return a grid of 64 to 8192 angles
     */
    public static CircleGrid resolving(double sigma) {
        int size = LEAST;
        while (size < GREATEST && 360.0 / size > STEP_IN_SIGMAS * sigma) {
            size *= 2;
        }
        return new CircleGrid(size);
    }

    /**
     * The step.
     *
     * @return degrees from one angle to the next
     */
    public double step() {
        return 360.0 / size;
    }

    /**
     * An angle of the grid.
     *
     * @param index of the angle, from 0
     * @return degrees
     */
    public double angle(int index) {
        return index * step();
    }

    private double[] constant(double value) {
        double[] function = new double[size];
        Arrays.fill(function, value);
        return function;
    }

    /**
     * The wrapped Gaussian density; one that is too sharp for the grid is as sharp as the grid allows.
     *
     * @param mean degrees
     * @param sigma degrees, above 0
     * @return per degree, at each angle of the grid
     */
    public double[] gaussian(double mean, double sigma) {
        return wrapped(mean, sigma, (away, density) -> density);
    }

    /**
     * The derivative of the wrapped Gaussian density by its mean.
     *
     * @param mean degrees
     * @param sigma degrees, above 0
     * @return per degree squared, at each angle of the grid
     */
    public double[] gaussianSlope(double mean, double sigma) {
        double drawn = resolved(sigma);
        return wrapped(mean, sigma, (away, density) -> density * away / (drawn * drawn));
    }

    private double resolved(double sigma) {
        return Math.max(sigma, step() / STEP_IN_SIGMAS);
    }

    private double[] wrapped(double mean, double asked, DoubleBinaryOperator term) {
        double sigma = resolved(asked);
        if (sigma > UNIFORM_SIGMA) {
            return constant(term.applyAsDouble(0, 1 / 360.0));
        }
        double[] sums = new double[size];
        double scale = 1 / (sigma * Math.sqrt(2 * Math.PI));
        double reach = REACH_IN_SIGMAS * sigma;
        // the unwrapped line of angles, as far as the Gaussian reaches
        int last = (int) Math.floor((mean + reach) / step());
        for (int i = (int) Math.ceil((mean - reach) / step()); i <= last; i++) {
            double away = i * step() - mean;
            sums[Math.floorMod(i, size)] +=
                    term.applyAsDouble(away, scale * Math.exp(-away * away / (2 * sigma * sigma)));
        }
        return sums;
    }

    /**
     * The density of total ignorance.
     *
     * @return 1/360 at each angle of the grid
     */
    public double[] uniform() {
        return constant(1 / 360.0);
    }

    /**
     * The integral round the circle.
     *
     * @param density a function on this grid
     * @return its sum times the step
     */
    public double mass(double[] density) {
        double sum = 0;
        for (double value : density) {
            sum += value;
        }
        return sum * step();
    }

    /**
     * The Fourier coefficients.
     *
     * @param function a real function on this grid
     * @return its coefficients, not divided by the size
     */
    public Spectrum spectrum(double[] function) {
        double[][] data = {function.clone(), new double[size]};
        transform(data, TransformType.FORWARD);
        return new Spectrum(Arrays.copyOf(data[0], size / 2 + 1), Arrays.copyOf(data[1], size / 2 + 1));
    }

    /**
     * The real function of its Fourier coefficients.
     *
     * @param spectrum the coefficients
     * @return its values at each angle of the grid
     */
    public double[] function(Spectrum spectrum) {
        double[][] data = {Arrays.copyOf(spectrum.real(), size), Arrays.copyOf(spectrum.imaginary(), size)};
        for (int k = 1; k < (size + 1) / 2; k++) {
            data[0][size - k] = data[0][k];
            data[1][size - k] = -data[1][k];
        }
        transform(data, TransformType.INVERSE);
        return data[0];
    }

    private void transform(double[][] data, TransformType type) {
        if (Integer.bitCount(size) == 1) {
            FastFourierTransformer.transformInPlace(data, DftNormalization.STANDARD, type);
        } else {
            transformDirectly(data, type == TransformType.FORWARD ? -1 : 1);
        }
    }

    private void transformDirectly(double[][] data, int sign) {
        double[] real = data[0].clone();
        double[] imaginary = data[1].clone();
        double scale = sign > 0 ? 1.0 / size : 1;
        for (int k = 0; k < size; k++) {
            double sumReal = 0;
            double sumImaginary = 0;
            for (int i = 0; i < size; i++) {
                double angle = 360.0 * ((long) i * k % size) / size;
                double cosine = Degrees.cos(angle);
                double sine = sign * Degrees.sin(angle);
                sumReal += real[i] * cosine - imaginary[i] * sine;
                sumImaginary += real[i] * sine + imaginary[i] * cosine;
            }
            data[0][k] = sumReal * scale;
            data[1][k] = sumImaginary * scale;
        }
    }

    /** Fourier coefficients 0 to size/2 of a real function. */
    public static final class Spectrum {

        private final double[] real;
        private final double[] imaginary;

        /**
         * Coefficients.
         *
         * @param real their real parts
         * @param imaginary their imaginary parts
         */
        public Spectrum(double[] real, double[] imaginary) {
            this.real = real;
            this.imaginary = imaginary;
        }

        /**
         * The real parts.
         *
         * @return from that of the mean on
         */
        public double[] real() {
            return real;
        }

        /**
         * The imaginary parts.
         *
         * @return from that of the mean on
         */
        public double[] imaginary() {
            return imaginary;
        }

        /** Each coefficient times a factor: the function convolved with an even one. */
        Spectrum damped(double[] factors) {
            double[] dampedReal = new double[real.length];
            double[] dampedImaginary = new double[real.length];
            for (int k = 0; k < real.length; k++) {
                dampedReal[k] = real[k] * factors[k];
                dampedImaginary[k] = imaginary[k] * factors[k];
            }
            return new Spectrum(dampedReal, dampedImaginary);
        }
    }
}
