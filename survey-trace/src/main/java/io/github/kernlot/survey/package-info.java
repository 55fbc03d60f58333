/**
 * The survey of a hole and what it says of the path of the hole: stations, the north they refer to, the desurvey methods,
 * and the trace that answers position and direction at any depth.
 *
 * <p>Start with a list of stations and their north reference; a trace made of them is a path that the packages of
 * orientation-core accept.
 */
@NullMarked
package io.github.kernlot.survey;

import org.jspecify.annotations.NullMarked;
