package io.github.kernlot.house.bad.uncertainty;

import io.github.kernlot.house.bad.survey.BadTrace;

/** Asks the survey. */
public final class BadBudget {
    public BadTrace trace() {
        return new BadTrace();
    }
}
