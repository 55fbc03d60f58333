package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.line.Fabric;
import io.github.kernlot.orientation.line.LinePosterior;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which structures are witnesses of the reference line, if any are.
 *
 * @param kinds the kinds of structures that speak for the line, each with its fabric, azimuths from the results' north; empty for a
 *     kind whose fabric is to be estimated from the structures of all holes whose line is anchored well; none of them: nobody speaks
 * @param stray how probable it is that a structure logged as one of a set is not, in [0, 1)
 * @param anchorSigma the greatest sigma of the line with which a structure may tell the fabric of its kind, degrees, above 0
 * @param alphaSigma standard deviation of reading alpha, degrees, 0 or more
 * @param betaSigma standard deviation of reading beta, degrees, 0 or more
 */
public record FabricSettings(
        Map<String, Optional<Fabric>> kinds, double stray, double anchorSigma, double alphaSigma, double betaSigma) {

    /** Copies the kinds and checks the numbers. */
    public FabricSettings {
        kinds = Collections.unmodifiableMap(new LinkedHashMap<>(kinds));
        Require.positive("anchor sigma", anchorSigma, "degrees");
        alphaSigma = Require.notNegative("alpha sigma", alphaSigma, "degrees");
        betaSigma = Require.notNegative("beta sigma", betaSigma, "degrees");
        if (!(stray >= 0 && stray < 1)) {
            throw new IllegalArgumentException("prior of a stray is " + stray + "; expected within [0, 1)");
        }
    }

    /**
     * No structure speaks for the line.
     *
     * @return the settings to begin with
     */
    public static FabricSettings off() {
        return new FabricSettings(Map.of(), Fabric.ASSUMED_STRAY, 5, 2, 5);
    }

    /**
     * The same settings with a kind whose fabric is to be estimated.
     *
     * @param kind the kind of structures, in the log's word
     * @return the settings
     */
    public FabricSettings with(String kind) {
        return with(kind, Optional.empty());
    }

    /**
     * The same settings with a kind of known fabric.
     *
     * @param kind the kind of structures, in the log's word
     * @param fabric its fabric, azimuths from the results' north
     * @return the settings
     */
    public FabricSettings with(String kind, Fabric fabric) {
        return with(kind, Optional.of(fabric));
    }

    private FabricSettings with(String kind, Optional<Fabric> fabric) {
        Map<String, Optional<Fabric>> more = new LinkedHashMap<>(kinds);
        more.put(kind, fabric);
        return new FabricSettings(more, stray, anchorSigma, alphaSigma, betaSigma);
    }

    /** The fabrics, given or estimated from oriented holes; a kind that too few structures tell of is missing. */
    Map<String, Fabric> fabrics(List<OrientedHole> holes) {
        Map<String, Fabric> fabrics = new LinkedHashMap<>();
        kinds.forEach((kind, given) -> {
            List<PlaneOrientation> planes = anchored(kind, holes);
            if (given.isPresent()) {
                fabrics.put(kind, given.get());
            } else if (planes.size() >= 3) {
                fabrics.put(kind, Fabric.of(planes, stray));
            }
        });
        return fabrics;
    }

    private List<PlaneOrientation> anchored(String kind, List<OrientedHole> holes) {
        List<PlaneOrientation> planes = new ArrayList<>();
        for (OrientedHole hole : holes) {
            for (OrientedStructure structure : hole.structures()) {
                double sigma = structure.line().map(LinePosterior::sigma).orElse(Double.POSITIVE_INFINITY);
                if (structure.structure().kind().equals(kind) && sigma <= anchorSigma) {
                    structure.plane().ifPresent(planes::add);
                }
            }
        }
        return planes;
    }
}
