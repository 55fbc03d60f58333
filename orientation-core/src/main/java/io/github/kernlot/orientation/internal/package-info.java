/**
 * Vector arithmetic, trigonometry of degrees and wrapping of angles, for the modules of Kernlot alone. Nothing here is part
 * of the public interface: it may change or go in any version, and no public signature mentions it.
 */
@NullMarked
package io.github.kernlot.orientation.internal;

import org.jspecify.annotations.NullMarked;
