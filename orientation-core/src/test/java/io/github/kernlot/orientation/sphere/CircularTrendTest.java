package io.github.kernlot.orientation.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class CircularTrendTest {

    private static final double[] X = {3, 10, 22, 31, 44, 50, 57, 71};
    private static final double[] NOISE = {1.2, -0.4, 0.3, -1.6, 0.9, 0.7, -1.1, 0.2};

    /** Of small angles the trend is the regression on a line; the library is Commons Math 3.6.1. */
    @Test
    void smallAnglesTurnAsOnALine() {
        double[] angles = new double[X.length];
        SimpleRegression line = new SimpleRegression();
        for (int i = 0; i < X.length; i++) {
            angles[i] = 0.001 * (2 * X[i] / 71 + NOISE[i]);
            line.addData(X[i], angles[i]);
        }
        CircularTrend trend = CircularTrend.of(angles, X);

        assertEquals(line.getSlope(), trend.slope(), 1e-7);
        assertEquals(1, trend.standardError() / line.getSlopeStdErr(), 1e-4);
        assertEquals(line.getSignificance(), trend.probabilityOfNone(), 1e-2);
    }

    @Property
    void anEvenTurnIsFoundWhereverItStarts(
            @ForAll @DoubleRange(min = 0, max = 360) double start,
            @ForAll @DoubleRange(min = -2.4, max = 2.4) double slope) {
        double[] angles = new double[X.length];
        for (int i = 0; i < X.length; i++) {
            angles[i] = start + slope * X[i];
        }
        CircularTrend trend = CircularTrend.of(angles, X);

        assertEquals(slope, trend.slope(), 1e-6);
        assertEquals(36, trend.middle(), 1e-12);
        assertEquals(0, Math.IEEEremainder(trend.atMiddle() - start - slope * 36, 360), 1e-5);
        assertEquals(0, trend.standardError(), 1e-5);
    }

    @Test
    void anglesThatStandStillHaveNoTrend() {
        CircularTrend trend = CircularTrend.of(new double[] {5, 5, 5}, new double[] {0, 1, 2});
        assertEquals("0.000 +- 0.000 degrees per unit, 005.0 in the middle", trend.toString());
        assertEquals(1, new CircularTrend(0, 0, 0, 0, 3).probabilityOfNone());
        assertEquals(0, new CircularTrend(0, 0, 1, 0, 3).probabilityOfNone());
    }

    @Test
    void refusesWhatHasNoTrend() {
        double[] two = {1, 2};
        double[] three = {1, 2, 3};
        assertThrows(IllegalArgumentException.class, () -> CircularTrend.of(two, two));
        assertThrows(IllegalArgumentException.class, () -> CircularTrend.of(three, two));
        assertThrows(IllegalArgumentException.class, () -> CircularTrend.of(three, new double[] {4, 4, 4}));
        assertThrows(IllegalArgumentException.class, () -> CircularTrend.of(three, new double[] {4, Double.NaN, 4}));
    }
}
