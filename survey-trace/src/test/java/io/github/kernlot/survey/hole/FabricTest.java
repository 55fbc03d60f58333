package io.github.kernlot.survey.hole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.line.Fabric;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A hole whose lower half no mark anchors, in rock with one set of structures; made here, by the definitions alone. */
class FabricTest {

    private static final PlaneOrientation BEDDING = PlaneOrientation.ofDipAndDirection(55, 120);
    private static final CoreDiameter CORE = CoreDiameter.ofMillimetres(63.5);
    private static final double UPPER_LINE = 70;
    private static final double LOWER_LINE = 200;

    private static HoleLog log() {
        HoleTrace trace = HoleTrace.minimumCurvature(
                Position.ofEastingNorthingElevation(0, 0, 0),
                Survey.of(
                                List.of(SurveyStation.ofDip(0, -60, 90), SurveyStation.ofDip(100, -60, 90)),
                                NorthReference.trueNorth(3))
                        .toGrid());
        Random random = new Random(8);
        List<OrientationMark> marks = new ArrayList<>();
        List<Structure> structures = new ArrayList<>();
        for (int i = 1; i < 20; i++) {
            double depth = 5.0 * i;
            double line = depth <= 50 ? UPPER_LINE : LOWER_LINE;
            if (depth <= 50) {
                marks.add(OrientationMark.of(depth, Degrees.wrap360(-line + 2 * random.nextGaussian()), CORE));
            }
            PlaneOrientation plane =
                    PlaneOrientation.ofDipAndDirection(55 + 3 * random.nextGaussian(), 120 + 3 * random.nextGaussian());
            CorePlane read = CoreFrame.at(trace.directionAt(depth - 1), line).toCore(plane);
            structures.add(Structure.of(depth - 1, "bedding", read.alpha(), read.beta()));
        }
        return new HoleLog("FB-1", trace, marks, Optional.of(List.of(new Join(50, JoinFit.BROKEN))), structures);
    }

    private static final OrientationSettings ASSUMED = OrientationSettings.assumed();

    @Test
    void nobodySpeaksUnlessAsked() {
        OrientedHole hole = OrientedHole.orient(log(), ASSUMED);

        assertTrue(hole.lineWithoutFabric().isEmpty());
        assertTrue(hole.line().at(80).isEmpty());
        assertFalse(hole.structures().get(18).isOriented());
    }

    @Test
    void anEstimatedFabricOrientsCoreThatNoMarkAnchors() {
        OrientedHole hole = OrientedHole.orient(
                log(), ASSUMED.withFabric(FabricSettings.off().with("bedding")));

        assertEquals(LOWER_LINE, hole.line().at(80).orElseThrow().mean(), 6);
        assertTrue(hole.structures().get(18).isOriented());
        assertTrue(hole.lineWithoutFabric().orElseThrow().at(80).isEmpty());
        assertTrue(
                hole.findings().get(0).what().startsWith("structures of the kind bedding are witnesses of the line"));
        assertTrue(hole.findings().get(1).what().startsWith("the witnesses move the line by"));
    }

    @Test
    void aGivenFabricCountsFromTheNorthOfTheResults() {
        Fabric onGrid = new Fabric(BEDDING, 4, 0.1);
        Fabric fromTrue = new Fabric(BEDDING.withAzimuthTurned(3), 4, 0.1);

        OrientedHole grid = OrientedHole.orient(
                log(), ASSUMED.withFabric(FabricSettings.off().with("bedding", onGrid)));
        OrientedHole real = OrientedHole.orient(
                log(),
                ASSUMED.withOutput(North.TRUE).withFabric(FabricSettings.off().with("bedding", fromTrue)));

        assertEquals(
                grid.line().at(80).orElseThrow().mean(),
                real.line().at(80).orElseThrow().mean(),
                1e-6);
        assertEquals(LOWER_LINE, grid.line().at(80).orElseThrow().mean(), 6);
    }

    @Test
    void aKindThatTooFewStructuresTellOfStaysSilent() {
        OrientedHole hole = OrientedHole.orient(
                log(), ASSUMED.withFabric(FabricSettings.off().with("vein")));

        assertTrue(hole.lineWithoutFabric().isEmpty());
    }

    @Test
    void settingsOutsideTheirRangesAreRefused() {
        FabricSettings off = FabricSettings.off();
        assertThrows(IllegalArgumentException.class, () -> new FabricSettings(off.kinds(), 1, 5, 2, 5));
        assertThrows(IllegalArgumentException.class, () -> new FabricSettings(off.kinds(), 0.1, 0, 2, 5));
        assertThrows(IllegalArgumentException.class, () -> new FabricSettings(off.kinds(), 0.1, 5, -2, 5));
    }
}
