package io.github.kernlot.orientation.line;

import java.util.Locale;

/**
 * A mark that may have been read by one who looked the other way round the core: its offset is then 360 minus the true one, and its
 * residual minus twice the true offset, which looks like chance.
 *
 * @param mark the mark as it was read
 * @param logOdds the logarithm of how many times as probable the mark is, by all others of its hole, read the other way as read as it
 *     was; how often readers look the other way is not in it
 */
public record MirroredMark(OrientationMark mark, double logOdds) {

    /** The mark with its odds: {@code mark at 27.30 m, offset 338.0: 1:900 read the other way}. */
    @Override
    public String toString() {
        String odds = logOdds >= 0
                ? String.format(Locale.ROOT, "%.0f:1", Math.exp(logOdds))
                : String.format(Locale.ROOT, "1:%.0f", Math.exp(-logOdds));
        return mark + ": " + odds + " read the other way";
    }
}
