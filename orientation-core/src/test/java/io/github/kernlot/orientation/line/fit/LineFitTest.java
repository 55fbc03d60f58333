package io.github.kernlot.orientation.line.fit;

import static io.github.kernlot.orientation.line.fit.LineParameter.FLIPPED;
import static io.github.kernlot.orientation.line.fit.LineParameter.LEVEL;
import static io.github.kernlot.orientation.line.fit.LineParameter.LOCKED;
import static io.github.kernlot.orientation.line.fit.LineParameter.SENSOR;
import static io.github.kernlot.orientation.line.fit.LineParameter.WANDER;
import static io.github.kernlot.orientation.line.fit.LineParameter.WRONG;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.line.Holes;
import io.github.kernlot.orientation.line.Join;
import io.github.kernlot.orientation.line.JoinFit;
import io.github.kernlot.orientation.line.LineDrift;
import io.github.kernlot.orientation.line.LineModel;
import io.github.kernlot.orientation.line.MarkBlunders;
import io.github.kernlot.orientation.line.MarkNoise;
import io.github.kernlot.orientation.line.MarkedHole;
import io.github.kernlot.orientation.line.Marks;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.fit.FittedParameter.Standing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LineFitTest {

    private static final LineModel TRUTH = new LineModel(
            WallReference.lowSide(),
            new MarkNoise(0.7, 3, 0.5, 1, 1),
            new MarkBlunders(0.04, 0.03),
            new LineDrift(0.3, 1, 5, 0.2));

    /** Pairs of marks, each on its own piece of core. */
    private static MarkedHole pairs(LineModel truth, int pairs, long seed) {
        return Holes.one(
                truth,
                Marks.STRAIGHT,
                Holes.every(1, 2 * pairs),
                Holes.joins(JoinFit.BROKEN, Holes.every(2, pairs)),
                seed);
    }

    /** Maximum likelihood of a Gaussian of known mean, from memory of any textbook: sigma^2 the mean square, its error sigma/sqrt(2n). */
    @Test
    void pairsOfMarksGiveTheRootMeanSquareOfTheirDifferences() {
        MarkedHole hole = pairs(Holes.plain(4, 0, 0), 30, 5);
        double sum = 0;
        for (int i = 0; i < 60; i += 2) {
            sum += Math.pow(
                    Marks.apart(
                            hole.marks().get(i).offset(),
                            hole.marks().get(i + 1).offset()),
                    2);
        }
        double expected = Math.sqrt(sum / 30 / 2);
        FittedParameter level = LineFit.of(Holes.plain(1, 0, 0))
                .withFree(LEVEL)
                .to(List.of(hole))
                .parameter(LEVEL);
        assertEquals(Standing.TOLD, level.standing());
        assertEquals(expected, level.value(), 2e-3 * expected);
        assertEquals(expected / Math.sqrt(60), level.standardError().orElseThrow(), 0.02 * expected / Math.sqrt(60));
    }

    /** The binomial share and its error, and the 95 % end of none in n, 1 - exp(-1.92/n), from memory of any textbook. */
    @Test
    void shareOfFlippedMarksIsBinomial() {
        List<OrientationMark> marks = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            marks.add(Marks.mark(i, i % 10 == 7 ? 180 : 0));
        }
        LineFit fit = LineFit.of(LineModel.assumed().withBlunders(new MarkBlunders(0.02, 0)))
                .withFree(FLIPPED, WRONG);
        FittedModel fitted = fit.to(List.of(MarkedHole.of(Marks.STRAIGHT, marks, List.of())));
        FittedParameter flipped = fitted.parameter(FLIPPED);
        assertEquals(0.1, flipped.value(), 1e-3);
        assertEquals(Math.sqrt(0.1 * 0.9 / 50), flipped.standardError().orElseThrow(), 1e-3);
        FittedParameter wrong = fitted.parameter(WRONG);
        assertEquals(Standing.AT_BOUND, wrong.standing());
        assertEquals(0, wrong.value(), 1e-3);
        assertTrue(wrong.standardError().isEmpty());
        // a mark on the line may be wrong by accident, with a density of 1/360 against that of a sound one
        assertEquals(1 - Math.exp(-1.92 / 50), wrong.high().orElseThrow(), 3e-3);
    }

    @Test
    void gridOfTheEvidenceHasItsTopWhereTheFitSays() {
        List<MarkedHole> holes = Holes.many(Holes.plain(4, 2, 0), 1, 40, 8, -60);
        LineModel start = Holes.plain(2, 1, 0);
        FittedModel fitted = LineFit.of(start).withFree(LEVEL, LOCKED).to(holes);
        double best = Double.NEGATIVE_INFINITY;
        double bestLevel = 0;
        double bestLocked = 0;
        for (double level = 2; level < 7; level += 0.5) {
            for (double locked = 0.5; locked < 5; locked += 0.5) {
                LineModel model = Holes.plain(level, locked, 0);
                double sum = 0;
                for (MarkedHole hole : holes) {
                    sum += model.reconcile(hole.path(), hole.marks(), hole.joins())
                            .logEvidence();
                }
                if (sum > best) {
                    best = sum;
                    bestLevel = level;
                    bestLocked = locked;
                }
            }
        }
        assertTrue(fitted.logEvidence() > best - 0.01);
        assertEquals(bestLevel, fitted.parameter(LEVEL).value(), 0.4);
        assertEquals(bestLocked, fitted.parameter(LOCKED).value(), 0.4);
    }

    @Test
    @Tag("slow")
    void simulatedNoiseIsFoundAgain() {
        FittedModel fitted = LineFit.of(LineModel.assumed()).to(Holes.many(TRUTH, 8, 40, 7, -60, -85));
        for (FittedParameter parameter : fitted.parameters()) {
            double truth = parameter.parameter().of(TRUTH);
            if (parameter.standing() == Standing.TOLD) {
                assertEquals(
                        truth, parameter.value(), 3 * parameter.standardError().orElseThrow(), parameter.toString());
                assertTrue(parameter.low().orElseThrow() < parameter.value());
                assertTrue(parameter.high().orElseThrow() > parameter.value());
            } else {
                assertEquals(Standing.AT_BOUND, parameter.standing(), parameter.toString());
                assertTrue(truth < parameter.high().orElseThrow(), parameter.toString());
            }
        }
        assertEquals(320, fitted.marks());
        assertEquals(312, fitted.comparisons());
        assertTrue(fitted.gain() > 10);
    }

    @Test
    void noiselessJoinsGiveAnUpperEndAndNoStandardError() {
        MarkedHole hole = Holes.one(
                Holes.plain(3, 0, 0),
                Marks.STRAIGHT,
                Holes.every(2, 60),
                Holes.joins(JoinFit.LOCKED, Holes.every(5, 24)),
                2);
        FittedParameter locked = LineFit.of(Holes.plain(3, 1, 0))
                .withFree(LEVEL, LOCKED)
                .to(List.of(hole))
                .parameter(LOCKED);
        assertEquals(Standing.AT_BOUND, locked.standing());
        assertTrue(locked.standardError().isEmpty());
        assertTrue(locked.high().orElseThrow() < 1.5, locked.toString());
        assertTrue(locked.toString().contains("0 is not excluded"), locked.toString());
    }

    @Test
    void turnedMarksAndOtherOrdersGiveTheSame() {
        List<MarkedHole> holes = Holes.many(TRUTH, 3, 15, 21, -60, -80);
        List<MarkedHole> others = new ArrayList<>();
        for (MarkedHole hole : holes) {
            List<OrientationMark> marks = new ArrayList<>(Marks.turned(hole.marks(), 133.7));
            List<Join> joins = new ArrayList<>(hole.joins());
            Collections.shuffle(marks, new Random(1));
            Collections.shuffle(joins, new Random(2));
            others.add(0, MarkedHole.of(hole.path(), marks, joins));
        }
        LineFit fit = LineFit.of(LineModel.assumed()).withFree(LEVEL, LOCKED, WRONG);
        FittedModel one = fit.to(holes);
        FittedModel other = fit.to(others);
        assertEquals(one.logEvidence(), other.logEvidence(), 1e-3);
        assertEquals(one.startLogEvidence(), other.startLogEvidence(), 1e-6);
        for (LineParameter parameter : List.of(LEVEL, LOCKED, WRONG)) {
            double value = one.parameter(parameter).value();
            assertEquals(value, other.parameter(parameter).value(), 0.01 + 0.01 * value, parameter.toString());
        }
        assertEquals(fit.to(holes), one);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0, 0, 0, 0",
        "30, 0, 20, 0.3, 0, 0",
        "0, 5, 0, 0, 0.4, 0.9",
        "1, 40, 0, 0.3, 0.4, 0.95",
        "0.2, 0.2, 5, 0, 0, 0"
    })
    void fitIsNeverWorseThanItsStart(
            double sensor, double level, double locked, double flipped, double wrong, double slip) {
        LineModel start = new LineModel(
                WallReference.lowSide(),
                new MarkNoise(sensor, level, 0.5, 1, 1),
                new MarkBlunders(flipped, wrong),
                new LineDrift(0, locked, locked, slip));
        FittedModel fitted = LineFit.of(start).to(Holes.many(TRUTH, 2, 12, 4, -60, -80));
        assertTrue(fitted.gain() >= 0, fitted.toString());
        assertTrue(fitted.model().noise().level() < 15, fitted.toString());
    }

    /** The start is exactly what the fit would find: nothing is lost. */
    @ParameterizedTest
    @EnumSource(LineParameter.class)
    void whatIsHeldStays(LineParameter free) {
        List<MarkedHole> holes = Holes.many(TRUTH, 3, 30, 5, -60, -85);
        FittedModel fitted = LineFit.of(TRUTH).withFree(free).to(holes);
        assertTrue(fitted.gain() >= 0);
        for (LineParameter parameter : LineParameter.values()) {
            if (parameter != free) {
                assertEquals(parameter.of(TRUTH), parameter.of(fitted.model()));
                assertEquals(Standing.HELD, fitted.parameter(parameter).standing());
            }
        }
        assertEquals(TRUTH.noise().bias(), fitted.model().noise().bias());
        assertTrue(fitted.toString().contains("held"));
    }

    @Test
    void steepAndInclinedHolesTellTheSensorFromTheLevel() {
        LineFit fit = LineFit.of(LineModel.assumed()).withFree(SENSOR, LEVEL);
        List<MarkedHole> both = Holes.many(TRUTH, 4, 40, 3, -50, -85);
        FittedModel apart = fit.to(both);
        assertEquals(Standing.TOLD, apart.parameter(SENSOR).standing(), apart.toString());
        assertEquals(Standing.TOLD, apart.parameter(LEVEL).standing(), apart.toString());
        FittedModel alike = fit.to(Holes.many(TRUTH, 4, 40, 3, -60, -61));
        for (LineParameter parameter : List.of(SENSOR, LEVEL)) {
            FittedParameter found = alike.parameter(parameter);
            assertEquals(Standing.TOGETHER, found.standing());
            assertTrue(found.standardError().isEmpty());
            assertTrue(found.reason().contains("about the same sin I"), found.reason());
        }
        assertEquals(2, LEVEL.of(alike.model()) / SENSOR.of(alike.model()), 1e-9);
    }

    @Test
    void evenlySpacedJoinsTellWanderAndLockedJoinsOnlyTogether() {
        LineModel truth = Holes.plain(3, 2, 0.5);
        List<MarkedHole> even = new ArrayList<>();
        List<MarkedHole> uneven = new ArrayList<>();
        for (int seed = 1; seed <= 6; seed++) {
            even.add(Holes.one(
                    truth, Marks.STRAIGHT, Holes.every(3, 50), Holes.joins(JoinFit.LOCKED, Holes.every(3, 50)), seed));
            uneven.add(Holes.one(
                    truth, Marks.STRAIGHT, Holes.every(3, 50), Holes.joins(JoinFit.LOCKED, Holes.every(11, 13)), seed));
        }
        LineFit fit = LineFit.of(Holes.plain(2, 1, 0.2)).withFree(LEVEL, LOCKED, WANDER);
        FittedModel together = fit.to(even);
        FittedParameter wander = together.parameter(WANDER);
        assertEquals(Standing.TOGETHER, wander.standing());
        assertTrue(wander.reason().startsWith("not told apart from locked join, because joins are spaced too evenly"));
        assertEquals(Standing.TOLD, together.parameter(LEVEL).standing());
        // what they do from mark to mark together is found: the root of 2^2 + 0.5^2 * 3
        double sum = Math.hypot(LOCKED.of(together.model()), WANDER.of(together.model()) * Math.sqrt(3));
        assertEquals(Math.sqrt(4.75), sum, 0.7);
        assertTrue(fit.to(uneven).parameter(LOCKED).standing() != Standing.TOGETHER);
    }
}
