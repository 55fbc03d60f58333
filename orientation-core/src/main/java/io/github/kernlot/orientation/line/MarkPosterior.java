package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.Degrees;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was found of one mark.
 *
 * @param mark the mark
 * @param sigma the standard deviation that it was given, degrees, without the bias of the hole; infinite for a mark that was left
 *     out where its side does not exist
 * @param predicted the offset that all the other marks lead one to expect, degrees in [0, 360); empty where they say nothing
 * @param chances how probable it is that the mark is sound, flipped or wrong; empty for a mark that was left out
 */
public record MarkPosterior(
        OrientationMark mark, double sigma, OptionalDouble predicted, Optional<MarkChances> chances) {

    /** What a mark most probably is. */
    public enum Verdict {
        /** It marks the side that it stands for. */
        SOUND,
        /** It marks the opposite side. */
        FLIPPED,
        /** It says nothing of the side. */
        WRONG,
        /** A geologist left it out. */
        LEFT_OUT
    }

    /**
     * What the mark most probably is.
     *
     * @return the verdict with the greatest probability
     */
    public Verdict verdict() {
        return chances.map(MarkChances::verdict).orElse(Verdict.LEFT_OUT);
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

    /** The mark with its verdict: {@code mark at 27.30 m, offset 338.0: sound (98 %)}. */
    @Override
    public String toString() {
        return mark
                + chances.map(known -> String.format(
                                Locale.ROOT,
                                ": %s (%.0f %%)",
                                verdict().name().toLowerCase(Locale.ROOT),
                                100 * known.greatest()))
                        .orElse("");
    }
}
