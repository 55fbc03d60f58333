package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.Degrees;
import java.util.OptionalDouble;

/**
 * What was found of one mark by hand.
 *
 * @param mark the mark
 * @param sigma the standard deviation that it was given, degrees, without the bias of the hole; infinite for a mark that was left
 *     out where its side does not exist
 * @param predicted the offset that the other marks lead one to expect, degrees in [0, 360); empty where they say nothing
 * @param verdict whether the mark counts
 */
public record MarkJudgement(OrientationMark mark, double sigma, OptionalDouble predicted, Verdict verdict) {

    /** Whether a mark counts. */
    public enum Verdict {
        /** Enough neighbours fall on the same line. */
        AGREES,
        /** There are neighbours, and too few of them fall on the same line. */
        DISAGREES,
        /** There is no neighbour on this line of core to compare with. */
        ALONE,
        /** A geologist left it out. */
        LEFT_OUT
    }

    /**
     * How far the mark stands from what the others predict.
     *
     * @return offset minus predicted, degrees in (-180, 180]; empty where nothing is predicted
     */
    public OptionalDouble residual() {
        return predicted.isPresent()
                ? OptionalDouble.of(Degrees.wrap180(mark.offset() - predicted.getAsDouble()))
                : OptionalDouble.empty();
    }
}
