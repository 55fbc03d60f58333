package io.github.kernlot.house.bad.solve;

import io.github.kernlot.house.bad.line.BadLineHelper;
import io.github.kernlot.house.bad.uncertainty.BadBudget;

/** Looks back at its neighbour, and up. */
public final class BadFit {
    public BadLineHelper line() {
        return new BadLineHelper();
    }

    public BadBudget budget() {
        return new BadBudget();
    }
}
