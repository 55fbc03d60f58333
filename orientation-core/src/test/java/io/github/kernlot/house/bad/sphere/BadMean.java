package io.github.kernlot.house.bad.sphere;

import io.github.kernlot.house.bad.line.BadLineHelper;

/** Looks up. */
public final class BadMean {
    public BadLineHelper line() {
        return new BadLineHelper();
    }
}
