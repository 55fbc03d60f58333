package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Vector;
import org.jspecify.annotations.Nullable;

/**
 * One error along one hole: what one sigma of it does to each station, and what of that reaches further down. Stations that share
 * one draw make a group; groups follow each other, so what is finished above a station is a sum, and one pass makes all of them.
 */
final class SourceTrack {

    /** Place and direction. */
    static final int SIZE = 6;

    /** Place, direction and the twist of the carried frame. */
    static final int DRAWN = 7;

    final String name;
    final PropagationMode mode;
    private final StationChain chain;
    private final @Nullable SurveyErrorSource[] byLeg;
    private final double[] depthShifts;
    private final Vector[] tangentShifts;
    /** The place at a station, by its own error. */
    private final Vector[] own;
    /** The place at a station, by the errors of the stations above it that are of its group. */
    private final Vector[] shared;
    /** The covariance of places from groups that ended above a station, six numbers each: nn, ee, dd, ne, nd, ed. */
    private final double[] ended;

    SourceTrack(StationChain chain, String name) {
        this.chain = chain;
        this.name = name;
        int count = chain.size();
        byLeg = chain.setup.legs().stream().map(leg -> named(leg.model(), name)).toArray(SurveyErrorSource[]::new);
        mode = mode(byLeg);
        depthShifts = new double[count];
        tangentShifts = new Vector[count];
        own = new Vector[count];
        shared = new Vector[count];
        ended = new double[6 * count];
        for (int i = 0; i < count; i++) {
            shift(i);
            own[i] = i == 0
                    ? tangentShifts[0]
                            .times(chain.depth(0))
                            .plus(chain.tangent(0).times(depthShifts[0]))
                    : chain.arc(i - 1).wayByLower(depthShifts[i], tangentShifts[i]);
        }
        shared[0] = new Vector(0, 0, 0);
        for (int i = 1; i < count; i++) {
            Vector whole = shared[i - 1]
                    .plus(own[i - 1])
                    .plus(chain.arc(i - 1).wayByUpper(depthShifts[i - 1], tangentShifts[i - 1]));
            System.arraycopy(ended, 6 * (i - 1), ended, 6 * i, 6);
            if (group(i) == group(i - 1)) {
                shared[i] = whole;
            } else {
                shared[i] = new Vector(0, 0, 0);
                Outer.square(ended, 6 * i, whole);
            }
        }
    }

