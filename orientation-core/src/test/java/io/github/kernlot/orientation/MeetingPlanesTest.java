package io.github.kernlot.orientation;

import static io.github.kernlot.orientation.Rotations.apart;
import static io.github.kernlot.orientation.Rotations.direction;
import static io.github.kernlot.orientation.Rotations.normal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Planes that meet, planes through lines, what shows on a section, rakes. The column {@code source} of each file names its source. */
@Domain(CoreDomain.class)
class MeetingPlanesTest {

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "planes-meeting.csv", useHeadersInDisplayName = true)
    void twoPlanesMeetInALine(
            String id,
            double dip,
            double dipDirection,
            double otherDip,
            double otherDipDirection,
            double plunge,
            double trend,
            double tolerance) {
        LineOrientation line = PlaneOrientation.ofDipAndDirection(dip, dipDirection)
                .intersection(PlaneOrientation.ofDipAndDirection(otherDip, otherDipDirection));
        assertEquals(plunge, line.plunge(), tolerance);
        assertEquals(trend, line.trend(), tolerance);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "plane-through-lines.csv", useHeadersInDisplayName = true)
    void twoLinesMakeAPlane(
            String id,
            double plunge,
            double trend,
            double otherPlunge,
            double otherTrend,
            double polePlunge,
            double poleTrend,
            double apartAtMost) {
        LineOrientation one = LineOrientation.ofPlungeAndTrend(plunge, trend);
        LineOrientation other = LineOrientation.ofPlungeAndTrend(otherPlunge, otherTrend);
        LineOrientation expected = LineOrientation.ofPlungeAndTrend(polePlunge, poleTrend);
        PlaneOrientation plane = PlaneOrientation.ofLines(one, other);
        assertTrue(plane.pole().angleTo(expected) <= apartAtMost, plane::toString);
        // what was read on a section is what the plane shows on it
        assertEquals(plunge, plane.apparentDip(trend), 1e-12);
        assertEquals(otherPlunge, plane.apparentDip(otherTrend), 1e-12);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "rake.csv", useHeadersInDisplayName = true)
    void aRakeIsCountedDownwardsFromAnEndOfTheStrike(
            String id,
            double dip,
            double dipDirection,
            double strikeEnd,
            double rake,
            double plunge,
            double trend,
            double tolerance) {
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(dip, dipDirection);
        LineOrientation line = plane.lineAtRakeFrom(strikeEnd, rake);
        assertEquals(plunge, line.plunge(), tolerance);
        assertEquals(trend, line.trend(), tolerance);
        assertEquals(rake, plane.rakeFrom(strikeEnd, LineOrientation.ofPlungeAndTrend(plunge, trend)), tolerance);
    }

    @Property
    void theLineOfIntersectionLiesInBoth(@ForAll PlaneOrientation one, @ForAll PlaneOrientation other) {
        Assume.that(one.angleTo(other) > 0.01);
        LineOrientation line = one.intersection(other);
        // the judge's own planes are as far off as the sine of the angle at which they meet lets them
        double close = 1e-12 / Math.sin(Math.toRadians(one.angleTo(other)));
        assertEquals(90, apart(normal(one), direction(line)), close);
        assertEquals(90, apart(normal(other), direction(line)), close);
        assertEquals(0, apart(line, other.intersection(one)), close);
    }

    @Property
    void thePlaneThroughTwoLinesHoldsBoth(@ForAll LineOrientation one, @ForAll LineOrientation other) {
        Assume.that(one.angleTo(other) > 0.01);
        PlaneOrientation plane = PlaneOrientation.ofLines(one, other);
        double close = 1e-12 / Math.sin(Math.toRadians(one.angleTo(other)));
        assertEquals(90, apart(normal(plane), direction(one)), close);
        assertEquals(0, plane.angleTo(other), close);
    }

    @Property
    void aPlaneIsThatOfItsPoleAndOfTwoOfItsLines(
            @ForAll PlaneOrientation plane, @ForAll double rake, @ForAll double other) {
        assertEquals(0, apart(plane, PlaneOrientation.ofPole(plane.pole())), 1e-12);
        Assume.that(Math.abs(Math.sin(Math.toRadians((rake - other) / 2))) > 0.01);
        LineOrientation one = plane.lineAtRake(rake / 2);
        LineOrientation two = plane.lineAtRake(other / 2);
        assertEquals(0, apart(plane, PlaneOrientation.ofLines(one, two)), 1e-10);
    }

    @Property
    void theAngleOfALineToAPlaneIsTheComplementOfThatToItsPole(
            @ForAll PlaneOrientation plane, @ForAll LineOrientation line) {
        double expected = 90 - apart(normal(plane), direction(line));
        assertEquals(expected, plane.angleTo(line), 1e-12);
        assertEquals(plane.angleTo(line), line.angleTo(plane));
    }

    @Property
    void alphaIsTheAngleOfAPlaneToTheAxisOfTheCore(@ForAll CoreFrame frame, @ForAll CorePlane plane) {
        LineOrientation axis = DirectedLine.from(frame.direction()).withoutArrow();
        assertEquals(plane.alpha(), frame.toGeographic(plane).angleTo(axis), 2e-12);
    }

    @Property
    void anApparentDipIsThePlungeOfTheTraceOnTheSection(@ForAll PlaneOrientation plane, @ForAll double sectionTrend) {
        PlaneOrientation section = PlaneOrientation.ofStrikeRightHand(sectionTrend, 90);
        Assume.that(section.angleTo(plane) > 0.01);
        double apparent = plane.apparentDip(sectionTrend);
        LineOrientation trace = plane.intersection(section);
        double close = 1e-12 / Math.sin(Math.toRadians(section.angleTo(plane)));
        assertEquals(trace.plunge(), Math.abs(apparent), close);
        assertTrue(Math.abs(apparent) <= plane.dip() + 1e-12);
        if (trace.plunge() > 1e-6 && trace.plunge() < 89) {
            boolean along = Math.cos(Math.toRadians(trace.trend() - sectionTrend)) > 0;
            assertEquals(along, apparent > 0);
        }
    }

    @Property
    void anApparentPlungeIsThatOfTheProjectionOntoTheSection(
            @ForAll LineOrientation line, @ForAll double sectionTrend) {
        Vector3D along =
                new Vector3D(Math.cos(Math.toRadians(sectionTrend)), Math.sin(Math.toRadians(sectionTrend)), 0);
        Vector3D vector = direction(line);
        double horizontal = vector.dotProduct(along);
        Assume.that(Math.hypot(horizontal, vector.getZ()) > 1e-3);
        double steep = Math.toDegrees(Math.atan2(vector.getZ(), Math.abs(horizontal)));
        double apparent = line.apparentPlunge(sectionTrend);
        assertEquals(steep, Math.abs(apparent), 1e-10);
        if (Math.abs(horizontal) > 1e-9 && steep > 1e-9) {
            assertEquals(horizontal > 0, apparent > 0);
        }
    }

    @Property
    void aRakeComesBackFromItsLine(@ForAll PlaneOrientation plane, @ForAll double turn) {
        double rake = turn / 2;
        LineOrientation line = plane.lineAtRake(rake);
        assertEquals(90, apart(normal(plane), direction(line)), 1e-12);
        double found = plane.rake(line);
        assertTrue(found >= 0 && found < 180);
        assertEquals(0, Math.IEEEremainder(found - rake, 180), 3e-12);
    }

    @Property
    void theTwoEndsOfTheStrikeSeeRakesThatSumToHalfATurn(
            @ForAll PlaneOrientation plane, @ForAll double turn, @ForAll double aside) {
        LineOrientation line = plane.lineAtRake(turn / 2);
        double end = (plane.strike() + aside / 9 + 340) % 360;
        double here = plane.rakeFrom(end, line);
        double there = plane.rakeFrom((end + 180) % 360, line);
        assertEquals(0, Math.IEEEremainder(here + there, 180), 1e-12);
        assertEquals(0, apart(line, plane.lineAtRakeFrom(end, here)), 2e-12);
        assertEquals(here, plane.rake(line), 1e-12);
    }

    /** rake(line) = rake(long axis) - sign(n_up) gamma, the normal pointing down-hole (derived for this project; no publication). */
    @Property
    void gammaIsARakeCountedFromTheLongAxis(@ForAll CoreFrame frame, @ForAll LineInPlane line) {
        CorePlane onCore = line.plane();
        PlaneOrientation plane = frame.toGeographic(onCore);
        Assume.that(plane.dip() > 1e-3 && plane.dip() < 89.999);
        DirectedLine facing = frame.toGeographic(onCore.facing(HoleSense.DOWN_HOLE));
        double longAxis = plane.rake(frame.toGeographic(onCore.line(0)));
        double expected = facing.plunge() < 0 ? longAxis - line.gamma() : longAxis + line.gamma();
        double found = plane.rake(frame.toGeographic(line));
        assertEquals(0, Math.IEEEremainder(found - expected, 180), 1e-8);
    }

    @Test
    void atItsEdgesARakeIsOfTheStrikeThatIsShown() {
        PlaneOrientation flat = PlaneOrientation.ofDipAndDirection(0, 0);
        assertEquals(LineOrientation.ofPlungeAndTrend(0, 130), flat.lineAtRake(40));
        PlaneOrientation upright = PlaneOrientation.ofDipAndDirection(90, 40);
        assertEquals(LineOrientation.ofPlungeAndTrend(90, 0), upright.lineAtRake(90));
        assertEquals(0.0, upright.rake(LineOrientation.ofPlungeAndTrend(0, 130)));
        assertEquals(0.0, upright.rakeFrom(130, LineOrientation.ofPlungeAndTrend(0, 130)));
        // a rake of 1e-15 from one end is 180 from the other, but for rounding, and comes out as 0
        PlaneOrientation steep = PlaneOrientation.ofDipAndDirection(60, 90);
        assertEquals(0.0, steep.rakeFrom(180, LineOrientation.ofPlungeAndTrend(1e-15, 0)), 1e-14);
        assertEquals(90, upright.rake(LineOrientation.ofPlungeAndTrend(90, 17)), 1e-13);
    }

    @Test
    void anAzimuthUpTo45DegreesFromTheStrikeNamesItsEnd() {
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(30, 40);
        assertEquals(plane.lineAtRake(10), plane.lineAtRakeFrom(355, 10));
        assertEquals(plane.lineAtRake(10), plane.lineAtRakeFrom(265, 10));
        assertEquals(plane.lineAtRake(170), plane.lineAtRakeFrom(85, 10));
        assertEquals(plane.lineAtRake(170), plane.lineAtRakeFrom(175, 10));
    }

    @Test
    void aVerticalPlaneShowsItsTraceUprightOnEverySectionButItself() {
        PlaneOrientation upright = PlaneOrientation.ofDipAndDirection(90, 40);
        assertEquals(90, upright.apparentDip(0));
        assertEquals(90, upright.apparentDip(220));
        assertRefused(
                "90.0/040.0 (dip/dip direction) is the section along 130.0 itself and shows no trace",
                () -> upright.apparentDip(130));
        for (int tenths = 0; tenths < 3600; tenths++) {
            PlaneOrientation section = PlaneOrientation.ofDipAndDirection(90, tenths / 10.0);
            LineOrientation square = LineOrientation.ofPlungeAndTrend(0, tenths / 10.0);
            assertThrows(IllegalArgumentException.class, () -> section.apparentDip(section.strike()));
            assertThrows(IllegalArgumentException.class, () -> square.apparentPlunge(section.strike()));
        }
        assertEquals(0.0, PlaneOrientation.ofDipAndDirection(30, 40).apparentDip(310));
        assertEquals(0.0, PlaneOrientation.ofDipAndDirection(0, 40).apparentDip(40));
    }

    @Test
    void whatHasNoAnswerIsRefusedWithTheReason() {
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(30, 40);
        assertRefused(
                "30.0/040.0 (dip/dip direction) and 30.0/040.0 (dip/dip direction) are parallel and do not meet in a line",
                () -> plane.intersection(plane));
        LineOrientation line = LineOrientation.ofPlungeAndTrend(0, 20);
        assertRefused(
                "0.0/020.0 (plunge/trend) and 0.0/200.0 (plunge/trend) are one line, which lies in many planes",
                () -> PlaneOrientation.ofLines(line, LineOrientation.ofPlungeAndTrend(0, 200)));
        assertRefused(
                "a line at right angles to 30.0/040.0 (dip/dip direction) has no rake", () -> plane.rake(plane.pole()));
        assertRefused(
                "azimuth 020.0 is no end of the strike 310.0; expected one within 45 degrees of it",
                () -> plane.lineAtRakeFrom(20, 10));
        assertRefused(
                "0.0/020.0 (plunge/trend) is square to a section along 110.0 and shows as a point",
                () -> line.apparentPlunge(110));
        assertEquals(90, LineOrientation.ofPlungeAndTrend(5, 20).apparentPlunge(110));
        // a vertical line has no trend against which a section could run
        assertEquals(90, LineOrientation.ofPlungeAndTrend(90, 0).apparentPlunge(180));
        assertEquals(
                -90, LineOrientation.ofPlungeAndTrend(Math.nextDown(90.0), 0).apparentPlunge(180), 1e-12);
        for (double bad : new double[] {-1, 361, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> plane.apparentDip(bad));
            assertThrows(IllegalArgumentException.class, () -> line.apparentPlunge(bad));
            assertThrows(IllegalArgumentException.class, () -> plane.lineAtRake(bad));
            assertThrows(IllegalArgumentException.class, () -> plane.lineAtRakeFrom(bad, 5));
            assertThrows(IllegalArgumentException.class, () -> plane.lineAtRakeFrom(310, bad));
        }
    }

    private static void assertRefused(String expected, Runnable asked) {
        assertEquals(
                expected,
                assertThrows(IllegalArgumentException.class, asked::run).getMessage());
    }
}
