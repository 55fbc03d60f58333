package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A hole that leaves another one. */
class BranchTest {

    private static final String PARENT = "6 20 40; 30 22 44; 60 25 45; 90 24 50; 120 26 55";

    private static Survey survey(String stations) {
        return Survey.of(Traces.stations(stations), NorthReference.grid());
    }

    private static HoleTrace branch(HoleTrace parent, double kickOff, String stations) {
        return HoleTrace.branch(parent, kickOff, survey(stations));
    }

    @ParameterizedTest
    @EnumSource(DesurveyMethod.class)
    void aboveTheKickOffTheBranchIsItsParentToTheLastBit(DesurveyMethod method) {
        HoleTrace parent = Traces.of(PARENT, method);
        HoleTrace branch = branch(parent, 71.3, "80 27 44; 110 35 40");

        for (double depth = 0; depth <= 71.3; depth += 0.1) {
            assertEquals(parent.displacementAt(depth), branch.displacementAt(depth));
            assertEquals(parent.directionAt(depth), branch.directionAt(depth));
            assertEquals(parent.carriedFrameAt(depth), branch.carriedFrameAt(depth));
            assertEquals(parent.scribeTurn(7, depth), branch.scribeTurn(7, depth));
            assertEquals(parent.isExtrapolated(depth), branch.isExtrapolated(depth));
        }
        assertEquals(parent.positionAt(71.3), branch.positionAt(71.3));
        assertEquals(parent.directionAt(71.3), branch.directionAt(71.3));
        assertEquals(parent.curvatureAt(71.3), branch.curvatureAt(71.3));
    }

    @ParameterizedTest
    @EnumSource(DesurveyMethod.class)
    void belowTheKickOffItGoesOnFromThePlaceAndTheDirectionThere(DesurveyMethod method) {
        HoleTrace parent = Traces.of(PARENT, DesurveyMethod.MINIMUM_CURVATURE);
        TraceSettings settings = parent.settings().withMethod(method);
        HoleTrace branch = HoleTrace.branch(parent, 71.3, survey("80 27 44; 110 35 40"), settings);

        HoleDirection there = parent.directionAt(71.3);
        HoleTrace alone = Traces.of(
                List.of(
                        new SurveyStation(71.3, there),
                        SurveyStation.ofInclination(80, 27, 44),
                        SurveyStation.ofInclination(110, 35, 40)),
                method);
        CoreFrame aloneThere = alone.carriedFrameAt(71.3);
        double turned = parent.carriedFrameAt(71.3).turnFrom(aloneThere);
        for (double depth = 71.3; depth < 140; depth += 0.7) {
            Vector3D expected =
                    Traces.vector(parent.displacementAt(71.3)).add(Traces.vector(Traces.way(alone, 71.3, depth)));
            assertEquals(0, expected.distance(Traces.vector(branch.displacementAt(depth))), 1e-10);
            assertEquals(alone.directionAt(depth), branch.directionAt(depth));
            assertEquals(alone.scribeTurn(71.3, depth), branch.scribeTurn(71.3, depth), 1e-10);
            double frames = branch.carriedFrameAt(depth).turnFrom(alone.carriedFrameAt(depth));
            assertEquals(0, Traces.apart(turned, frames), 1e-9);
            assertEquals(depth > 110, branch.isExtrapolated(depth));
        }
    }

    @ParameterizedTest
    @EnumSource(DesurveyMethod.class)
    void aBranchOnItsParentsOwnStationsIsItsParent(DesurveyMethod method) {
        HoleTrace parent = Traces.of(PARENT, method);
        HoleTrace branch = branch(parent, 60, "90 24 50; 120 26 55");

        for (double depth = 0; depth < 150; depth += 0.7) {
            assertEquals(parent.displacementAt(depth), branch.displacementAt(depth));
            assertEquals(parent.directionAt(depth), branch.directionAt(depth));
        }
    }

    @Test
    void aBranchOfABranchKeepsBoth() {
        HoleTrace first = Traces.of(PARENT);
        HoleTrace second = branch(first, 50, "70 30 45; 100 33 45");
        HoleTrace third = branch(second, 85, "95 20 50");

        assertEquals(first.positionAt(50), third.positionAt(50));
        assertEquals(second.positionAt(85), third.positionAt(85));
        assertArrayEquals(new double[] {6, 30, 50, 70, 85, 95}, third.breakDepths());
        assertEquals(Optional.of(second), third.parent());
        assertEquals(OptionalDouble.of(85), third.kickOffDepth());
        assertEquals(first.collar(), third.collar());
        assertEquals(survey("95 20 50").stations(), third.survey().stations());
        assertEquals(Optional.empty(), first.parent());
        assertEquals(OptionalDouble.empty(), first.kickOffDepth());
        assertTrue(third.toString().contains("branching at 85.00 m"), third.toString());
    }

    @Test
    void aBranchCanLeaveWhereItsParentIsExtrapolated() {
        HoleTrace parent = HoleTrace.minimumCurvature(Traces.COLLAR, survey(PARENT));
        HoleTrace deep = branch(parent, 140, "160 20 50");
        assertTrue(deep.isExtrapolated(130));
        assertFalse(deep.isExtrapolated(150));
        assertTrue(deep.isExtrapolated(170));
        HoleTrace shallow = branch(parent, 3, "50 20 50");
        assertTrue(shallow.isExtrapolated(2));
        assertFalse(shallow.isExtrapolated(3));
        assertArrayEquals(new double[] {3, 50}, shallow.breakDepths());
        HoleTrace fromCollar = branch(parent, 0, "50 20 50");
        assertFalse(fromCollar.isExtrapolated(0));
        assertEquals(Displacement.ZERO, fromCollar.displacementAt(0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, 59, 10})
    void aStationOfTheBranchAtTheKickOffOrAboveIsRefused(double depth) {
        HoleTrace parent = Traces.of(PARENT);

        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> branch(parent, 60, depth + " 24 50; 120 26 55"));

        assertTrue(refused.getMessage().contains("60.00 m"), refused.getMessage());
        assertTrue(refused.getMessage().contains(depth + "0 m"), refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource({"-1", "150.1", "NaN"})
    void aKickOffThatTheParentDoesNotReachIsRefused(double depth) {
        HoleTrace parent = HoleTrace.minimumCurvature(Traces.COLLAR, survey(PARENT));

        assertThrows(IllegalArgumentException.class, () -> branch(parent, depth, "200 26 55"));
    }

    @Test
    void aBranchThatTurnsBackOrIsNotOnTheGridIsRefused() {
        HoleTrace parent = Traces.of("0 30 90");

        assertThrows(IllegalArgumentException.class, () -> branch(parent, 10, "20 150 270"));
        Survey magnetic = Survey.of(Traces.stations("20 30 90"), NorthReference.magnetic(3, 1));
        assertThrows(IllegalArgumentException.class, () -> HoleTrace.branch(parent, 10, magnetic));
    }
}
