package io.github.kernlot.orientation.line.fit;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.MarkedHole;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Learns the noise of marks and of the line from holes: the values that make the evidence of all their marks greatest, with
 * standard errors. What the marks do not tell stays as assumed, and the reason is given.
 *
 * <p>The error that all marks of a hole share is not among it: turning all marks of a hole turns its line and changes no
 * comparison. The sigmas of pencil and transfer are held as given; the level's sigma takes up what they leave unexplained.
 *
 * <pre>{@code
 * FittedModel fitted = LineFit.of(LineModel.assumed()).to(holes);
 * ReferenceLine line = fitted.model().reconcile(path, marks, joins);
 * }</pre>
 *
 * @param start the model to begin with, which also says the side of the marks
 * @param free what may change; what the marks do not tell will not
 */
public record LineFit(LineModel start, Set<LineParameter> free) {

    /**
     * Checks that there is something to learn.
     *
     * @throws IllegalArgumentException if nothing is free
     */
    public LineFit {
        free = Set.copyOf(new TreeSet<>(free));
        if (free.isEmpty()) {
            throw new IllegalArgumentException("nothing is free; expected one parameter or more");
        }
    }

    /**
     * Learns all that the marks can tell.
     *
     * @param start the model to begin with
     * @return the fit
     */
    public static LineFit of(LineModel start) {
        return new LineFit(start, EnumSet.allOf(LineParameter.class));
    }

    /**
     * Learns some parameters and holds the others as they are.
     *
     * @param first what may change
     * @param others what else may change
     * @return the fit
     */
    public LineFit withFree(LineParameter first, LineParameter... others) {
        return new LineFit(start, EnumSet.of(first, others));
    }

    /**
     * Learns from one hole or many. The work grows with the number of marks, and with the fineness that the smallest sigma needs;
     * the order of holes, marks and joins does not matter.
     *
     * @param holes the holes
     * @return the fitted model
     * @throws IllegalArgumentException if nothing can be learnt, with the reason: no two marks to compare, fewer comparisons than
     *     free parameters, or an evidence that is all but level; if the start of what is free lies above 45 degrees (wander: 15
     *     degrees per square root of metre) or a probability above 0.3 flipped, 0.4 wrong or 0.95 slipped; or if a path does not
     *     reach a mark, or the side does not exist there
     */
    public FittedModel to(List<MarkedHole> holes) {
        for (LineParameter parameter : free) {
            Require.inRange("start of " + parameter, parameter.of(start), 0, parameter.limit(), parameter.unit());
        }
        List<PieceEvidence> pieces = holes.stream()
                .flatMap(hole -> PieceEvidence.of(hole, start).stream())
                .toList();
        return new LineFitting(this, pieces).result();
    }
}
