package io.github.kernlot.survey.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;

/** What must hold of the uncertainty of any hole. */
class UncertaintyProperties {

    private static final int STATIONS = 8;
    private static final double LAST = 30.0 * (STATIONS - 1);

    private static double[][] joint(List<SurveyStation> stations, SurveyErrorModel model, double depth) {
        return Models.of(TestWells.magnetic(stations), model).at(depth).joint();
    }

    private static double depth(Random random) {
        return random.nextInt(4) == 0 ? 30.0 * random.nextInt(STATIONS) : (LAST + 40) * random.nextDouble();
    }

    private static SurveyErrorModel model(Random random) {
        return random.nextBoolean()
                ? SurveyErrorModel.basicMagneticTool()
                : SurveySigmas.assumed().model();
    }

    private static void assertSame(double[][] expected, double[][] found, double tolerance) {
        for (int i = 0; i < expected.length; i++) {
            for (int j = 0; j < expected.length; j++) {
                double unit = (i < 3 ? 1 : 1e-2) * (j < 3 ? 1 : 1e-2);
                assertEquals(expected[i][j], found[i][j], tolerance * unit, i + " " + j);
            }
        }
    }

    @Property
    void theCovarianceIsSymmetricAndNeverNegative(@ForAll long seed) {
        Random random = new Random(seed);
        double[][] joint = joint(Traces.drifting(random, STATIONS, 0), model(random), depth(random));
        EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(6, false, true);
        assertTrue(eigen.decompose(new DMatrixRMaj(joint)));
        double largest = 0;
        for (int i = 0; i < 6; i++) {
            largest = Math.max(largest, eigen.getEigenvalue(i).getReal());
            for (int j = 0; j < i; j++) {
                assertEquals(joint[i][j], joint[j][i]);
            }
        }
        for (int i = 0; i < 6; i++) {
            assertTrue(eigen.getEigenvalue(i).getReal() >= -1e-14 * largest);
        }
    }

    @Property
    void theDirectionDoesNotVaryAlongItself(@ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = TestWells.magnetic(Traces.drifting(random, STATIONS, 0));
        PointUncertainty found = Models.of(trace, model(random)).at(depth(random));
        assertEquals(0, found.tangent().sigmaAlong(found.direction()), 1e-9);
        double lateral = Math.toRadians(found.lateralSigma());
        double inclination = Math.toRadians(found.inclinationSigma());
        Covariance tangent = found.tangent();
        assertEquals(
                tangent.northNorth() + tangent.eastEast() + tangent.downDown(),
                lateral * lateral + inclination * inclination,
                1e-15);
    }

    /** Turning the whole hole turns the covariance, where no error looks at the magnetic azimuth. */
    @Property
    void turningAllAzimuthsTurnsTheCovariance(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.drifting(random, STATIONS, 0);
        double angle = 360 * random.nextDouble();
        List<SurveyStation> turned = stations.stream()
                .map(station ->
                        new SurveyStation(station.depth(), station.direction().withAzimuthTurned(angle)))
                .toList();
        SurveyErrorModel model = Models.of(
                SurveyErrorTerms.depthRandom(0.35),
                SurveyErrorTerms.depthStretch(1e-6),
                SurveyErrorTerms.sag(0.2),
                SurveyErrorTerms.declination(0.4),
                SurveyErrorTerms.axialInterferenceConstant(0.3),
                SurveyErrorTerms.misalignment(ToolAxis.X, 0.1),
                SurveyErrorTerms.misalignment(ToolAxis.Y, 0.1),
                SurveyErrorTerms.accelerometerScale(ToolAxis.Z, 0));
        double depth = depth(random);
        double[][] expected = new double[6][6];
        double[][] still = joint(stations, model, depth);
        double c = Math.cos(Math.toRadians(angle));
        double s = Math.sin(Math.toRadians(angle));
        double[][] turn = new double[6][6];
        for (int b = 0; b < 6; b += 3) {
            turn[b][b] = c;
            turn[b][b + 1] = -s;
            turn[b + 1][b] = s;
            turn[b + 1][b + 1] = c;
            turn[b + 2][b + 2] = 1;
        }
        for (int i = 0; i < 6; i++) {
            for (int j = 0; j < 6; j++) {
                for (int k = 0; k < 6; k++) {
                    for (int l = 0; l < 6; l++) {
                        expected[i][j] += turn[i][k] * still[k][l] * turn[j][l];
                    }
                }
            }
        }
        assertSame(expected, joint(turned, model, depth), 1e-10);
    }

