package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.TraceSettings;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.jspecify.annotations.Nullable;

/** Sums over drawn holes of how far place and direction at one depth fall from those of the hole as measured. */
final class DrawnHoles {

    private static final double ANY_REACH = 1e9;
    private static final double GREATEST_DOGLEG = Math.toRadians(179.9);

    private final double[] sum = new double[SourceTrack.SIZE];
    private final double[][] squares = new double[SourceTrack.SIZE][SourceTrack.SIZE];
    private int count;
    private int discarded;

    static DrawnHoles of(TraceUncertainty uncertainty, double depth, UniformRandomProvider random, int draws) {
        DrawnHoles holes = new DrawnHoles();
        ZigguratSampler.NormalizedGaussian gaussian = ZigguratSampler.NormalizedGaussian.of(random);
        double[] nominal = values(traced(uncertainty, uncertainty.chain().stations()), depth);
        Place place = uncertainty.chain().at(depth);
        for (int i = 0; i < draws; i++) {
            double[] found = draw(uncertainty, place, depth, gaussian);
            if (found == null) {
                holes.discarded++;
                continue;
            }
            for (int j = 0; j < found.length; j++) {
                found[j] -= nominal[j];
                holes.sum[j] += found[j];
            }
            Outer.add(holes.squares, found);
            holes.count++;
        }
        return holes;
    }

    private static double[] values(HoleTrace trace, double depth) {
        Displacement way = trace.displacementAt(depth);
        HoleDirection direction = trace.directionAt(depth);
        return new double[] {way.north(), way.east(), way.down(), direction.north(), direction.east(), direction.down()
        };
    }

    private static HoleTrace traced(TraceUncertainty uncertainty, List<SurveyStation> stations) {
        return HoleTrace.of(
                uncertainty.trace().collar(),
                Survey.of(stations, NorthReference.grid()),
                TraceSettings.assumed().withExtrapolationLimit(ANY_REACH));
    }

    /** One hole, at the depth that is asked; none where its stations are out of order. */
    private static double @Nullable [] draw(
            TraceUncertainty uncertainty, Place place, double depth, ZigguratSampler.NormalizedGaussian gaussian) {
        StationChain chain = uncertainty.chain();
        int size = chain.size();
        double[] depths = new double[size];
        Vector[] shifts = new Vector[size];
        for (int i = 0; i < size; i++) {
            depths[i] = chain.depth(i);
            shifts[i] = new Vector(0, 0, 0);
        }
        double tail = place.tail() == null ? 0 : depth - chain.depth(size - 1);
        for (SourceTrack source : uncertainty.sources()) {
            double[] units = new double[source.groups()];
            for (int g = 0; g < units.length; g++) {
                units[g] = gaussian.sample();
            }
            for (int i = 0; i < size; i++) {
                double unit = units[source.group(i)];
                depths[i] += unit * source.depthShift(i);
                shifts[i] = shifts[i].plus(source.tangentShift(i).times(unit));
            }
            tail += units[source.group(size - 1)] * source.tailShift(place);
        }
        List<SurveyStation> stations = stations(chain, depths, shifts);
        double at = asked(place, chain, depth, depths, tail);
        return stations == null || at < 0 ? null : values(traced(uncertainty, stations), at);
    }

    private static double asked(Place place, StationChain chain, double depth, double[] depths, double tail) {
        int station = place.station();
        if (place.tail() != null) {
            return depths[station] + tail;
        }
        if (place.part() != null) {
            double upper = chain.depth(station);
            double fraction = (depth - upper) / (chain.depth(station + 1) - upper);
            return depths[station] + fraction * (depths[station + 1] - depths[station]);
        }
        return place.head() * depths[station];
    }

    private static @Nullable List<SurveyStation> stations(StationChain chain, double[] depths, Vector[] shifts) {
        List<SurveyStation> stations = new ArrayList<>(depths.length);
        Vector above = chain.tangent(0);
        for (int i = 0; i < depths.length; i++) {
            Vector tangent = turned(chain.tangent(i), shifts[i]);
            boolean ordered = i == 0 ? depths[i] >= 0 : depths[i] > depths[i - 1];
            if (!ordered || (i > 0 && above.angleTo(tangent) >= GREATEST_DOGLEG)) {
                return null;
            }
            above = tangent;
            stations.add(new SurveyStation(
                    depths[i], HoleDirection.ofVector(tangent.north(), tangent.east(), tangent.down())));
        }
        return stations;
    }

    /** The unit vector turned along a great circle by the length of a shift across it. */
    private static Vector turned(Vector tangent, Vector shift) {
        double angle = shift.length();
        double across = angle == 0 ? 1 : Math.sin(angle) / angle;
        return tangent.times(Math.cos(angle)).plus(shift.times(across));
    }

    void add(DrawnHoles other) {
        count += other.count;
        discarded += other.discarded;
        for (int i = 0; i < sum.length; i++) {
            sum[i] += other.sum[i];
            for (int j = 0; j < sum.length; j++) {
                squares[i][j] += other.squares[i][j];
            }
        }
    }

    int count() {
        return count;
    }

    MonteCarloReport report(PointUncertainty firstOrder) {
        double[][] joint = new double[sum.length][sum.length];
        for (int i = 0; i < sum.length; i++) {
            for (int j = 0; j < sum.length; j++) {
                joint[i][j] = (squares[i][j] - sum[i] * sum[j] / count) / (count - 1);
            }
        }
        PointUncertainty drawn = new PointUncertainty(firstOrder.depth(), firstOrder.direction(), joint);
        Displacement offset = new Displacement(sum[0] / count, sum[1] / count, sum[2] / count);
        return new MonteCarloReport(firstOrder, drawn, offset, count, discarded);
    }
}
