/**
 * Planes from less than oriented core: the cone of poles that an alpha alone leaves, planes from the alphas of several holes, from
 * points, and from two holes through a slab; core oriented by a fabric that is known, and the convention that a log was read by.
 *
 * <p>Start with {@link io.github.kernlot.orientation.solve.PoleCone} for one hole,
 * {@link io.github.kernlot.orientation.solve.PlaneFromAlphas} for several,
 * {@link io.github.kernlot.orientation.solve.PlaneThroughPoints} for points and
 * {@link io.github.kernlot.orientation.solve.FabricLine} for a known fabric.
 */
@NullMarked
package io.github.kernlot.orientation.solve;

import org.jspecify.annotations.NullMarked;
