package io.github.kernlot.orientation.line.fit;

import io.github.kernlot.orientation.line.LineModel;
import java.util.List;
import java.util.Locale;

/**
 * The line model that the marks speak for: what {@link LineFit} gives.
 *
 * @param model the fitted model; what is not told is in it as assumed
 * @param start the model that was assumed
 * @param parameters all parameters, in the order of {@link LineParameter}
 * @param correlations the pairs of told parameters whose estimates correlate by 0.8 or more
 * @param logEvidence the evidence of the fitted model, a natural logarithm
 * @param startLogEvidence the evidence of what was assumed
 * @param marks how many marks are in use
 * @param comparisons how many pairs of neighbouring marks lie on one piece of core
 * @param evaluations how often the evidence was reckoned
 */
public record FittedModel(
        LineModel model,
        LineModel start,
        List<FittedParameter> parameters,
        List<ParameterCorrelation> correlations,
        double logEvidence,
        double startLogEvidence,
        int marks,
        int comparisons,
        int evaluations) {

    /** Copies the lists. */
    public FittedModel {
        parameters = List.copyOf(parameters);
        correlations = List.copyOf(correlations);
    }

    /**
     * The evidence against what was assumed: by how much the logarithm of the evidence is greater for the fitted model. If the
     * assumed values were right, twice the gain would be near the number of told parameters, seldom more than twice that.
     *
     * @return 0 or more
     */
    public double gain() {
        return logEvidence - startLogEvidence;
    }

    /**
     * What was found of one parameter.
     *
     * @param which the parameter
     * @return its value and standing
     */
    public FittedParameter parameter(LineParameter which) {
        return parameters.stream()
                .filter(found -> found.parameter() == which)
                .findFirst()
                .orElseThrow();
    }

    /** A table: each parameter as assumed and as fitted, the evidence for both, and what no fit can tell. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "%d marks, %d comparisons: evidence %.1f as assumed, %.1f as fitted, gain %.1f%n",
                marks,
                comparisons,
                startLogEvidence,
                logEvidence,
                gain()));
        for (FittedParameter parameter : parameters) {
            text.append(parameter).append(System.lineSeparator());
        }
        for (ParameterCorrelation pair : correlations) {
            text.append("hardly told apart: ").append(pair).append(System.lineSeparator());
        }
        return text.append("The bias that all marks of a hole share (")
                .append(String.format(Locale.ROOT, "%.2f", model.noise().bias()))
                .append(" degrees as assumed) shows in no comparison of marks.")
                .toString();
    }
}
