/**
 * Statistics of directions. On the circle: what a sample of angles says of its mean direction, its spread and its trend. On the sphere: the
 * same of directions with an arrow and of lines without one, with their tensors, cones, ellipses and tests.
 *
 * <p>Start with {@link io.github.kernlot.orientation.sphere.CircularSample}, {@link
 * io.github.kernlot.orientation.sphere.DirectionSample} or {@link io.github.kernlot.orientation.sphere.AxisSample}.
 */
@NullMarked
package io.github.kernlot.orientation.sphere;

import org.jspecify.annotations.NullMarked;
