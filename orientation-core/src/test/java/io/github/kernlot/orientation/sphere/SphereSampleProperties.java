package io.github.kernlot.orientation.sphere;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.orientation.sphere.distribution.FisherDistribution;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must hold of every sample, whatever way it is turned, ordered or written. */
class SphereSampleProperties {

    private static DirectionSample drawn(int size, double kappa, long seed) {
        return DirectionSample.of(FisherDistribution.of(DirectedLine.ofPlungeAndTrend(20, 70), kappa)
                .draw(size, seed));
    }

    /** Turns by 130 degrees about a slanting axis (Rodrigues). */
    private static Vector turned(Vector v) {
        Vector axis = Vector.ofInclination(50, 20);
        double cos = Math.cos(2.2689);
        double sin = Math.sin(2.2689);
        return v.times(cos).plus(axis.cross(v).times(sin)).plus(axis.times(axis.dot(v) * (1 - cos)));
    }

    private static DirectedLine turned(DirectedLine direction) {
        return Unit.direction(turned(Unit.of(direction)));
    }

    private static LineOrientation turned(LineOrientation line) {
        return Unit.line(turned(Unit.of(line)));
    }

    private static DirectionSample each(DirectionSample sample, UnaryOperator<Vector> change) {
        return DirectionSample.ofUnits(
                sample.directions().stream().map(Unit::of).map(change).toList());
    }

    @Property(tries = 100)
    void aTurnedSampleHasTheTurnedAnswers(
            @ForAll @IntRange(min = 5, max = 40) int size,
            @ForAll @DoubleRange(min = 2, max = 200) double kappa,
            @ForAll long seed) {
        DirectionSample sample = drawn(size, kappa, seed);
        DirectionSample turned = each(sample, SphereSampleProperties::turned);

        assertEquals(0, turned.mean().orElseThrow().angleTo(turned(sample.mean().orElseThrow())), 1e-9);
        assertEquals(sample.concentration(), turned.concentration(), 1e-9 * sample.concentration());
        assertEquals(sample.meanCone95(), turned.meanCone95(), 1e-9);
        assertEquals(0, turned.median().angleTo(turned(sample.median())), 1e-5);
        assertEquals(0, turned.axes().median().angleTo(turned(sample.axes().median())), 1e-5);
        assertEquals(sample.tensor().third(), turned.tensor().third(), 1e-13);
        AxisEllipse ellipse = sample.axes().meanEllipse(0.95).orElseThrow();
        AxisEllipse other = turned.axes().meanEllipse(0.95).orElseThrow();
        assertEquals(ellipse.longRadius(), other.longRadius(), 1e-6);
        assertEquals(ellipse.shortRadius(), other.shortRadius(), 1e-6);
        assertEquals(0, other.centre().angleTo(turned(ellipse.centre())), 1e-6);
        sample.kent()
                .ifPresent(kent -> assertEquals(
                        kent.ovalness(), turned.kent().orElseThrow().ovalness(), 1e-6 * kent.concentration()));
        assertEquals(
                sample.outlier().orElseThrow().index(),
                turned.outlier().orElseThrow().index());
    }

    /** Low places of the sum that few starts lead to, that lie across an edge or beside an axis of the sample. */
    @Example
    void theLowestOfSeveralLowPlacesIsFoundWhicheverWayTheSampleIsTurned() {
        aTurnedSampleHasTheTurnedAnswers(38, 3.01, 44189);
        aTurnedSampleHasTheTurnedAnswers(5, 2.03, -52038);
        aTurnedSampleHasTheTurnedAnswers(6, 10.66, -27262);
        aTurnedSampleHasTheTurnedAnswers(6, 82.67, 57056);
    }

    @Property(tries = 50)
    void theOrderDoesNotCount(@ForAll @IntRange(min = 4, max = 30) int size, @ForAll long seed) {
        DirectionSample sample = drawn(size, 6, seed);
        List<DirectedLine> mixed = new ArrayList<>(sample.directions());
        Collections.shuffle(mixed, new Random(seed));
        DirectionSample other = DirectionSample.of(mixed);

        assertEquals(0, other.mean().orElseThrow().angleTo(sample.mean().orElseThrow()), 1e-10);
        assertEquals(sample.concentration(), other.concentration(), 1e-10 * sample.concentration());
        assertEquals(0, other.median().angleTo(sample.median()), 1e-6);
        assertEquals(
                sample.outlier().orElseThrow().statistic(),
                other.outlier().orElseThrow().statistic(),
                1e-9);
    }

