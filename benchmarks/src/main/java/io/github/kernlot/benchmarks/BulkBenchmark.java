package io.github.kernlot.benchmarks;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.bulk.FrameColumns;
import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.ejml.data.DMatrix3;
import org.ejml.data.DMatrix3x3;
import org.ejml.dense.fixed.CommonOps_DDF3;
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

/**
 * What does a row cost when columns of alpha and beta, with a hole and a line angle for each, become dip and dip direction: in columns,
 * by the scalar values, by the functions of Math as one would write it down, by rotations of Commons Math, by 3 x 3 matrices of EJML?
 *
 * <p>Expected: columns at least four times as fast as rotations and twice as fast as Math, without memory for a row; scalar values no
 * slower than Math. {@link #memory} reads and writes the same columns and does nothing else. {@link BulkStudy} tells how far the routes are
 * apart.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class BulkBenchmark {

    static final int ROWS = 1 << 16;

    final double[] dip = new double[ROWS];
    final double[] dipDirection = new double[ROWS];
    private final double[] inclination = new double[ROWS];
    private final double[] azimuth = new double[ROWS];
    private final double[] lineAngle = new double[ROWS];
    private final double[] alpha = new double[ROWS];
    private final double[] beta = new double[ROWS];
    private final double[] groundDip = new double[ROWS];
    private final double[] groundDirection = new double[ROWS];
    private final double[] alphaFound = new double[ROWS];
    private final double[] betaFound = new double[ROWS];
    private final byte[] status = new byte[ROWS];
    private final FrameColumns frames = FrameColumns.ofInclination(inclination, azimuth, lineAngle);
    private final FrameColumns frame = FrameColumns.of(CoreFrame.at(HoleDirection.ofInclination(30, 40), 50));

    /** Holes from steep to flat, and planes of every attitude. */
    @Setup
    public void drill() {
        SplittableRandom random = new SplittableRandom(1);
        Arrays.setAll(inclination, i -> random.nextDouble(1, 90));
        Arrays.setAll(azimuth, i -> random.nextDouble(360));
        Arrays.setAll(lineAngle, i -> random.nextDouble(360));
        Arrays.setAll(alpha, i -> random.nextDouble(1, 89));
        Arrays.setAll(beta, i -> random.nextDouble(360));
        Arrays.setAll(groundDip, i -> random.nextDouble(1, 89));
        Arrays.setAll(groundDirection, i -> random.nextDouble(360));
    }

    /** The library in columns, a frame for each row. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public int columns() {
        return frames.planesToGeographic(alpha, beta, 0, ROWS, dip, dipDirection, status);
    }

    /** The library in columns, one frame for all rows: a shorter task than the others. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public int columnsOfOneFrame() {
        return frame.planesToGeographic(alpha, beta, 0, ROWS, dip, dipDirection, status);
    }

    /** The library in columns, from the ground to core. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public int columnsToCore() {
        return frames.planesToCore(groundDip, groundDirection, 0, ROWS, alphaFound, betaFound, status);
    }

    /** The library row by row. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public double[] scalar() {
        for (int i = 0; i < ROWS; i++) {
            CoreFrame ofRow = CoreFrame.at(HoleDirection.ofInclination(inclination[i], azimuth[i]), lineAngle[i]);
            PlaneOrientation plane = ofRow.toGeographic(CorePlane.of(alpha[i], beta[i]));
            dip[i] = plane.dip();
            dipDirection[i] = plane.dipDirection();
        }
        return dip;
    }

    /** The functions of Math, n = sin(alpha) t - cos(alpha) u(beta + x) written down on doubles; nothing is checked. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public double[] math() {
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
            name(i, north, east, sinAlpha * cosI - high * sinI);
        }
        return dip;
    }

    /** Rotations of Commons Math 3.6.1, which turn core from a vertical hole into place; nothing is checked. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public double[] rotations() {
        for (int i = 0; i < ROWS; i++) {
            Rotation tilt = about(Vector3D.PLUS_J, inclination[i]);
            Rotation swing = about(Vector3D.PLUS_K, azimuth[i]);
            Rotation turn = about(Vector3D.PLUS_K, lineAngle[i] + beta[i]);
            double across = Math.cos(Math.toRadians(alpha[i]));
            Vector3D standing = new Vector3D(across, 0, Math.sin(Math.toRadians(alpha[i])));
            Vector3D normal = swing.applyTo(tilt.applyTo(turn.applyTo(standing)));
            name(i, normal.getX(), normal.getY(), normal.getZ());
        }
        return dip;
    }

    private static Rotation about(Vector3D axis, double degrees) {
        return new Rotation(axis, Math.toRadians(degrees), RotationConvention.VECTOR_OPERATOR);
    }

    /** Matrices of EJML 0.46.1, the same three rotations, in place; nothing is checked. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public double[] matrices() {
        DMatrix3x3 tilt = new DMatrix3x3();
        DMatrix3x3 swing = new DMatrix3x3();
        DMatrix3x3 turn = new DMatrix3x3();
        DMatrix3x3 two = new DMatrix3x3();
        DMatrix3x3 all = new DMatrix3x3();
        DMatrix3 standing = new DMatrix3();
        DMatrix3 normal = new DMatrix3();
        for (int i = 0; i < ROWS; i++) {
            double sinI = Math.sin(Math.toRadians(inclination[i]));
            double cosI = Math.cos(Math.toRadians(inclination[i]));
            tilt.setTo(cosI, 0, sinI, 0, 1, 0, -sinI, 0, cosI);
            aboutDown(azimuth[i], swing);
            aboutDown(lineAngle[i] + beta[i], turn);
            CommonOps_DDF3.mult(swing, tilt, two);
            CommonOps_DDF3.mult(two, turn, all);
            standing.setTo(Math.cos(Math.toRadians(alpha[i])), 0, Math.sin(Math.toRadians(alpha[i])));
            CommonOps_DDF3.mult(all, standing, normal);
            name(i, normal.a1, normal.a2, normal.a3);
        }
        return dip;
    }

    private static void aboutDown(double degrees, DMatrix3x3 matrix) {
        double sin = Math.sin(Math.toRadians(degrees));
        double cos = Math.cos(Math.toRadians(degrees));
        matrix.setTo(cos, -sin, 0, sin, cos, 0, 0, 0, 1);
    }

    private void name(int i, double north, double east, double down) {
        double up = down > 0 ? -1 : 1;
        dip[i] = Math.toDegrees(Math.atan2(Math.sqrt(north * north + east * east), Math.abs(down)));
        double direction = Math.toDegrees(Math.atan2(up * east, up * north));
        dipDirection[i] = direction < 0 ? direction + 360 : direction;
    }

    /** The same columns read and written, and nothing done: how far from the memory's pace the rest is. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public byte[] memory() {
        for (int i = 0; i < ROWS; i++) {
            dip[i] = inclination[i] + azimuth[i] + lineAngle[i];
            dipDirection[i] = alpha[i] + beta[i];
        }
        Arrays.fill(status, (byte) 0);
        return status;
    }
}
