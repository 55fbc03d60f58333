package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.WallReference;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** The scribe and the carried frame against parallel transport by many small rotations (Hipparchus 4.0.3). */
class ScribeTurnProperties {

    /** One wall direction carried from depth to depth, step by step along the directions that the trace answers. */
    private static final class Transport {
        private final HoleTrace trace;
        private double depth;
        private Vector3D tangent;
        private Vector3D scribe;

        /** The scribe begins at the low side. */
        Transport(HoleTrace trace, double depth) {
            this.trace = trace;
            this.depth = depth;
            this.tangent = Traces.vector(trace.directionAt(depth));
            this.scribe = Vector3D.PLUS_K
                    .subtract(tangent.scalarMultiply(tangent.getZ()))
                    .normalize();
        }

        /** Carries the scribe on and gives its angle from the low side, degrees in (-180, 180]. */
        double to(double end, int steps) {
            double begin = depth;
            for (int i = 1; i <= steps; i++) {
                depth = begin + (end - begin) * i / steps;
                Vector3D next = Traces.vector(trace.directionAt(depth));
                if (next.distance(tangent) > 0) {
                    scribe = new Rotation(tangent, next).applyTo(scribe);
                    tangent = next;
                }
            }
            return angle();
        }

        private double angle() {
            Vector3D low = Vector3D.PLUS_K.subtract(tangent.scalarMultiply(tangent.getZ()));
            return Math.toDegrees(Math.atan2(
                    Vector3D.dotProduct(tangent.crossProduct(low), scribe), Vector3D.dotProduct(low, scribe)));
        }
    }

    @Property(tries = 60)
    void theTurnAndTheCarriedFrameAreThoseOfParallelTransport(@ForAll long seed) {
        HoleTrace trace = Traces.of(Traces.drifting(new Random(seed), 15, 0.05));
        double last = Traces.lastDepth(trace.survey().stations());
        Transport transport = new Transport(trace, 0);
        CoreFrame scribed = CoreFrame.at(trace.directionAt(0), 0);
        double inCarried = scribed.turnFrom(trace.carriedFrameAt(0));
        for (double depth = 7; depth < last; depth += 7) {
            double angle = transport.to(depth, 70);

            assertEquals(0, Traces.apart(angle, trace.scribeTurn(0, depth)), 1e-8);
            double carried = trace.carriedFrameAt(depth).turned(inCarried).lineAngle(WallReference.lowSide());
            assertEquals(0, Traces.apart(angle, carried), 1e-8);
        }
    }

    @Property(tries = 60)
    void theTurnIsNotWrapped(@ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = Traces.of(spiral(random, 2 + 30 * random.nextDouble()));
        double last = Traces.lastDepth(trace.survey().stations());
        Transport transport = new Transport(trace, 0);
        double total = 0;
        double before = 0;
        for (double depth = 5; depth <= last; depth += 5) {
            double angle = transport.to(depth, 5);
            total += Math.IEEEremainder(angle - before, 360);
            before = angle;

            assertEquals(total, trace.scribeTurn(0, depth), 1e-8);
        }
    }

    /** A hole whose azimuth goes round and round. */
    private static List<SurveyStation> spiral(Random random, double inclination) {
        List<SurveyStation> stations = new ArrayList<>();
        double azimuth = 360 * random.nextDouble();
        double sense = random.nextBoolean() ? 1 : -1;
        for (int i = 0; i < 40; i++) {
            stations.add(SurveyStation.ofInclination(
                    15.0 * i, inclination + random.nextDouble(), (azimuth % 360 + 360) % 360));
            azimuth += sense * 40 * random.nextDouble();
        }
        return stations;
    }

    @Property
    void theTurnIsAdditiveAndTurnsBackOnTheWayBack(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.wandering(random, 20);
        HoleTrace trace = Traces.of(stations);
        double[] depths = random.doubles(3, 0, Traces.lastDepth(stations)).toArray();

        double direct = trace.scribeTurn(depths[0], depths[2]);
        double inTwo = trace.scribeTurn(depths[0], depths[1]) + trace.scribeTurn(depths[1], depths[2]);

        assertEquals(direct, inTwo, 1e-9);
        assertEquals(-direct, trace.scribeTurn(depths[2], depths[0]), 0);
        assertEquals(0, trace.scribeTurn(depths[1], depths[1]), 0);
    }

    @Property
    void aHoleThatKeepsItsAzimuthDoesNotTurnTheScribe(@ForAll long seed) {
        Random random = new Random(seed);
        double azimuth = 360 * random.nextDouble();
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            stations.add(SurveyStation.ofInclination(20.0 * i, 1 + 178 * random.nextDouble(), azimuth));
        }
        HoleTrace trace = Traces.of(stations);

        assertEquals(0, trace.scribeTurn(180 * random.nextDouble(), 180 * random.nextDouble()), 1e-10);
    }

    @Property
    void moduloAFullTurnTheTurnIsTheChangeOfALineAngleInTheCarriedFrame(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.wandering(random, 20);
        HoleTrace trace = Traces.of(stations);
        double from = Traces.lastDepth(stations) * random.nextDouble();
        double to = Traces.lastDepth(stations) * random.nextDouble();

        double change = trace.carriedFrameAt(to).lineAngle()
                - trace.carriedFrameAt(from).lineAngle();

        double sharpness = Math.min(sharpness(trace.directionAt(from)), sharpness(trace.directionAt(to)));
        assertEquals(0, Traces.apart(change, trace.scribeTurn(from, to)), 1e-9 / sharpness);
    }

    private static double sharpness(HoleDirection direction) {
        return Math.sin(Math.toRadians(direction.inclination()));
    }

    @Property
    void overOneArcTheTurnIsTheDifferenceOfTheToolfacesAtItsEnds(@ForAll long seed) {
        Random random = new Random(seed);
        HoleDirection from = HoleDirection.ofInclination(1 + 178 * random.nextDouble(), 360 * random.nextDouble());
        HoleDirection to = HoleDirection.ofInclination(1 + 178 * random.nextDouble(), 360 * random.nextDouble());
        Assume.that(from.angleTo(to) < 179);
        HoleTrace trace = Traces.of(List.of(new SurveyStation(0, from), new SurveyStation(30, to)));

        // toolface from the high side at both ends of an arc: textbook spherical trigonometry, from memory
        double i1 = Math.toRadians(from.inclination());
        double i2 = Math.toRadians(to.inclination());
        double turn = Math.toRadians(to.azimuth() - from.azimuth());
        double start = Math.atan2(
                Math.sin(i2) * Math.sin(turn),
                Math.cos(i1) * Math.sin(i2) * Math.cos(turn) - Math.sin(i1) * Math.cos(i2));
        double end = Math.atan2(
                Math.sin(i1) * Math.sin(turn),
                Math.cos(i1) * Math.sin(i2) - Math.sin(i1) * Math.cos(i2) * Math.cos(turn));
        assertEquals(0, Traces.apart(Math.toDegrees(end - start), trace.scribeTurn(0, 30)), 1e-9);
    }
}
