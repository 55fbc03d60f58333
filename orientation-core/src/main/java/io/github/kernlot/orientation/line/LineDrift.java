package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.Require;

/**
 * What moves a drawn line on its way along the core.
 *
 * @param wander standard deviation per square root of metre drawn, degrees
 * @param locked standard deviation at a locked join, degrees
 * @param doubtful standard deviation at a doubtful join that did not slip, degrees
 * @param slip the prior probability that the core slipped at a doubtful join, by any angle, in [0, 1]
 */
public record LineDrift(double wander, double locked, double doubtful, double slip) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a sigma is negative or not finite, or the probability lies outside [0, 1]
     */
    public LineDrift {
        wander = Require.notNegative("line wander sigma", wander, "degrees per square root of metre");
        locked = Require.notNegative("locked join sigma", locked, "degrees");
        doubtful = Require.notNegative("doubtful join sigma", doubtful, "degrees");
        slip = Require.inRange("prior of a slip", slip, 0, 1, "");
    }

    /**
     * Values to begin with, assumed and not measured: 0.2 degrees per square root of metre, 0.5 degrees at a locked join, 3
     * degrees at a doubtful one, 3 in 10 doubtful joins slipped.
     *
     * @return the assumed drift
     */
    public static LineDrift assumed() {
        return new LineDrift(0.2, 0.5, 3, 0.3);
    }
}
