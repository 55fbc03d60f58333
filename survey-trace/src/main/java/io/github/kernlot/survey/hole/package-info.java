/**
 * One hole as a whole: its trace, its reference line and the structures measured on its core, turned into oriented
 * structures with their uncertainty. What could not be oriented is kept, and told with the reason.
 */
@NullMarked
package io.github.kernlot.survey.hole;

import org.jspecify.annotations.NullMarked;
