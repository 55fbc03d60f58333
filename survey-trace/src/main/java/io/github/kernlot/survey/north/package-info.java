/**
 * Where the norths lie at a place and a date: the declination of the World Magnetic Model, the convergence of a transverse Mercator
 * grid, and the reference that a survey is converted by.
 *
 * <p>Start with {@link io.github.kernlot.survey.north.WorldMagneticModel}, or with
 * {@link io.github.kernlot.survey.north.TransverseMercator} where the convergence alone is wanted.
 */
@NullMarked
package io.github.kernlot.survey.north;

import org.jspecify.annotations.NullMarked;
