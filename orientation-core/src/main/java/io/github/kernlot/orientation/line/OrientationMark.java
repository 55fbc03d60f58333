package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An orientation mark on core, as it stands to the reference line that was drawn.
 *
 * @param depth metres along the hole, 0 or more
 * @param offset where the mark stands, clockwise from the drawn line looking down-hole, degrees in [0, 360)
 * @param diameter the diameter of the core at the mark, by which widths of pencil and jig become degrees
 * @param sigma the mark's own standard deviation in degrees, above 0, which replaces that of its causes; empty where none was given
 * @param leftOut why a geologist leaves this mark out; empty for a mark that is used
 * @param source who made it and with what
 * @param blunders the mark's own priors of being flipped or wrong, which replace those of the model; empty where the model's hold
 */
public record OrientationMark(
        double depth,
        double offset,
        CoreDiameter diameter,
        OptionalDouble sigma,
        Optional<String> leftOut,
        MarkSource source,
        Optional<MarkBlunders> blunders) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the depth is negative, the offset outside [0, 360], the sigma not above 0, or one is not
     *     finite; an offset of 360 becomes 0
     */
    public OrientationMark {
        depth = Require.notNegative("depth", depth, "m");
        offset = Require.azimuth("offset", offset);
        if (sigma.isPresent()) {
            Require.positive("mark sigma", sigma.getAsDouble(), "degrees");
        }
    }

    /**
     * A mark that is used, with the sigma of its causes and the priors of the model, of which nobody knows who made it.
     *
     * @param depth metres along the hole, 0 or more
     * @param offset clockwise from the drawn line looking down-hole, degrees in [0, 360]
     * @param diameter the diameter of the core there
     * @return the mark
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static OrientationMark of(double depth, double offset, CoreDiameter diameter) {
        return new OrientationMark(
                depth,
                offset,
                diameter,
                OptionalDouble.empty(),
                Optional.empty(),
                MarkSource.unknown(),
                Optional.empty());
    }

    /**
     * The same mark at another place round the core.
     *
     * @param degrees clockwise from the drawn line looking down-hole, degrees in [0, 360]
     * @return the mark
     * @throws IllegalArgumentException if the offset lies outside its range
     */
    public OrientationMark withOffset(double degrees) {
        return new OrientationMark(depth, degrees, diameter, sigma, leftOut, source, blunders);
    }

    /**
     * The mark as it is read by one who looks the other way: its offset is 360 minus this one.
     *
     * @return the mark
     */
    public OrientationMark mirrored() {
        return withOffset(Degrees.wrap360(-offset));
    }

    /**
     * The same mark with a standard deviation of its own.
     *
     * @param degrees the standard deviation, above 0
     * @return the mark
     * @throws IllegalArgumentException if it is not a finite number above 0
     */
    public OrientationMark withSigma(double degrees) {
        return new OrientationMark(depth, offset, diameter, OptionalDouble.of(degrees), leftOut, source, blunders);
    }

    /**
     * The same mark, left out.
     *
     * @param reason why, in the geologist's words; may be empty
     * @return the mark
     */
    public OrientationMark leftOutFor(String reason) {
        return new OrientationMark(depth, offset, diameter, sigma, Optional.of(reason), source, blunders);
    }

    /**
     * The same mark by somebody.
     *
     * @param other who made it and with what
     * @return the mark
     */
    public OrientationMark withSource(MarkSource other) {
        return new OrientationMark(depth, offset, diameter, sigma, leftOut, other, blunders);
    }

    /**
     * The same mark with priors of its own.
     *
     * @param own how probable it is that this mark is flipped or wrong
     * @return the mark
     */
    public OrientationMark withBlunders(MarkBlunders own) {
        return new OrientationMark(depth, offset, diameter, sigma, leftOut, source, Optional.of(own));
    }

    /**
     * The core as this mark alone has it, taken for sound: the line lies where the mark stands for the side that it should.
     *
     * @param path the path of the hole
     * @param side the side that the mark stands for
     * @return the core in the ground at the mark's depth, with its line
     * @throws IllegalArgumentException if the path does not reach the mark, or the side does not exist there
     */
    public CoreFrame frameBy(HolePath path, WallReference side) {
        HoleDirection direction = path.directionAt(depth);
        if (!side.existsIn(direction)) {
            throw new IllegalArgumentException(this + ": there is no " + side + " in a hole of " + direction
                    + "; use a mark of another side (WallReference.north() in a vertical hole) or leave it out");
        }
        // the mark stands for the side, so the drawn line lies -offset from that side
        return CoreFrame.at(direction, side, -offset);
    }

    /** As it is written in a log: {@code mark at 27.30 m, offset 338.0}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "mark at %.2f m, offset %s", depth, Degrees.azimuthText(offset))
                + leftOut.map(reason -> ", left out (" + reason + ")").orElse("");
    }
}
