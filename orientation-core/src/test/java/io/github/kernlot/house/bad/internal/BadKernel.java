package io.github.kernlot.house.bad.internal;

import io.github.kernlot.house.bad.BadNoun;

/** The lowest tier looks up. */
public final class BadKernel {
    private final BadNoun noun;

    public BadKernel(BadNoun noun) {
        this.noun = noun;
    }

    public BadNoun noun() {
        return noun;
    }
}
