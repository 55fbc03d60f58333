package io.github.kernlot.orientation.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CoreLine;
import io.github.kernlot.orientation.DirectedCoreLine;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against vectors by Hipparchus with x along the reference line and z down-hole. */
class LinesThroughWallTest {

    private static final CoreDiameter CORE = CoreDiameter.N;
    private static final WallSigmas SIGMAS = WallSigmas.of(0.5, 1);

    private static Vector3D place(WallPoint point) {
        double angle = Math.toRadians(point.angle());
        double radius = CORE.millimetres() / 2;
        return new Vector3D(radius * Math.cos(angle), radius * Math.sin(angle), 1000 * point.depth());
    }

    private static Vector3D direction(double axisAngle, double delta) {
        double angle = Math.toRadians(axisAngle);
        double round = Math.toRadians(delta);
        return new Vector3D(Math.sin(angle) * Math.cos(round), Math.sin(angle) * Math.sin(round), Math.cos(angle));
    }

    @Property(tries = 300)
    void theArrowIsTheDifferenceOfTheEnds(
            @ForAll @DoubleRange(max = 360) double one,
            @ForAll @DoubleRange(max = 360) double other,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double rise) {
        WallPoint first = WallPoint.of(one, 100);
        WallPoint second = WallPoint.of(other, 100 + rise);
        Assume.that(!first.equals(second));
        Vector3D expected = place(second).subtract(place(first));
        DirectedCoreLine arrow = CoreLineEstimate.arrowThroughWall(first, second, CORE);
        assertEquals(0, Vector3D.angle(expected, direction(arrow.axisAngle(), arrow.delta())), 1e-8);
        DirectedCoreLine back = CoreLineEstimate.arrowThroughWall(second, first, CORE);
        assertEquals(Math.PI, Vector3D.angle(expected, direction(back.axisAngle(), back.delta())), 1e-8);
        CoreLine line =
                CoreLineEstimate.throughWall(first, second, CORE, SIGMAS).line();
        double apart = Vector3D.angle(expected, direction(line.axisAngle(), line.delta()));
        assertEquals(0, Math.min(apart, Math.PI - apart), 1e-8);
    }

    @ParameterizedTest
    @CsvSource({
        "90, 5, 270, 5, 90, 270",
        "270, 5, 90, 5, 90, 90",
        "40, 5, 40, 6, 0, 0",
        "40, 6, 40, 5, 180, 0",
        "0, 5, 180, 5.0476, 45, 180",
        "0, 5, 180, 4.9524, 135, 180"
    })
    void anArrowByHand(double one, double from, double other, double to, double axisAngle, double delta) {
        DirectedCoreLine arrow =
                CoreLineEstimate.arrowThroughWall(WallPoint.of(one, from), WallPoint.of(other, to), CORE);
        assertEquals(axisAngle, arrow.axisAngle(), 1e-9);
        assertEquals(delta, arrow.delta(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"10, 5, 190, 5.03", "0, 5, 120, 5.1", "300, 5, 40, 5", "70, 5, 70, 5.2", "70, 5, 95, 4.99"})
    void theSigmasAreWhatDrawnEndsScatter(double one, double from, double other, double to) {
        WallPoint first = WallPoint.of(one, from);
        WallPoint second = WallPoint.of(other, to);
        CoreLineEstimate estimate = CoreLineEstimate.throughWall(first, second, CORE, SIGMAS);
        CoreLine line = estimate.line();
        Vector3D truth = direction(line.axisAngle(), line.delta());
        Vector3D withAxis = direction(line.axisAngle() + 90, line.delta());
        Vector3D round = direction(90, line.delta() + 90);
        Random random = new Random(2);
        int draws = 20_000;
        double axis = 0;
        double across = 0;
        double both = 0;
        for (int i = 0; i < draws; i++) {
            List<WallPoint> ends = Traces.disturbed(List.of(first, second), SIGMAS, random);
            Vector3D drawn = place(ends.get(1)).subtract(place(ends.get(0))).normalize();
            double side = Math.signum(drawn.dotProduct(truth));
            double byAxis = side * Math.toDegrees(drawn.dotProduct(withAxis));
            double byRound = side * Math.toDegrees(drawn.dotProduct(round));
            axis += byAxis * byAxis / draws;
            across += byRound * byRound / draws;
            both += byAxis * byRound / draws;
        }
        assertEquals(Math.sqrt(axis), estimate.axisSigma(), 0.03 * estimate.axisSigma());
        assertEquals(Math.sqrt(across), estimate.roundSigma(), 0.03 * estimate.roundSigma());
        assertEquals(
                both, estimate.correlation() * estimate.axisSigma() * estimate.roundSigma(), 0.03 * (axis + across));
    }

    @Test
    void deltaHasNoSigmaAlongTheAxis() {
        CoreLineEstimate along = CoreLineEstimate.throughWall(WallPoint.of(70, 5), WallPoint.of(70, 5.2), CORE, SIGMAS);
        assertEquals(0, along.line().axisAngle());
        assertTrue(along.deltaSigma().isEmpty());
        CoreLineEstimate oblique = CoreLineEstimate.ofAxisAngleAndDelta(CoreLine.ofAxisAngleAndDelta(30, 5), 2, 4);
        assertEquals(4, oblique.deltaSigma().orElseThrow(), 1e-9);
        assertEquals(
                "axis angle 30.0, delta 005.0, sigma 2.0 in axis angle and 2.0 round the core", oblique.toString());
        // told farther than two sigmas from the axis
        assertTrue(CoreLineEstimate.ofAxisAngleAndDelta(CoreLine.ofAxisAngleAndDelta(4.1, 5), 2, 4)
                .deltaSigma()
                .isPresent());
        assertTrue(CoreLineEstimate.ofAxisAngleAndDelta(CoreLine.ofAxisAngleAndDelta(3.9, 5), 2, 4)
                .deltaSigma()
                .isEmpty());
    }

    @Test
    void badReadingsAreRefused() {
        WallPoint end = WallPoint.of(70, 5);
        assertEquals(
                "both ends of the line lie at 070.0 at 5.0000 m; expected two places on the wall",
                assertThrows(IllegalArgumentException.class, () -> CoreLineEstimate.throughWall(end, end, CORE, SIGMAS))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> CoreLineEstimate.arrowThroughWall(end, end, CORE));
        CoreLine line = CoreLine.ofAxisAngleAndDelta(30, 5);
        assertThrows(IllegalArgumentException.class, () -> new CoreLineEstimate(line, -1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new CoreLineEstimate(line, 1, Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new CoreLineEstimate(line, 1, 1, 1.1));
    }
}
