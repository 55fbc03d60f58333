package io.github.kernlot.orientation.bulk;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.GammaConvention;
import io.github.kernlot.orientation.internal.Polar;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * {@link CoreFrame} for many rows at once: what was measured on core to the ground and back, in columns of the caller and without memory
 * for a row. It answers to the last bit what the scalar methods answer.
 *
 * <p>All columns of a call, those of the frames too, are read and written at the same rows, {@code offset} to
 * {@code offset + length - 1}. A column that is written may be one that is read, for a row is read before it is written; columns that
 * are written must be different arrays. Angles are degrees in the ranges of the scalar types, a beta or gamma of 360 being 0. A row that
 * the scalar methods would refuse gets NaN in each column of the answer and a status below 0, and the others go on. At alpha 90 beta may
 * be NaN, since there is none.
 *
 * <p>An instance can be used by many threads. It keeps the caller's columns of frames and conventions, not copies: what
 * they hold at the time of the call counts.
 */
public final class FrameColumns {

    private final double @Nullable [] cosines;
    private final double[] inclination;
    private final double[] azimuth;
    private final double[] lineAngle;
    private final boolean isDip;
    private final BetaConvention convention;
    private final BetaConvention @Nullable [] conventions;
    private final @Nullable GammaConvention gammas;
    /** A block that nobody works in; a thread that finds none makes another. */
    private final AtomicReference<@Nullable Block> spare = new AtomicReference<>(null);

    private FrameColumns(
            double @Nullable [] cosines,
            double[] inclination,
            double[] azimuth,
            double[] lineAngle,
            boolean isDip,
            BetaConvention convention,
            BetaConvention @Nullable [] conventions,
            @Nullable GammaConvention gammas) {
        this.cosines = cosines;
        this.inclination = inclination;
        this.azimuth = azimuth;
        this.lineAngle = lineAngle;
        this.isDip = isDip;
        this.convention = convention;
        this.conventions = conventions;
        this.gammas = gammas;
    }

    /**
     * One frame for all rows, whatever it was made of.
     *
     * @param frame the frame
     * @return the frame of every row
     */
    public static FrameColumns of(CoreFrame frame) {
        double[] none = {};
        return new FrameColumns(frame.directionCosines(), none, none, none, false, BetaConvention.HOUSE, null, null);
    }

    /**
     * A frame for each row, as {@code CoreFrame.at(HoleDirection.ofInclination(inclination, azimuth), lineAngle)}.
     *
     * @param inclination of the hole from vertically down, degrees in [0, 180]
     * @param azimuth of the hole clockwise from the north in use, degrees in [0, 360]
     * @param lineAngle where the reference line lies, clockwise from the low side looking down-hole, degrees, any finite number
     * @return the frames of the rows
     */
    public static FrameColumns ofInclination(double[] inclination, double[] azimuth, double[] lineAngle) {
        return new FrameColumns(null, inclination, azimuth, lineAngle, false, BetaConvention.HOUSE, null, null);
    }

    /**
     * A frame for each row, as {@code CoreFrame.at(HoleDirection.ofDip(dip, azimuth), lineAngle)}.
     *
     * @param dip of the hole from the horizontal, negative down, degrees in [-90, 90]
     * @param azimuth of the hole clockwise from the north in use, degrees in [0, 360]
     * @param lineAngle where the reference line lies, clockwise from the low side looking down-hole, degrees, any finite number
     * @return the frames of the rows
     */
    public static FrameColumns ofDip(double[] dip, double[] azimuth, double[] lineAngle) {
        return new FrameColumns(null, dip, azimuth, lineAngle, true, BetaConvention.HOUSE, null, null);
    }

    /**
     * The same frames with columns of beta, going in and coming out, read by another convention. Nothing else is read by it.
     *
     * @param read how beta is read in every row
     * @return the frames with that convention
     */
    public FrameColumns withBeta(BetaConvention read) {
        return new FrameColumns(cosines, inclination, azimuth, lineAngle, isDip, read, null, gammas);
    }

    /**
     * The same frames with columns of beta, going in and coming out, read by a convention for each row. Nothing else is read by them.
     *
     * @param read how beta is read in each row; a call refuses null with NullPointerException
     * @return the frames with those conventions
     */
    public FrameColumns withBeta(BetaConvention[] read) {
        return new FrameColumns(cosines, inclination, azimuth, lineAngle, isDip, BetaConvention.HOUSE, read, gammas);
    }