    @Property
    void aSourceSplitInTwoIsTheSame(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.drifting(random, STATIONS, 0);
        PropagationMode mode = PropagationMode.values()[random.nextInt(4)];
        ErrorWeighting weighting = point -> point.inclined(1).plus(UnitShift.ofDepth(0.3));
        double share = Math.PI / 2 * random.nextDouble();
        SurveyErrorSource whole = new SurveyErrorSource("whole", 0.5, "deg", mode, weighting);
        SurveyErrorModel split = Models.of(
                new SurveyErrorSource("one", 0.5 * Math.sin(share), "deg", mode, weighting),
                new SurveyErrorSource("other", 0.5 * Math.cos(share), "deg", mode, weighting));
        double depth = depth(random);
        assertSame(joint(stations, Models.of(whole), depth), joint(stations, split, depth), 1e-10);
    }

    @Property
    void sourcesSumToTheWhole(@ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = TestWells.magnetic(Traces.drifting(random, STATIONS, 0));
        TraceUncertainty found = Models.of(trace, model(random));
        double depth = depth(random);
        double[][] sum = new double[6][6];
        for (Map.Entry<String, PointUncertainty> part : found.bySource(depth).entrySet()) {
            double[][] joint = part.getValue().joint();
            for (int i = 0; i < 6; i++) {
                for (int j = 0; j < 6; j++) {
                    sum[i][j] += joint[i][j];
                }
            }
        }
        assertSame(found.at(depth).joint(), sum, 1e-12);
    }

    /** What is accumulated station by station is what all groups add up to. */
    @Property
    void theSumsOnTheWayDownAreThoseOfAllDraws(@ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = TestWells.magnetic(Traces.drifting(random, STATIONS, 0));
        SurveyErrorModel model = SurveyErrorModel.basicMagneticTool();
        TraceUncertainty found = TraceUncertainty.of(
                trace,
                SurveyErrorSetup.ofLegs(
                                List.of(new SurveyLeg(0, model), new SurveyLeg(45, model), new SurveyLeg(120, model)),
                                random.nextBoolean() ? TieIn.MEASURED : TieIn.ERROR_FREE)
                        .with(Models.EARTH)
                        .withToolface(200));
        double depth = depth(random);
        double[][] sum = new double[3][3];
        Place place = found.chain().at(depth);
        for (SourceTrack source : found.sources()) {
            double[] groups = source.byGroup(place);
            for (int i = 0; i < groups.length; i += SourceTrack.DRAWN) {
                Outer.add(sum, new double[] {groups[i], groups[i + 1], groups[i + 2]});
            }
        }
        double[][] expected = found.at(depth).place().toArray();
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                assertEquals(expected[i][j], sum[i][j], 1e-11);
            }
        }
    }

    @Property
    void thePlaceGrowsSteadilyThroughAStation(@ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = TestWells.magnetic(Traces.drifting(random, STATIONS, 0));
        TraceUncertainty found = Models.of(trace, model(random));
        double station = 30.0 * (1 + random.nextInt(STATIONS - 1));
        double[][] at = found.at(station).joint();
        assertSame(at, found.at(station - 1e-9).joint(), 1e-7);
        assertSame(at, found.at(station + 1e-9).joint(), 1e-7);
    }

    @Property
    void aStraightHoleIsTheSameByBothDerivatives(@ForAll long seed) {
        Random random = new Random(seed);
        HoleDirection direction = HoleDirection.ofInclination(180 * random.nextDouble(), 360 * random.nextDouble());
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i < STATIONS; i++) {
            stations.add(new SurveyStation(30.0 * i, direction));
        }
        SurveyErrorSetup setup = SurveyErrorSetup.of(
                        SurveyErrorModel.basicMagneticToolAtAnyToolface(), TieIn.ERROR_FREE)
                .with(Models.EARTH);
        HoleTrace trace = TestWells.magnetic(stations);
        double depth = 30.0 * random.nextInt(STATIONS);
        assertSame(
                TraceUncertainty.of(trace, setup).at(depth).joint(),
                TraceUncertainty.of(trace, setup.with(Linearisation.BALANCED_TANGENTIAL))
                        .at(depth)
                        .joint(),
                1e-9);
    }

    /** The azimuth that a vertical station was given is a label; errors along and sideways alike do not see it. */
    @Property
    void theLabelOfAVerticalStationSaysNothing(@ForAll long seed) {
        Random random = new Random(seed);
        double vertical = random.nextBoolean() ? 0 : 180;
        SurveyErrorModel model = SurveySigmas.of(1, 0.3, 0, 0).model();
        List<SurveyStation> one = new ArrayList<>();
        List<SurveyStation> other = new ArrayList<>();
        for (int i = 0; i < STATIONS; i++) {
            one.add(SurveyStation.ofInclination(30.0 * i, vertical, 360 * random.nextDouble()));
            other.add(SurveyStation.ofInclination(30.0 * i, vertical, 360 * random.nextDouble()));
        }
        double depth = depth(random);
        assertSame(joint(one, model, depth), joint(other, model, depth), 1e-12);
    }
}
