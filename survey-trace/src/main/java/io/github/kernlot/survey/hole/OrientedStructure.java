package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.line.LinePosterior;
import io.github.kernlot.survey.uncertainty.Covariance;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A structure with its place and, where the core is oriented, its orientation in the ground.
 *
 * @param structure as it was measured
 * @param position its place on the grid
 * @param covariance of the place, by the errors of the survey and of the structure's depth; the collar's own error is not in it
 * @param line the reference line there; empty where it is unanchored
 * @param plane the orientation, azimuths from the north that was asked for; empty where there is no plane or it is unoriented
 * @param lineation the orientation of the line that was measured in the plane or through the core; empty where there is none or it is
 *     unoriented
 * @param arrow where the line points or, where there is no line, the plane faces; empty where no sense was given or it is unoriented
 * @param note what the user should know of this structure; empty where there is nothing to say
 */
public record OrientedStructure(
        Structure structure,
        Position position,
        Covariance covariance,
        Optional<LinePosterior> line,
        Optional<PlaneOrientation> plane,
        Optional<LineOrientation> lineation,
        Optional<DirectedLine> arrow,
        String note) {

    /**
     * Whether the structure has an orientation in the ground: its plane or, of a line alone, the line.
     *
     * @return false where it keeps what was read alone
     */
    public boolean isOriented() {
        return structure.alpha().isPresent() ? plane.isPresent() : lineation.isPresent();
    }

    /** Whether the reference line oriented the plane or the line through the core. */
    boolean isOrientedByLine() {
        return (structure.hasPlaneByLine() && plane.isPresent())
                || (structure.hasCoreLineByLine() && lineation.isPresent());
    }

    /** The structure and its orientation: {@code bedding at 91.40 m, alpha 41.0, beta 213.0: 62.4/118.9 (dip/dip direction)}. */
    @Override
    public String toString() {
        return structure + ": "
                + Stream.of(
                                isOriented() ? Optional.<String>empty() : Optional.of("unoriented"),
                                plane,
                                lineation,
                                arrow,
                                Optional.of(note).filter(text -> !text.isEmpty()))
                        .flatMap(Optional::stream)
                        .map(Object::toString)
                        .collect(Collectors.joining(", "));
    }
}
