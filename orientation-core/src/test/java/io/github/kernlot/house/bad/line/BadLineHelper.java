package io.github.kernlot.house.bad.line;

import io.github.kernlot.house.bad.line.fit.BadGuess;
import io.github.kernlot.house.bad.solve.BadFit;

/** Looks at its neighbour, which looks back, and into a room that builds on it, and is badly named. */
public final class BadLineHelper {
    public BadFit fit() {
        return new BadFit();
    }

    public BadGuess guess() {
        return new BadGuess();
    }
}
