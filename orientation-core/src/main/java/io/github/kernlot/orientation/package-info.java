/**
 * The nouns of core orientation: directions of holes, planes and lines in the ground, planes and lines on core, the frame
 * that carries one to the other, and the path of a hole as far as orientation needs it. Angles are degrees, lengths metres.
 *
 * <p>Start with {@code CoreFrame}: given the direction of the hole and the angle of the reference line it turns the alpha
 * and beta of a {@code CorePlane} into the dip and dip direction of a {@code PlaneOrientation}.
 */
@NullMarked
package io.github.kernlot.orientation;

import org.jspecify.annotations.NullMarked;
