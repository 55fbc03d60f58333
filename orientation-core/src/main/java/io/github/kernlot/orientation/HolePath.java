package io.github.kernlot.orientation;

/**
 * The path of a hole, as far as oriented core needs it. A tool with a desurvey of its own implements this and needs no other
 * module.
 *
 * <p>The reference line and its witnesses ask for the direction and the carried frame, thickness for the displacement; the turn is for
 * the caller. The carried frame of a path of one's own is {@link CoreFrame#carriedTo} the direction at the collar and then
 * {@link CoreFrame#carriedAlong} those of points down the hole, one after another: exact along arcs, and with an error that falls as the
 * square of the step elsewhere.
 *
 * <p>Depths are metres along the hole from the collar. A path may refuse a depth that it cannot vouch for with an
 * {@code IllegalArgumentException}.
 */
public interface HolePath {

    /**
     * A hole that keeps one direction.
     *
     * @param direction its direction
     * @return the path, for every depth from 0 on
     */
    static HolePath straight(HoleDirection direction) {
        return new StraightPath(direction);
    }

    /**
     * The direction of the hole.
     *
     * @param depth metres along the hole
     * @return the direction at that depth
     * @throws IllegalArgumentException if the path does not reach that depth
     */
    HoleDirection directionAt(double depth);

    /**
     * The frame that is carried down the hole without twist from the collar: a scribe on the core, straight while the core is in
     * the ground and whole, keeps its angle in it. It is defined everywhere, also where the hole is vertical. Only differences of
     * angles in it mean something; its start is {@link CoreFrame#carriedTo} at the collar.
     *
     * @param depth metres along the hole
     * @return the carried frame at that depth, whose line is an imagined scribe
     * @throws IllegalArgumentException if the path does not reach that depth
     */
    CoreFrame carriedFrameAt(double depth);

    /**
     * The way from the collar.
     *
     * @param depth metres along the hole
     * @return the displacement from depth 0 to that depth
     * @throws IllegalArgumentException if the path does not reach that depth
     */
    Displacement displacementAt(double depth);

    /**
     * How far a straight scribe turns from the low side: the integral of {@code -cos I dA}, positive clockwise looking down-hole.
     * It depends on the path and not on its ends alone, and is additive: from a to b and from b to c make a to c, whole turns
     * included. Through a vertical place it counts half a turn, whose sign is a choice.
     *
     * @param from depth where the scribe begins, metres along the hole
     * @param to depth where it ends, metres along the hole; may be less than {@code from}
     * @return the turn in degrees, not wrapped
     * @throws IllegalArgumentException if the path does not reach a depth, or the hole is vertical at one of the two, where there
     *     is no low side
     */
    double scribeTurn(double from, double to);
}
