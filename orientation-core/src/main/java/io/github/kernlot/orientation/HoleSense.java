package io.github.kernlot.orientation;

/** The sense along the hole in which an arrow on the core points, or the side of a plane on which a block lies. */
public enum HoleSense {
    /** Away from the collar, in an upward hole too. */
    DOWN_HOLE,
    /** Towards the collar, in an upward hole too. */
    UP_HOLE
}
