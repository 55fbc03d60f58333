/**
 * From core to rock: thickness from the length that a hole cuts, spacing and frequency of a set with the bias of the sampling, and
 * the angles that a known plane will show along a hole.
 *
 * <p>Start with {@link io.github.kernlot.orientation.rock.CoreIntercept} for a straight hole,
 * {@link io.github.kernlot.orientation.rock.HoleIntercept} for a curved one,
 * {@link io.github.kernlot.orientation.rock.SetAlongCore} for a set, and
 * {@link io.github.kernlot.orientation.rock.ExpectedAngles} for a hole that is planned.
 */
@NullMarked
package io.github.kernlot.orientation.rock;

import org.jspecify.annotations.NullMarked;