    private static @Nullable SurveyErrorSource named(SurveyErrorModel model, String name) {
        return model.sources().stream()
                .filter(source -> source.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private static PropagationMode mode(@Nullable SurveyErrorSource[] byLeg) {
        for (SurveyErrorSource source : byLeg) {
            if (source != null) {
                return source.mode();
            }
        }
        throw new IllegalStateException("no leg has the source");
    }

    private void shift(int station) {
        SurveyErrorSource source = byLeg[chain.leg(station)];
        boolean exact = station == 0 && chain.setup.tieIn() == TieIn.ERROR_FREE;
        if (source == null || exact) {
            tangentShifts[station] = new Vector(0, 0, 0);
            return;
        }
        UnitShift shift = source.weighting().at(chain.point(station)).times(source.sigma());
        // the collar is where depth begins
        depthShifts[station] = chain.depth(station) == 0 ? 0 : shift.depth();
        tangentShifts[station] = new Vector(shift.north(), shift.east(), shift.down()).across(chain.tangent(station));
    }

    /** Which draw of the error a station has. */
    int group(int station) {
        return switch (mode) {
            case RANDOM -> station;
            case SYSTEMATIC -> chain.leg(station);
            case PER_WELL, GLOBAL -> 0;
        };
    }

    /** The number of draws that a hole needs. */
    int groups() {
        return group(chain.size() - 1) + 1;
    }

    double depthShift(int station) {
        return depthShifts[station];
    }

    Vector tangentShift(int station) {
        return tangentShifts[station];
    }

    /** How much deeper a place beyond the last station is by this error than that station. */
    double tailShift(Place place) {
        int last = place.station();
        SurveyErrorSource source = byLeg[chain.leg(last)];
        boolean exact = last == 0 && chain.setup.tieIn() == TieIn.ERROR_FREE;
        if (place.tail() == null || source == null || mode == PropagationMode.RANDOM || exact) {
            return 0;
        }
        return source.weighting().at(place.tail()).depth() * source.sigma() - depthShifts[last];
    }

    /** What the groups of the stations above and below a place do there, north, east, down of place and of direction. */
    void reach(Place place, double[] above, double[] below) {
        int station = place.station();
        Vector tangentShift = tangentShifts[station];
        Vector way = shared[station].plus(own[station].times(place.head()));
        Vector turn = tangentShift;
        Vector wayBelow = new Vector(0, 0, 0);
        Vector turnBelow = wayBelow;
        ArcDerivative part = place.part();
        SurveyedPoint tail = place.tail();
        if (part != null) {
            way = way.plus(part.wayByUpper(depthShifts[station], tangentShift));
            turn = part.turnByUpper(tangentShift);
            wayBelow = part.wayByLower(depthShifts[station + 1], tangentShifts[station + 1]);
            turnBelow = part.turnByLower(tangentShifts[station + 1]);
        } else if (tail != null) {
            way = way.plus(tangentShift.times(tail.depth() - chain.depth(station)))
                    .plus(chain.tangent(station).times(tailShift(place)));
        }
        if (part != null && group(station) == group(station + 1)) {
            Outer.put(above, way.plus(wayBelow), turn.plus(turnBelow));
            Outer.put(below, new Vector(0, 0, 0), new Vector(0, 0, 0));
        } else {
            Outer.put(above, way, turn);
            Outer.put(below, wayBelow, turnBelow);
        }
    }

    /** Adds to the joint covariance of place and direction what this error makes of it. */
    void addTo(double[][] covariance, Place place) {
        int at = 6 * place.station();
        double[] above = new double[SIZE];
        double[] below = new double[SIZE];
        reach(place, above, below);
        Outer.add(covariance, above);
        Outer.add(covariance, below);
        Outer.addPacked(covariance, ended, at);
    }

    /** What each draw does to a place: seven numbers a group, place and direction north, east, down, and the carried frame's twist. */
    double[] byGroup(Place place) {
        double[] loads = new double[DRAWN * groups()];
        int station = place.station();
        for (int i = 0; i < station; i++) {
            int above = DRAWN * group(i);
            int below = DRAWN * group(i + 1);
            Outer.sum(loads, above, own[i]);
            Outer.sum(loads, above, chain.arc(i).wayByUpper(depthShifts[i], tangentShifts[i]));
            loads[above + SIZE] += chain.arc(i).twist(tangentShifts[i]);
            loads[below + SIZE] += chain.arc(i).twist(tangentShifts[i + 1]);
        }
        int above = DRAWN * group(station);
        Vector shift = tangentShifts[station];
        Outer.sum(loads, above, own[station].times(place.head()));
        ArcDerivative part = place.part();
        SurveyedPoint tail = place.tail();
        if (part == null) {
            Outer.sum(loads, above + 3, shift);
        } else {
            int below = DRAWN * group(station + 1);
            Vector turn = part.turnByUpper(shift);
            Vector turnBelow = part.turnByLower(tangentShifts[station + 1]);
            Outer.sum(loads, above, part.wayByUpper(depthShifts[station], shift));
            Outer.sum(loads, below, part.wayByLower(depthShifts[station + 1], tangentShifts[station + 1]));
            Outer.sum(loads, above + 3, turn);
            Outer.sum(loads, below + 3, turnBelow);
            loads[above + SIZE] += part.twist(shift) + part.twist(turn);
            loads[below + SIZE] += part.twist(turnBelow);
        }
        if (tail != null) {
            Outer.sum(loads, above, shift.times(tail.depth() - chain.depth(station)));
            Outer.sum(loads, above, chain.tangent(station).times(tailShift(place)));
        }
        return loads;
    }
}
