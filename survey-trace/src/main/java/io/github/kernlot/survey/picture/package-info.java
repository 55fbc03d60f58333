/**
 * Pictures as SVG text: the stereonet, the strip of the reference line down a hole, plan and section; and a page that shows
 * them with tables. A picture is drawn from values alone and holds no state.
 *
 * <p>Start with {@link io.github.kernlot.survey.picture.ReportPage} for everything at once.
 */
@NullMarked
package io.github.kernlot.survey.picture;

import org.jspecify.annotations.NullMarked;
