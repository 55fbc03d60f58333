package io.github.kernlot.orientation.bulk;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CoreLine;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.GammaConvention;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.LineInPlane;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import java.util.SplittableRandom;

/** Columns of holes and measurements, as often at an edge or beside one as in between, and what the scalar methods make of them. */
final class Rows {

    private static final double[] BESIDE = {
        0, 0, 0, 1e-15, -1e-15, 1e-13, -1e-13, 6e-13, -6e-13, 1e-9, -1e-9, 1e-5, -1e-5
    };
    static final GammaConvention GAMMA = new GammaConvention(
            BetaConvention.Sense.CLOCKWISE, BetaConvention.View.UP_HOLE, GammaConvention.Zero.SHORT_AXIS_CLOCKWISE);
    private static final BetaConvention[] CONVENTIONS = conventions();

    final int length;
    final double[] inclination;
    final double[] azimuth;
    final double[] lineAngle;
    final double[] first;
    final double[] second;
    final double[] third;
    final BetaConvention[] convention;

    Rows(int length) {
        this.length = length;
        inclination = new double[length];
        azimuth = new double[length];
        lineAngle = new double[length];
        first = new double[length];
        second = new double[length];
        third = new double[length];
        convention = new BetaConvention[length];
    }

    static Rows random(long seed, int length) {
        SplittableRandom random = new SplittableRandom(seed);
        Rows rows = new Rows(length);
        for (int i = 0; i < length; i++) {
            rows.inclination[i] = angle(random, 180);
            rows.azimuth[i] = angle(random, 360);
            rows.lineAngle[i] = switch (random.nextInt(20)) {
                case 0 -> (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(4, 300));
                case 1 -> -angle(random, 360);
                default -> angle(random, 360);
            };
            rows.first[i] = angle(random, 90);
            rows.second[i] = angle(random, 360);
            rows.third[i] = angle(random, 360);
            rows.convention[i] = CONVENTIONS[random.nextInt(CONVENTIONS.length)];
        }
        return rows;
    }

    /** Every combination of the edges of the five angles that a plane is made of. */
    static Rows edges() {
        double[] inclinations = {0, 1e-300, 5e-14, 1e-7, 30, 60, 90, 90 + 1e-13, 135, 180 - 3e-14, 180};
        double[] turns = {0, -0.0, 1e-13, 45, 90, 180, 210, 270, 360 - 6e-14, 360};
        double[] firsts = {0, -0.0, 4e-324, 1e-13, 30, 45, 60, 90 - 1e-13, 90 - 2e-14, 90};
        Rows rows = new Rows(inclinations.length * turns.length * turns.length * firsts.length * turns.length);
        for (int i = 0; i < rows.length; i++) {
            int rest = i;
            rows.inclination[i] = inclinations[rest % inclinations.length];
            rest /= inclinations.length;
            rows.azimuth[i] = turns[rest % turns.length];
            rest /= turns.length;
            rows.lineAngle[i] = turns[rest % turns.length];
            rest /= turns.length;
            rows.first[i] = firsts[rest % firsts.length];
            rest /= firsts.length;
            rows.second[i] = turns[rest];
            rows.third[i] = turns[i % 7];
            rows.convention[i] = CONVENTIONS[i % CONVENTIONS.length];
        }
        return rows;
    }

    private static double angle(SplittableRandom random, int limit) {
        double edge = 15.0 * random.nextInt(limit / 15 + 1);
        double angle =
                random.nextBoolean() ? limit * random.nextDouble() : edge + BESIDE[random.nextInt(BESIDE.length)];
        return Math.min(limit, Math.max(0, angle));
    }

    private static BetaConvention[] conventions() {
        BetaConvention[] all = new BetaConvention[8];
        for (int i = 0; i < 8; i++) {
            all[i] = new BetaConvention(
                    BetaConvention.Sense.values()[i & 1],
                    BetaConvention.View.values()[i >> 1 & 1],
                    BetaConvention.Apex.values()[i >> 2]);
        }
        return all;
    }

    /** The frame of a row, by the scalar methods. */
    CoreFrame frame(int i) {
        return CoreFrame.at(HoleDirection.ofInclination(inclination[i], azimuth[i]), lineAngle[i]);
    }

    /** The scalar answer of one row: two angles. */
    interface Scalar {
        double[] of(CoreFrame frame, Rows rows, int row);
    }

    static double[] plane(CoreFrame frame, Rows rows, int i) {
        PlaneOrientation found = frame.toGeographic(CorePlane.of(rows.first[i], rows.second[i]));
        return new double[] {found.dip(), found.dipDirection()};
    }

    static double[] pole(CoreFrame frame, Rows rows, int i) {
        LineOrientation found =
                frame.toGeographic(CorePlane.of(rows.first[i], rows.second[i])).pole();
        return new double[] {found.plunge(), found.trend()};
    }

    static double[] lineInPlane(CoreFrame frame, Rows rows, int i) {
        LineInPlane line = CorePlane.of(rows.first[i], rows.second[i]).line(rows.third[i]);
        LineOrientation found = frame.toGeographic(line);
        return new double[] {found.plunge(), found.trend()};
    }

    static double[] lineInPlaneRead(CoreFrame frame, Rows rows, int i) {
        CorePlane plane = CorePlane.of(rows.first[i], rows.convention[i].toHouse(rows.second[i]));
        LineOrientation found = frame.toGeographic(plane.line(GAMMA.toHouse(rows.third[i])));
        return new double[] {found.plunge(), found.trend()};
    }

    static double[] line(CoreFrame frame, Rows rows, int i) {
        LineOrientation found = frame.toGeographic(CoreLine.ofAxisAngleAndDelta(rows.first[i], rows.second[i]));
        return new double[] {found.plunge(), found.trend()};
    }

    static double[] planeOnCore(CoreFrame frame, Rows rows, int i) {
        CorePlane found = frame.toCore(PlaneOrientation.ofDipAndDirection(rows.first[i], rows.second[i]));
        return new double[] {found.alpha(), found.beta()};
    }

    static double[] lineOnCore(CoreFrame frame, Rows rows, int i) {
        CoreLine found = frame.toCore(LineOrientation.ofPlungeAndTrend(rows.first[i], rows.second[i]));
        return new double[] {found.axisAngle(), found.delta()};
    }

    static double[] planeRead(CoreFrame frame, Rows rows, int i) {
        double beta = rows.convention[i].toHouse(rows.second[i]);
        PlaneOrientation found = frame.toGeographic(CorePlane.of(rows.first[i], beta));
        return new double[] {found.dip(), found.dipDirection()};
    }

    static double[] planeOnCoreRead(CoreFrame frame, Rows rows, int i) {
        CorePlane found = frame.toCore(PlaneOrientation.ofDipAndDirection(rows.first[i], rows.second[i]));
        double beta = found.hasBeta() ? rows.convention[i].fromHouse(found.beta()) : 0;
        return new double[] {found.alpha(), beta};
    }
}
