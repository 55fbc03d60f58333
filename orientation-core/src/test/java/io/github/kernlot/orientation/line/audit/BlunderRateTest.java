package io.github.kernlot.orientation.line.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.math3.stat.interval.ClopperPearsonInterval;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.junit.jupiter.api.Test;

class BlunderRateTest {

    /** The library is Commons Math 3.6.1, which has the interval by Fisher's F. */
    @Property
    void theIntervalIsThatOfClopperAndPearson(
            @ForAll @IntRange(min = 2, max = 300) int of, @ForAll @IntRange(min = 1, max = 299) int wrong) {
        int expected = Math.min(wrong, of - 1);
        BlunderRate rate = new BlunderRate(expected, of);
        ConfidenceInterval interval = new ClopperPearsonInterval().createInterval(of, expected, 0.95);

        assertEquals(interval.getLowerBound(), rate.low95(), 1e-7);
        assertEquals(interval.getUpperBound(), rate.high95(), 1e-7);
    }

    /** At the ends the interval has a closed form: (alpha / 2)^(1 / n). */
    @Test
    void withNoneOrAllTheIntervalReachesTheEnd() {
        double end = Math.pow(0.025, 1.0 / 12);

        assertEquals(0, new BlunderRate(0, 12).low95());
        assertEquals(1 - end, new BlunderRate(0, 12).high95(), 1e-9);
        assertEquals(end, new BlunderRate(12, 12).low95(), 1e-9);
        assertEquals(1, new BlunderRate(12, 12).high95());
    }

    @Test
    void printsItsInterval() {
        assertEquals("4.0 % (0.5 to 13.7 %) of 50", new BlunderRate(2, 50).toString());
    }

    @Test
    void refusesWhatIsNoRate() {
        assertThrows(IllegalArgumentException.class, () -> new BlunderRate(0, 0));
        assertThrows(IllegalArgumentException.class, () -> new BlunderRate(3, 2));
        assertThrows(IllegalArgumentException.class, () -> new BlunderRate(Double.NaN, 2));
    }
}
