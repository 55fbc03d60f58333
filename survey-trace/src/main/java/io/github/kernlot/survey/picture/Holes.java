package io.github.kernlot.survey.picture;

import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.hole.OrientedHole;
import java.util.List;
import java.util.Locale;

/** What pictures ask of holes. */
final class Holes {

    private Holes() {}

    /** The depth of the deepest thing that is known of a hole; at least 1 m. */
    static double end(OrientedHole hole) {
        List<SurveyStation> stations = hole.trace().survey().stations();
        double end = Math.max(
                Math.min(1, hole.trace().reach()),
                stations.get(stations.size() - 1).depth());
        for (OrientationMark mark : hole.log().marks()) {
            end = Math.max(end, mark.depth());
        }
        return hole.structures().stream()
                .mapToDouble(structure -> structure.structure().depth())
                .reduce(end, Math::max);
    }

    /** The one north of the azimuths of all holes. */
    static North north(List<OrientedHole> holes) {
        List<North> norths =
                holes.stream().map(hole -> hole.settings().output()).distinct().toList();
        if (norths.size() != 1) {
            throw new IllegalArgumentException(
                    holes.isEmpty()
                            ? "there is no hole to draw; expected at least one"
                            : "the holes count azimuths from " + norths + "; expected one north");
        }
        return norths.get(0);
    }

    static String text(North north) {
        return north.name().toLowerCase(Locale.ROOT);
    }

    static KindKey kinds(List<OrientedHole> holes) {
        return KindKey.of(holes.stream()
                .flatMap(hole -> hole.structures().stream())
                .map(structure -> structure.structure().kind()));
    }

    /** {@code Stereonet, QB-01} or {@code Stereonet of 3 holes}. */
    static String title(String picture, List<OrientedHole> holes) {
        return holes.size() == 1
                ? picture + ", " + holes.get(0).log().id()
                : picture + " of " + holes.size() + " holes";
    }
}
