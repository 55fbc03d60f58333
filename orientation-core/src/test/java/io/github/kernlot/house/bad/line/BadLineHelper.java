package io.github.kernlot.house.bad.line;

import io.github.kernlot.house.bad.solve.BadFit;

/** Looks at its neighbour, which looks back, and is badly named. */
public final class BadLineHelper {
    public BadFit fit() {
        return new BadFit();
    }
}
