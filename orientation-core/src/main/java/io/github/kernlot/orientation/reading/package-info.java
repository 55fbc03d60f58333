/**
 * Readings as they are made on the core, turned into planes and lines on core with their uncertainty: the height of a trace, points along
 * it, both ends of a line, and traces on cut faces.
 *
 * <p>Start with {@link io.github.kernlot.orientation.reading.TraceFit}, which fits the plane through points on the wall;
 * {@link io.github.kernlot.orientation.reading.FaceTrace} tells what half core leaves open.
 */
@NullMarked
package io.github.kernlot.orientation.reading;

import org.jspecify.annotations.NullMarked;