    /**
     * The same frames with columns of gamma read by another convention. They may then have a sign, in [-180, 360] degrees.
     *
     * @param read how gamma is read in every row
     * @return the frames with that convention
     */
    public FrameColumns withGamma(GammaConvention read) {
        return new FrameColumns(
                cosines, inclination, azimuth, lineAngle, isDip, convention, conventions, Objects.requireNonNull(read));
    }

    /**
     * Planes on core in the ground, as {@code frame.toGeographic(CorePlane.of(alpha, beta))}.
     *
     * @param alpha acute angles between plane and core axis, degrees in [0, 90]
     * @param beta from the reference line, by the convention, degrees in [0, 360]
     * @param offset the first row
     * @param length how many rows
     * @param dip filled with the dips, degrees in [0, 90]
     * @param dipDirection filled with the dip directions, degrees in [0, 360)
     * @param status filled with what {@link RowStatus} tells of each row
     * @return how many rows were refused
     * @throws IndexOutOfBoundsException if a column does not have these rows; nothing is written then
     * @throws IllegalArgumentException if the columns to be filled are one array
     */
    public int planesToGeographic(
            double[] alpha, double[] beta, int offset, int length, double[] dip, double[] dipDirection, byte[] status) {
        return convert(Conversion.PLANE_TO_GROUND, alpha, beta, null, offset, length, dip, dipDirection, status);
    }

    /**
     * Poles in the ground of planes on core, as {@code frame.toGeographic(CorePlane.of(alpha, beta)).pole()}.
     *
     * @param alpha acute angles between plane and core axis, degrees in [0, 90]
     * @param beta from the reference line, by the convention, degrees in [0, 360]
     * @param offset the first row
     * @param length how many rows
     * @param plunge filled with the plunges of the poles, degrees in [0, 90]
     * @param trend filled with the trends of the poles, degrees in [0, 360)
     * @param status filled with what {@link RowStatus} tells of each row
     * @return how many rows were refused
     * @throws IndexOutOfBoundsException if a column does not have these rows; nothing is written then
     * @throws IllegalArgumentException if the columns to be filled are one array
     */
    public int polesToGeographic(
            double[] alpha, double[] beta, int offset, int length, double[] plunge, double[] trend, byte[] status) {
        return convert(Conversion.POLE_TO_GROUND, alpha, beta, null, offset, length, plunge, trend, status);
    }

    /**
     * Lines in planes on core in the ground, as {@code frame.toGeographic(CorePlane.of(alpha, beta).line(gamma))}.
     *
     * @param alpha acute angles between plane and core axis, degrees in [0, 90]; there is no gamma at 90
     * @param beta from the reference line, by the convention, degrees in [0, 360]
     * @param gamma in the plane, clockwise looking down-hole, from the down-hole end of the ellipse's long axis, degrees in
     *     [0, 360], or by the convention of {@link #withGamma}
     * @param offset the first row
     * @param length how many rows
     * @param plunge filled with the plunges, degrees in [0, 90]
     * @param trend filled with the trends, degrees in [0, 360)
     * @param status filled with what {@link RowStatus} tells of each row
     * @return how many rows were refused
     * @throws IndexOutOfBoundsException if a column does not have these rows; nothing is written then
     * @throws IllegalArgumentException if the columns to be filled are one array
     */
    public int linesInPlanesToGeographic(
            double[] alpha,
            double[] beta,
            double[] gamma,
            int offset,
            int length,
            double[] plunge,
            double[] trend,
            byte[] status) {
        return convert(Conversion.LINE_IN_PLANE_TO_GROUND, alpha, beta, gamma, offset, length, plunge, trend, status);
    }

    /**
     * Lines through the core in the ground, as {@code frame.toGeographic(CoreLine.ofAxisAngleAndDelta(axisAngle, delta))}.
     *
     * @param axisAngle acute angles between line and core axis, degrees in [0, 90]
     * @param delta where the down-hole end of the line meets the wall, clockwise looking down-hole from the reference line, degrees
     *     in [0, 360]
     * @param offset the first row
     * @param length how many rows
     * @param plunge filled with the plunges, degrees in [0, 90]
     * @param trend filled with the trends, degrees in [0, 360)
     * @param status filled with what {@link RowStatus} tells of each row
     * @return how many rows were refused
     * @throws IndexOutOfBoundsException if a column does not have these rows; nothing is written then
     * @throws IllegalArgumentException if the columns to be filled are one array
     */
    public int linesToGeographic(
            double[] axisAngle,
            double[] delta,
            int offset,
            int length,
            double[] plunge,
            double[] trend,
            byte[] status) {
        return convert(Conversion.LINE_TO_GROUND, axisAngle, delta, null, offset, length, plunge, trend, status);
    }

