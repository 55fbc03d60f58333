package io.github.kernlot.survey.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.hole.OrientationSettings;
import io.github.kernlot.survey.hole.OrientedHole;
import io.github.kernlot.survey.hole.Structure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanAndSectionTest {

    private static OrientedHole straight(String id, double dip, double azimuth, Structure... structures) {
        HoleTrace trace = SampleHoles.trace(
                Position.ofEastingNorthingElevation(1000, 2000, 300),
                SurveyStation.ofDip(0, dip, azimuth),
                SurveyStation.ofDip(100, dip, azimuth));
        CoreDiameter core = CoreDiameter.ofMillimetres(63.5);
        List<OrientationMark> marks = dip == -90 || dip == 90
                ? List.of()
                : List.of(OrientationMark.of(10, 0, core), OrientationMark.of(20, 0, core));
        return SampleHoles.orient(id, trace, marks, Optional.of(List.of()), List.of(structures));
    }

    /** The traces: plan first, then section. */
    private static List<List<Point>> traces(Drawn drawn) {
        return drawn.all("path").stream()
                .map(path -> Drawn.points(path.getAttribute("d")))
                .filter(points -> points.size() > 8)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"0, 0, -1", "90, 1, 0", "180, 0, 1", "270, -1, 0", "45, 0.70710678, -0.70710678"})
    void inPlanNorthIsUp(double azimuth, double x, double y) {
        Drawn drawn = Drawn.of(PlanAndSection.of(List.of(straight("H", -45, azimuth))));
        drawn.assertSound();
        List<Point> plan = traces(drawn).get(0);
        Point end = plan.get(plan.size() - 1);
        double dx = end.x() - plan.get(0).x();
        double dy = end.y() - plan.get(0).y();
        double length = Math.hypot(dx, dy);
        assertTrue(length > 100);
        assertEquals(x, dx / length, 1e-3);
        assertEquals(y, dy / length, 1e-3);
    }

    @ParameterizedTest
    @CsvSource({"-60, 200", "-45, 10", "30, 90", "0, 300"})
    void theSectionRunsAlongTheHoleWithoutExaggeration(double dip, double azimuth) {
        Picture picture = PlanAndSection.of(List.of(straight("H", dip, azimuth)));
        Drawn drawn = Drawn.of(picture);
        drawn.assertSound();
        List<Point> section = traces(drawn).get(1);
        Point end = section.get(section.size() - 1);
        double fall = end.y() - section.get(0).y();
        double along = end.x() - section.get(0).x();
        assertEquals(-dip, Math.toDegrees(Math.atan2(fall, along)), 0.1);
        assertTrue(drawn.description()
                .contains(String.format(java.util.Locale.ROOT, "azimuth %03.0f from grid", azimuth)));
    }

    @Test
    void holesDrilledTowardsEachOtherShareTheirSection() {
        Drawn drawn = Drawn.of(PlanAndSection.of(List.of(straight("A", -50, 60), straight("B", -60, 240))));
        assertTrue(drawn.description().contains("azimuth 060"), drawn.description());
    }

    /** In a hole straight down to the east at 45 degrees, alpha 90 is a plane of dip 45 to the west: it rises along the section. */
    @Test
    void aTickOnTheSectionShowsTheApparentDip() {
        Drawn drawn = Drawn.of(PlanAndSection.of(List.of(straight("H", -45, 90, Structure.of(50, "joint", 90, 0)))));
        drawn.assertSound();
        List<Point> tick = Drawn.points(drawn.pathsIn("section").get(0).getAttribute("d"));
        double dx = tick.get(1).x() - tick.get(0).x();
        double dy = tick.get(1).y() - tick.get(0).y();
        assertEquals(-1, dy / dx, 0.02);
        List<Point> strike = Drawn.points(drawn.pathsIn("plan").get(0).getAttribute("d"));
        assertEquals(strike.get(0).x(), strike.get(1).x(), 0.02);
        assertTrue(strike.get(3).x() < strike.get(2).x(), "the dip tick points west");
    }

    @Test
    void aPlaneAlongTheSectionHasNoTickThere() {
        // beta 90 in a horizontal hole to the north with the line at the low side: a vertical plane along the hole
        Drawn drawn = Drawn.of(PlanAndSection.of(List.of(straight("H", 0, 0, Structure.of(50, "joint", 0, 90)))));
        assertEquals(0, drawn.pathsIn("section").size());
        assertEquals(1, drawn.pathsIn("plan").size());
    }

    @Test
    void theMapIsOnTheGridWhateverNorthTheResultsHave() {
        OrientationSettings assumed = OrientationSettings.assumed();
        Drawn drawn = Drawn.of(PlanAndSection.of(
                List.of(OrientedHole.orient(SampleHoles.magneticLog(), assumed.withOutput(North.MAGNETIC)))));
        List<Point> trace = traces(drawn).get(0);
        Point end = trace.get(trace.size() - 1);
        // magnetic 90 is grid 90 + 10 + 2
        assertEquals(
                12,
                Math.toDegrees(Math.atan2(
                        end.y() - trace.get(0).y(), end.x() - trace.get(0).x())),
                0.1);
        List<Point> strike = Drawn.points(drawn.pathsIn("plan").get(0).getAttribute("d"));
        double across = Math.toDegrees(Math.atan2(
                strike.get(1).y() - strike.get(0).y(),
                strike.get(1).x() - strike.get(0).x()));
        assertEquals(0, Math.IEEEremainder(across - 102, 180), 0.2, "the joint lies straight across the hole");
        assertTrue(drawn.description().contains("azimuth 102 from grid north"));
    }

    @Test
    void aVerticalHoleIsAPointInPlan() {
        Drawn drawn = Drawn.of(PlanAndSection.of(List.of(straight("H", -90, 0))));
        drawn.assertSound();
        assertTrue(drawn.description().contains("azimuth 090"));
        assertEquals(1, traces(drawn).get(0).stream().distinct().count());
    }

    @Test
    void collarsAreNamedAndGridLinesNumbered() {
        Drawn drawn = Drawn.of(PlanAndSection.of(SampleHoles.three()));
        drawn.assertSound();
        for (String name : List.of("TW-1", "TW-2 long", "TW-3U")) {
            assertEquals(2, drawn.texts().stream().filter(name::equals).count(), name);
        }
        assertTrue(drawn.texts().containsAll(List.of("41200", "76350", "easting, m", "elevation, m")));
    }

    @Test
    void crowdsStaySmall() {
        Picture crowd = PlanAndSection.of(List.of(SampleHoles.crowded(10_000, 3)));
        Drawn.of(crowd).assertSound();
        assertTrue(crowd.svg().length() < 300_000);
        assertTrue(Drawn.of(crowd).description().contains("not all are drawn"));
        List<OrientedHole> many = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            many.add(straight("H" + i, -50, i));
        }
        Picture fan = PlanAndSection.of(many);
        Drawn.of(fan).assertSound();
        assertTrue(fan.svg().length() < 500_000);
    }

    @Test
    void noHoleIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> PlanAndSection.of(List.of()));
    }
}
