package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.BetaConvention.Sense;
import io.github.kernlot.orientation.BetaConvention.View;
import io.github.kernlot.orientation.GammaConvention.Zero;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;

/** The ways of reading gamma, against directions on the core that are built from the plane's normal and the axis by cross products. */
@Domain(CoreDomain.class)
class GammaConventionProperties {

    private static List<GammaConvention> all() {
        return Arrays.stream(Sense.values())
                .flatMap(sense -> Arrays.stream(View.values())
                        .flatMap(view -> Stream.of(Zero.values()).map(zero -> new GammaConvention(sense, view, zero))))
                .toList();
    }

    @Property
    void eachConventionReadsBackWhatItWrote(@ForAll double gamma) {
        for (GammaConvention way : all()) {
            double house = way.toHouse(gamma);
            double back = way.fromHouse(house);
            assertTrue(house >= 0 && house < 360 && back >= 0 && back < 360, way::toString);
            assertEquals(0, Math.IEEEremainder(back - gamma, 360), 2e-13, way::toString);
        }
    }

    /** Reads the head of an arrow in the plane as a person would: stands where the view says, and counts from the named end. */
    @Property
    void eachWayIsWhatItsWordsSay(
            @ForAll HoleDirection hole, @ForAll double alpha, @ForAll double beta, @ForAll double gamma) {
        Assume.that(!hole.isVertical());
        CoreFrame frame = CoreFrame.at(hole, 33);
        CorePlane plane = CorePlane.of(1 + alpha / 4.2, beta);
        double[] axis =
                vector(frame.toGeographic(CoreLine.ofAxisAngleAndDelta(0, 0).pointing(HoleSense.DOWN_HOLE)));
        double[] normal = vector(frame.toGeographic(plane.facing(HoleSense.DOWN_HOLE)));
        double[] shortEnd = unit(cross(axis, normal));
        double[] longEnd = cross(shortEnd, normal);
        longEnd = dot(longEnd, axis) < 0 ? times(longEnd, -1) : longEnd;
        // looking along the normal, clockwise is from a vector to (normal x vector)
        double[] quarter = cross(normal, longEnd);
        for (GammaConvention way : all()) {
            double[] zero =
                    switch (way.zero()) {
                        case LONG_AXIS_DOWN_HOLE -> longEnd;
                        case LONG_AXIS_UP_HOLE -> times(longEnd, -1);
                        case SHORT_AXIS_CLOCKWISE -> quarter;
                        case SHORT_AXIS_ANTICLOCKWISE -> times(quarter, -1);
                    };
            double[] sight = way.view() == View.DOWN_HOLE ? normal : times(normal, -1);
            double[] next = times(cross(sight, zero), way.sense() == Sense.CLOCKWISE ? 1 : -1);
            double turn = Math.toRadians(gamma);
            double[] head = plus(times(zero, Math.cos(turn)), times(next, Math.sin(turn)));
            double[] found = vector(frame.toGeographic(plane.directedLine(way.toHouse(gamma))));
            assertEquals(0, length(plus(head, times(found, -1))), 1e-12, way::toString);
        }
    }

    /** Along an arrow up-hole an axial line's gamma is 360 - gamma, whatever the way of reading; twice is nothing. */
    @Property
    void anArrowUpHoleMirrorsALineWithoutAnArrow(@ForAll double gamma) {
        for (GammaConvention way : all()) {
            GammaConvention turned = way.withArrowUpHole();
            assertEquals(way, turned.withArrowUpHole());
            assertEquals(0, Math.IEEEremainder(turned.toHouse(gamma) + way.toHouse(gamma), 180), 2e-13, way::toString);
        }
    }

    /** The rows of the trade for a reading of 35 (derived; no publication): the other side of the plane, the ends, the short axis. */
    @Example
    void theWaysOfTheTrade() {
        assertEquals(35, GammaConvention.HOUSE.toHouse(35));
        assertEquals(325, new GammaConvention(Sense.CLOCKWISE, View.UP_HOLE, Zero.LONG_AXIS_DOWN_HOLE).toHouse(35));
        assertEquals(215, new GammaConvention(Sense.CLOCKWISE, View.DOWN_HOLE, Zero.LONG_AXIS_UP_HOLE).toHouse(35));
        assertEquals(125, new GammaConvention(Sense.CLOCKWISE, View.DOWN_HOLE, Zero.SHORT_AXIS_CLOCKWISE).toHouse(35));
        assertEquals(
                305, new GammaConvention(Sense.CLOCKWISE, View.DOWN_HOLE, Zero.SHORT_AXIS_ANTICLOCKWISE).toHouse(35));
        assertEquals(325, GammaConvention.HOUSE.toHouse(-35));
    }

    @Example
    void theHouseConventionLeavesGammaAsItIs() {
        DoubleStream.of(0, 1e-300, 12.3, 180, Math.nextDown(360.0)).forEach(gamma -> {
            assertEquals(gamma, GammaConvention.HOUSE.toHouse(gamma));
            assertEquals(gamma, GammaConvention.HOUSE.fromHouse(gamma));
        });
        assertEquals(0.0, GammaConvention.HOUSE.toHouse(360));
        assertEquals(0.0, GammaConvention.HOUSE.toHouse(-0.0));
    }

    @Example
    void whatLiesOutsideIsRefused() {
        DoubleStream.of(-180.1, 360.1, Double.NaN, Double.POSITIVE_INFINITY)
                .forEach(gamma ->
                        assertThrows(IllegalArgumentException.class, () -> GammaConvention.HOUSE.toHouse(gamma)));
        assertThrows(IllegalArgumentException.class, () -> GammaConvention.HOUSE.fromHouse(-1));
    }

    private static double[] vector(DirectedLine line) {
        return new double[] {line.north(), line.east(), line.down()};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double[] times(double[] a, double factor) {
        return Arrays.stream(a).map(x -> x * factor).toArray();
    }

    private static double[] plus(double[] a, double[] b) {
        return new double[] {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double length(double[] a) {
        return Math.sqrt(dot(a, a));
    }

    private static double[] unit(double[] a) {
        return times(a, 1 / length(a));
    }
}
