package io.github.kernlot.orientation.line;

/**
 * What was found of one join.
 *
 * @param join the join
 * @param slipped the probability that the core slipped there: 0 at a locked join, 1 at a broken one
 */
public record JoinPosterior(Join join, double slipped) {}
