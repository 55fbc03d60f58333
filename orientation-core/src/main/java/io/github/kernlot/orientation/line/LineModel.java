package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import java.util.List;

/**
 * What is assumed of marks and of the line between them. It reconciles the marks of a hole by Bayes' rule: a mark is sound, flipped
 * or wrong, a doubtful join slipped or did not, a broken one begins a new line, and the line wanders as it is drawn.
 *
 * <p>The answer is exact for this model up to the grid of angles; docs/mathematics.md section 9 has the derivation.
 *
 * @param side the side that the marks stand for
 * @param noise what makes a sound mark miss
 * @param blunders how often a mark is not sound
 * @param drift what moves the line between marks
 */
public record LineModel(WallReference side, MarkNoise noise, MarkBlunders blunders, LineDrift drift) {

    /**
     * Marks of the low side with assumed values throughout.
     *
     * @return the model to begin with
     */
    public static LineModel assumed() {
        return new LineModel(WallReference.lowSide(), MarkNoise.assumed(), MarkBlunders.assumed(), LineDrift.assumed());
    }

    /**
     * The same model for marks of another side.
     *
     * @param other the side that the marks stand for
     * @return the model
     */
    public LineModel withSide(WallReference other) {
        return new LineModel(other, noise, blunders, drift);
    }

    /**
     * The same model with another noise of the marks.
     *
     * @param other what makes a sound mark miss
     * @return the model
     */
    public LineModel withNoise(MarkNoise other) {
        return new LineModel(side, other, blunders, drift);
    }

    /**
     * The same model with other priors of blunders.
     *
     * @param other how often a mark is not sound
     * @return the model
     */
    public LineModel withBlunders(MarkBlunders other) {
        return new LineModel(side, noise, other, drift);
    }

    /**
     * The same model with another drift of the line.
     *
     * @param other what moves the line between marks
     * @return the model
     */
    public LineModel withDrift(LineDrift other) {
        return new LineModel(side, noise, blunders, other);
    }

    /**
     * Reconciles the marks of a hole whose joins were recorded.
     *
     * @param path the path of the hole
     * @param marks the marks in any order
     * @param joins all joins that are not perfect, in any order; without one all core fits
     * @return the line
     * @throws IllegalArgumentException if the path does not reach a mark, or the side does not exist there
     */
    public ReferenceLine reconcile(HolePath path, List<OrientationMark> marks, List<Join> joins) {
        return reconcile(path, marks, joins, DrawnLines.everywhere());
    }

    /**
     * Reconciles the marks of a hole whose joins were recorded, and of which one knows where the line was drawn: it wanders there
     * alone.
     *
     * @param path the path of the hole
     * @param marks the marks in any order, with their offsets as one reads them who looks down-hole
     * @param joins all joins that are not perfect, in any order; without one all core fits
     * @param drawn where the line was drawn
     * @return the line
     * @throws IllegalArgumentException if the path does not reach a mark, or the side does not exist there
     */
    public ReferenceLine reconcile(HolePath path, List<OrientationMark> marks, List<Join> joins, DrawnLines drawn) {
        return new ReferenceLine(this, path, marks, joins, drawn);
    }

    /**
     * Reconciles the marks of a hole of which nobody has said how the runs fit: the depth of every used mark is taken as a
     * doubtful join.
     *
     * @param path the path of the hole
     * @param marks the marks in any order
     * @return the line
     * @throws IllegalArgumentException if the path does not reach a mark, or the side does not exist there
     */
    public ReferenceLine reconcile(HolePath path, List<OrientationMark> marks) {
        return reconcile(path, marks, DrawnLines.everywhere());
    }

    /**
     * Reconciles the marks of a hole of which nobody has said how the runs fit, and of which one knows where the line was drawn.
     *
     * @param path the path of the hole
     * @param marks the marks in any order, with their offsets as one reads them who looks down-hole
     * @param drawn where the line was drawn
     * @return the line
     * @throws IllegalArgumentException if the path does not reach a mark, or the side does not exist there
     */
    public ReferenceLine reconcile(HolePath path, List<OrientationMark> marks, DrawnLines drawn) {
        return reconcile(path, marks, MarkedHole.of(path, marks).joins(), drawn);
    }
}
