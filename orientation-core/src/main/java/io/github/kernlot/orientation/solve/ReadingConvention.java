package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.HoleDirection;
import java.util.Locale;

/**
 * How a log of oriented core may have to be read.
 *
 * @param beta how beta was counted
 * @param side which side of the wall the line angle was counted from, and the reference line stands for where that angle is 0
 * @param dipSign whether the dip of the hole has the sign that it was given
 */
public record ReadingConvention(BetaConvention beta, LineSide side, DipSign dipSign) {

    /** The house convention: beta clockwise looking down-hole to the down-hole end, the line from the low side, the dip as given. */
    public static final ReadingConvention HOUSE =
            new ReadingConvention(BetaConvention.HOUSE, LineSide.LOW, DipSign.AS_GIVEN);

    /** The side of the wall that the line stands for. */
    public enum LineSide {
        /** The bottom of the hole. */
        LOW,
        /** The top of the hole. */
        HIGH
    }

    /** The sign of the dip of the hole. */
    public enum DipSign {
        /** As it was given. */
        AS_GIVEN,
        /** The other sign: the hole rises where it was taken to fall. */
        REVERSED
    }

    /** Whether beta runs against the house's sense. */
    boolean isMirrored() {
        return (beta.sense() == BetaConvention.Sense.CLOCKWISE) != (beta.view() == BetaConvention.View.DOWN_HOLE);
    }

    /** Whether end of the ellipse and side of the line together turn beta by half a turn. */
    boolean isTurned() {
        return (beta.apex() == BetaConvention.Apex.UP_HOLE) != (side == LineSide.HIGH);
    }

    /** Whether no data can tell the two apart. */
    boolean isSameAs(ReadingConvention other) {
        return isMirrored() == other.isMirrored() && isTurned() == other.isTurned() && dipSign == other.dipSign;
    }

    HoleDirection hole(HoleDirection given) {
        return dipSign == DipSign.AS_GIVEN
                ? given
                : HoleDirection.ofInclination(180 - given.inclination(), given.azimuth());
    }

    /** Beta from the low side in the house convention. */
    double betaFromLowSide(double asRead, double lineAngle) {
        return beta.toHouse(asRead) + lineAngle + (side == LineSide.HIGH ? 180 : 0);
    }

    /** In words: {@code beta clockwise looking down-hole to the down-hole end, line low, dip as given}. */
    @Override
    public String toString() {
        return beta + ", line " + words(side) + ", dip " + words(dipSign);
    }

    private static String words(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
