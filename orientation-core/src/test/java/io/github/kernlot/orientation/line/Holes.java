package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Simulated holes for the tests of the fit. */
public final class Holes {

    /** Noise by one cause alone. */
    public static LineModel plain(double level, double locked, double wander) {
        return new LineModel(
                WallReference.lowSide(),
                new MarkNoise(0, level, 0, 0, 0),
                new MarkBlunders(0, 0),
                new LineDrift(wander, locked, 3, 0.3));
    }

    private Holes() {}

    public static HolePath dipping(double dip) {
        return HolePath.straight(HoleDirection.ofDip(dip, 90));
    }

    public static MarkedHole one(LineModel truth, HolePath path, List<Double> depths, List<Join> joins, long seed) {
        LineSimulation simulation = new LineSimulation(truth, path, Marks.DIAMETER, depths, joins, List.of());
        return MarkedHole.of(path, simulation.run(seed).marks(), joins);
    }

    /** Holes marked every 3 m, with joins at random, one in four of them doubtful; the dips are taken in turn. */
    public static List<MarkedHole> many(LineModel truth, int holes, int marks, long seed, double... dips) {
        List<MarkedHole> many = new ArrayList<>();
        for (int hole = 0; hole < holes; hole++) {
            SplittableRandom random = new SplittableRandom(1000 * seed + hole);
            List<Join> joins = new ArrayList<>();
            double depth = 1;
            while (depth < 3 * marks) {
                joins.add(new Join(depth, random.nextInt(4) == 0 ? JoinFit.DOUBTFUL : JoinFit.LOCKED));
                depth -= 3 * Math.log(1 - random.nextDouble());
            }
            HolePath path = dipping(dips[hole % dips.length]);
            many.add(one(truth, path, every(3, marks), joins, 1000 * seed + hole));
        }
        return many;
    }

    public static List<Double> every(double metres, int count) {
        List<Double> depths = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            depths.add(metres * i);
        }
        return depths;
    }

    public static List<Join> joins(JoinFit fit, List<Double> depths) {
        return depths.stream().map(depth -> new Join(depth, fit)).toList();
    }
}
