/**
 * Statistics of directions. On the circle: what a sample of angles says of its mean direction, its spread and its trend.
 *
 * <p>Start with {@link io.github.kernlot.orientation.sphere.CircularSample}.
 */
@NullMarked
package io.github.kernlot.orientation.sphere;

import org.jspecify.annotations.NullMarked;
