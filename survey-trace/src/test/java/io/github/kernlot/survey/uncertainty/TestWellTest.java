package io.github.kernlot.survey.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * A test well of the published framework: H. S. Williamson, Accuracy prediction for directional measurement while drilling, SPE
 * Drilling and Completion 15(4), 2000, test well 1, basic tool, symmetric. Profile, magnitudes and published results are from
 * memory; the finer figures are those of an implementation of our own that is independent of this one.
 */
class TestWellTest {

    private static final double[][] PROFILE = {{0, 0}, {1200, 0}, {2100, 60}, {5100, 60}, {5400, 90}, {8000, 90}};
    private static final double END = 8000;
    private static final double AZIMUTH = 75;
    private static final double INTERVAL = 30;

    private static HoleTrace well() {
        List<SurveyStation> stations = new ArrayList<>();
        for (double depth = 0; depth < END; depth += INTERVAL) {
            // the figures take a toolface in the vertical part from north, which is the high side at azimuth 0
            double azimuth = depth < PROFILE[1][0] ? 0 : AZIMUTH;
            stations.add(SurveyStation.ofInclination(depth, inclination(depth), azimuth));
        }
        stations.add(SurveyStation.ofInclination(END, inclination(END), AZIMUTH));
        NorthReference north = new NorthReference(North.GRID, OptionalDouble.of(-4), OptionalDouble.of(0));
        return HoleTrace.minimumCurvature(Position.ofEastingNorthingElevation(0, 0, 0), Survey.of(stations, north));
    }

    private static double inclination(double depth) {
        int below = 1;
        while (PROFILE[below][0] < depth) {
            below++;
        }
        double[] from = PROFILE[below - 1];
        double[] to = PROFILE[below];
        return from[1] + (to[1] - from[1]) * (depth - from[0]) / (to[0] - from[0]);
    }

    private static PointUncertainty end(SurveyErrorModel model, Linearisation linearisation) {
        SurveyErrorSetup setup = SurveyErrorSetup.of(model, TieIn.ERROR_FREE)
                .with(new EarthReference(9.80665, 50000, 72))
                .withToolface(0)
                .with(linearisation);
        return TraceUncertainty.of(well(), setup).at(END);
    }

    private static void assertSigmas(double[] expected, HoleFrameSigmas found, double sigma, double correlation) {
        assertEquals(expected[0], found.high(), sigma);
        assertEquals(expected[1], found.right(), sigma);
        assertEquals(expected[2], found.along(), sigma);
        assertEquals(expected[3], found.highRight(), correlation);
        assertEquals(expected[4], found.highAlong(), correlation);
        assertEquals(expected[5], found.rightAlong(), correlation);
    }

    @Test
    void theEndLiesWhereItWasComputed() {
        Displacement end = well().displacementAt(END);
        assertEquals(1530.7266, end.north(), 1e-4);
        assertEquals(5712.7495, end.east(), 1e-4);
        assertEquals(3521.0558, end.down(), 1e-4);
    }

    @Test
    void thePublishedSigmasAreReproduced() {
        PointUncertainty end = end(SurveyErrorModel.basicMagneticTool(), Linearisation.BALANCED_TANGENTIAL);
        double[] published = {20.116, 84.342, 8.626, -0.015, 0.676, -0.003};
        assertSigmas(published, end.place().inHole(end.direction()), 0.1, 0.005);
    }

    @Test
    void anIndependentImplementationAgrees() {
        PointUncertainty end = end(SurveyErrorModel.basicMagneticTool(), Linearisation.BALANCED_TANGENTIAL);
        double[] recomputed = {20.116, 84.343, 8.629, -0.0156, 0.6767, -0.004};
        assertSigmas(recomputed, end.place().inHole(end.direction()), 0.0006, 0.00006);
        Covariance place = end.place();
        assertEquals(6643.7027, place.northNorth(), 0.02);
        assertEquals(544.5548, place.eastEast(), 0.02);
        assertEquals(404.6417, place.downDown(), 0.02);
        assertEquals(-1757.3221, place.northEast(), 0.02);
        assertEquals(-56.0431, place.northDown(), 0.02);
        assertEquals(-106.5848, place.eastDown(), 0.02);
    }

    @Test
    void anIndependentImplementationAgreesOnTheTermsFreedOfToolfaces() {
        PointUncertainty end =
                end(SurveyErrorModel.basicMagneticToolAtAnyToolface(), Linearisation.BALANCED_TANGENTIAL);
        double[] recomputed = {20.113, 84.391, 8.626, -0.0154, 0.6766, -0.0037};
        assertSigmas(recomputed, end.place().inHole(end.direction()), 0.0006, 0.00006);
    }

    @Test
    void theExactDerivativesChangeLittleAtStationsThisClose() {
        PointUncertainty halves = end(SurveyErrorModel.basicMagneticTool(), Linearisation.BALANCED_TANGENTIAL);
        PointUncertainty arcs = end(SurveyErrorModel.basicMagneticTool(), Linearisation.ARCS);
        HoleFrameSigmas one = halves.place().inHole(halves.direction());
        HoleFrameSigmas other = arcs.place().inHole(arcs.direction());
        assertEquals(one.high(), other.high(), 0.01);
        assertEquals(one.right(), other.right(), 0.01);
        assertEquals(one.along(), other.along(), 0.01);
    }
}
