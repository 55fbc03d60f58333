package io.github.kernlot.survey.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.Traces;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ArcAheadTest {

    private static TracePoint start(double inclination, double azimuth) {
        return new TracePoint(0, Traces.COLLAR, HoleDirection.ofInclination(inclination, azimuth), false);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "toolfaces.csv", useHeadersInDisplayName = true)
    void toolfacesMeetTheirCheckValues(
            double inclination1,
            double azimuth1,
            double inclination2,
            double azimuth2,
            double length,
            double toolface,
            Double toolfaceAtEnd,
            double dogleg,
            double tolerance,
            String source) {
        TracePoint start = start(inclination1, azimuth1);
        HoleDirection target = HoleDirection.ofInclination(inclination2, azimuth2);

        ArcAhead arc = ArcAhead.toDirection(start, target, length);

        assertEquals(toolface, arc.toolface().angle(), tolerance, source);
        assertEquals(dogleg, arc.dogleg(), tolerance, source);
        assertEquals(dogleg * 30 / length, arc.doglegSeverity(), tolerance, source);
        assertEquals(WallReference.highSide(), arc.toolface().from());
        assertEquals(0, arc.from(start).direction().angleTo(target), 1e-12);
        if (toolfaceAtEnd != null) {
            HoleDirection beyond = arc.withLength(2 * length).from(start).direction();
            ArcAhead onwards = ArcAhead.toDirection(arc.from(start), beyond, length);
            assertEquals(toolfaceAtEnd, onwards.toolface().angle(), tolerance, source);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "ahead.csv", useHeadersInDisplayName = true)
    void waysAheadMeetTheirCheckValues(
            double inclination1,
            double azimuth1,
            double inclination2,
            double azimuth2,
            double length,
            double ahead,
            boolean straight,
            double north,
            double east,
            double down,
            double inclination,
            double azimuth,
            String source) {
        TracePoint start = start(inclination1, azimuth1);
        ArcAhead arc = ArcAhead.toDirection(start, HoleDirection.ofInclination(inclination2, azimuth2), length);
        ArcAhead onwards = straight ? new ArcAhead(Toolface.fromHighSide(0), 0, ahead) : arc.withLength(length + ahead);

        TracePoint end = onwards.from(straight ? arc.from(start) : start);

        Displacement way = end.position().minus(start.position());
        assertEquals(north, way.north(), 1e-6, source);
        assertEquals(east, way.east(), 1e-6, source);
        assertEquals(down, way.down(), 1e-6, source);
        assertEquals(inclination, end.direction().inclination(), 1e-6, source);
        assertEquals(azimuth, end.direction().azimuth(), 1e-6, source);
        assertEquals(length + ahead, end.depth(), 1e-12);
        assertTrue(end.extrapolated());
    }

    /** The sine and cosine of a quarter of a circle, derived. */
    @ParameterizedTest
    @CsvSource({"0, 90, 0", "90, 90, 90", "180, 0, 0", "270, 90, 270"})
    void theGravityToolfaceTurnsClockwiseFromTheHighSide(double toolface, double inclination, double azimuth) {
        double length = toolface == 180 ? 45 : 90;
        TracePoint start = start(toolface == 0 ? 45 : toolface == 180 ? 45 : 90, 0);
        double dogleg = toolface == 0 || toolface == 180 ? 45 : 90;

        TracePoint end = new ArcAhead(Toolface.fromHighSide(toolface), dogleg * 30 / length, length).from(start);

        HoleDirection expected = HoleDirection.ofInclination(inclination, azimuth);
        assertEquals(0, end.direction().angleTo(expected), 1e-12);
    }

    @Test
    void inAVerticalHoleTheToolfaceFromNorthIsTheAzimuthOfTheBend() {
        TracePoint start = start(0, 77);

        ArcAhead arc = ArcAhead.toDirection(start, HoleDirection.ofInclination(10, 230), 60);

        assertEquals(WallReference.north(), arc.toolface().from());
        assertEquals(230, arc.toolface().angle(), 1e-12);
        assertEquals(0, arc.from(start).direction().angleTo(HoleDirection.ofInclination(10, 230)), 1e-12);
        // looking up, the compass runs the other way
        ArcAhead up = ArcAhead.toDirection(start(180, 0), HoleDirection.ofInclination(170, 230), 60);
        assertEquals(130, up.toolface().angle(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> new ArcAhead(Toolface.fromHighSide(10), 3, 30).from(start));
        assertThrows(
                IllegalArgumentException.class, () -> new ArcAhead(Toolface.fromNorth(10), 3, 30).from(start(90, 0)));
    }

    @Test
    void aTargetOnTheTangentIsReachedStraight() {
        TracePoint start = start(60, 120);
        Displacement way = new Displacement(
                30 * start.direction().north(),
                30 * start.direction().east(),
                30 * start.direction().down());

        ArcAhead arc = ArcAhead.toTarget(start, start.position().plus(way));

        // the place is rounded to the coordinates' last digits
        assertEquals(0, arc.doglegSeverity(), 1e-9);
        assertEquals(30, arc.length(), 1e-9);
        ArcAhead down = ArcAhead.toTarget(start(0, 0), Traces.COLLAR.plus(new Displacement(0, 0, 12)));
        assertEquals(new ArcAhead(Toolface.fromNorth(0), 0, 12), down);
        assertEquals("straight over 12.00 m", down.toString());
        ArcAhead along = ArcAhead.toDirection(start, start.direction(), 12);
        assertEquals(start.direction(), along.from(start).direction());
    }

    @Test
    void aTargetSquareToTheHoleIsHalfACircleAwayAndWhatLiesBehindIsRefused() {
        TracePoint start = start(0, 0);

        ArcAhead arc = ArcAhead.toTarget(start, Traces.COLLAR.plus(new Displacement(0, 20, 0)));

        assertEquals(180, arc.dogleg(), 1e-12);
        assertEquals(10 * Math.PI, arc.length(), 1e-12);
        assertEquals(90, arc.toolface().angle());
        for (Displacement behind :
                new Displacement[] {new Displacement(0, 20, -0.001), new Displacement(0, 0, -5), Displacement.ZERO}) {
            assertThrows(IllegalArgumentException.class, () -> ArcAhead.toTarget(start, Traces.COLLAR.plus(behind)));
        }
    }

    @Test
    void badNumbersAreRefused() {
        Toolface up = Toolface.fromHighSide(0);
        TracePoint start = start(20, 20);

        assertThrows(IllegalArgumentException.class, () -> new ArcAhead(up, Double.NaN, 30));
        assertThrows(IllegalArgumentException.class, () -> new ArcAhead(up, -1, 30));
        assertThrows(IllegalArgumentException.class, () -> new ArcAhead(up, 3, 0));
        assertThrows(IllegalArgumentException.class, () -> new ArcAhead(up, 3, 1801));
        assertThrows(IllegalArgumentException.class, () -> Toolface.fromHighSide(-1));
        assertThrows(IllegalArgumentException.class, () -> new Toolface(10, WallReference.lowSide()));
        assertThrows(IllegalArgumentException.class, () -> ArcAhead.toDirection(start, start.direction(), Double.NaN));
        assertThrows(
                IllegalArgumentException.class,
                () -> ArcAhead.toDirection(start, HoleDirection.ofInclination(160, 200), 30));
        assertThrows(IllegalArgumentException.class, () -> new TracePoint(-1, Traces.COLLAR, start.direction(), false));
    }

    @Test
    void anArcSaysWhatToSet() {
        ArcAhead arc = ArcAhead.toDirection(start(6, 0), HoleDirection.ofInclination(8, 25), 30);

        assertEquals("toolface 069.6 from high side, dogleg 3.60 degrees per 30 m, over 30.00 m", arc.toString());
    }

    @Property
    void theArcToATargetReachesIt(@ForAll long seed) {
        Random random = new Random(seed);
        TracePoint start = start(180 * random.nextDouble(), 360 * random.nextDouble());
        double far = Math.pow(10, 5 * random.nextDouble() - 2);
        Displacement way =
                new Displacement(far * random.nextGaussian(), far * random.nextGaussian(), far * random.nextGaussian());
        boolean behind = Traces.vector(way).dotProduct(Traces.vector(start.direction())) < 0;
        Displacement ahead = behind ? new Displacement(-way.north(), -way.east(), -way.down()) : way;

        ArcAhead arc = ArcAhead.toTarget(start, Traces.COLLAR.plus(ahead));

        Displacement reached = arc.from(start).position().minus(start.position());
        assertEquals(0, Traces.vector(reached).distance(Traces.vector(ahead)), 1e-11 * (1000 + far));
        assertTrue(arc.length() >= ahead.length() - 1e-9);
    }

    /** The trace between two stations is the arc from one to the other, made on another way. */
    @Property
    void theArcIsThatOfATrace(@ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = Traces.of(Traces.wandering(random, 2));
        double end = Traces.lastDepth(trace.survey().stations());
        TracePoint start = TracePoint.at(trace, 0);
        double dogleg = start.direction().angleTo(trace.directionAt(end));

        ArcAhead arc = ArcAhead.toDirection(start, trace.directionAt(end), end);

        for (double fraction : new double[] {0.2, 0.7, 1}) {
            TracePoint point = arc.withLength(fraction * end).from(start);
            Displacement missed = point.position().minus(trace.positionAt(fraction * end));
            assertEquals(0, missed.length(), 1e-10);
            assertEquals(0, point.direction().angleTo(trace.directionAt(fraction * end)), 1e-9);
        }
        if (dogleg > 1e-3) {
            ArcAhead toPlace = ArcAhead.toTarget(start, trace.positionAt(end));
            assertEquals(arc.doglegSeverity(), toPlace.doglegSeverity(), 1e-6);
            assertEquals(end, toPlace.length(), 1e-6);
        }
    }
}
