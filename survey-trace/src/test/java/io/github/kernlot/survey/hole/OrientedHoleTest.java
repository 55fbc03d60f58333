package io.github.kernlot.survey.hole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.GammaConvention;
import io.github.kernlot.orientation.HoleSense;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.TraceSettings;
import io.github.kernlot.survey.Traces;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.Finding.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is oriented, what is not, and what is told of it. Rules of the library itself; the mathematics is tested beside. */
class OrientedHoleTest {

    private static final HoleTrace TRACE = HoleTrace.minimumCurvature(
            Traces.COLLAR,
            Survey.of(
                    List.of(SurveyStation.ofDip(5, -60, 90), SurveyStation.ofDip(100, -60, 90)),
                    NorthReference.grid()));
    private static final OrientationSettings ASSUMED = OrientationSettings.assumed();
    private static final Structure BEDDING = Structure.of(50, "bedding", 41, 213);

    private static OrientationMark mark(double depth, double offset) {
        return OrientationMark.of(depth, offset, TrueHole.DIAMETER);
    }

    /** Two marks that put the line 25 degrees clockwise of the low side. */
    private static List<OrientationMark> good() {
        return List.of(mark(20, 335), mark(80, 335));
    }

    private static OrientedHole orient(
            HoleTrace trace, List<OrientationMark> marks, OrientationSettings settings, Structure... structures) {
        return OrientedHole.orient(
                new HoleLog("KL-01", trace, marks, Optional.of(List.of()), List.of(structures)), settings);
    }

    private static OrientedStructure only(OrientedHole hole) {
        assertEquals(1, hole.structures().size());
        return hole.structures().get(0);
    }

    private static Structure at(double depth, double alpha, OptionalDouble beta, OptionalDouble gamma) {
        return new Structure(depth, "vein", alpha, beta, gamma, Map.of());
    }

    @Test
    void aStructureOnASureLineIsOriented() {
        OrientedHole hole = orient(TRACE, good(), ASSUMED, BEDDING);

        OrientedStructure bedding = only(hole);
        assertTrue(bedding.isOriented());
        assertEquals(25, bedding.line().orElseThrow().mean(), 1e-6);
        assertEquals(Optional.empty(), bedding.lineation());
        assertEquals("", bedding.note());
        assertEquals(BEDDING, bedding.structure());
        assertTrue(hole.findings().isEmpty());
        assertEquals("KL-01: 1 of 1 structures oriented", hole.toString());
    }

    /** Gamma 0 from the short axis lies across the core, gamma 90 along the plane's steepest way on it. */
    @Test
    void aLineAcrossTheCoreHasNoArrowWhateverItsGammaIsCountedFrom() {
        OrientationSettings shortAxis = ASSUMED.withGamma(new GammaConvention(
                BetaConvention.Sense.CLOCKWISE,
                BetaConvention.View.DOWN_HOLE,
                GammaConvention.Zero.SHORT_AXIS_CLOCKWISE));
        Structure across =
                at(50, 41, OptionalDouble.of(213), OptionalDouble.of(0)).withSense(HoleSense.DOWN_HOLE);
        Structure along =
                at(50, 41, OptionalDouble.of(213), OptionalDouble.of(90)).withSense(HoleSense.DOWN_HOLE);

        OrientedStructure first = only(orient(TRACE, good(), shortAxis, across));
        assertTrue(first.isOriented());
        assertTrue(first.lineation().isPresent());
        assertEquals(Optional.empty(), first.arrow());
        assertEquals(
                "the line stands at right angles to the core axis and points neither down-hole nor up-hole",
                first.note());

        OrientedStructure second = only(orient(TRACE, good(), shortAxis, along));
        Structure house =
                at(50, 41, OptionalDouble.of(213), OptionalDouble.of(180)).withSense(HoleSense.DOWN_HOLE);
        assertEquals(
                0,
                second.arrow()
                        .orElseThrow()
                        .angleTo(only(orient(TRACE, good(), ASSUMED, house))
                                .arrow()
                                .orElseThrow()),
                1e-12);
        assertEquals("", second.note());
    }

    @Test
    void thePlaceOfAStructureIsOnTheTrace() {
        Position position = only(orient(TRACE, good(), ASSUMED, BEDDING)).position();

        assertEquals(5025, position.easting(), 1e-9);
        assertEquals(7000, position.northing(), 1e-9);
        assertEquals(300 - 50 * Math.sqrt(0.75), position.elevation(), 1e-9);
    }

