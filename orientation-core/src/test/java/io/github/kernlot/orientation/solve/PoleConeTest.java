package io.github.kernlot.orientation.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.WallReference;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PoleConeTest {

    private static final HoleDirection HOLE = HoleDirection.ofPlunge(60, 90);

    @ParameterizedTest
    @CsvFileSource(resources = "dip-ranges.csv", useHeadersInDisplayName = true)
    void theDipsOfAnAlphaReachFromOneEndToTheOther(
            double azimuth, double plunge, double alpha, double least, double greatest) {
        PoleCone cone = PoleCone.of(HoleDirection.ofPlunge(plunge, azimuth), alpha);
        assertEquals(least, cone.leastDip(), 1e-12);
        assertEquals(greatest, cone.greatestDip(), 1e-12);
    }

    @Test
    void betaTurnsThePoleThroughAllDipsAndNoOthers() {
        // brute force: a plane at every tenth of a degree of beta
        for (double plunge : new double[] {60, -60, 10, 85, 0}) {
            PoleCone cone = PoleCone.of(HoleDirection.ofPlunge(plunge, 33), 25);
            double least = 90;
            double greatest = 0;
            for (int i = 0; i < 3600; i++) {
                double dip = cone.planeAt(WallReference.lowSide(), i / 10.0).dip();
                least = Math.min(least, dip);
                greatest = Math.max(greatest, dip);
            }
            assertEquals(cone.leastDip(), least, 1e-3);
            assertEquals(cone.greatestDip(), greatest, 0.06);
        }
    }

    @ParameterizedTest
    @CsvSource({"60, 40, 35", "60, 75, 30", "-60, 40, 41", "20, 10, 80", "5, 60, 60"})
    void theBetasOfADipAreThoseOfTheClosedForm(double plunge, double alpha, double dip) {
        // source: cos(beta) = (+-cos(dip) + sin(alpha) sin P) / (cos(alpha) cos P), derived and checked numerically by
        // another program
        HoleDirection hole = HoleDirection.ofPlunge(plunge, 217);
        ConeMeeting meeting = PoleCone.of(hole, alpha).atDip(dip);
        List<Double> cosines = meeting.planes().stream()
                .map(plane -> Math.cos(
                        Math.toRadians(CoreFrame.at(hole, 0).toCore(plane).beta())))
                .toList();
        int expected = 0;
        for (int sign = -1; sign <= 1; sign += 2) {
            double cosine = (sign * Math.cos(Math.toRadians(dip))
                            + Math.sin(Math.toRadians(alpha)) * Math.sin(Math.toRadians(plunge)))
                    / (Math.cos(Math.toRadians(alpha)) * Math.cos(Math.toRadians(plunge)));
            if (Math.abs(cosine) < 1) {
                expected += 2;
                assertEquals(
                        2,
                        cosines.stream()
                                .filter(found -> Math.abs(found - cosine) < 1e-9)
                                .count());
            }
        }
        assertEquals(expected, meeting.planes().size());
        meeting.planes().forEach(plane -> assertEquals(dip, plane.dip(), 1e-9));
    }

    @Test
    void atTheEndsOfTheRangeThereIsOnePlaneAndBeyondNone() {
        PoleCone cone = PoleCone.of(HOLE, 40);
        assertEquals(50, cone.halfAngle());
        assertEquals(ConeMeeting.Kind.TOUCHING, cone.atDip(20).kind());
        assertEquals(1, cone.atDip(20).planes().size());
        assertEquals(1, cone.atDip(80).planes().size());
        assertEquals(ConeMeeting.Kind.APART, cone.atDip(19).kind());
        assertEquals(1, cone.atDip(19).gap(), 1e-9);
        assertEquals(2, cone.atDip(82).gap(), 1e-9);
        assertTrue(cone.atDip(82).planes().isEmpty());
    }

    @Test
    void aVerticalHoleHasOneDipAndEveryDirection() {
        PoleCone cone = PoleCone.of(HoleDirection.ofPlunge(90, 0), 35);
        assertEquals(ConeMeeting.Kind.PARALLEL, cone.atDip(55).kind());
        assertEquals(0, cone.atDip(55).gap());
        assertEquals(5, cone.atDip(60).gap());
        assertEquals(
                PlaneOrientation.ofDipAndDirection(55, 70).dip(),
                cone.planeAt(WallReference.north(), 70).dip());
        assertThrows(IllegalArgumentException.class, () -> cone.planeAt(WallReference.lowSide(), 70));
    }

    @Test
    void alphaNinetyIsOnePlane() {
        PoleCone cone = PoleCone.of(HOLE, 90);
        PlaneOrientation across = PlaneOrientation.ofDipAndDirection(30, 270);
        assertEquals(0, cone.halfAngle());
        assertEquals(1, cone.atDip(30).planes().size());
        assertEquals(0, cone.atDip(30).planes().get(0).angleTo(across), 1e-9);
        assertEquals(0, cone.withStrike(0).planes().get(0).angleTo(across), 1e-9);
        assertTrue(cone.withStrike(20).planes().isEmpty());
    }

    @Test
    void aStrikeLeavesTwoPlanes() {
        // source: strike N-S across a hole to the east at plunge 60, alpha 40: dips 60 - 40 to the east, 180 - 60 - 40
        // to the west
        // (common practice, no source)
        ConeMeeting meeting = PoleCone.of(HOLE, 40).withStrike(180);
        assertEquals(2, meeting.planes().size());
        assertTrue(meeting.planes().stream()
                .anyMatch(plane -> plane.angleTo(PlaneOrientation.ofDipAndDirection(20, 90)) < 1e-9));
        assertTrue(meeting.planes().stream()
                .anyMatch(plane -> plane.angleTo(PlaneOrientation.ofDipAndDirection(80, 270)) < 1e-9));
    }

    @Test
    void aHorizontalHoleAlongStrikeSaysNothingOfTheDip() {
        HoleDirection along = HoleDirection.ofPlunge(0, 70);
        assertEquals(
                ConeMeeting.Kind.PARALLEL, PoleCone.of(along, 0).withStrike(250).kind());
        assertEquals(0, PoleCone.of(along, 0).withStrike(250).gap());
        assertEquals(12, PoleCone.of(along, 12).withStrike(70).gap());
    }

    @Test
    void theMisfitIsInAlpha() {
        assertEquals(-10, PoleCone.of(HOLE, 40).misfit(PlaneOrientation.ofDipAndDirection(30, 90)), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 90.1, Double.NaN, Double.POSITIVE_INFINITY})
    void anglesOutsideTheirRangeAreRefused(double angle) {
        assertThrows(IllegalArgumentException.class, () -> PoleCone.of(HOLE, angle));
        assertThrows(IllegalArgumentException.class, () -> PoleCone.of(HOLE, 40).atDip(angle));
        assertThrows(IllegalArgumentException.class, () -> PoleCone.of(HOLE, 40).withStrike(angle - 1 + 500));
    }

    @Test
    void readsAsAGeologistWritesIt() {
        assertEquals(
                "alpha 40.0 in -60.0/090.0 (dip/azimuth): dips 20.0 to 80.0",
                PoleCone.of(HOLE, 40).toString());
        assertEquals("apart, gap 1.0", PoleCone.of(HOLE, 40).atDip(19).toString());
        assertEquals(
                "touching: 20.0/090.0 (dip/dip direction)",
                PoleCone.of(HOLE, 40).atDip(20).toString());
    }
}
