package io.github.kernlot.survey.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.survey.BeyondLast;
import io.github.kernlot.survey.DesurveyMethod;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.TraceSettings;
import io.github.kernlot.survey.Traces;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Questions to a trace by any method, beyond its stations, and of branches. */
class MethodsTest {

    private static final List<SurveyStation> TEXTBOOK =
            List.of(SurveyStation.ofInclination(3500, 15, 20), SurveyStation.ofInclination(3600, 25, 45));

    private static HoleTrace ahead(BeyondLast beyond) {
        TraceSettings settings =
                TraceSettings.assumed().withExtrapolationLimit(4000).withBeyondLast(beyond);
        return HoleTrace.of(Traces.COLLAR, Survey.of(TEXTBOOK, NorthReference.grid()), settings);
    }

    /** The way to 50 ft beyond the last station: computed, by the textbook's inputs; see ahead.csv. */
    @ParameterizedTest
    @EnumSource(BeyondLast.class)
    void answersBeyondTheStationsFollowTheSetting(BeyondLast beyond) {
        double down = beyond == BeyondLast.STRAIGHT ? 139.327733 : 138.190132;
        double north = beyond == BeyondLast.STRAIGHT ? 42.160141 : 42.733139;
        HoleTrace trace = ahead(beyond);

        List<Crossing> found = TraceSearch.of(trace)
                .between(3500, trace.reach())
                .atVerticalDepth(trace.displacementAt(3500).down() + down);

        assertEquals(3650, found.get(0).depth(), 2e-6);
        assertEquals(north, Traces.way(trace, 3500, found.get(0).depth()).north(), 2e-6);
        assertTrue(found.get(0).extrapolated());
    }

    @Test
    void theArcAheadIsThatOfConstantCurvature() {
        HoleTrace trace = ahead(BeyondLast.CONSTANT_CURVATURE);
        TracePoint station = TracePoint.at(trace, 3600);

        ArcAhead arc = ArcAhead.toTarget(station, trace.positionAt(3650));

        assertEquals(29.211211, arc.toolface().angle(), 1e-5);
        assertEquals(12.951651 * 30 / 100, arc.doglegSeverity(), 1e-6);
        assertEquals(50, arc.length(), 1e-8);
    }

    @ParameterizedTest
    @EnumSource(DesurveyMethod.class)
    void aHoleInAVerticalPlaneLiesInItByEveryMethod(DesurveyMethod method) {
        HoleTrace trace = Traces.of("0 10 40; 200 60 40; 400 20 40; 500 5 40", method);

        List<Crossing> found = TraceSearch.of(trace)
                .between(0, 500)
                .crossings(Traces.COLLAR, PlaneOrientation.ofDipAndDirection(90, 130));

        assertEquals(1, found.size());
        assertEquals(Meeting.LIES_IN, found.get(0).meeting());
        assertEquals(500, found.get(0).last().depth());
    }

    @ParameterizedTest
    @EnumSource(DesurveyMethod.class)
    void aHoleOnOneLevelLiesInItByEveryMethod(DesurveyMethod method) {
        HoleTrace trace = Traces.of("0 90 40; 100 90 80; 200 90 20", method);

        List<Crossing> found = TraceSearch.of(trace).between(0, 200).atVerticalDepth(0);

        assertEquals(1, found.size());
        assertEquals(Meeting.LIES_IN, found.get(0).meeting());
    }

    @ParameterizedTest
    @EnumSource(DesurveyMethod.class)
    void theCornersOfAPathAreKept(DesurveyMethod method) {
        HoleTrace trace = Traces.of("0 10 40; 40 20 90; 90 30 60", method);

        List<Double> depths = TraceSampling.byDepth(trace, 25, 90).stream()
                .map(TracePoint::depth)
                .toList();

        assertTrue(depths.containsAll(List.of(0.0, 25.0, 40.0, 50.0, 75.0, 90.0)), depths.toString());
        assertEquals(method == DesurveyMethod.BALANCED_TANGENTIAL, depths.contains(65.0));
    }

    /** On a cylinder the horizontal length is L (cos I1 - cos I2) / dI; straight pieces go L sin I. */
    @ParameterizedTest
    @EnumSource(DesurveyMethod.class)
    void theLengthInPlanIsThatOfTheMethod(DesurveyMethod method) {
        HoleTrace trace = Traces.of("0 20 40; 100 50 120", method);
        double one = Math.toRadians(20);
        double other = Math.toRadians(50);
        double[] expected = {
            Double.NaN,
            100 * (Math.cos(one) - Math.cos(other)) / (other - one),
            100 * Math.sin((one + other) / 2),
            50 * (Math.sin(one) + Math.sin(other)),
            100 * Math.sin(other)
        };

        double found = PlanCourse.of(trace).lengthAt(100);

        if (method != DesurveyMethod.MINIMUM_CURVATURE) {
            assertEquals(expected[method.ordinal()], found, 1e-9);
        }
        assertTrue(found >= PlanCourse.of(trace).closureAt(100).distance());
    }

    @ParameterizedTest
    @EnumSource(DesurveyMethod.class)
    void aBranchIsAskedWithItsParentsUpperPart(DesurveyMethod method) {
        HoleTrace parent = Traces.of("0 20 40; 100 30 60; 200 35 80", method);
        Survey below = Survey.of(List.of(SurveyStation.ofInclination(260, 60, 140)), NorthReference.grid());
        HoleTrace branch = HoleTrace.branch(parent, 150, below);
        TraceSearch search = TraceSearch.of(branch);
        double level = parent.displacementAt(70).down();

        assertEquals(70, search.atVerticalDepth(level).get(0).depth(), 1e-9);
        Approach apart =
                search.between(230, 260).closestTo(TraceSearch.of(parent).between(200, 200));
        assertFalse(apart.distance() < 1);
        Approach together = search.closestTo(TraceSearch.of(parent));
        assertEquals(0, together.depth(), 1e-3);
        assertTrue(together.isParallel());
        Displacement missed = search.nearestTo(branch.positionAt(230)).way();
        assertEquals(0, missed.length(), 1e-8);
    }
}