    @Test
    void withoutABetaAStructureIsUnorientedAndTold() {
        OrientedHole hole = orient(TRACE, good(), ASSUMED, at(50, 41, OptionalDouble.empty(), OptionalDouble.empty()));

        assertFalse(only(hole).isOriented());
        assertEquals("no beta was measured", only(hole).note());
        assertEquals(
                List.of(Finding.at(50, Level.WARNING, "vein is unoriented: no beta was measured")), hole.findings());
        assertEquals("KL-01: 0 of 1 structures oriented", hole.toString());
    }

    @Test
    void withoutALineAStructureIsUnorientedAndTold() {
        OrientedHole hole = orient(TRACE, List.of(mark(20, 335)), ASSUMED, BEDDING);

        assertFalse(only(hole).isOriented());
        // one mark by itself never orients core with the assumed priors
        assertEquals(
                "the line's sigma of 25.2 degrees is above the limit of 15.0",
                only(hole).note());
        OrientedHole unanchored = orient(TRACE, List.of(mark(20, 335).leftOutFor("spun")), ASSUMED, BEDDING);
        assertEquals(Optional.empty(), only(unanchored).line());
        assertEquals(
                "the line is unanchored: no mark in use on this piece of core",
                only(unanchored).note());
    }

    @Test
    void aLineLessSureThanTheLimitOrientsNothing() {
        List<OrientationMark> rough =
                good().stream().map(mark -> mark.withSigma(30)).toList();

        OrientedHole hole = orient(TRACE, rough, ASSUMED, BEDDING);

        assertFalse(only(hole).isOriented());
        assertEquals(
                "the line's sigma of 22.0 degrees is above the limit of 15.0",
                only(hole).note());
        // 30 / sqrt 2 and the bias of 1 degree, and a little for blunders
        assertEquals(Math.sqrt(451), hole.handLine().angleAt(50).orElseThrow().sigma(), 1e-9);
        assertEquals(22, only(hole).line().orElseThrow().sigma(), 0.1);
        OrientationSettings generous = ASSUMED.withLineSigmaLimit(22.5);
        assertTrue(only(orient(TRACE, rough, generous, BEDDING)).isOriented());
    }

    @Test
    void aPlaneSquareToTheCoreIsOrientedWithoutALine() {
        OrientedHole hole =
                orient(TRACE, List.of(), ASSUMED, at(50, 90, OptionalDouble.empty(), OptionalDouble.empty()));

        // it dips as much as the hole is off vertical, against its azimuth
        PlaneOrientation plane = only(hole).plane().orElseThrow();
        assertEquals(30, plane.dip(), 1e-9);
        assertEquals(270, plane.dipDirection(), 1e-9);
        assertEquals(Optional.empty(), only(hole).line());
        assertEquals(
                List.of(Finding.ofHole(Level.WARNING, "the hole has no marks: its core is not oriented")),
                hole.findings());
    }

    @Test
    void beyondTheSurveysStationsAStructureIsOrientedAndTold() {
        for (double depth : new double[] {2, 120}) {
            OrientedHole hole = orient(TRACE, good(), ASSUMED, Structure.of(depth, "bedding", 41, 213));

            assertTrue(only(hole).isOriented());
            assertEquals(
                    "beyond the survey's stations, the hole taken as straight",
                    only(hole).note());
            assertEquals(Level.INFO, hole.findings().get(0).level());
        }
    }

    @Test
    void allReasonsAreToldTogether() {
        OrientedHole hole = orient(TRACE, good(), ASSUMED, at(120, 41, OptionalDouble.empty(), OptionalDouble.of(20)));

        assertEquals(
                "no beta was measured; beyond the survey's stations, the hole taken as straight",
                only(hole).note());
        assertEquals(Optional.empty(), only(hole).lineation());
    }

    @Test
    void aStructureThatTheTraceDoesNotReachIsRefused() {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> orient(TRACE, good(), ASSUMED, Structure.of(131, "bedding", 41, 213)));

