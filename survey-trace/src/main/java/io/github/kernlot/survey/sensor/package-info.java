/**
 * From what the sensors of a tool read to the direction of the hole, the roll of the tool and how well both are known; and back, to
 * simulate a tool.
 *
 * <p>The axes of a tool are right-handed: z points down-hole along it, x and y across, y lying 90 degrees clockwise of x looking
 * down-hole. The roll of a tool is where its y axis lies. Accelerometers are taken to read the pull of gravity: one that points
 * straight down reads +g. Start with {@link io.github.kernlot.survey.sensor.SensorReading}, or, for accelerometers alone, with
 * {@link io.github.kernlot.survey.sensor.GravityReading}.
 */
@NullMarked
package io.github.kernlot.survey.sensor;

import org.jspecify.annotations.NullMarked;
