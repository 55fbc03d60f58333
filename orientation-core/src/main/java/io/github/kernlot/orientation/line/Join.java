package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * A place where two pieces of core were put together. What lies at the join's own depth belongs to the piece on its collar side.
 *
 * @param depth metres along the hole, 0 or more
 * @param fit how well the pieces fit
 */
public record Join(double depth, JoinFit fit) {

    /**
     * Checks the depth.
     *
     * @throws IllegalArgumentException if the depth is negative or not finite
     */
    public Join {
        depth = Require.notNegative("depth", depth, "m");
    }

    /** How it fits and where: {@code locked join at 12.08 m}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s join at %.2f m", fit.name().toLowerCase(Locale.ROOT), depth);
    }
}