    /** What a test computes is the same of a turned sample, and of one whose order was changed. */
    @Property(tries = 50)
    void testsDoNotSeeTheFrameNorTheOrder(@ForAll @IntRange(min = 5, max = 30) int size, @ForAll long seed) {
        DirectionSample sample = drawn(size, 6, seed);
        DirectionSample beside = drawn(size + 3, 40, seed + 1);
        List<DirectedLine> mixed =
                new ArrayList<>(each(sample, SphereSampleProperties::turned).directions());
        Collections.shuffle(mixed, new Random(seed));
        DirectionSample other = DirectionSample.of(mixed);
        DirectionSample besideOther = each(beside, SphereSampleProperties::turned);

        near(
                DirectionTests.elongation(sample).value(),
                DirectionTests.elongation(other).value());
        near(
                DirectionTests.fisherColatitudes(sample, 1, 1).value(),
                DirectionTests.fisherColatitudes(other, 1, 1).value());
        near(
                DirectionTests.symmetryOfBearings(sample, 1, 1).value(),
                DirectionTests.symmetryOfBearings(other, 1, 1).value());
        TestOutcome means = EqualMeans.ofAnyScatter(List.of(sample, beside));
        TestOutcome meansOther = EqualMeans.ofAnyScatter(List.of(besideOther, other));
        near(means.value(), meansOther.value());
        near(means.probability(), meansOther.probability());
        assertEquals(means.distribution(), meansOther.distribution());
    }

    private static void near(double expected, double found) {
        assertEquals(expected, found, 1e-8 * (1 + Math.abs(expected)));
    }

    @Property(tries = 50)
    void theEndOfAnAxisDoesNotCount(@ForAll @IntRange(min = 4, max = 30) int size, @ForAll long seed) {
        AxisSample sample = drawn(size, 6, seed).axes();
        Random random = new Random(seed);
        AxisSample flipped = each(drawn(size, 6, seed), v -> random.nextBoolean() ? v : v.negated())
                .axes();

        assertEquals(0, flipped.mean().orElseThrow().angleTo(sample.mean().orElseThrow()), 1e-9);
        assertEquals(0, flipped.median().angleTo(sample.median()), 1e-6);
        assertEquals(sample.probabilityOfUniform(), flipped.probabilityOfUniform(), 1e-12);
        assertEquals(
                sample.towardsMean().orElseThrow().concentration(),
                flipped.towardsMean().orElseThrow().concentration(),
                1e-8);
        assertEquals(
                sample.meanEllipse(0.95).orElseThrow().longRadius(),
                flipped.meanEllipse(0.95).orElseThrow().longRadius(),
                1e-8);
    }

    /** Each direction twice: the shape stays, and Fisher's cone narrows as it must. */
    @Property(tries = 50)
    void doublingTheSampleKeepsItsShape(@ForAll @IntRange(min = 4, max = 30) int size, @ForAll long seed) {
        DirectionSample sample = drawn(size, 20, seed);
        List<DirectedLine> twice = new ArrayList<>(sample.directions());
        twice.addAll(sample.directions());
        DirectionSample doubled = DirectionSample.of(twice);

        assertEquals(sample.concentration(), doubled.concentration(), 1e-9 * sample.concentration());
        assertEquals(0, doubled.median().angleTo(sample.median()), 1e-6);
        assertEquals(sample.tensor().first(), doubled.tensor().first(), 1e-14);
        assertTrue(doubled.meanCone95() < sample.meanCone95());
    }

    /** No direction of a fine lattice nor near by has a lesser sum of angles. */
    @Property(tries = 40)
    void noPlaceIsLowerThanTheMedian(
            @ForAll @IntRange(min = 1, max = 25) int size,
            @ForAll @DoubleRange(min = 0, max = 8) double kappa,
            @ForAll long seed) {
        DirectionSample sample = drawn(size, kappa, seed);
        List<Vector> vectors = sample.directions().stream().map(Unit::of).toList();
        for (boolean axial : new boolean[] {false, true}) {
            SphericalMedian median = new SphericalMedian(vectors, axial);
            Vector found = axial ? Unit.of(sample.axes().median()) : Unit.of(sample.median());
            double least = median.sum(found) - 1e-9;
            IntStream.range(0, 6_000).forEach(i -> {
                Vector place = Vector.ofInclination(
                        Math.toDegrees(Math.acos(1 - (2 * i + 1) / 6_000.0)), 222.49223594996212 * i);
                assertTrue(median.sum(place) >= least);
            });
            for (int i = 0; i < 360; i++) {
                Vector near =
                        found.plus(Vector.ofInclination(i, 71 * i).times(1e-4)).unit();
                assertTrue(median.sum(near) >= least);
            }
        }
    }

    /** Small scatter is that of a plane: kappa is the inverse of the mean square of one of its two coordinates. */
    @Property(tries = 50)
    void tinyScatterKeepsItsDigits(@ForAll @DoubleRange(min = -6, max = -3) double exponent) {
        double angle = Math.pow(10, exponent);
        DirectionSample cross = DirectionSample.ofVectors(
                new double[] {angle, 0, 1}, new double[] {-angle, 0, 1}, new double[] {0, angle, 1}, new double[] {
                    0, -angle, 1
                });
        assertEquals(2 / (angle * angle), cross.concentration(), (1e-5 + angle) * 2 / (angle * angle));
        double cone = Math.toDegrees(angle * Math.sqrt(Math.expm1(-Math.log(0.05) / 3)));
        assertEquals(cone, cross.meanCone95(), (1e-5 + angle) * cone);
    }
}
