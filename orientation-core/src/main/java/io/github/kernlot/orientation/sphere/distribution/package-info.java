/**
 * Distributions of angles, directions and axes: densities, fits by moments and by likelihood, seeded draws.
 *
 * <p>Start with {@link io.github.kernlot.orientation.sphere.distribution.FisherDistribution} for directions and with {@link
 * io.github.kernlot.orientation.sphere.distribution.BinghamDistribution} for axes. The samples of the package above fit them.
 */
@NullMarked
package io.github.kernlot.orientation.sphere.distribution;

import org.jspecify.annotations.NullMarked;
