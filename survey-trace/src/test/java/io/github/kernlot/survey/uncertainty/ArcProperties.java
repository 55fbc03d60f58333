package io.github.kernlot.survey.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** The derivatives of place and direction against differences of the trace itself, in holes of every kind. */
class ArcProperties {

    private static final int STATIONS = 8;
    private static final double STEP = 2e-4;

    /** A source that moves one station alone, by fixed amounts. */
    private static SurveyErrorModel only(SurveyStation station, double depth, Vector3D shift) {
        ErrorWeighting weighting = point -> point.depth() == station.depth()
                ? new UnitShift(depth, shift.getX(), shift.getY(), shift.getZ())
                : UnitShift.NONE;
        return new SurveyErrorModel(
                "one station", List.of(new SurveyErrorSource("it", 1, "", PropagationMode.RANDOM, weighting)));
    }

    /** Place and direction of the trace with a station moved by a multiple, at a share of an interval. */
    private static double[] moved(
            List<SurveyStation> stations, int which, double depth, Vector3D shift, double times, int arc, double f) {
        List<SurveyStation> changed = new ArrayList<>(stations);
        Vector3D tangent = Traces.vector(stations.get(which).direction());
        double angle = shift.getNorm() * times;
        Vector3D turned =
                angle == 0 ? tangent : new Vector3D(Math.cos(angle), tangent, Math.sin(angle), shift.normalize());
        changed.set(which, new SurveyStation(stations.get(which).depth() + times * depth, Traces.direction(turned)));
        HoleTrace trace = Traces.of(changed);
        double upper = changed.get(arc).depth();
        double at = upper + f * (changed.get(arc + 1).depth() - upper);
        Displacement way = trace.displacementAt(at);
        Vector3D direction = Traces.vector(trace.directionAt(at));
        return new double[] {way.north(), way.east(), way.down(), direction.getX(), direction.getY(), direction.getZ()};
    }

    private static double[] slope(
            List<SurveyStation> stations, int which, double depth, Vector3D shift, int arc, double f, double step) {
        double[] plus = moved(stations, which, depth, shift, step, arc, f);
        double[] minus = moved(stations, which, depth, shift, -step, arc, f);
        double[] slope = new double[plus.length];
        for (int i = 0; i < slope.length; i++) {
            slope[i] = (plus[i] - minus[i]) / (2 * step);
        }
        return slope;
    }

    /** Richardson's extrapolation of central differences. */
    private static double[] derivative(
            List<SurveyStation> stations, int which, double depth, Vector3D shift, int arc, double f) {
        double[] wide = slope(stations, which, depth, shift, arc, f, STEP);
        double[] narrow = slope(stations, which, depth, shift, arc, f, STEP / 2);
        double[] best = new double[wide.length];
        for (int i = 0; i < best.length; i++) {
            best[i] = (4 * narrow[i] - wide[i]) / 3;
        }
        return best;
    }

    private static void assertDerivative(List<SurveyStation> stations, Random random, double tolerance) {
        int arc = random.nextInt(stations.size() - 1);
        int which = random.nextInt(arc + 2);
        double f = random.nextInt(4) == 0 ? 1 : random.nextDouble();
        // the collar is where depth begins
        double depth = which == 0 ? 0 : random.nextGaussian();
        Vector3D tangent = Traces.vector(stations.get(which).direction());
        Vector3D any = new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
        Vector3D shift = any.subtract(tangent.scalarMultiply(any.dotProduct(tangent)));

        double[] expected = derivative(stations, which, depth, shift, arc, f);
        SurveyErrorModel model = only(stations.get(which), depth, shift);
        HoleTrace trace = Traces.of(stations);
        double upper = stations.get(arc).depth();
        double at = f == 1
                ? stations.get(arc + 1).depth()
                : upper + f * (stations.get(arc + 1).depth() - upper);
        double[][] joint = TraceUncertainty.of(trace, SurveyErrorSetup.of(model, TieIn.MEASURED))
                .at(at)
                .joint();
        double scale = Traces.lastDepth(stations);
        for (int i = 0; i < 6; i++) {
            for (int j = 0; j < 6; j++) {
                double unit = (i < 3 ? scale : 1) * (j < 3 ? scale : 1);
                assertEquals(expected[i] * expected[j], joint[i][j], tolerance * unit, i + " " + j);
            }
        }
    }

    @Property
    void derivativesAreThoseOfTheTrace(@ForAll long seed) {
        Random random = new Random(seed);
        assertDerivative(Traces.drifting(random, STATIONS, 0), random, 1e-8);
    }

    @Property
    void derivativesAreThoseOfTheTraceInHolesThatTurnHard(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i < STATIONS; i++) {
            // neighbours up to some 120 degrees apart
            stations.add(SurveyStation.ofInclination(
                    40.0 * i, 60 * random.nextDouble() + (i / 2 % 2) * 60, 60 * random.nextDouble()));
        }
        assertDerivative(stations, random, 1e-7);
    }

    @Property
    void derivativesAreThoseOfTheTraceInVerticalAndUpwardHoles(@ForAll long seed) {
        Random random = new Random(seed);
        double vertical = random.nextBoolean() ? 0 : 180;
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i < STATIONS; i++) {
            double off = random.nextInt(3) == 0 ? Math.pow(10, -12 + 11 * random.nextDouble()) : 0;
            stations.add(SurveyStation.ofInclination(30.0 * i, Math.abs(vertical - off), 360 * random.nextDouble()));
        }
        assertDerivative(stations, random, 1e-8);
    }

    @Property
    void theSeriesMeetsTheClosedForm(@ForAll long seed) {
        Random random = new Random(seed);
        double dogleg = Math.toDegrees(0.3) * (1 + 1e-9 * random.nextGaussian());
        List<SurveyStation> stations =
                List.of(SurveyStation.ofInclination(0, 40, 10), SurveyStation.ofInclination(30, 40 + dogleg, 10));
        assertDerivative(stations, random, 1e-9);
    }

    @Property
    void derivativesDoNotJumpAtTheSmallestDoglegs(@ForAll long seed) {
        Random random = new Random(seed);
        double dogleg = Math.toDegrees(1e-9) * (0.5 + random.nextDouble());
        List<SurveyStation> stations =
                List.of(SurveyStation.ofInclination(0, 40, 10), SurveyStation.ofInclination(30, 40 + dogleg, 10));
        assertDerivative(stations, random, 1e-9);
    }

    @Property
    void theDirectionsOfStationsReachThemselves(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.wandering(random, STATIONS);
        SurveyStation station = stations.get(1 + random.nextInt(STATIONS - 1));
        SurveyErrorModel model = new SurveyErrorModel(
                "dip",
                List.of(new SurveyErrorSource("dip", 0.3, "deg", PropagationMode.RANDOM, point -> point.inclined(1))));
        HoleTrace trace = HoleTrace.minimumCurvature(
                Position.ofEastingNorthingElevation(0, 0, 0), Survey.of(stations, NorthReference.grid()));
        PointUncertainty found = TraceUncertainty.of(trace, SurveyErrorSetup.of(model, TieIn.MEASURED))
                .at(station.depth());
        HoleDirection direction = station.direction();
        assertEquals(direction, found.direction());
        assertEquals(0.3, found.inclinationSigma(), 1e-12);
        assertEquals(0, found.lateralSigma(), 1e-8);
    }
}
