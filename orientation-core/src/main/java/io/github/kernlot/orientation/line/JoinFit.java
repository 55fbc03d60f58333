package io.github.kernlot.orientation.line;

/** How well two pieces of core fit where they were put together. */
public enum JoinFit {
    /** The broken faces lock in one way only. */
    LOCKED,
    /** The pieces may have been put together turned. */
    DOUBTFUL,
    /** Nothing says how one piece lay to the other: a new line begins. */
    BROKEN
}
