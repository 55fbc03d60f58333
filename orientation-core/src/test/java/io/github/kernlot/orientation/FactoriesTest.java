package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.BetaConvention.Apex;
import io.github.kernlot.orientation.BetaConvention.Sense;
import io.github.kernlot.orientation.BetaConvention.View;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What each factory and method lets in and what it refuses, and with which words. */
class FactoriesTest {

    /**
     * One way in for an angle.
     *
     * @param enters takes the angle in and reads it back
     */
    private record Door(String factory, String name, double low, double high, DoubleUnaryOperator enters) {
        @Override
        public String toString() {
            return factory + ": " + name;
        }

        String refusal(double value) {
            return String.valueOf(assertThrows(
                            IllegalArgumentException.class, () -> enters.applyAsDouble(value), () -> this + " " + value)
                    .getMessage());
        }
    }

    private static Door turn(String factory, String name, DoubleUnaryOperator enters) {
        return new Door(factory, name, 0, 360, enters);
    }

    static Stream<Door> doors() {
        BetaConvention mirrored = new BetaConvention(Sense.ANTICLOCKWISE, View.DOWN_HOLE, Apex.DOWN_HOLE);
        return Stream.of(
                new Door("HoleDirection", "inclination", 0, 180, i -> new HoleDirection(i, 5).inclination()),
                new Door(
                        "ofInclination",
                        "inclination",
                        0,
                        180,
                        i -> HoleDirection.ofInclination(i, 5).inclination()),
                new Door("ofDip", "dip", -90, 90, d -> HoleDirection.ofDip(d, 5).dip()),
                new Door(
                        "ofPlunge",
                        "plunge",
                        -90,
                        90,
                        p -> HoleDirection.ofPlunge(p, 5).plunge()),
                turn("HoleDirection", "azimuth", a -> new HoleDirection(5, a).azimuth()),
                turn(
                        "ofInclination",
                        "azimuth",
                        a -> HoleDirection.ofInclination(5, a).azimuth()),
                turn("ofDip", "azimuth", a -> HoleDirection.ofDip(5, a).azimuth()),
                turn("ofPlunge", "azimuth", a -> HoleDirection.ofPlunge(5, a).azimuth()),
                new Door("PlaneOrientation", "dip", 0, 90, d -> new PlaneOrientation(d, 5).dip()),
                new Door(
                        "ofDipAndDirection",
                        "dip",
                        0,
                        90,
                        d -> PlaneOrientation.ofDipAndDirection(d, 5).dip()),
                new Door(
                        "ofStrikeRightHand",
                        "dip",
                        0,
                        90,
                        d -> PlaneOrientation.ofStrikeRightHand(5, d).dip()),
                new Door(
                        "ofStrikeLeftHand",
                        "dip",
                        0,
                        90,
                        d -> PlaneOrientation.ofStrikeLeftHand(5, d).dip()),
                turn("PlaneOrientation", "dip direction", d -> new PlaneOrientation(5, d).dipDirection()),
                turn(
                        "ofDipAndDirection",
                        "dip direction",
                        d -> PlaneOrientation.ofDipAndDirection(5, d).dipDirection()),
                turn(
                        "ofStrikeRightHand",
                        "strike",
                        s -> PlaneOrientation.ofStrikeRightHand(s, 5).strike()),
                turn(
                        "ofStrikeLeftHand",
                        "strike",
                        s -> (PlaneOrientation.ofStrikeLeftHand(s, 5).dipDirection() + 90) % 360),
                new Door("LineOrientation", "plunge", 0, 90, p -> new LineOrientation(p, 5).plunge()),
                new Door(
                        "ofPlungeAndTrend",
                        "plunge",
                        0,
                        90,
                        p -> LineOrientation.ofPlungeAndTrend(p, 5).plunge()),
                turn("LineOrientation", "trend", t -> new LineOrientation(5, t).trend()),
                turn(
                        "ofPlungeAndTrend",
                        "trend",
                        t -> LineOrientation.ofPlungeAndTrend(5, t).trend()),
                new Door("CorePlane", "alpha", 0, 90, a -> CorePlane.of(a, 5).alpha()),
                turn("CorePlane", "beta", b -> CorePlane.of(5, b).beta()),
                new Door(
                        "CoreLine",
                        "axis angle",
                        0,
                        90,
                        a -> CoreLine.ofAxisAngleAndDelta(a, 5).axisAngle()),
                turn(
                        "CoreLine",
                        "delta",
                        d -> CoreLine.ofAxisAngleAndDelta(5, d).delta()),
                turn("CorePlane.line", "gamma", g -> CorePlane.of(5, 5).line(g).gamma()),
                turn("LineInPlane", "gamma", g -> new LineInPlane(CorePlane.of(5, 5), g).gamma()),
                turn("toHouse", "beta", mirrored::toHouse),
                turn("fromHouse", "beta", mirrored::fromHouse),
                turn("WallReference", "azimuth", a -> {
                    CoreFrame frame = CoreFrame.at(HoleDirection.ofInclination(0, 0), WallReference.azimuth(a), 0);
                    return frame.lineAngle(WallReference.north());
                }));
    }

