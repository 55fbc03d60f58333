/**
 * What can be asked of a trace: at which depths it has an elevation, crosses a plane, is nearest to a point or to another hole;
 * how far it has gone in plan; how it lies in a section; and which arc takes it to a target.
 *
 * <p>Start with {@link io.github.kernlot.survey.place.TraceSearch} for depths, with
 * {@link io.github.kernlot.survey.place.PlanCourse}, {@link io.github.kernlot.survey.place.VerticalSection} and
 * {@link io.github.kernlot.survey.place.TraceSampling} for the way the hole lies, and with
 * {@link io.github.kernlot.survey.place.ArcAhead} for what lies ahead.
 */
@NullMarked
package io.github.kernlot.survey.place;

import org.jspecify.annotations.NullMarked;
