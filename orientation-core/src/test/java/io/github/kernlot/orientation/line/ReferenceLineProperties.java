package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.WallReference;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** What holds of the inferred line whatever the marks. */
class ReferenceLineProperties {

    private static final HolePath PATH = Marks.STRAIGHT;
    private static final LineModel MODEL = LineModel.assumed();
    private static final int TRIES = 25;

    private static double angle(ReferenceLine line, HolePath path, double depth) {
        return line.at(depth).orElseThrow().frame().turnFrom(path.carriedFrameAt(depth));
    }

    /** A line of which something is known at a depth: a mean that is no accident of rounding. */
    private static Optional<LinePosterior> known(ReferenceLine line, double depth) {
        return line.at(depth).filter(posterior -> posterior.sigma() < 120);
    }

    private static void assertSame(LinePosterior one, LinePosterior other, double turn, double tolerance) {
        assertEquals(0, Marks.apart(one.mean() + turn, other.mean()), tolerance);
        assertEquals(one.sigma(), other.sigma(), tolerance);
        assertEquals(one.radius95(), other.radius95(), 10 * tolerance);
    }

    @Property(tries = TRIES)
    void turningAllMarksTurnsTheLineBack(
            @ForAll long seed,
            @ForAll @DoubleRange(max = 360) double by,
            @ForAll @DoubleRange(max = 300) double depth) {
        Random random = new Random(seed);
        List<OrientationMark> marks = Marks.random(random);
        List<Join> joins = Marks.randomJoins(random);
        ReferenceLine line = MODEL.reconcile(PATH, marks, joins);
        ReferenceLine turned = MODEL.reconcile(PATH, Marks.turned(marks, by), joins);
        known(line, depth)
                .ifPresent(posterior -> assertSame(posterior, turned.at(depth).orElseThrow(), -by, 0.02));
    }

    @Property(tries = TRIES)
    void turningAllMarksOverTurnsTheLineOver(@ForAll long seed, @ForAll @DoubleRange(max = 300) double depth) {
        Random random = new Random(seed);
        List<OrientationMark> marks = Marks.random(random);
        List<Join> joins = Marks.randomJoins(random);
        ReferenceLine line = MODEL.reconcile(PATH, marks, joins);
        ReferenceLine turned = MODEL.reconcile(PATH, Marks.turned(marks, 180), joins);
        known(line, depth)
                .ifPresent(posterior -> assertSame(posterior, turned.at(depth).orElseThrow(), 180, 1e-6));
        for (int i = 0; i < marks.size(); i++) {
            MarkChances before = line.marks().get(i).chances().orElseThrow();
            MarkChances after = turned.marks().get(i).chances().orElseThrow();
            assertEquals(before.flipped(), after.flipped(), 1e-9);
        }
    }

    @Property(tries = TRIES)
    void theOrderOfRowsDoesNotMatter(@ForAll long seed, @ForAll @DoubleRange(max = 300) double depth) {
        Random random = new Random(seed);
        List<OrientationMark> marks = new ArrayList<>(Marks.random(random));
        List<Join> joins = new ArrayList<>(Marks.randomJoins(random));
        ReferenceLine line = MODEL.reconcile(PATH, marks, joins);
        Collections.shuffle(marks, random);
        Collections.shuffle(joins, random);
        ReferenceLine shuffled = MODEL.reconcile(PATH, marks, joins);
        assertEquals(line.marks(), shuffled.marks());
        assertEquals(line.joins(), shuffled.joins());
        assertEquals(line.at(depth).map(Object::toString), shuffled.at(depth).map(Object::toString));
    }

    /** Read from the bottom up, with clockwise become anticlockwise; joins lie away from marks, since below is above now. */
    @Property(tries = TRIES)
    void aHoleReadBackwardsHasItsLineMirrored(@ForAll long seed, @ForAll @DoubleRange(max = 300) double depth) {
        Random random = new Random(seed);
        List<OrientationMark> marks = Marks.random(random);
        List<Join> joins = Marks.randomJoins(random);
        List<OrientationMark> mirrored = marks.stream()
                .map(mark -> {
                    OrientationMark turned = Marks.mark(300 - mark.depth(), Marks.wrapped(-mark.offset()));
                    return mark.sigma().isPresent()
                            ? turned.withSigma(mark.sigma().getAsDouble())
                            : turned;
                })
                .toList();
        List<Join> backwards = joins.stream()
                .map(join -> new Join(300 - join.depth(), join.fit()))
                .toList();
        ReferenceLine line = MODEL.reconcile(PATH, marks, joins);
        ReferenceLine back = MODEL.reconcile(PATH, mirrored, backwards);
        // 5e-5 at most in 5,000 holes of marks at random, which contradict each other
        assertEquals(line.logEvidence(), back.logEvidence(), 5e-4);
        known(line, depth).ifPresent(posterior -> {
            LinePosterior other = back.at(300 - depth).orElseThrow();
            assertEquals(0, Marks.apart(posterior.mean(), -other.mean()), 1e-6);
            assertEquals(posterior.sigma(), other.sigma(), 1e-6);
        });
        List<Double> down = line.joins().stream().map(JoinPosterior::slipped).toList();
        List<Double> up = new ArrayList<>(
                back.joins().stream().map(JoinPosterior::slipped).toList());
        Collections.reverse(up);
        for (int i = 0; i < down.size(); i++) {
            assertEquals(down.get(i), up.get(i), 1e-6);
        }
    }

