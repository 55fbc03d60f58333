package io.github.kernlot.orientation.line;

/**
 * What one mark is worth for the line at one depth.
 *
 * @param mark the mark
 * @param weight how far the line moves for each degree that the mark alone would move it: near 1 where the mark alone decides, near
 *     0 where it is not believed or far away
 */
public record MarkInfluence(OrientationMark mark, double weight) {}
