package io.github.kernlot.benchmarks;

import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.uncertainty.Covariance;
import io.github.kernlot.survey.uncertainty.SurveyErrorModel;
import io.github.kernlot.survey.uncertainty.SurveyErrorSetup;
import io.github.kernlot.survey.uncertainty.TieIn;
import io.github.kernlot.survey.uncertainty.TraceUncertainty;
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
import org.openjdk.jmh.infra.Blackhole;

/**
 * What does the covariance of place cost at as many depths as a hole has stations, with twelve errors of which two are random?
 *
 * <p>The baseline takes differences of traces that are built anew for every draw of every error. Expected: at least 50 times the
 * library's time at 1,000 stations, growing with the square of their number where the library's grows with the number. That both
 * agree is a test beside ({@code DifferenceCovarianceTest}).
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 3)
public class CovarianceBenchmark {

    @Param({"100", "1000"})
    private int stations;

    private HoleTrace trace = SurveyedHole.of(2);
    private final SurveyErrorModel model = SurveyedHole.model();
    private double[] depths = {};

    /** A hole with a station every 10 m. */
    @Setup
    public void survey() {
        trace = SurveyedHole.of(stations);
        depths = SurveyedHole.depths(stations, stations);
    }

    /** The library. */
    @Benchmark
    public void derivatives(Blackhole hole) {
        SurveyErrorSetup setup = SurveyErrorSetup.of(model, TieIn.MEASURED).with(SurveyedHole.EARTH);
        TraceUncertainty uncertainty = TraceUncertainty.of(trace, setup);
        for (double depth : depths) {
            Covariance place = uncertainty.at(depth).place();
            hole.consume(place);
        }
    }

    /** The baseline. */
    @Benchmark
    public void differences(Blackhole hole) {
        hole.consume(new DifferenceCovariance(trace, model, SurveyedHole.EARTH).at(depths));
    }
}
