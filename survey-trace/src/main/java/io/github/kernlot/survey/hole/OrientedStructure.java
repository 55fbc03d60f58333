package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.line.LinePosterior;
import io.github.kernlot.survey.uncertainty.Covariance;
import java.util.Optional;

/**
 * A structure with its place and, where the core is oriented, its orientation in the ground.
 *
 * @param structure as it was measured
 * @param position its place on the grid
 * @param covariance of the place, by the errors of the survey and of the structure's depth; the collar's own error is not in it
 * @param line the reference line there; empty where it is unanchored
 * @param plane the orientation, azimuths from the north that was asked for; empty where the structure is unoriented
 * @param lineation the orientation of the line that gamma measured; empty where there is none or it is unoriented
 * @param note what the user should know of this structure; empty where there is nothing to say
 */
public record OrientedStructure(
        Structure structure,
        Position position,
        Covariance covariance,
        Optional<LinePosterior> line,
        Optional<PlaneOrientation> plane,
        Optional<LineOrientation> lineation,
        String note) {

    /**
     * Whether the structure has an orientation in the ground.
     *
     * @return false where it keeps its alpha alone
     */
    public boolean isOriented() {
        return plane.isPresent();
    }

    /** The structure and its orientation: {@code bedding at 91.40 m, alpha 41.0, beta 213.0: 62.4/118.9 (dip/dip direction)}. */
    @Override
    public String toString() {
        return structure + ": "
                + plane.map(PlaneOrientation::toString).orElse("unoriented")
                + lineation.map(line -> ", " + line).orElse("")
                + (note.isEmpty() ? "" : ", " + note);
    }
}
