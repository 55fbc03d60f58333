package io.github.kernlot.orientation.internal.circle;

/** How one angle of a chain turns to the next: what a message on one of them says of the other. */
public interface Transition {

    /**
     * What a message on the upper angle says of the lower one.
     *
     * @param message not below 0, at each angle of the grid
     * @return a new message
     */
    double[] down(double[] message);

    /**
     * What a message on the lower angle says of the upper one.
     *
     * @param message not below 0, at each angle of the grid
     * @return a new message
     */
    double[] up(double[] message);
}
