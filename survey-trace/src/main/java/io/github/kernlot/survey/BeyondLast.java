package io.github.kernlot.survey;

/** How a hole is taken to go on below its last station, which no measurement tells. */
public enum BeyondLast {
    /** Straight on in the last direction. */
    STRAIGHT,
    /**
     * On along the circular arc that leads from the direction of the last station but one to that of the last, whatever the method
     * between stations, until it has turned by 90 degrees.
     */
    CONSTANT_CURVATURE
}
