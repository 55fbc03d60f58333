package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.TraceColumns;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * What does a trace cost for each depth in bulk, against a binary search, the textbook's formula and a new object for each answer?
 *
 * <p>Expected of sorted depths: places five times as fast as the baseline, places with directions three times, no memory for a row.
 * {@link TraceStudy} tells how far the two are apart.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class TraceBenchmark {

    static final int ROWS = 1 << 16;
    static final Position COLLAR = Position.ofEastingNorthingElevation(5000, 7000, 300);

    /** Stations of the hole, 30 m apart. */
    @Param({"10", "100", "1000"})
    public int stations;

    /** In which order the depths come. */
    @Param({"sorted", "unsorted"})
    public String order = "sorted";

    final double[] depths = new double[ROWS];
    final double[] easting = new double[ROWS];
    final double[] northing = new double[ROWS];
    final double[] elevation = new double[ROWS];
    final double[] inclination = new double[ROWS];
    final double[] azimuth = new double[ROWS];
    private final byte[] status = new byte[ROWS];
    PlainTrace plain = new PlainTrace(COLLAR, hole(2));
    HoleTrace trace = HoleTrace.minimumCurvature(COLLAR, survey(2));
    private TraceColumns columns = TraceColumns.of(trace);

    /** A hole that drifts by a few degrees from station to station, and depths all along it. */
    @Setup(Level.Trial)
    public void drill() {
        plain = new PlainTrace(COLLAR, hole(stations));
        trace = HoleTrace.minimumCurvature(COLLAR, survey(stations));
        columns = TraceColumns.of(trace);
        SplittableRandom random = new SplittableRandom(2);
        Arrays.setAll(depths, i -> random.nextDouble(30.0 * (stations - 1)));
        if (order.equals("sorted")) {
            Arrays.sort(depths);
        }
    }

    static Survey survey(int count) {
        return Survey.of(hole(count), NorthReference.grid());
    }

    static List<SurveyStation> hole(int count) {
        SplittableRandom random = new SplittableRandom(1);
        List<SurveyStation> stations = new ArrayList<>();
        double inclination = 30;
        double azimuth = 355;
        for (int i = 0; i < count; i++) {
            stations.add(SurveyStation.ofInclination(30.0 * i, inclination, azimuth));
            inclination = Math.min(80, Math.max(5, inclination + random.nextDouble(-1.5, 1.5)));
            azimuth = (azimuth + random.nextDouble(-2, 2) + 360) % 360;
        }
        return stations;
    }

    /** The baseline, places. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public void plainPositions(Blackhole hole) {
        for (double depth : depths) {
            hole.consume(plain.positionAt(depth));
        }
    }

    /** The baseline, places with directions. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public void plainPositionsAndDirections(Blackhole hole) {
        for (double depth : depths) {
            hole.consume(plain.answerAt(depth));
        }
    }

    /** The library in bulk, places. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public int positions() {
        return columns.positions(depths, 0, ROWS, easting, northing, elevation, status);
    }

    /** The library in bulk, places with directions. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public int positionsAndDirections() {
        return columns.positionsAndDirections(
                depths, 0, ROWS, easting, northing, elevation, inclination, azimuth, status);
    }

    /** The library depth by depth, places with directions. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public void oneByOne(Blackhole hole) {
        for (double depth : depths) {
            hole.consume(trace.positionAt(depth));
            hole.consume(trace.directionAt(depth));
        }
    }
}
