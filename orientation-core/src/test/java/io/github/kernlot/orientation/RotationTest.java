package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@Domain(CoreDomain.class)
class RotationTest {

    private static final double CLOSE = 2e-12;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "line-turned-about-axis.csv", useHeadersInDisplayName = true)
    void aLineTurnsAboutAnAxis(
            String id,
            double axisPlunge,
            double axisTrend,
            double plunge,
            double trend,
            double turn,
            double turnedPlunge,
            double turnedTrend) {
        Rotation rotation = Rotation.about(DirectedLine.ofPlungeAndTrend(axisPlunge, axisTrend), turn);
        LineOrientation turned = rotation.apply(LineOrientation.ofPlungeAndTrend(plunge, trend));
        assertEquals(turnedPlunge, turned.plunge(), 0.0006);
        assertEquals(turnedTrend, turned.trend(), 0.0006);
    }

    /** Rock Mechanics for Underground Mining (Brady and Brown; authors from memory), App. A p.573; the arrow computed. */
    @Test
    void theArrowOfTheTurnedLinePointsUp() {
        Rotation rotation = Rotation.about(DirectedLine.ofPlungeAndTrend(37, 236), -124);
        DirectedLine turned = rotation.apply(DirectedLine.ofPlungeAndTrend(51, 339));
        assertEquals(-30.517, turned.plunge(), 0.0006);
        assertEquals(252.335, turned.trend(), 0.0006);
    }

    @Property
    void anArrowIsTurnedAsRotationsOfHipparchusTurnIt(
            @ForAll DirectedLine axis, @ForAll double angle, @ForAll DirectedLine line) {
        Vector3D expected = Rotations.about(vector(axis), angle).applyTo(vector(line));
        DirectedLine found = Rotation.about(axis, angle).apply(line);
        assertEquals(0, Math.toDegrees(Vector3D.angle(expected, vector(found))), CLOSE);
    }

    @Property
    void planesAndLinesKeepTheirAnglesToEachOther(
            @ForAll DirectedLine axis,
            @ForAll double angle,
            @ForAll PlaneOrientation plane,
            @ForAll LineOrientation line) {
        Rotation rotation = Rotation.about(axis, angle);
        assertEquals(plane.angleTo(line), rotation.apply(plane).angleTo(rotation.apply(line)), CLOSE);
        assertEquals(0, Rotations.apart(rotation.apply(plane).pole(), rotation.apply(plane.pole())), CLOSE);
        PlaneOrientation back = rotation.inverse().apply(rotation.apply(plane));
        assertEquals(0, Rotations.apart(plane, back), CLOSE);
    }

    @Property
    void theAngleAndTheAxisComeBack(@ForAll DirectedLine axis, @ForAll double angle) {
        Rotation rotation = Rotation.about(axis, angle);
        double turn = Math.abs(Math.IEEEremainder(angle, 360));
        assertEquals(turn, rotation.angle(), 3e-12);
        Assume.that(turn > 1e-3);
        Rotation again = Rotation.about(rotation.axis(), rotation.angle());
        DirectedLine line = DirectedLine.ofPlungeAndTrend(20, 30);
        assertEquals(0, rotation.apply(line).angleTo(again.apply(line)), 1e-9);
    }

    @Property
    void oneRotationAfterAnotherIsTheirProduct(
            @ForAll DirectedLine one, @ForAll DirectedLine other, @ForAll double angle, @ForAll DirectedLine line) {
        Rotation first = Rotation.about(one, angle);
        Rotation second = Rotation.about(other, 50);
        DirectedLine expected = second.apply(first.apply(line));
        assertEquals(0, expected.angleTo(first.andThen(second).apply(line)), CLOSE);
    }

    @Property
    void theSmallestRotationTakesOneArrowToTheOther(@ForAll DirectedLine from, @ForAll DirectedLine to) {
        Assume.that(from.angleTo(to) < 170);
        Rotation rotation = Rotation.carrying(from, to);
        assertEquals(0, rotation.apply(from).angleTo(to), CLOSE);
        assertEquals(from.angleTo(to), rotation.angle(), 1e-11);
    }

    @Property
    void whatWasReadInAWrongCradleIsPutRight(
            @ForAll CoreFrame used, @ForAll CoreFrame right, @ForAll CorePlane plane, @ForAll DirectedCoreLine line) {
        Rotation rebase = right.rebase(used);
        assertEquals(0, Rotations.apart(right.toGeographic(plane), rebase.apply(used.toGeographic(plane))), 3e-12);
        assertEquals(0, right.toGeographic(line).angleTo(rebase.apply(used.toGeographic(line))), 3e-12);
        assertEquals(0, used.rebase(used).angle(), 3e-12);
    }

    /** Common practice, no source: a line is not put right by adding angles. Core in a vertical cradle that was drilled at 60 degrees. */
    @Test
    void aCradleThatStoodUprightIsPutRightByItsRotation() {
        CoreFrame cradle = CoreFrame.at(HoleDirection.ofDip(-90, 0), WallReference.azimuth(270), 0);
        CoreFrame hole = CoreFrame.at(HoleDirection.ofDip(-60, 90), 0);
        Rotation rebase = hole.rebase(cradle);
        assertEquals(30, rebase.angle(), 1e-12);
        // the bed that lay flat in the cradle stands square to the hole
        PlaneOrientation bed = rebase.apply(PlaneOrientation.ofDipAndDirection(0, 0));
        assertEquals(30, bed.dip(), 1e-12);
        assertEquals(270, bed.dipDirection(), 1e-12);
    }

    @Test
    void aBedIsLaidFlatRightWayUp() {
        DirectedLine up = DirectedLine.ofPlungeAndTrend(-90, 0);
        DirectedLine overturned = DirectedLine.ofPlungeAndTrend(20, 140);
        Rotation rotation = Rotation.carrying(overturned, up);
        assertEquals(110, rotation.angle(), 1e-12);
        assertEquals(0, rotation.apply(overturned.perpendicularPlane()).dip(), 1e-12);
        assertEquals(-90, rotation.apply(overturned).plunge(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> Rotation.carrying(up, up.reversed()));
        assertThrows(IllegalArgumentException.class, () -> Rotation.about(up, Double.NaN));
    }

    @Test
    void rotationsPrintAndCompare() {
        Rotation rotation = Rotation.about(DirectedLine.ofPlungeAndTrend(37, 236), -124);
        assertEquals("124.0 clockwise along arrow -37.0/056.0 (plunge/trend)", rotation.toString());
        Rotation still = Rotation.about(DirectedLine.ofPlungeAndTrend(0, 0), 0);
        assertEquals("0.0 clockwise along arrow 90.0/000.0 (plunge/trend)", still.toString());
        assertEquals(Rotation.about(DirectedLine.ofPlungeAndTrend(37, 236), 236), rotation);
        assertEquals(Rotation.about(DirectedLine.ofPlungeAndTrend(37, 236), 236).hashCode(), rotation.hashCode());
        assertNotEquals(still, rotation);
        DirectedLine half =
                Rotation.about(DirectedLine.ofPlungeAndTrend(10, 20), 180).axis();
        assertEquals(0, Rotations.apart(half.withoutArrow(), LineOrientation.ofPlungeAndTrend(10, 20)), 1e-12);
    }

    private static Vector3D vector(DirectedLine line) {
        return new Vector3D(line.north(), line.east(), line.down());
    }
}
