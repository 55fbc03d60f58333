package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.UpperTail;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.FDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;

/** How far the mean direction of a sample may be from the true one, in the form that suits its size and concentration. */
sealed interface MeanTest {

    /** The probability of a mean at least so many degrees, in [0, 180], from the true one. */
    double probability(double away);

    /** The distance that is not exceeded with a probability, degrees in [0, 180]. */
    double radius(double probability);

    static MeanTest of(CircularSample sample) {
        double n = sample.size();
        double length = n * sample.meanLength();
        if (sample.size() == 1 || sample.mean().isEmpty()) {
            return new Silent();
        }
        if (n - length <= 1e-12 * n) {
            return new Sharp();
        }
        if (sample.size() >= 25) {
            double dispersion = (1 - sample.secondMoment()) / (2 * Math.pow(sample.meanLength(), 2));
            return new Large(Math.sqrt(dispersion / n));
        }
        return sample.concentration() >= 2 ? new Concentrated(n, length) : new Spread(n, length);
    }

    /** The probability of a standard normal number above another. */
    static double above(double value) {
        return new NormalDistribution(null, 0, 1).cumulativeProbability(-value);
    }

    private static double arc(double cosine) {
        return cosine >= -1 ? Math.toDegrees(Math.acos(Math.min(1, cosine))) : 180;
    }

    /** Nothing is known of the mean. */
    record Silent() implements MeanTest {
        @Override
        public double probability(double away) {
            return 1;
        }

        @Override
        public double radius(double probability) {
            return 180;
        }
    }

    /** All angles are the same. */
    record Sharp() implements MeanTest {
        @Override
        public double probability(double away) {
            return away > 1e-5 ? 0 : 1;
        }

        @Override
        public double radius(double probability) {
            return 0;
        }
    }

    /** The sine of the difference is normal. */
    record Large(double standardError) implements MeanTest {
        @Override
        public double probability(double away) {
            return 2 * above(Degrees.sin(Math.min(90, away)) / standardError);
        }

        @Override
        public double radius(double probability) {
            double quantile = new NormalDistribution(null, 0, 1).inverseCumulativeProbability((1 + probability) / 2);
            double sine = quantile * standardError;
            return sine < 1 ? Math.toDegrees(Math.asin(sine)) : 180;
        }
    }

    /** By Watson and Williams; length is that of the sum of the unit vectors. */
    record Concentrated(double n, double length) implements MeanTest {
        @Override
        public double probability(double away) {
            // 1 - cos a = 2 sin^2(a/2) keeps its digits
            double lost = 2 * length * Math.pow(Degrees.sin(away / 2), 2);
            return UpperTail.ofF((n - 1) * lost / (n - length), 1, n - 1);
        }

        @Override
        public double radius(double probability) {
            double ratio = distribution().inverseCumulativeProbability(probability);
            return arc(1 - ratio * (n - length) / ((n - 1) * length));
        }

        private FDistribution distribution() {
            return new FDistribution(null, 1, n - 1);
        }
    }

    /** By Upton; length is that of the sum of the unit vectors. */
    record Spread(double n, double length) implements MeanTest {
        @Override
        public double probability(double away) {
            double towards = length * Math.max(0, Degrees.cos(away));
            double ratio = 4 * n * (length * length - towards * towards) / (2 * n * n - towards * towards);
            return UpperTail.ofChiSquare(ratio, 1);
        }

        @Override
        public double radius(double probability) {
            double ratio = distribution().inverseCumulativeProbability(probability);
            double square = 2 * n * (2 * length * length - n * ratio) / (4 * n - ratio);
            return square > 0 ? arc(Math.sqrt(square) / length) : 180;
        }

        private ChiSquaredDistribution distribution() {
            return new ChiSquaredDistribution(null, 1);
        }
    }
}
