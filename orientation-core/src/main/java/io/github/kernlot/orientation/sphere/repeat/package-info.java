/**
 * The reader's own errors, learnt from structures that were measured more than once: how far alpha and beta scatter, and how far two readers
 * are apart. They replace the assumed sigmas of alpha and beta.
 *
 * <p>Start with {@link io.github.kernlot.orientation.sphere.repeat.Repeatability}.
 */
@NullMarked
package io.github.kernlot.orientation.sphere.repeat;

import org.jspecify.annotations.NullMarked;
