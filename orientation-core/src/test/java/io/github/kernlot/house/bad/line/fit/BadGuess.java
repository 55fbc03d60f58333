package io.github.kernlot.house.bad.line.fit;

import io.github.kernlot.house.bad.line.audit.BadAudit;
import io.github.kernlot.house.bad.uncertainty.BadBudget;

/** Looks into the next room, and up. */
public final class BadGuess {
    public BadAudit audit() {
        return new BadAudit();
    }

    public BadBudget budget() {
        return new BadBudget();
    }
}
