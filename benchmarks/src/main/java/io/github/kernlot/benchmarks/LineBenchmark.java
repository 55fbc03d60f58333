package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.LineSimulation;
import io.github.kernlot.orientation.line.ReferenceLine;
import io.github.kernlot.orientation.line.SimulatedLine;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
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
 * What does it cost to reconcile the marks of a hole, and to ask for the line once for each mark?
 *
 * <p>The baseline is a forward-backward pass over 1,440 angles with every transition written out, a quarter of a degree as the
 * library's grid has or finer. Expected: the library's time and memory grow in proportion to the marks, and it is more than 20
 * times as fast as the baseline.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class LineBenchmark {

    private static final int BASELINE_ANGLES = 1440;

    /** A hole with marks 3 m apart, a join at each and a structure below each. */
    static final class Drilled {
        private static final HolePath PATH = HolePath.straight(HoleDirection.ofDip(-60, 90));

        private final List<Join> joins = new ArrayList<>();
        private final List<Double> structures = new ArrayList<>();
        private final SimulatedLine hole;

        Drilled(int marks) {
            SplittableRandom random = new SplittableRandom(marks);
            List<Double> depths = new ArrayList<>();
            for (int i = 1; i <= marks; i++) {
                depths.add(3 * i + random.nextDouble());
                double drawn = random.nextDouble();
                JoinFit fit = drawn < 0.01 ? JoinFit.BROKEN : drawn < 0.1 ? JoinFit.DOUBTFUL : JoinFit.LOCKED;
                joins.add(new Join(3 * i + 1.5, fit));
                structures.add(3 * i + 2 * random.nextDouble());
            }
            hole = new LineSimulation(
                            LineModel.assumed(), PATH, CoreDiameter.ofMillimetres(63.5), depths, joins, structures)
                    .run(marks);
        }
    }

    /** Holes for the library. */
    @State(Scope.Benchmark)
    public static class Hole {
        /** How many marks. */
        @Param({"10", "100", "1000", "10000"})
        public int marks;

        private Drilled drilled = new Drilled(0);

        /** Draws the hole. */
        @Setup
        public void drill() {
            drilled = new Drilled(marks);
        }
    }

    /** Holes for the baseline. */
    @State(Scope.Benchmark)
    public static class ShortHole {
        /** How many marks. */
        @Param({"10", "100"})
        public int marks;

        private Drilled drilled = new Drilled(0);

        /** Draws the hole. */
        @Setup
        public void drill() {
            drilled = new Drilled(marks);
        }
    }

    /** The library: all marks and joins judged, and the line with its sigma at each structure. */
    @Benchmark
    public void library(Hole hole, Blackhole sink) {
        Drilled drilled = hole.drilled;
        ReferenceLine line = LineModel.assumed().reconcile(Drilled.PATH, drilled.hole.marks(), drilled.joins);
        for (double depth : drilled.structures) {
            sink.consume(line.at(depth).map(posterior -> posterior.angle()));
        }
    }

    /** The baseline: the same answers. */
    @Benchmark
    public void bruteForce(ShortHole hole, Blackhole sink) {
        Drilled drilled = hole.drilled;
        DenseLine line = DenseLine.plain(
                BASELINE_ANGLES,
                LineModel.assumed(),
                Drilled.PATH,
                drilled.hole.marks(),
                drilled.joins,
                drilled.structures);
        sink.consume(line.answers());
        sink.consume(line.chances());
        sink.consume(line.slips());
    }
}
