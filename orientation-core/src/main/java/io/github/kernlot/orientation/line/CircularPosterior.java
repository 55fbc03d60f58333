package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.circle.CircleGrid;
import io.github.kernlot.orientation.internal.circle.CircleGrid.Spectrum;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** A density on the circle, widened by an error that is added to the angle, and the numbers that describe it. */
final class CircularPosterior {

    /** Below this length of the mean vector a density says nothing of a mean. */
    private static final double NO_MEAN = 1e-3;

    /** Coefficients below this add nothing to a probability. */
    private static final double NEGLIGIBLE = 1e-13;

    private static final double LEAST_WEIGHT = 1e-3;

    /** Between two peaks the density falls by more than this part of itself; less is rounding. */
    private static final double RIPPLE = 1e-3;

    private final CircleGrid grid;
    private final Spectrum spectrum;

    CircularPosterior(CircleGrid grid, double[] density, double widening) {
        this.grid = grid;
        Spectrum narrow = grid.spectrum(density);
        double rate = Math.pow(Math.toRadians(widening), 2) / 2;
        double[] real = new double[narrow.real().length];
        double[] imaginary = new double[real.length];
        for (int k = 0; k < real.length; k++) {
            double factor = Math.exp(-rate * k * k) / narrow.real()[0];
            real[k] = narrow.real()[k] * factor;
            imaginary[k] = narrow.imaginary()[k] * factor;
        }
        spectrum = new Spectrum(real, imaginary);
    }

    private double length() {
        return Math.min(1, Math.hypot(spectrum.real()[1], spectrum.imaginary()[1]));
    }

    boolean hasMean() {
        return length() > NO_MEAN;
    }

    /** The direction of the mean vector, degrees in [0, 360). */
    double mean() {
        // the coefficients are the means of exp(-i k angle)
        return Degrees.azimuth(-spectrum.imaginary()[1], spectrum.real()[1]);
    }

    /** sqrt(-2 ln R) in degrees. */
    double sigma() {
        return Math.toDegrees(Math.sqrt(-2 * Math.log(length()))) + 0.0;
    }

    /** The smallest radius about the mean that holds a probability, degrees in [0, 180]. */
    double radius(double probability) {
        double[] series = aboutTheMean();
        if (within(series, 180) <= probability) {
            return 180;
        }
        return new BrentSolver(1e-9).solve(200, radius -> within(series, radius) - probability, 0, 180);
    }

    /** The coefficients of sin(k radius) in the probability within a radius about the mean, as far as they count. */
    private double[] aboutTheMean() {
        int last = spectrum.real().length - 1;
        while (last > 1 && Math.hypot(spectrum.real()[last], spectrum.imaginary()[last]) < NEGLIGIBLE) {
            last--;
        }
        double[] series = new double[last + 1];
        double cosine = Degrees.cos(mean());
        double sine = Degrees.sin(mean());
        double cosineTimes = 1;
        double sineTimes = 0;
        for (int k = 1; k <= last; k++) {
            double turned = cosineTimes * cosine - sineTimes * sine;
            sineTimes = sineTimes * cosine + cosineTimes * sine;
            cosineTimes = turned;
            double towards = spectrum.real()[k] * cosineTimes - spectrum.imaginary()[k] * sineTimes;
            series[k] = (2 * k == grid.size() ? 1 : 2) * towards / (k * Math.PI);
        }
        return series;
    }

    /** The probability within a radius: the integral of the Fourier series, by Clenshaw's recurrence. */
    private static double within(double[] series, double radius) {
        double twice = 2 * Degrees.cos(radius);
        double next = 0;
        double afterNext = 0;
        for (int k = series.length - 1; k >= 1; k--) {
            double sum = series[k] + twice * next - afterNext;
            afterNext = next;
            next = sum;
        }
        return radius / 180 + next * Degrees.sin(radius);
    }

    /** The density per degree at the angles of the grid, never negative. */
    double[] density() {
        double[] density = grid.function(spectrum);
        for (int i = 0; i < density.length; i++) {
            density[i] = Math.max(0, density[i]) * grid.size() / 360;
        }
        return density;
    }

    /** The peaks of the density, the weightiest first; each has the probability between the valleys on either side. */
    List<LineMode> modes() {
        double[] density = density();
        int size = density.length;
        int lowest = 0;
        for (int i = 0; i < size; i++) {
            lowest = density[i] < density[lowest] ? i : lowest;
        }
        List<LineMode> modes = new ArrayList<>();
        int peak = lowest;
        int valley = lowest;
        int start = lowest;
        boolean rising = true;
        for (int i = 1; i <= size; i++) {
            int here = (lowest + i) % size;
            if (rising && density[here] > density[peak]) {
                peak = here;
            } else if (rising && density[here] < density[peak] * (1 - RIPPLE)) {
                rising = false;
                valley = here;
            } else if (!rising && density[here] < density[valley]) {
                valley = here;
            } else if (!rising && density[here] * (1 - RIPPLE) > density[valley]) {
                add(modes, density, peak, start, valley);
                rising = true;
                start = valley;
                peak = here;
            }
        }
        add(modes, density, peak, start, lowest);
        modes.sort(Comparator.comparingDouble(LineMode::weight).reversed());
        return modes;
    }

    private void add(List<LineMode> modes, double[] density, int peak, int from, int to) {
        int size = density.length;
        int steps = Math.floorMod(to - from, size);
        double weight = 0;
        for (int i = 0; i < (steps == 0 ? size : steps); i++) {
            weight += density[(from + i) % size] * grid.step();
        }
        if (weight >= LEAST_WEIGHT) {
            double left = Math.log(Math.max(density[(peak + size - 1) % size], Double.MIN_NORMAL));
            double top = Math.log(Math.max(density[peak], Double.MIN_NORMAL));
            double right = Math.log(Math.max(density[(peak + 1) % size], Double.MIN_NORMAL));
            double bend = left - 2 * top + right;
            double shift = bend < 0 ? (left - right) / (2 * bend) : 0;
            modes.add(new LineMode(Degrees.wrap360(grid.angle(peak) + shift * grid.step()), weight));
        }
    }
}
