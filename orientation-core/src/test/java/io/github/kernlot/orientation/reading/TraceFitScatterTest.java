package io.github.kernlot.orientation.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CorePlane;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What scatter makes of the residuals and the sigmas, and which points it gives up. */
class TraceFitScatterTest {

    private static final CoreDiameter CORE = CoreDiameter.N;
    private static final WallSigmas SIGMAS = WallSigmas.of(0.5, 1);

    /** Round alpha 90, every second point as far below as the others above. From four points on no plane follows that. */
    private static List<WallPoint> twist(int count, double millimetres) {
        return IntStream.range(0, count)
                .mapToObj(i -> WallPoint.of(360.0 * i / count, 1 + (i % 2 == 0 ? 1e-3 : -1e-3) * millimetres))
                .toList();
    }

    /** By hand: six points 0.25 mm off leave 6 x 0.25^2 with three degrees of freedom, a sigma of 0.25 sqrt(2) mm. */
    @Test
    void aTwistIsAllResidual() {
        TraceFit known = TraceFit.of(CORE, twist(6, 0.25), WallSigmas.of(0.5, 1e-6));
        assertTwisted(0.5, known);
        TraceFit told = TraceFit.inProportion(CORE, twist(6, 0.25), WallSigmas.of(7, 14e-6));
        assertTwisted(Math.sqrt(0.5), told);
        assertEquals(0.25 * Math.sqrt(2), told.sigmas().orElseThrow().depthMillimetres(), 1e-6);
        assertEquals(0.5e-6 * Math.sqrt(2), told.sigmas().orElseThrow().angle(), 1e-12);
    }

    /**
     * By hand: eight points 0.25 mm off scatter by 0.25 sqrt(8 / 5) mm. At p = 0.25 / (4.685 x that) of the biweight, {@code psi = 0.25 (1 -
     * p^2)^2} and {@code psi' = (1 - p^2) (1 - 5 p^2)}; the variance is 8 / 5 of the square of their ratio, of which the efficiency of 0.95 is
     * the scatter's.
     */
    @Test
    void theScatterOfATwistIsThatOfTheBiweight() {
        TraceFit told = TraceFit.inProportion(CORE, twist(8, 0.25), WallSigmas.of(7, 14e-6));
        double square = 5.0 / 8 / (4.685 * 4.685);
        double sigma = 0.25 * (1 - square) / (1 - 5 * square) * Math.sqrt(0.95 * 8 / 5);
        assertEquals(sigma, told.sigmas().orElseThrow().depthMillimetres(), 1e-6);
        assertTwisted(0.25 / sigma, told);
    }

    /**
     * By hand: 2, -3, 2 and -1 sum to 0 with 1, the cosines and the sines of the angles, so that no plane follows them. Chi-square is 18, more
     * than one trace in a thousand has, yet each lies within 4.685 sigmas; giving up one would leave three, which fit exactly.
     */
    @Test
    void fourPointsFartherOffThanChanceAreKeptToo() {
        double[] angles = {0, 60, 120, 240};
        double[] sigmasOff = {2, -3, 2, -1};
        TraceFit fit = TraceFit.of(
                CORE,
                IntStream.range(0, 4)
                        .mapToObj(i -> WallPoint.of(angles[i], 1 + 0.5e-3 * sigmasOff[i]))
                        .toList(),
                WallSigmas.of(0.5, 1e-6));
        assertEquals(List.of(), fit.leftOut());
        for (int i = 0; i < 4; i++) {
            assertEquals(sigmasOff[i], fit.residuals().get(i), 1e-5);
        }
        assertEquals(18, fit.chiSquare(), 1e-4);
    }

    private static void assertTwisted(double residual, TraceFit fit) {
        assertEquals(90, fit.plane().alpha(), 1e-6);
        assertEquals(List.of(), fit.leftOut());
        int count = fit.residuals().size();
        for (int i = 0; i < count; i++) {
            assertEquals(i % 2 == 0 ? residual : -residual, fit.residuals().get(i), 1e-5);
        }
        assertEquals(count * residual * residual, fit.chiSquare(), 1e-4);
    }

    /**
     * By hand, for twelve points round alpha 90 whose depths waver by s cos 2x, which no plane follows, and one of which is d deeper: in least
     * squares that one has the leverage 1/4 and the residual e = s + 3/4 d; without it the others leave 14/3 s^2 with 8 degrees of freedom. So
     * Student's t of its shift is {@code e / sqrt(3/4) / sqrt(14/24 s^2)} (Cook and Weisberg 1982, from memory), by Commons Math 3.6.1.
     */
    @ParameterizedTest
    @CsvSource({"0.99, true", "1.01, false"})
    void aPointIsGivenUpWhereChanceWouldHardlyGiveOneOfTwelveSoFarOff(double part, boolean kept) {
        double student = part * new TDistribution(null, 8).inverseCumulativeProbability(1 - 0.003 / 12 / 2);
        double deeper = (student * Math.sqrt(0.75 * 14 / 24) - 1) / 0.75;
        List<WallPoint> points = IntStream.range(0, 12)
                .mapToObj(i ->
                        WallPoint.of(30 * i, 8 + 1e-4 * (Math.cos(Math.toRadians(60 * i)) + (i == 0 ? deeper : 0))))
                .toList();
        TraceFit fit = TraceFit.inProportion(CORE, points, WallSigmas.of(1, 1e-6));
        assertEquals(kept ? List.of() : List.of(0), fit.leftOut());
    }

    @Test
    void fourPointsScatteredByChanceAreNotRefused() {
        List<WallPoint> exact = Traces.round(CorePlane.of(80, 200), CORE, 412.3, 10, 250, 4);
        Random random = new Random(11);
        double farthest = 0;
        for (int i = 0; i < 3000; i++) {
            TraceFit fit = TraceFit.of(CORE, Traces.disturbed(exact, SIGMAS, random), SIGMAS);
            assertEquals(List.of(), fit.leftOut());
            farthest = Math.max(farthest, fit.chiSquare());
        }
        assertTrue(farthest > 10, () -> "no point was far off");
    }

    /** What scatters no more than 999 traces of 1000 do has no point that does not belong. */
    @ParameterizedTest
    @CsvSource({"5, 13.8", "6, 16.2"})
    void fewPointsScatteredByChanceAreAllKept(int count, double unsuspicious) {
        List<WallPoint> exact = Traces.round(CorePlane.of(30, 200), CORE, 412.3, 10, 250, count);
        Random random = new Random(11);
        for (int i = 0; i < 4000; i++) {
            List<WallPoint> points = Traces.disturbed(exact, SIGMAS, random);
            TraceFit fit = TraceFit.of(CORE, points, SIGMAS);
            TraceFit squares = TraceFit.inProportion(CORE, points, SIGMAS);
            double factor = squares.sigmas().orElseThrow().angle() / SIGMAS.angle();
            assertTrue(
                    fit.leftOut().isEmpty() || factor * factor * (count - 3) > unsuspicious,
                    () -> "left out of " + points + ": " + fit);
        }
    }
}
