package io.github.kernlot.orientation.solve;

/**
 * Two ways of reading a log that these readings do not tell apart.
 *
 * @param best the most probable way
 * @param other the other
 * @param reason why, in words
 */
public record ConventionTie(ReadingConvention best, ReadingConvention other, String reason) {

    /** The other way and the reason. */
    @Override
    public String toString() {
        return "or " + other + ": " + reason;
    }
}
