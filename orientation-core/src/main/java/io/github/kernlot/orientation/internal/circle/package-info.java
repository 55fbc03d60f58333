/**
 * Densities of an angle on an even grid round the circle, and what a random turn makes of them, for the modules of Kernlot alone.
 * Nothing here knows of cores or holes.
 */
@NullMarked
package io.github.kernlot.orientation.internal.circle;

import org.jspecify.annotations.NullMarked;
