package io.github.kernlot.survey.hole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.line.DrawnLine;
import io.github.kernlot.orientation.line.DrawnLines;
import io.github.kernlot.orientation.line.JoinPosterior;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import io.github.kernlot.survey.check.Finding;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Lines as they were drawn change what is oriented and how angles were read. */
class DrawnLineHoleTest {

    private static final CoreDiameter CORE = CoreDiameter.ofMillimetres(63.5);

    private static HoleTrace trace(double dip) {
        return HoleTrace.minimumCurvature(
                Traces.COLLAR,
                Survey.of(
                        List.of(SurveyStation.ofDip(0, dip, 90), SurveyStation.ofDip(100, dip, 100)),
                        NorthReference.grid()));
    }

    private static OrientedHole hole(double dip, double offset, Structure structure, DrawnLines drawn) {
        List<OrientationMark> marks =
                List.of(OrientationMark.of(40, offset, CORE), OrientationMark.of(60, offset, CORE));
        HoleLog log = new HoleLog("KL-01", trace(dip), marks, Optional.of(List.of()), List.of(structure));
        return OrientedHole.orient(log.withDrawn(drawn), OrientationSettings.assumed());
    }

    private static Structure vein(double alpha, double beta, double gamma) {
        return new Structure(50, "vein", alpha, OptionalDouble.of(beta), OptionalDouble.of(gamma), Map.of());
    }

    private static double wrapped(double degrees) {
        return (degrees % 360 + 360) % 360;
    }

    /**
     * One who follows arrows that point up-hole reads everything as if the hole were turned end for end: the same core gives 360 minus
     * the offset, 180 minus the beta, 360 minus the gamma (derived; the arrow and its end of the ellipse by R. Marjoribanks). True of
     * holes that go up as of those that go down.
     */
    @Property(tries = 100)
    void theSameCoreReadAlongEitherArrowIsTheSame(
            @ForAll @DoubleRange(min = -85, max = 85) double dip,
            @ForAll @DoubleRange(min = 0, max = 359) double offset,
            @ForAll @DoubleRange(min = 1, max = 89) double alpha,
            @ForAll @DoubleRange(min = 0, max = 359) double beta,
            @ForAll @DoubleRange(min = 0, max = 359) double gamma) {
        DrawnLine up = new DrawnLine(0, 100, DrawnLine.Arrow.UP_HOLE, Optional.empty(), Optional.empty());
        OrientedStructure down = hole(
                        dip, offset, vein(alpha, beta, gamma), DrawnLines.of(List.of(DrawnLine.of(0, 100))))
                .structures()
                .get(0);
        OrientedStructure turned = hole(
                        dip,
                        wrapped(-offset),
                        vein(alpha, wrapped(180 - beta), wrapped(-gamma)),
                        DrawnLines.of(List.of(up)))
                .structures()
                .get(0);

        assertEquals(0, down.plane().orElseThrow().angleTo(turned.plane().orElseThrow()), 1e-6);
        assertEquals(
                0, down.lineation().orElseThrow().angleTo(turned.lineation().orElseThrow()), 1e-6);
    }

    @Test
    void theConventionAlongAnArrowUpHoleIsItsOwnInverse() {
        BetaConvention up = BetaConvention.HOUSE.withArrowUpHole();

        assertEquals(150, up.toHouse(30), 1e-12);
        assertEquals(BetaConvention.HOUSE, up.withArrowUpHole());
    }

    @Test
    void whereNoLineWasDrawnNothingIsOriented() {
        DrawnLines drawn = DrawnLines.of(List.of(DrawnLine.of(30, 45), DrawnLine.of(55, 70)));
        OrientedHole hole = hole(-60, 335, Structure.of(50, "joint", 40, 10), drawn);

        OrientedStructure joint = hole.structures().get(0);
        assertFalse(joint.isOriented());
        assertTrue(joint.line().isEmpty());
        assertEquals("no line was drawn here", joint.note());
        assertEquals(
                45,
                hole.line().joins().stream()
                        .map(JoinPosterior::join)
                        .findFirst()
                        .orElseThrow()
                        .depth());
        assertTrue(
                hole.findings()
                        .contains(
                                Finding.at(
                                        45,
                                        Finding.Level.INFO,
                                        "the line stops here and goes on below, on core that is not broken: taken as a doubtful join")));
        // the pole of a plane across the core needs no line
        assertTrue(hole(-60, 335, Structure.of(50, "joint", 90, 10), drawn)
                .structures()
                .get(0)
                .isOriented());
    }

    @Test
    void aMarkReadTheOtherWayIsTold() {
        HoleTrace trace = trace(-60);
        List<OrientationMark> marks = List.of(
                OrientationMark.of(20, 70, CORE),
                OrientationMark.of(30, 70, CORE),
                OrientationMark.of(40, 290, CORE),
                OrientationMark.of(50, 69, CORE),
                OrientationMark.of(60, 68, CORE));
        HoleLog log = new HoleLog("KL-01", trace, marks, Optional.of(List.of()), List.of());
        List<Finding> findings =
                OrientedHole.orient(log, OrientationSettings.assumed()).findings();

        assertTrue(
                findings.stream()
                        .anyMatch(
                                finding -> finding.depth().orElse(0) == 40
                                        && finding.what()
                                                .startsWith(
                                                        "the mark agrees with the others if it was read by one who looked the other way (odds ")),
                findings.toString());
    }
}
