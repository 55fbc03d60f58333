package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Columns of depths answer what the trace answers one by one, to the last bit. */
class TraceColumnsTest {

    private static final int ROWS = 300;

    private final double[] easting = new double[ROWS];
    private final double[] northing = new double[ROWS];
    private final double[] elevation = new double[ROWS];
    private final double[] inclination = new double[ROWS];
    private final double[] azimuth = new double[ROWS];
    private final byte[] status = new byte[ROWS];

    private static HoleTrace trace(Random random, DesurveyMethod method) {
        List<SurveyStation> stations = Traces.wandering(random, 15);
        double shift = random.nextBoolean() ? 0 : 12;
        List<SurveyStation> shifted = new ArrayList<>();
        stations.forEach(station -> shifted.add(new SurveyStation(station.depth() + shift, station.direction())));
        TraceSettings settings = TraceSettings.assumed()
                .withMethod(method)
                .withBeyondLast(random.nextBoolean() ? BeyondLast.STRAIGHT : BeyondLast.CONSTANT_CURVATURE);
        return HoleTrace.of(Traces.COLLAR, Survey.of(shifted, NorthReference.grid()), settings);
    }

    /** Depths anywhere, at stations and beside them, some not to be answered, in order or not. */
    private static double[] depths(Random random, HoleTrace trace) {
        double[] breaks = trace.breakDepths();
        double[] depths = new double[ROWS];
        for (int i = 0; i < ROWS; i++) {
            double corner = breaks[random.nextInt(breaks.length)];
            depths[i] = switch (random.nextInt(12)) {
                case 0 -> corner;
                case 1 -> Math.nextUp(corner);
                case 2 -> Math.nextDown(corner);
                case 3 -> random.nextBoolean() ? trace.reach() : 0;
                case 4 -> random.nextBoolean() ? Math.nextUp(trace.reach()) : -0.0;
                default -> -3 + (trace.reach() + 6) * random.nextDouble();
            };
        }
        if (random.nextBoolean()) {
            Arrays.sort(depths);
        }
        for (int i = 0; i < 10; i++) {
            depths[random.nextInt(ROWS)] = List.of(Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)
                    .get(random.nextInt(3));
        }
        return depths;
    }

    @Property
    void everyRowIsWhatTheTraceAnswers(@ForAll DesurveyMethod method, @ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = trace(random, method);
        double[] depths = depths(random, trace);

        int refused = TraceColumns.of(trace)
                .positionsAndDirections(depths, 0, ROWS, easting, northing, elevation, inclination, azimuth, status);

        int expected = 0;
        for (int i = 0; i < ROWS; i++) {
            if (!(depths[i] >= 0 && depths[i] <= trace.reach())) {
                expected++;
                assertEquals(TraceColumns.REFUSED, status[i]);
                assertTrue(Double.isNaN(easting[i]) && Double.isNaN(northing[i]) && Double.isNaN(elevation[i]));
                assertTrue(Double.isNaN(inclination[i]) && Double.isNaN(azimuth[i]));
                continue;
            }
            assertEquals(new Position(easting[i], northing[i], elevation[i]), trace.positionAt(depths[i]));
            assertEquals(new HoleDirection(inclination[i], azimuth[i]), trace.directionAt(depths[i]));
            assertEquals(
                    trace.isExtrapolated(depths[i]) ? TraceColumns.EXTRAPOLATED : TraceColumns.SURVEYED, status[i]);
        }
        assertEquals(expected, refused);
    }

    @Property(tries = 50)
    void placesAloneAndDirectionsAloneAreTheSame(@ForAll DesurveyMethod method, @ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = trace(random, method);
        double[] depths = depths(random, trace);
        TraceColumns columns = TraceColumns.of(trace);
        double[][] alone = new double[5][ROWS];
        byte[] ofPlaces = new byte[ROWS];
        byte[] ofDirections = new byte[ROWS];

        columns.positionsAndDirections(depths, 0, ROWS, easting, northing, elevation, inclination, azimuth, status);
        columns.positions(depths, 0, ROWS, alone[0], alone[1], alone[2], ofPlaces);
        columns.directions(depths, 0, ROWS, alone[3], alone[4], ofDirections);

        assertArrayEquals(new double[][] {easting, northing, elevation, inclination, azimuth}, alone);
        assertArrayEquals(status, ofPlaces);
        assertArrayEquals(status, ofDirections);
    }

    @Property(tries = 20)
    void longRunsOfRowsOnOneLegAreTheSame(@ForAll DesurveyMethod method, @ForAll long seed) {
        HoleTrace trace = Traces.of(Traces.drifting(new Random(seed), 3, 0.5), method);
        int count = 4000;
        double[] depths = new Random(seed).doubles(count, 0, 70).sorted().toArray();
        depths[0] = 0;
        double[][] out = new double[5][count];

        TraceColumns.of(trace)
                .positionsAndDirections(depths, 0, count, out[0], out[1], out[2], out[3], out[4], new byte[count]);

        for (int i = 0; i < count; i++) {
            assertEquals(new Position(out[0][i], out[1][i], out[2][i]), trace.positionAt(depths[i]));
            assertEquals(new HoleDirection(out[3][i], out[4][i]), trace.directionAt(depths[i]));
        }
    }

