package io.github.kernlot.orientation.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VectorTest {

    private static final Vector NORTH = new Vector(1, 0, 0);
    private static final Vector EAST = new Vector(0, 1, 0);

    @Test
    void northEastAndDownAreRightHanded() {
        assertEquals(Vector.DOWN, NORTH.cross(EAST));
        assertEquals(NORTH, EAST.cross(Vector.DOWN));
        assertEquals(EAST, Vector.DOWN.cross(NORTH));
        assertEquals(Vector.DOWN.negated(), EAST.cross(NORTH));
    }

    @Test
    void vectorsAreAddedStretchedAndMeasured() {
        Vector vector = new Vector(3, -4, 12);
        assertEquals(new Vector(4, -4, 13), vector.plus(new Vector(1, 0, 1)));
        assertEquals(new Vector(2, -4, 11), vector.minus(new Vector(1, 0, 1)));
        assertEquals(new Vector(-6, 8, -24), vector.times(-2));
        assertEquals(13, vector.length());
        assertEquals(5, vector.horizontal());
        assertEquals(1, vector.unit().length(), 1e-15);
        assertEquals(-4 + 24, vector.dot(new Vector(0, 1, 2)));
        assertEquals(new Vector(3, -4, 0), vector.across(Vector.DOWN));
    }

    @Test
    void directionsAreCountedFromNorthAndFromStraightDown() {
        assertEquals(EAST, Vector.ofAzimuth(90));
        assertEquals(Vector.DOWN, Vector.ofInclination(0, 123));
        assertEquals(Vector.DOWN.negated(), Vector.ofInclination(180, 123));
        assertEquals(NORTH.negated(), Vector.ofInclination(90, 180));
    }

    /** Computed with mpmath 1.3.0 at 50 digits: acos loses these angles, atan2 of product lengths keeps them. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-4, 1e-8, 1e-12, 1e-100, 1.5, Math.PI - 1e-8})
    void theAngleBetweenVectorsKeepsItsDigitsAtBothEnds(double angle) {
        Vector other = new Vector(Math.cos(angle), Math.sin(angle), 0);
        assertEquals(angle, NORTH.angleTo(other), 2 * Math.ulp(angle));
        assertEquals(angle, other.angleTo(NORTH), 2 * Math.ulp(angle));
    }

    @Test
    void theSmallestRotationTakesOneVectorToTheOtherAndKeepsTheHinge() {
        Vector from = Vector.ofInclination(20, 10);
        Vector to = Vector.ofInclination(70, 250);
        Vector hinge = from.cross(to).unit();
        assertTrue(from.carried(from, to).minus(to).length() < 1e-15);
        assertTrue(hinge.carried(from, to).minus(hinge).length() < 1e-15);
        assertEquals(EAST, EAST.carried(NORTH, NORTH));
    }
}