    /**
     * How planes in the ground show on core, as {@code frame.toCore(PlaneOrientation.ofDipAndDirection(dip, dipDirection))}.
     *
     * @param dip angles from the horizontal, degrees in [0, 90]
     * @param dipDirection azimuths in which the planes fall, degrees in [0, 360]
     * @param offset the first row
     * @param length how many rows
     * @param alpha filled with the acute angles between plane and core axis, degrees in [0, 90]
     * @param beta filled with beta by the convention, degrees in [0, 360); 0 at alpha 90, whatever the convention
     * @param status filled with what {@link RowStatus} tells of each row
     * @return how many rows were refused
     * @throws IndexOutOfBoundsException if a column does not have these rows; nothing is written then
     * @throws IllegalArgumentException if the columns to be filled are one array
     */
    public int planesToCore(
            double[] dip, double[] dipDirection, int offset, int length, double[] alpha, double[] beta, byte[] status) {
        return convert(Conversion.PLANE_TO_CORE, dip, dipDirection, null, offset, length, alpha, beta, status);
    }

    /**
     * How lines in the ground show on core, as {@code frame.toCore(LineOrientation.ofPlungeAndTrend(plunge, trend))}.
     *
     * @param plunge angles below the horizontal, degrees in [0, 90]
     * @param trend azimuths of the ends that point downwards, degrees in [0, 360]
     * @param offset the first row
     * @param length how many rows
     * @param axisAngle filled with the acute angles between line and core axis, degrees in [0, 90]
     * @param delta filled with where the down-hole end of the line meets the wall, degrees in [0, 360)
     * @param status filled with what {@link RowStatus} tells of each row
     * @return how many rows were refused
     * @throws IndexOutOfBoundsException if a column does not have these rows; nothing is written then
     * @throws IllegalArgumentException if the columns to be filled are one array
     */
    public int linesToCore(
            double[] plunge,
            double[] trend,
            int offset,
            int length,
            double[] axisAngle,
            double[] delta,
            byte[] status) {
        return convert(Conversion.LINE_TO_CORE, plunge, trend, null, offset, length, axisAngle, delta, status);
    }

    private int convert(
            Conversion conversion,
            double[] first,
            double[] second,
            double @Nullable [] third,
            int offset,
            int length,
            double[] firstOut,
            double[] secondOut,
            byte[] status) {
        checkRows(offset, length, first, second, firstOut, secondOut);
        Objects.checkFromIndexSize(offset, length, status.length);
        if (third != null) {
            Objects.checkFromIndexSize(offset, length, third.length);
        }
        if (cosines == null) {
            checkRows(offset, length, inclination, azimuth, lineAngle);
        }
        if (conventions != null) {
            Objects.checkFromIndexSize(offset, length, conventions.length);
            for (int i = offset; i < offset + length; i++) {
                Objects.requireNonNull(conventions[i], "the convention of a row is null");
            }
        }
        if (firstOut == secondOut) {
            throw new IllegalArgumentException("the columns to be filled are one array; expected an array for each");
        }
        @Nullable Block found = spare.getAndSet(null);
        Block block = found == null ? new Block() : found;
        if (cosines != null) {
            block.standIn(cosines, Math.min(length, Block.ROWS));
        }
        int refused = 0;
        for (int row = offset; row < offset + length; row += Block.ROWS) {
            int count = Math.min(Block.ROWS, offset + length - row);
            frames(block, row, count, status);
            measurements(block, conversion, first, second, third, row, count, status);
            conversion.run(block, count);
            refused += block.write(row, count, firstOut, secondOut, status);
            if (conversion == Conversion.PLANE_TO_CORE) {
                betaOut(row, count, secondOut, status);
            }
            if (conversion == Conversion.POLE_TO_GROUND) {
                poles(row, count, firstOut, secondOut, status);
            }
        }
        spare.set(block);
        return refused;
    }