    @Test
    void onlyTheRowsThatAreAskedForAreWritten() {
        HoleTrace trace = Traces.of("0 30 40; 30 31 41");
        double[] depths = {1, 2, 3, 4, 5};
        double[] one = {-1, -1, -1, -1, -1};
        double[] two = one.clone();
        double[] three = one.clone();
        byte[] told = {9, 9, 9, 9, 9};

        assertEquals(0, TraceColumns.of(trace).positions(depths, 1, 3, one, two, three, told));

        assertArrayEquals(new byte[] {9, 0, 0, 0, 9}, told);
        assertEquals(-1, one[0]);
        assertEquals(trace.positionAt(2).easting(), one[1]);
        assertEquals(trace.positionAt(4).elevation(), three[3]);
        assertEquals(-1, three[4]);
    }

    @Test
    void oneArrayForTwoColumnsIsRefused() {
        TraceColumns columns = TraceColumns.of(Traces.of("0 30 40; 30 31 41"));
        double[] depths = {1, 2, 3};
        double[] kept = {7, 7, 7};

        assertThrows(
                IllegalArgumentException.class,
                () -> columns.directions(depths, 0, 3, depths, new double[3], new byte[3]));
        assertThrows(
                IllegalArgumentException.class,
                () -> columns.positions(depths, 0, 3, kept, new double[3], kept, new byte[3]));
        assertArrayEquals(new double[] {1, 2, 3}, depths);
        assertArrayEquals(new double[] {7, 7, 7}, kept);
    }

    @Test
    void aColumnThatIsTooShortIsRefusedBeforeAnythingIsWritten() {
        TraceColumns columns = TraceColumns.of(Traces.of("0 30 40; 30 31 41"));
        double[] depths = {1, 2, 3};
        double[] kept = {7, 7, 7};

        assertThrows(
                IndexOutOfBoundsException.class,
                () -> columns.positions(depths, 0, 3, kept, kept.clone(), new double[2], new byte[3]));
        assertThrows(
                IndexOutOfBoundsException.class,
                () -> columns.directions(depths, 1, 3, kept, kept.clone(), new byte[3]));
        assertThrows(
                IndexOutOfBoundsException.class,
                () -> columns.directions(depths, -1, 1, kept, kept.clone(), new byte[3]));
        assertArrayEquals(new double[] {7, 7, 7}, kept);
        assertEquals(0, columns.directions(depths, 3, 0, kept, kept.clone(), new byte[3]));
    }

    @Test
    void noRowNeedsMemory() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        double[] depths = new Random(1).doubles(100_000, 0, 400).toArray();
        double[][] out = new double[5][depths.length];
        byte[] told = new byte[depths.length];
        for (DesurveyMethod method : DesurveyMethod.values()) {
            TraceColumns columns = TraceColumns.of(Traces.of(Traces.drifting(new Random(3), 14, 1), method));
            long before = 0;
            for (int round = 0; round < 3; round++) {
                before = threads.getCurrentThreadAllocatedBytes();
                columns.positionsAndDirections(depths, 0, depths.length, out[0], out[1], out[2], out[3], out[4], told);
            }
            long allotted = threads.getCurrentThreadAllocatedBytes() - before;
            assertTrue(allotted < depths.length / 10, method + ": " + allotted + " bytes");
        }
    }

    @Property
    void theIndexFindsTheLastLegThatBeginsAtOrAbove(@ForAll long seed) {
        Random random = new Random(seed);
        // stations in clusters: thousands of them within a hair, and far apart
        double[] starts = new double[1 + random.nextInt(200)];
        double depth = 0;
        for (int i = 1; i < starts.length; i++) {
            starts[i] = depth;
            depth += random.nextInt(4) == 0 ? 0 : Math.pow(10, -9 + 12 * random.nextDouble());
        }
        LegIndex index = new LegIndex(starts);
        for (int i = 0; i < 300; i++) {
            double at = Math.max(
                    0,
                    switch (random.nextInt(4)) {
                        case 0 -> starts[random.nextInt(starts.length)];
                        case 1 -> Math.nextDown(starts[random.nextInt(starts.length)]);
                        case 2 -> Math.nextUp(starts[random.nextInt(starts.length)]);
                        default -> 1.1 * depth * random.nextDouble();
                    });
            int expected = starts.length - 1;
            while (starts[expected] > at) {
                expected--;
            }
            assertEquals(expected, index.at(at));
        }
    }
}
