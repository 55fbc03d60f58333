package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.GammaConvention;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.line.HandMethod;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.survey.North;

/**
 * How holes are oriented.
 *
 * @param beta how beta was read in the log
 * @param gamma how gamma was read in the log
 * @param model what is assumed of marks and of the line, with the side that the marks stand for, from the north of the survey as it
 *     was measured
 * @param handTolerance the mismatch up to which two marks agree by hand, degrees in (0, 180]
 * @param handNeighbours how many neighbours must agree by hand, 1 or more
 * @param lineSigmaLimit the greatest sigma of the line angle with which a structure is still oriented, degrees, above 0
 * @param output the north of the results' azimuths
 * @param fabric which structures are witnesses of the line
 * @param runFindingFactor how many times as often a mark is wrong whose run has a finding, 1 or more
 * @param depthSigma standard deviation of the depth of a structure along the core, metres, 0 or more
 */
public record OrientationSettings(
        BetaConvention beta,
        GammaConvention gamma,
        LineModel model,
        double handTolerance,
        int handNeighbours,
        double lineSigmaLimit,
        North output,
        FabricSettings fabric,
        double runFindingFactor,
        double depthSigma) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one lies outside its range
     */
    public OrientationSettings {
        Require.positive("line sigma limit", lineSigmaLimit, "degrees");
        Require.inRange("factor on the prior of a wrong mark", runFindingFactor, 1, Double.MAX_VALUE, "");
        Require.notNegative("depth sigma", depthSigma, "m");
        new HandMethod(model.side(), model.noise(), handTolerance, handNeighbours);
    }

    /**
     * The house conventions for beta and gamma, the assumed model with marks of the low side, by hand a tolerance of 10 degrees and one
     * neighbour, a limit of 15 degrees, azimuths from grid north, no structure as a witness, a factor of 3
     * (assumed) for marks of runs with findings, and depths of structures within 0.05 m (assumed).
     *
     * @return the settings to begin with
     */
    public static OrientationSettings assumed() {
        return new OrientationSettings(
                BetaConvention.HOUSE,
                GammaConvention.HOUSE,
                LineModel.assumed(),
                10,
                1,
                15,
                North.GRID,
                FabricSettings.off(),
                3,
                0.05);
    }

    /**
     * The same settings for another reading of beta.
     *
     * @param other how beta was read
     * @return the settings
     */
    public OrientationSettings withBeta(BetaConvention other) {
        return new OrientationSettings(
                other,
                gamma,
                model,
                handTolerance,
                handNeighbours,
                lineSigmaLimit,
                output,
                fabric,
                runFindingFactor,
                depthSigma);
    }

    /**
     * The same settings for another reading of gamma.
     *
     * @param other how gamma was read
     * @return the settings
     */
    public OrientationSettings withGamma(GammaConvention other) {
        return new OrientationSettings(
                beta,
                other,
                model,
                handTolerance,
                handNeighbours,
                lineSigmaLimit,
                output,
                fabric,
                runFindingFactor,
                depthSigma);
    }

    /**
     * The same settings with another model of the line.
     *
     * @param other what is assumed of marks and of the line
     * @return the settings
     */
    public OrientationSettings withModel(LineModel other) {
        return new OrientationSettings(
                beta,
                gamma,
                other,
                handTolerance,
                handNeighbours,
                lineSigmaLimit,
                output,
                fabric,
                runFindingFactor,
                depthSigma);
    }

    /**
     * The same settings with another rule of the hand method.
     *
     * @param tolerance the mismatch up to which two marks agree, degrees in (0, 180]
     * @param neighbours how many neighbours must agree, 1 or more
     * @return the settings
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public OrientationSettings withHandRule(double tolerance, int neighbours) {
        return new OrientationSettings(
                beta,
                gamma,
                model,
                tolerance,
                neighbours,
                lineSigmaLimit,
                output,
                fabric,
                runFindingFactor,
                depthSigma);
    }

    /**
     * The same settings with another limit.
     *
     * @param degrees the greatest sigma of the line angle with which a structure is still oriented, above 0
     * @return the settings
     * @throws IllegalArgumentException if it is not a finite number above 0
     */
    public OrientationSettings withLineSigmaLimit(double degrees) {
        return new OrientationSettings(
                beta,
                gamma,
                model,
                handTolerance,
                handNeighbours,
                degrees,
                output,
                fabric,
                runFindingFactor,
                depthSigma);
    }

    /**
     * The same settings with results from another north.
     *
     * @param other the north of the results' azimuths
     * @return the settings
     */
    public OrientationSettings withOutput(North other) {
        return new OrientationSettings(
                beta,
                gamma,
                model,
                handTolerance,
                handNeighbours,
                lineSigmaLimit,
                other,
                fabric,
                runFindingFactor,
                depthSigma);
    }

    /**
     * The same settings with other witnesses.
     *
     * @param other which structures are witnesses of the line
     * @return the settings
     */
    public OrientationSettings withFabric(FabricSettings other) {
        return new OrientationSettings(
                beta,
                gamma,
                model,
                handTolerance,
                handNeighbours,
                lineSigmaLimit,
                output,
                other,
                runFindingFactor,
                depthSigma);
    }

    /**
     * The same settings with marks of runs with findings doubted more or less.
     *
     * @param factor how many times as often such a mark is wrong, 1 or more
     * @return the settings
     * @throws IllegalArgumentException if it is not a finite number, 1 or above
     */
    public OrientationSettings withRunFindingFactor(double factor) {
        return new OrientationSettings(
                beta, gamma, model, handTolerance, handNeighbours, lineSigmaLimit, output, fabric, factor, depthSigma);
    }

    /**
     * The same settings with depths of structures known better or worse.
     *
     * @param metres standard deviation of the depth of a structure along the core, 0 or more
     * @return the settings
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public OrientationSettings withDepthSigma(double metres) {
        return new OrientationSettings(
                beta,
                gamma,
                model,
                handTolerance,
                handNeighbours,
                lineSigmaLimit,
                output,
                fabric,
                runFindingFactor,
                metres);
    }
}