    private static void checkRows(int offset, int length, double[]... columns) {
        for (double[] column : columns) {
            Objects.checkFromIndexSize(offset, length, column.length);
        }
    }

    private void frames(Block block, int offset, int count, byte[] status) {
        Checks.begin(offset, count, status);
        if (cosines != null) {
            return;
        }
        System.arraycopy(inclination, offset, block.first, 0, count);
        System.arraycopy(azimuth, offset, block.second, 0, count);
        System.arraycopy(lineAngle, offset, block.third, 0, count);
        if (isDip) {
            Checks.range(block.first, -90, 90, RowStatus.INCLINATION_REFUSED, offset, count, status);
            Loops.add(block.first, 90, count);
        } else {
            Checks.range(block.first, 0, 180, RowStatus.INCLINATION_REFUSED, offset, count, status);
        }
        Checks.range(block.second, 0, 360, RowStatus.AZIMUTH_REFUSED, offset, count, status);
        Checks.range(
                block.third, -Double.MAX_VALUE, Double.MAX_VALUE, RowStatus.LINE_ANGLE_REFUSED, offset, count, status);
        block.standInHoles(offset, count, status);
    }

    private void measurements(
            Block block,
            Conversion conversion,
            double[] first,
            double[] second,
            double @Nullable [] third,
            int offset,
            int count,
            byte[] status) {
        System.arraycopy(first, offset, block.first, 0, count);
        System.arraycopy(second, offset, block.second, 0, count);
        Checks.range(block.first, 0, 90, RowStatus.FIRST_ANGLE_REFUSED, offset, count, status);
        if (conversion.readsBeta()) {
            Checks.blank(block.first, block.second, offset, count, status);
        }
        Checks.range(block.second, 0, 360, RowStatus.SECOND_ANGLE_REFUSED, offset, count, status);
        if (conversion.readsBeta()) {
            betaIn(block.second, offset, count, status);
        }
        if (third != null) {
            System.arraycopy(third, offset, block.third, 0, count);
            Checks.range(block.third, gammas == null ? 0 : -180, 360, RowStatus.GAMMA_REFUSED, offset, count, status);
            Checks.longAxis(block.first, offset, count, status);
            gammaIn(block.third, offset, count, status);
        }
    }

    private void gammaIn(double[] gamma, int offset, int count, byte[] status) {
        if (gammas == null) {
            return;
        }
        for (int i = 0; i < count; i++) {
            if (status[offset + i] == RowStatus.ANSWERED) {
                gamma[i] = gammas.toHouse(gamma[i]);
            }
        }
    }

    private boolean isHouse() {
        return conventions == null && convention.equals(BetaConvention.HOUSE);
    }

    private BetaConvention conventionOf(int row) {
        return conventions == null ? convention : conventions[row];
    }

    private void betaIn(double[] beta, int offset, int count, byte[] status) {
        if (isHouse()) {
            return;
        }
        for (int i = 0; i < count; i++) {
            if (status[offset + i] == RowStatus.ANSWERED) {
                beta[i] = conventionOf(offset + i).toHouse(beta[i]);
            }
        }
    }

    private void betaOut(int offset, int count, double[] beta, byte[] status) {
        if (isHouse()) {
            return;
        }
        for (int i = offset; i < offset + count; i++) {
            if (status[i] == RowStatus.ANSWERED || status[i] == RowStatus.SECOND_ANGLE_TWOFOLD) {
                beta[i] = conventionOf(i).fromHouse(beta[i]);
            }
        }
    }

    /** Plunge and trend of the poles in the place of dip and dip direction. */
    private static void poles(int offset, int count, double[] dip, double[] dipDirection, byte[] status) {
        for (int i = offset; i < offset + count; i++) {
            if (!RowStatus.isRefused(status[i])) {
                dipDirection[i] = Polar.poleTrend(dip[i], dipDirection[i]);
                dip[i] = 90 - dip[i];
            }
        }
    }

    /** How many frames there are and how angles are read: {@code a frame for each of 4 rows, beta clockwise looking down-hole ...}. */
    @Override
    public String toString() {
        return (cosines != null ? "one frame for all rows, " : "a frame for each of " + azimuth.length + " rows, ")
                + (conventions == null ? convention : "beta read by the row")
                + ", "
                + (gammas == null ? GammaConvention.HOUSE : gammas);
    }
}
