package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.line.MarkPosterior.Verdict;

/**
 * How probable it is, by all that is known of a hole, that one mark is sound, flipped or wrong. The three sum to 1.
 *
 * @param sound that it marks the side it stands for, in [0, 1]
 * @param flipped that it marks the opposite side, in [0, 1]
 * @param wrong that it says nothing of the side, in [0, 1]
 */
public record MarkChances(double sound, double flipped, double wrong) {

    double greatest() {
        return Math.max(sound, Math.max(flipped, wrong));
    }

    Verdict verdict() {
        if (sound == greatest()) {
            return Verdict.SOUND;
        }
        return flipped == greatest() ? Verdict.FLIPPED : Verdict.WRONG;
    }
}
