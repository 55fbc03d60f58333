package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.Degrees;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What was found of one mark.
 *
 * @param mark the mark
 * @param sigma the standard deviation that it was given, degrees, without the bias of the hole
 * @param predicted the offset that all the other marks lead one to expect, degrees in [0, 360); empty where they say nothing
 * @param sound the probability that it marks the side it stands for; NaN for a mark that was left out
 * @param flipped the probability that it marks the opposite side; NaN for a mark that was left out
 * @param wrong the probability that it says nothing of the side; NaN for a mark that was left out
 */
public record MarkPosterior(
        OrientationMark mark, double sigma, OptionalDouble predicted, double sound, double flipped, double wrong) {

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
        if (mark.leftOut().isPresent()) {
            return Verdict.LEFT_OUT;
        }
        if (sound >= flipped && sound >= wrong) {
            return Verdict.SOUND;
        }
        return flipped >= wrong ? Verdict.FLIPPED : Verdict.WRONG;
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
        String word = verdict().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        double most = Math.max(sound, Math.max(flipped, wrong));
        return mark.leftOut().isPresent()
                ? mark.toString()
                : mark + ": " + word + " (" + Math.round(100 * most) + " %)";
    }
}