        assertTrue(refused.getMessage().contains("131"), refused.getMessage());
        assertTrue(refused.getMessage().contains("[0, 130]"), refused.getMessage());
    }

    @Test
    void whereNobodyRecordedJoinsItIsTold() {
        HoleLog log = new HoleLog("KL-01", TRACE, good(), Optional.empty(), List.of());

        List<Finding> findings = OrientedHole.orient(log, ASSUMED).findings();

        assertEquals(1, findings.size());
        assertEquals(Level.INFO, findings.get(0).level());
        assertTrue(
                findings.get(0).what().startsWith("no joins were recorded"),
                findings.get(0).what());
    }

    @Test
    void whatIsOddAboutMarksIsTold() {
        List<OrientationMark> marks = List.of(
                mark(10, 335),
                mark(20, 335),
                mark(30, 155),
                mark(40, 335),
                mark(50, 335),
                mark(60, 0).leftOutFor("slipped"));

        List<Finding> findings = orient(TRACE, marks, ASSUMED).findings();

        assertEquals(
                List.of(
                        Finding.at(
                                30,
                                Level.WARNING,
                                "the mark is most probably flipped (94 %); it stands 180.0 degrees from what the others predict"),
                        Finding.at(60, Level.INFO, "the mark was left out by hand: slipped")),
                findings);
    }

    @Test
    void aSlipThatTheMarksShowIsTold() {
        List<OrientationMark> marks = List.of(mark(10, 335), mark(20, 335), mark(60, 100), mark(70, 100));
        HoleLog log = new HoleLog(
                "KL-01", TRACE, marks, Optional.of(List.of(new Join(40, JoinFit.DOUBTFUL))), List.of(BEDDING));

        List<Finding> findings = OrientedHole.orient(log, ASSUMED).findings();

        assertTrue(
                findings.get(0).toString().startsWith("warning at 40.00 m: the core most probably slipped"),
                findings.toString());
    }

    @Test
    void whereTheHandMethodDiffersIsTold() {
        // by hand the flipped mark between two good ones leaves no neighbours that agree
        List<OrientationMark> marks = List.of(mark(48, 335), mark(50, 155), mark(52, 335));
        OrientationSettings sure = ASSUMED.withLineSigmaLimit(40);

        List<Finding> findings = orient(TRACE, marks, sure, BEDDING).findings();

        assertTrue(findings.contains(Finding.at(50, Level.INFO, "by hand there is no line here")), findings.toString());
    }

    @Test
    void aBrokenJoinKeepsItsPiecesApart() {
        List<OrientationMark> marks = List.of(mark(10, 335), mark(20, 335), mark(60, 100), mark(70, 100));
        HoleLog log = new HoleLog(
                "KL-01",
                TRACE,
                marks,
                Optional.of(List.of(new Join(50, JoinFit.BROKEN))),
                List.of(BEDDING, Structure.of(50.1, "bedding", 41, 213)));

        OrientedHole hole = OrientedHole.orient(log, ASSUMED);

        assertEquals(25, hole.structures().get(0).line().orElseThrow().mean(), 1e-6);
        assertEquals(260, hole.structures().get(1).line().orElseThrow().mean(), 1e-6);
        assertEquals(25, hole.handLine().angleAt(0).orElseThrow().mean(), 1e-9);
        assertEquals(log, hole.log());
        assertEquals(TRACE, hole.trace());
    }

    @Test
    void aNorthForTheOutputThatTheSurveyDoesNotKnowIsRefused() {
        OrientationSettings toTrue = ASSUMED.withOutput(North.TRUE);

        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> orient(TRACE, good(), toTrue, BEDDING));

        assertTrue(refused.getMessage().contains("no grid convergence was given"), refused.getMessage());
        assertThrows(IllegalArgumentException.class, () -> orient(TRACE, good(), toTrue));
    }

    @Test
    void theNorthOfTheMarksIsThatOfTheSurveyAsItWasMeasured() {
        Survey magnetic = Survey.of(List.of(SurveyStation.ofDip(0, -90, 0)), NorthReference.magnetic(10, 2));
        HoleTrace vertical = HoleTrace.of(
                Traces.COLLAR, magnetic.toGrid(), TraceSettings.assumed().withExtrapolationLimit(200));
        OrientationSettings settings = ASSUMED.withModel(ASSUMED.model().withSide(WallReference.north()));

        // the line stands 25 clockwise of magnetic north, which lies at 8 on the grid; in a vertical hole a plane dips
        // 90 - alpha towards the line's azimuth and beta
        OrientedHole hole = orient(vertical, good(), settings, Structure.of(50, "bedding", 41, 100));

        assertEquals(
                WallReference.azimuth(8),
                only(hole).line().orElseThrow().angle().reference());
        assertEquals(25, only(hole).line().orElseThrow().mean(), 1e-6);
        assertEquals(49, only(hole).plane().orElseThrow().dip(), 1e-6);
        assertEquals(133, only(hole).plane().orElseThrow().dipDirection(), 1e-6);
    }

    @Test
    void aLogKeepsCopiesOfItsLists() {
        List<OrientationMark> marks = new ArrayList<>(good());
        List<Join> joins = new ArrayList<>();
        List<Structure> structures = new ArrayList<>(List.of(BEDDING));
        HoleLog log = new HoleLog("KL-01", TRACE, marks, Optional.of(joins), structures);

        marks.clear();
        joins.add(new Join(3, JoinFit.BROKEN));
        structures.clear();

        assertEquals(good(), log.marks());
        assertEquals(Optional.of(List.of()), log.joins());
        assertEquals(List.of(BEDDING), log.structures());
    }
}