    @Property(tries = TRIES)
    void marksOfTheHighSideAreMarksOfTheLowSideTurnedOver(
            @ForAll long seed, @ForAll @DoubleRange(max = 300) double depth) {
        Random random = new Random(seed);
        List<OrientationMark> marks = Marks.random(random);
        List<Join> joins = Marks.randomJoins(random);
        ReferenceLine low = MODEL.reconcile(PATH, marks, joins);
        ReferenceLine high = MODEL.withSide(WallReference.highSide()).reconcile(PATH, Marks.turned(marks, 180), joins);
        known(low, depth)
                .ifPresent(posterior -> assertSame(posterior, high.at(depth).orElseThrow(), 0, 1e-6));
    }

    /** Marks of the north in a hole towards the north: its north side is its high side, and as sharp at 45 degrees. */
    @Property(tries = TRIES)
    void marksOfTheNorthInAHoleTowardsNorthAreMarksOfTheHighSide(
            @ForAll long seed, @ForAll @DoubleRange(max = 300) double depth) {
        HolePath path = HolePath.straight(HoleDirection.ofInclination(45, 0));
        Random random = new Random(seed);
        List<OrientationMark> marks = Marks.random(random);
        List<Join> joins = Marks.randomJoins(random);
        ReferenceLine high = MODEL.withSide(WallReference.highSide()).reconcile(path, marks, joins);
        ReferenceLine north = MODEL.withSide(WallReference.north()).reconcile(path, marks, joins);
        known(high, depth).ifPresent(posterior -> {
            LinePosterior other = north.at(depth).orElseThrow();
            assertEquals(0, Marks.apart(posterior.mean() - 180, other.mean()), 1e-6);
            assertEquals(posterior.sigma(), other.sigma(), 1e-6);
        });
    }

    /** The generalised least squares of a random walk, solved by Commons Math 3.6.1: the textbook's answer without blunders. */
    @Property(tries = TRIES)
    void withoutBlundersAndSlipsTheLineIsThatOfLeastSquares(
            @ForAll long seed,
            @ForAll @DoubleRange(max = 1) double wander,
            @ForAll @DoubleRange(max = 2) double locked,
            @ForAll @DoubleRange(max = 300) double depth) {
        LineModel model = MODEL.withBlunders(new MarkBlunders(0, 0))
                .withDrift(new LineDrift(wander, locked, 3, 0))
                .withNoise(new MarkNoise(1, 2, 0.5, 1, 0.3));
        Random random = new Random(seed);
        double base = 360 * random.nextDouble();
        List<OrientationMark> marks = new ArrayList<>();
        for (int i = random.nextInt(40); i >= 0; i--) {
            double sigma = 0.5 + 4 * random.nextDouble();
            double offset = Marks.wrapped(base + sigma * random.nextGaussian());
            marks.add(Marks.mark(Math.rint(3000 * random.nextDouble()) / 10, offset)
                    .withSigma(sigma));
        }
        List<Join> joins = Marks.randomJoins(random).stream()
                .filter(join -> join.fit() != JoinFit.BROKEN)
                .toList();
        List<DenseLine.Seen> seen = DenseLine.Seen.all(model, PATH, marks);
        int count = seen.size();
        RealMatrix covariance = new Array2DRowRealMatrix(count, count);
        RealVector away = new ArrayRealVector(count);
        double first = seen.get(0).angle();
        for (int i = 0; i < count; i++) {
            double one = walked(model.drift(), joins, depth, seen.get(i).depth());
            for (int j = 0; j < count; j++) {
                double other = walked(model.drift(), joins, depth, seen.get(j).depth());
                double own = i == j ? Math.pow(seen.get(i).sigma(), 2) : 0;
                covariance.setEntry(i, j, own + (one * other > 0 ? Math.min(Math.abs(one), Math.abs(other)) : 0));
            }
            away.setEntry(i, Math.IEEEremainder(seen.get(i).angle() - first, 360));
        }
        DecompositionSolver solver = new CholeskyDecomposition(covariance).getSolver();
        RealVector weights = solver.solve(new ArrayRealVector(count, 1));
        double information = Arrays.stream(weights.toArray()).sum();
        double mean = first + weights.dotProduct(away) / information;

        ReferenceLine line = model.reconcile(PATH, marks, joins);
        assertEquals(0, Marks.apart(mean, angle(line, PATH, depth)), 0.02);
        assertEquals(1, line.at(depth).orElseThrow().sigma() / Math.hypot(Math.sqrt(1 / information), 0.3), 0.01);
    }