    @ParameterizedTest
    @MethodSource("doors")
    void whatIsNotANumberIsRefusedByName(Door door) {
        for (double value : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertEquals(sentence(door, String.valueOf(value)), door.refusal(value));
        }
    }

    @ParameterizedTest
    @MethodSource("doors")
    void whatIsOutOfRangeIsRefusedFromTheFirstUlpOn(Door door) {
        for (double value : new double[] {Math.nextDown(door.low()), Math.nextUp(door.high())}) {
            assertEquals(sentence(door, Double.toString(value)), door.refusal(value));
        }
        assertEquals(sentence(door, "-4321"), door.refusal(-4321));
        assertEquals(sentence(door, "4321.5"), door.refusal(4321.5));
        assertEquals(sentence(door, "1.0E300"), door.refusal(1e300));
    }

    private static String sentence(Door door, String value) {
        return String.format(
                "%s is %s degrees; expected within [%.0f, %.0f]", door.name(), value, door.low(), door.high());
    }

    @ParameterizedTest
    @MethodSource("doors")
    void bothEndsOfARangeAreLetInAndAFullTurnIsNought(Door door) {
        double high = door.high() == 360 ? 0 : door.high();
        assertEquals(door.low(), door.enters().applyAsDouble(door.low()));
        assertEquals(high, door.enters().applyAsDouble(door.high()), 1e-13);
        for (double inside : new double[] {0, 1e-300, 30, 45, Math.nextDown(door.high())}) {
            double found = door.enters().applyAsDouble(inside);
            double error = door.high() == 360 ? sameEitherWay(found - inside, found + inside) : found - inside;
            assertEquals(0, error, 1e-13);
            assertTrue(found < 360);
        }
    }

    /** A mirrored beta comes back as its opposite. */
    private static double sameEitherWay(double one, double other) {
        return Math.min(Math.abs(Math.IEEEremainder(one, 360)), Math.abs(Math.IEEEremainder(other, 360)));
    }

    @Test
    void whatMayBeAnyNumberMustBeFinite() {
        CoreFrame frame = CoreFrame.at(HoleDirection.ofDip(-60, 90), 0);
        List<DoubleFunction<Object>> doors = List.of(
                a -> CoreFrame.at(HoleDirection.ofDip(-60, 90), a),
                a -> CoreFrame.at(HoleDirection.ofDip(-60, 90), WallReference.north(), a),
                frame::turned,
                a -> HoleDirection.ofDip(-60, 90).withAzimuthTurned(a),
                a -> PlaneOrientation.ofDipAndDirection(60, 90).withAzimuthTurned(a),
                a -> LineOrientation.ofPlungeAndTrend(60, 90).withAzimuthTurned(a),
                CoreDiameter.ofMillimetres(63.5)::toMillimetres);
        for (DoubleFunction<Object> door : doors) {
            assertEquals("angle is NaN degrees; expected a finite number", refusal(() -> door.apply(Double.NaN)));
            assertEquals(
                    "angle is -Infinity degrees; expected a finite number",
                    refusal(() -> door.apply(Double.NEGATIVE_INFINITY)));
            door.apply(-1e9);
            door.apply(1e300);
        }
    }

    @Test
    void aVectorMustHaveADirection() {
        String name = "the null vector has no direction";
        assertEquals(name, refusal(() -> HoleDirection.ofVector(0, -0.0, 0)));
        assertEquals(name, refusal(() -> PlaneOrientation.ofNormal(0, 0, 0)));
        assertEquals(name, refusal(() -> LineOrientation.ofVector(0, 0, 0)));
        assertEquals(
                "north component is NaN; expected a finite number",
                refusal(() -> HoleDirection.ofVector(Double.NaN, 0, 1)));
        assertEquals(
                "east component is Infinity; expected a finite number",
                refusal(() -> PlaneOrientation.ofNormal(0, Double.POSITIVE_INFINITY, 1)));
        assertEquals(
                "down component is -Infinity; expected a finite number",
                refusal(() -> LineOrientation.ofVector(0, 0, Double.NEGATIVE_INFINITY)));
    }

    @Test
    void everyLengthOfAVectorIsWelcome() {
        for (double length : new double[] {Double.MIN_VALUE, 1e-310, 1e-160, 1, 1e160, Double.MAX_VALUE}) {
            assertEquals(45, HoleDirection.ofVector(length, 0, length).inclination(), 1e-13);
            assertEquals(45, PlaneOrientation.ofNormal(0, -length, length).dip(), 1e-13);
            assertEquals(45, LineOrientation.ofVector(0, length, -length).plunge(), 1e-13);
        }
    }

    private static String refusal(Runnable asked) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, asked::run).getMessage());
    }
}
