package io.github.kernlot.orientation.line;

import java.util.Locale;

/**
 * What was found of one join.
 *
 * @param join the join
 * @param slipped the probability that the core slipped there: 0 at a locked join, 1 at a broken one
 */
public record JoinPosterior(Join join, double slipped) {

    /** The join and its probability: {@code doubtful join at 12.08 m: slipped with 37 %}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s: slipped with %.0f %%", join, 100 * slipped);
    }
}
