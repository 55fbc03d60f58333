package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * One cause of error of a survey. Sources of one name are one cause: legs of a hole share it if it is by well, holes if it is
 * global.
 *
 * @param name what it is called; unique within a model
 * @param sigma its standard deviation, 0 or more
 * @param unit the unit of the sigma, empty for a ratio
 * @param mode which stations share one draw of it
 * @param weighting what one unit of it does to a station
 */
public record SurveyErrorSource(
        String name, double sigma, String unit, PropagationMode mode, ErrorWeighting weighting) {

    /**
     * Checks name and sigma.
     *
     * @throws IllegalArgumentException if the name is blank or the sigma negative or not finite
     */
    public SurveyErrorSource {
        if (name.isBlank()) {
            throw new IllegalArgumentException("the name of an error source is blank; expected a word");
        }
        sigma = Require.notNegative("sigma of " + name, sigma, unit);
    }

    /**
     * The same cause with another sigma.
     *
     * @param other the standard deviation in the unit of the source, 0 or more
     * @return the source
     * @throws IllegalArgumentException if the sigma is negative or not finite
     */
    public SurveyErrorSource withSigma(double other) {
        return new SurveyErrorSource(name, other, unit, mode, weighting);
    }

    /**
     * The same cause shared otherwise.
     *
     * @param other which stations share one draw
     * @return the source
     */
    public SurveyErrorSource withMode(PropagationMode other) {
        return new SurveyErrorSource(name, sigma, unit, other, weighting);
    }

    /** One line: {@code sag 0.2 deg, systematic}. */
    @Override
    public String toString() {
        String shared = mode.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return name + " " + sigma + (unit.isEmpty() ? "" : " " + unit) + ", " + shared;
    }
}
