package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.DesurveyMethod;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.TraceColumns;
import io.github.kernlot.survey.TraceSettings;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What does building a trace cost, and does it grow with the number of stations? Expected: ten times for ten times as many. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class TraceBuildBenchmark {

    /** Stations of the hole. */
    @Param({"10", "100", "1000"})
    public int stations;

    /** How it is desurveyed. */
    @Param({"MINIMUM_CURVATURE", "RADIUS_OF_CURVATURE"})
    public DesurveyMethod method = DesurveyMethod.MINIMUM_CURVATURE;

    private Survey survey = TraceBenchmark.survey(2);

    /** The hole of the other benchmark. */
    @Setup
    public void drill() {
        survey = TraceBenchmark.survey(stations);
    }

    /** The trace with its columns. */
    @Benchmark
    public TraceColumns build() {
        Position collar = Position.ofEastingNorthingElevation(5000, 7000, 300);
        return TraceColumns.of(
                HoleTrace.of(collar, survey, TraceSettings.assumed().withMethod(method)));
    }
}
