package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/**
 * What do typed, checked values cost over bare arithmetic, when alpha and beta become dip and dip direction?
 *
 * <p>The baseline does the same sum on doubles, without a check, without exact reduction of degrees and without an
 * object. Expected: no slower than the baseline.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FrameBenchmark {
    private static final int ROWS = 1024;

    private final double[] inclination = new double[ROWS];
    private final double[] azimuth = new double[ROWS];
    private final double[] lineAngle = new double[ROWS];
    private final double[] alpha = new double[ROWS];
    private final double[] beta = new double[ROWS];

    /** Holes from steep to flat, and planes of every attitude. */
    @Setup
    public void drill() {
        SplittableRandom random = new SplittableRandom(1);
        Arrays.setAll(inclination, i -> random.nextDouble(1, 90));
        Arrays.setAll(azimuth, i -> random.nextDouble(360));
        Arrays.setAll(lineAngle, i -> random.nextDouble(360));
        Arrays.setAll(alpha, i -> random.nextDouble(1, 89));
        Arrays.setAll(beta, i -> random.nextDouble(360));
    }

    /** The library. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public void frame(Blackhole hole) {
        for (int i = 0; i < ROWS; i++) {
            CoreFrame frame = CoreFrame.at(HoleDirection.ofInclination(inclination[i], azimuth[i]), lineAngle[i]);
            PlaneOrientation plane = frame.toGeographic(CorePlane.of(alpha[i], beta[i]));
            hole.consume(plane.dip());
            hole.consume(plane.dipDirection());
        }
    }

    /** The baseline: n = sin(alpha) t - cos(alpha) u(beta + x), docs section on core angles. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public void bareArithmetic(Blackhole hole) {
        for (int i = 0; i < ROWS; i++) {
            double sinI = Math.sin(Math.toRadians(inclination[i]));
            double cosI = Math.cos(Math.toRadians(inclination[i]));
            double sinA = Math.sin(Math.toRadians(azimuth[i]));
            double cosA = Math.cos(Math.toRadians(azimuth[i]));
            double sinAlpha = Math.sin(Math.toRadians(alpha[i]));
            double cosAlpha = Math.cos(Math.toRadians(alpha[i]));
            double high = cosAlpha * Math.cos(Math.toRadians(beta[i] + lineAngle[i]));
            double right = cosAlpha * Math.sin(Math.toRadians(beta[i] + lineAngle[i]));
            double north = sinAlpha * sinI * cosA + high * cosI * cosA - right * sinA;
            double east = sinAlpha * sinI * sinA + high * cosI * sinA + right * cosA;
            double down = sinAlpha * cosI - high * sinI;
            double up = down > 0 ? -1 : 1;
            hole.consume(Math.toDegrees(Math.atan2(Math.hypot(north, east), Math.abs(down))));
            double direction = Math.toDegrees(Math.atan2(up * east, up * north));
            hole.consume(direction < 0 ? direction + 360 : direction);
        }
    }
}
