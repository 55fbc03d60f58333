package io.github.kernlot.orientation.line.audit;

import io.github.kernlot.orientation.sphere.CircularSample;
import io.github.kernlot.orientation.sphere.CircularTrend;
import java.util.Locale;
import java.util.Optional;

/**
 * What an audit says of one group of marks.
 *
 * @param name the group
 * @param marks how many used marks it has
 * @param residuals offset minus predicted of the marks that are most probably sound, in degrees; their mean is diluted where the
 *     group's own marks take part in the prediction, and their spread holds the prediction's; empty where nothing is predicted
 * @param bias by how much the group is turned against all other marks; empty where no other marks stand on its cores
 * @param trend how those residuals turn with depth, degrees per metre; empty for fewer than three or at one depth
 * @param blunders how often its marks are flipped or wrong, by their probabilities and so not free of the priors; empty where no mark
 *     is predicted by others
 * @param logMirrorOdds the logarithm of how many times as probable all marks of these holes are when the group's are read the other
 *     way, as when they are read as they were; for 0 the marks cannot tell
 */
public record MarkGroup(
        String name,
        int marks,
        Optional<CircularSample> residuals,
        Optional<GroupBias> bias,
        Optional<CircularTrend> trend,
        Optional<BlunderRate> blunders,
        double logMirrorOdds) {

    /** The group in one line. */
    @Override
    public String toString() {
        return name + ": " + marks + " marks"
                + residuals.map(sample -> ", residuals " + sample).orElse("")
                + bias.map(known -> ", bias " + known).orElse("")
                + blunders.map(rate -> ", blunders " + rate).orElse("")
                + String.format(Locale.ROOT, ", log odds of mirrored reading %.1f", logMirrorOdds);
    }
}
