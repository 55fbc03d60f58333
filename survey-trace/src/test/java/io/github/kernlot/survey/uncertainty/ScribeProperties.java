package io.github.kernlot.survey.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** What a draw does to the turn of a scribe, and the factor behind all covariances. */
class ScribeProperties {

    private static final int STATIONS = 7;
    private static final double STEP = 2e-4;

    private static double turn(
            List<SurveyStation> stations, int which, Vector3D shift, double times, double from, double to) {
        List<SurveyStation> changed = new ArrayList<>(stations);
        Vector3D tangent = Traces.vector(stations.get(which).direction());
        double angle = shift.getNorm() * times;
        Vector3D turned = new Vector3D(Math.cos(angle), tangent, Math.sin(angle), shift.normalize());
        changed.set(which, new SurveyStation(stations.get(which).depth(), Traces.direction(turned)));
        return Traces.of(changed).scribeTurn(from, to);
    }

    private static double slope(
            List<SurveyStation> stations, int which, Vector3D shift, double step, double from, double to) {
        return (turn(stations, which, shift, step, from, to) - turn(stations, which, shift, -step, from, to))
                / (2 * step);
    }

    @Property
    void theTurnOfAScribeErrsAsItsDifferencesDo(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.drifting(random, STATIONS, 8);
        int which = random.nextInt(STATIONS);
        SurveyStation station = stations.get(which);
        Vector3D tangent = Traces.vector(station.direction());
        Vector3D any = new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
        Vector3D shift = any.subtract(tangent.scalarMultiply(any.dotProduct(tangent)));
        double from = 30 * (STATIONS - 1) * random.nextDouble();
        double to = 30 * (STATIONS - 1) * random.nextDouble();
        double expected =
                (4 * slope(stations, which, shift, STEP / 2, from, to) - slope(stations, which, shift, STEP, from, to))
                        / 3;
        ErrorWeighting weighting = point -> point.depth() == station.depth()
                ? new UnitShift(0, shift.getX(), shift.getY(), shift.getZ())
                : UnitShift.NONE;
        TraceUncertainty found =
                Models.of(Traces.of(stations), Models.of(Models.source(PropagationMode.GLOBAL, 1, weighting)));
        assertEquals(Math.abs(expected), found.scribeTurnSigma(from, to), 1e-6);
        assertEquals(Math.abs(expected), found.scribeTurnSigma(to, from), 1e-6);
    }

    @Property
    void theFactorMakesTheCovariance(@ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = TestWells.magnetic(Traces.drifting(random, STATIONS, 0));
        TraceUncertainty found = Models.of(trace, SurveyErrorModel.basicMagneticTool());
        double depth = 220 * random.nextDouble();
        double[][] factor = found.factor(depth);
        double[][] joint = found.at(depth).joint();
        for (int i = 0; i < 6; i++) {
            for (int j = 0; j < 6; j++) {
                double sum = 0;
                for (int k = 0; k < factor[i].length; k++) {
                    sum += factor[i][k] * factor[j][k];
                }
                assertEquals(joint[i][j], sum, 1e-11);
            }
        }
    }

    /** In a straight hole nothing turns but the low side itself: by the difference of two cos I dA. */
    @Example
    void inAStraightHoleOnlyTheLowSidesErr() {
        TraceUncertainty found =
                Models.of(Models.straight(4, 30, 20, 90), Models.of(Models.azimuth(PropagationMode.RANDOM)));
        assertEquals(Math.sqrt(2) * Math.cos(Math.toRadians(20)), found.scribeTurnSigma(0, 120), 1e-9);
        TraceUncertainty shared =
                Models.of(Models.straight(4, 30, 20, 90), Models.of(Models.azimuth(PropagationMode.GLOBAL)));
        assertEquals(0, shared.scribeTurnSigma(0, 120), 1e-12);
    }

    @Example
    void aVerticalHoleHasNoLowSideToTurnFrom() {
        TraceUncertainty found =
                Models.of(Traces.of("0 0 0; 50 5 10"), Models.of(Models.azimuth(PropagationMode.RANDOM)));
        assertThrows(IllegalArgumentException.class, () -> found.scribeTurnSigma(0, 50));
    }
}