    /** The variance that the line gathers from one depth to another, negative upwards. */
    private static double walked(LineDrift drift, List<Join> joins, double from, double to) {
        double upper = Math.min(from, to);
        double lower = Math.max(from, to);
        double variance = drift.wander() * drift.wander() * (lower - upper);
        for (Join join : joins) {
            double sigma = join.fit() == JoinFit.LOCKED ? drift.locked() : drift.doubtful();
            variance += join.depth() >= upper && join.depth() < lower ? sigma * sigma : 0;
        }
        return to < from ? -variance : variance;
    }

    /** The rule for the sigma is that of Mardia and Jupp, Directional Statistics, 2000 (from memory): sqrt(-2 ln R). */
    @Property(tries = TRIES)
    void whatIsToldOfOneDepthIsConsistent(@ForAll long seed, @ForAll @DoubleRange(max = 300) double depth) {
        Random random = new Random(seed);
        ReferenceLine line = MODEL.reconcile(PATH, Marks.random(random), Marks.randomJoins(random));
        line.at(depth).ifPresent(posterior -> {
            double sum =
                    posterior.modes().stream().mapToDouble(LineMode::weight).sum();
            assertEquals(1, sum, 0.01);
            assertTrue(posterior.radius95() >= 0 && posterior.radius95() <= 180);
            assertTrue(posterior.sigma() > 0);
        });
        for (MarkPosterior mark : line.marks()) {
            MarkChances chances = mark.chances().orElseThrow();
            assertEquals(1, chances.sound() + chances.flipped() + chances.wrong(), 1e-12);
        }
    }

    @Property(tries = TRIES)
    void nothingValidGivesNaN(
            @ForAll @LongRange(min = 0, max = Long.MAX_VALUE) long seed,
            @ForAll @DoubleRange(max = 1) double flipped,
            @ForAll @DoubleRange(max = 1) double wrong,
            @ForAll @DoubleRange(max = 1) double slip) {
        Random random = new Random(seed);
        MarkBlunders blunders =
                new MarkBlunders(random.nextBoolean() ? 0 : flipped * (1 - wrong), random.nextBoolean() ? 0 : wrong);
        LineDrift drift = new LineDrift(
                random.nextBoolean() ? 0 : random.nextDouble(),
                random.nextBoolean() ? 0 : random.nextDouble(),
                random.nextBoolean() ? 0 : 200 * random.nextDouble(),
                random.nextBoolean() ? Math.rint(slip) : slip);
        LineModel model = MODEL.withBlunders(blunders).withDrift(drift);
        List<OrientationMark> marks = new ArrayList<>();
        int count = random.nextInt(8);
        double base = 360 * random.nextDouble();
        for (int i = 0; i < count; i++) {
            double sigma = Math.pow(10, -3 + 7 * random.nextDouble());
            double offset = random.nextBoolean() ? base : 360 * random.nextDouble();
            OrientationMark mark = Marks.mark(random.nextInt(30), offset);
            marks.add(random.nextBoolean() ? mark.withSigma(sigma) : mark);
        }
        List<Join> joins = new ArrayList<>();
        for (int i = random.nextInt(6); i > 0; i--) {
            joins.add(new Join(random.nextInt(30), JoinFit.values()[random.nextInt(3)]));
        }
        ReferenceLine line = model.reconcile(PATH, marks, joins);
        assertTrue(Double.isFinite(line.logEvidence()));
        for (JoinPosterior join : line.joins()) {
            assertTrue(join.slipped() >= 0 && join.slipped() <= 1, () -> join.toString());
        }
        for (MarkPosterior mark : line.marks()) {
            MarkChances chances = mark.chances().orElseThrow();
            assertEquals(1, chances.sound() + chances.flipped() + chances.wrong(), 1e-12);
            assertTrue(mark.predicted().isEmpty()
                    || Double.isFinite(mark.predicted().getAsDouble()));
        }
        for (double depth : new double[] {0, 7, 7.5, 29, 31}) {
            line.at(depth).ifPresent(posterior -> {
                assertTrue(Double.isFinite(posterior.mean()));
                assertTrue(posterior.sigma() >= 0);
                assertTrue(posterior.radius95() >= 0 && posterior.radius95() <= 180);
                assertTrue(posterior.modes().stream().allMatch(mode -> mode.weight() > 0 && mode.weight() < 1.01));
            });
            for (MarkInfluence influence : line.influences(depth)) {
                assertTrue(Double.isFinite(influence.weight()), () -> influence.toString());
            }
        }
    }
}
