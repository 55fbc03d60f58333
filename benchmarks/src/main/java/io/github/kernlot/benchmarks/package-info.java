/**
 * JMH benchmarks. Each class opens with the question that it answers; the baseline stands in the same class.
 */
@NullMarked
package io.github.kernlot.benchmarks;

import org.jspecify.annotations.NullMarked;
