/**
 * Pictures as SVG text: the stereonet, the strip of the reference line down a hole, plan and section, and the budget of
 * errors. A picture is drawn from values alone and holds no state.
 */
@NullMarked
package io.github.kernlot.survey.picture;

import org.jspecify.annotations.NullMarked;
