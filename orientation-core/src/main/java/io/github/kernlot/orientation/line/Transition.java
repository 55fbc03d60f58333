package io.github.kernlot.orientation.line;

/** How one angle of a chain turns to the next: what a message on one of them says of the other. */
interface Transition {

    /** What a message on the upper angle says of the lower one. */
    double[] down(double[] message);

    /** What a message on the lower angle says of the upper one. */
    double[] up(double[] message);
}
