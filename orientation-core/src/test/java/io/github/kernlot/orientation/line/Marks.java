package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/** Marks for tests, all on core of 63.5 mm. */
public final class Marks {

    public static final CoreDiameter DIAMETER = CoreDiameter.ofMillimetres(63.5);
    public static final HolePath STRAIGHT = HolePath.straight(HoleDirection.ofDip(-60, 90));

    private Marks() {}

    public static OrientationMark mark(double depth, double offset) {
        return OrientationMark.of(depth, offset, DIAMETER);
    }

    /** Marks 10 m apart from 10 m on. */
    public static List<OrientationMark> marks(double... offsets) {
        List<OrientationMark> marks = new ArrayList<>();
        for (double offset : offsets) {
            marks.add(mark(10 + 10 * marks.size(), offset));
        }
        return marks;
    }

    /** Marks up to 300 m, most of them near one line, some wild, in no order. */
    public static List<OrientationMark> random(RandomGenerator random) {
        double base = 360 * random.nextDouble();
        List<OrientationMark> marks = new ArrayList<>();
        int count = 1 + random.nextInt(25);
        for (int i = 0; i < count; i++) {
            double error = random.nextInt(4) == 0 ? 360 * random.nextDouble() : 8 * random.nextGaussian();
            OrientationMark mark = mark(300 * random.nextDouble(), wrapped(base + error));
            marks.add(random.nextInt(3) == 0 ? mark.withSigma(0.5 + 5 * random.nextDouble()) : mark);
        }
        return marks;
    }

    public static List<Join> randomJoins(RandomGenerator random) {
        List<Join> joins = new ArrayList<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            joins.add(new Join(300 * random.nextDouble(), JoinFit.values()[random.nextInt(3)]));
        }
        return joins;
    }

    public static List<OrientationMark> turned(List<OrientationMark> marks, double angle) {
        return marks.stream()
                .map(mark -> mark.withOffset(wrapped(mark.offset() + angle)))
                .toList();
    }

    public static HandMethod of(WallReference side) {
        return new HandMethod(side, MarkNoise.assumed(), 10, 1);
    }

    public static HandMethod withNeighbours(int neighbours) {
        return new HandMethod(WallReference.lowSide(), MarkNoise.assumed(), 10, neighbours);
    }

    public static double wrapped(double degrees) {
        double rest = degrees - 360 * Math.floor(degrees / 360);
        return rest >= 360 ? 0 : rest;
    }

    /** How far one angle lies from another round the circle. */
    public static double apart(double one, double other) {
        return Math.abs(Math.IEEEremainder(one - other, 360));
    }
}
