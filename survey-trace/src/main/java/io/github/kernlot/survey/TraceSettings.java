package io.github.kernlot.survey;

import io.github.kernlot.orientation.internal.Require;

/**
 * How a trace is made of a survey.
 *
 * @param method how the hole runs between stations
 * @param extrapolationLimit how far above the first and below the last station the trace answers, metres, 0 or more
 * @param beyondLast how the hole goes on below its last station; above the first it is always straight
 */
public record TraceSettings(DesurveyMethod method, double extrapolationLimit, BeyondLast beyondLast) {

    /**
     * Checks the limit.
     *
     * @throws IllegalArgumentException if the limit is negative or not finite
     */
    public TraceSettings {
        extrapolationLimit = Require.notNegative("extrapolation limit", extrapolationLimit, "m");
    }

    /**
     * Minimum curvature, straight up to 30 m beyond the stations.
     *
     * @return the settings
     */
    public static TraceSettings assumed() {
        return new TraceSettings(DesurveyMethod.MINIMUM_CURVATURE, 30, BeyondLast.STRAIGHT);
    }

    /**
     * The same settings with another method.
     *
     * @param other how the hole runs between stations
     * @return the settings
     */
    public TraceSettings withMethod(DesurveyMethod other) {
        return new TraceSettings(other, extrapolationLimit, beyondLast);
    }

    /**
     * The same settings with another limit.
     *
     * @param limit how far above the first and below the last station the trace answers, metres, 0 or more
     * @return the settings
     * @throws IllegalArgumentException if the limit is negative or not finite
     */
    public TraceSettings withExtrapolationLimit(double limit) {
        return new TraceSettings(method, limit, beyondLast);
    }

    /**
     * The same settings with another course below the last station.
     *
     * @param other how the hole goes on there
     * @return the settings
     */
    public TraceSettings withBeyondLast(BeyondLast other) {
        return new TraceSettings(method, extrapolationLimit, other);
    }
}
