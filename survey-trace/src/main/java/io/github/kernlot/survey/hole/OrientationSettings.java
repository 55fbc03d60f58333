package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.line.HandMethod;
import io.github.kernlot.survey.North;

/**
 * How holes are oriented.
 *
 * @param beta how beta was read in the log
 * @param hand how the marks are reconciled, with the side that they stand for, from the north of the survey as it was measured
 * @param lineSigmaLimit the greatest sigma of the line angle with which a structure is still oriented, degrees, above 0
 * @param output the north of the results' azimuths
 */
public record OrientationSettings(BetaConvention beta, HandMethod hand, double lineSigmaLimit, North output) {

    /**
     * Checks the limit.
     *
     * @throws IllegalArgumentException if it is not a finite number above 0
     */
    public OrientationSettings {
        Require.positive("line sigma limit", lineSigmaLimit, "degrees");
    }

    /**
     * The house convention for beta, marks of the low side by hand with assumed noise, a limit of 15 degrees, azimuths from grid
     * north.
     *
     * @return the settings to begin with
     */
    public static OrientationSettings assumed() {
        return new OrientationSettings(BetaConvention.HOUSE, HandMethod.assumed(), 15, North.GRID);
    }
}
