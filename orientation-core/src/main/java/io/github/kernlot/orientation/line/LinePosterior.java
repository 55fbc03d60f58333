package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import java.util.List;

/**
 * Where the reference line stands at one depth, by all that is known of it. The angles are clockwise from the reference looking
 * down-hole, and hold the marks, the joins and the bias that the hole's marks share, not the errors of the survey.
 */
public final class LinePosterior {

    private final CoreFrame carried;
    private final WallReference reference;
    private final CircularPosterior posterior;

    LinePosterior(CoreFrame carried, WallReference reference, CircularPosterior posterior) {
        this.carried = carried;
        this.reference = reference;
        this.posterior = posterior;
    }

    /**
     * The line at its mean angle, with its sigma.
     *
     * @return the line angle, by which core is oriented
     */
    public LineAngle angle() {
        return new LineAngle(frame(), reference, sigma());
    }

    /**
     * The core in the ground with the line at its mean angle.
     *
     * @return the frame; it exists in a vertical hole too
     */
    public CoreFrame frame() {
        return carried.turned(posterior.mean());
    }

    /**
     * Whether angles from the reference mean something in this hole at this depth; near vertical they do not, though the core is
     * oriented all the same.
     *
     * @return false where no angle should be shown
     */
    public boolean hasMean() {
        return angle().hasMean();
    }

    /**
     * The mean direction of the line.
     *
     * @return degrees in [0, 360)
     * @throws IllegalArgumentException if the reference does not exist in the hole there
     */
    public double mean() {
        return frame().lineAngle(reference);
    }

    /**
     * The circular standard deviation, {@code sqrt(-2 ln R)}.
     *
     * @return degrees; far above 100 where nearly nothing is known, infinite where nothing is
     */
    public double sigma() {
        return posterior.sigma();
    }

    /**
     * Half the width of the 95 % interval: the smallest radius about the mean that holds 95 % of the probability.
     *
     * @return degrees in [0, 180]
     */
    public double radius95() {
        return posterior.radius(0.95);
    }

    /**
     * The lower end of the 95 % interval.
     *
     * @return mean minus radius, degrees in [0, 360)
     * @throws IllegalArgumentException if the reference does not exist in the hole there
     */
    public double low95() {
        return Degrees.wrap360(mean() - radius95());
    }

    /**
     * The upper end of the 95 % interval.
     *
     * @return mean plus radius, degrees in [0, 360)
     * @throws IllegalArgumentException if the reference does not exist in the hole there
     */
    public double high95() {
        return Degrees.wrap360(mean() + radius95());
    }

    /**
     * The angles at which the line may stand, the most probable first. One sound mark against one flipped has a mean that is
     * nowhere near either; the modes tell.
     *
     * @return at least one mode, from the reference
     * @throws IllegalArgumentException if the reference does not exist in the hole there
     */
    public List<LineMode> modes() {
        double start = carried.lineAngle(reference);
        return posterior.modes().stream()
                .map(mode -> new LineMode(Degrees.wrap360(start + mode.angle()), mode.weight()))
                .toList();
    }

    /** The mean, the sigma and, where there are several, the modes. */
    @Override
    public String toString() {
        List<LineMode> modes = hasMean() ? modes() : List.of();
        return angle() + (modes.size() > 1 ? ", modes " + modes : "");
    }
}
