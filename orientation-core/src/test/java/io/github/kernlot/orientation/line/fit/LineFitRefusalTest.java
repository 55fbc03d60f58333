package io.github.kernlot.orientation.line.fit;

import static io.github.kernlot.orientation.line.fit.LineParameter.DOUBTFUL;
import static io.github.kernlot.orientation.line.fit.LineParameter.FLIPPED;
import static io.github.kernlot.orientation.line.fit.LineParameter.LEVEL;
import static io.github.kernlot.orientation.line.fit.LineParameter.LOCKED;
import static io.github.kernlot.orientation.line.fit.LineParameter.SENSOR;
import static io.github.kernlot.orientation.line.fit.LineParameter.SLIP;
import static io.github.kernlot.orientation.line.fit.LineParameter.WANDER;
import static io.github.kernlot.orientation.line.fit.LineParameter.WRONG;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
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
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LineFitRefusalTest {

    private static final LineFit ALL = LineFit.of(LineModel.assumed());

    private static String refusal(LineFit fit, MarkedHole... holes) {
        return assertThrows(IllegalArgumentException.class, () -> fit.to(List.of(holes)))
                .getMessage();
    }

    @Test
    void marksThatNoOtherMarkMeetsTeachNothing() {
        MarkedHole alone = MarkedHole.of(Marks.STRAIGHT, Marks.marks(10));
        MarkedHole apart = MarkedHole.of(Marks.STRAIGHT, Marks.marks(10, 20), List.of(new Join(15, JoinFit.BROKEN)));
        assertEquals(
                "no two used marks lie on one piece of core, so there is nothing to compare",
                refusal(ALL, alone, apart));
        assertEquals(refusal(ALL, alone), refusal(ALL));
    }

    @Test
    void fewerComparisonsThanParametersAreRefused() {
        MarkedHole hole = MarkedHole.of(Marks.STRAIGHT, Marks.marks(10, 20, 15), List.of());
        assertEquals(
                "there are 2 comparisons of neighbouring marks for 5 free parameters; free fewer, or give more marks",
                refusal(ALL, hole));
    }

    @Test
    void whatNoJoinCanShowStaysAsAssumed() {
        MarkedHole hole = Holes.one(LineModel.assumed(), Marks.STRAIGHT, Holes.every(3, 40), List.of(), 4);
        FittedModel fitted = ALL.to(List.of(hole));
        assertEquals(
                "no locked join lies between two marks",
                fitted.parameter(LOCKED).reason());
        assertEquals(
                "no doubtful join lies between two marks",
                fitted.parameter(DOUBTFUL).reason());
        assertEquals(
                "no doubtful join lies between two marks",
                fitted.parameter(SLIP).reason());
        for (LineParameter parameter : List.of(LOCKED, DOUBTFUL, SLIP)) {
            assertEquals(Standing.NOT_TOLD, fitted.parameter(parameter).standing());
            assertEquals(parameter.of(LineModel.assumed()), parameter.of(fitted.model()));
        }
        assertTrue(fitted.toString().contains("not told: no locked join lies between two marks"));
    }

    @Test
    void marksOfTheirOwnSigmaDoNotTeachTheirNoise() {
        MarkedHole drawn = Holes.one(LineModel.assumed(), Marks.STRAIGHT, Holes.every(3, 40), List.of(), 4);
        MarkedHole hole = MarkedHole.of(
                drawn.path(),
                drawn.marks().stream().map(mark -> mark.withSigma(3)).toList(),
                List.of());
        FittedModel fitted = ALL.to(List.of(hole));
        assertEquals(
                "every mark that can be compared has a sigma of its own",
                fitted.parameter(SENSOR).reason());
        assertEquals(
                "every mark that can be compared has a sigma of its own",
                fitted.parameter(LEVEL).reason());
        assertEquals(
                "the marks tell nothing: level: every mark that can be compared has a sigma of its own",
                refusal(ALL.withFree(LEVEL), hole));
    }

    @Test
    void marksOfTheirOwnPriorsDoNotTeachTheirs() {
        List<OrientationMark> marks = Marks.marks(10, 12, 9, 190).stream()
                .map(mark -> mark.withBlunders(new MarkBlunders(0.1, 0.1)))
                .toList();
        assertEquals(
                "the marks tell nothing: wrong: every mark that can be compared has priors of its own",
                refusal(ALL.withFree(WRONG), MarkedHole.of(Marks.STRAIGHT, marks, List.of())));
    }

    @Test
    void marksAtOneDepthDoNotTeachTheWander() {
        MarkedHole hole = MarkedHole.of(
                Marks.STRAIGHT, List.of(Marks.mark(5, 10), Marks.mark(5, 12), Marks.mark(5, 9)), List.of());
        assertEquals(
                "the marks tell nothing: wander: no line was drawn between marks that can be compared",
                refusal(ALL.withFree(WANDER), hole));
    }

    @Test
    void fewMarksDoNotBoundTheShareOfFlippedOnes() {
        MarkedHole hole = MarkedHole.of(Marks.STRAIGHT, Marks.marks(10, 12, 191), List.of());
        String text = refusal(ALL.withFree(FLIPPED), hole);
        assertEquals(
                "the marks tell nothing: flipped: too few marks to bound it up to 0.3",
                text.replace("the evidence is all but the same for any value", "too few marks to bound it"));
        FittedModel fitted = ALL.withFree(FLIPPED, LEVEL)
                .to(List.of(MarkedHole.of(Marks.STRAIGHT, Marks.marks(10, 12, 9, 8, 13, 11, 10), List.of())));
        assertEquals(Standing.AT_BOUND, fitted.parameter(FLIPPED).standing(), fitted.toString());
    }

    @Test
    void slipTakesTheTurnOfAJoinAway() {
        LineModel slipping = LineModel.assumed().withDrift(new LineDrift(0.2, 0.5, 3, 1));
        MarkedHole hole = Holes.one(
                slipping, Marks.STRAIGHT, Holes.every(1, 40), Holes.joins(JoinFit.DOUBTFUL, Holes.every(4, 10)), 4);
        LineFit fit = LineFit.of(slipping).withFree(DOUBTFUL, LEVEL);
        FittedParameter doubtful = fit.to(List.of(hole)).parameter(DOUBTFUL);
        assertEquals(Standing.NOT_TOLD, doubtful.standing());
        assertEquals("the evidence is all but the same for any value up to 45.0 degrees", doubtful.reason());
        assertEquals(3, doubtful.value());
    }

    @Test
    void pairsOfMarksTellTheirNoiseOnlyTogetherWithTheLine() {
        MarkedHole hole = Holes.one(
                Holes.plain(3, 1, 0.5),
                Marks.STRAIGHT,
                Holes.every(1, 80),
                Holes.joins(JoinFit.BROKEN, Holes.every(2, 40)),
                9);
        FittedModel fitted =
                LineFit.of(Holes.plain(2, 1, 0.2)).withFree(LEVEL, WANDER).to(List.of(hole));
        FittedParameter level = fitted.parameter(LEVEL);
        assertEquals(Standing.TOGETHER, level.standing());
        assertTrue(level.reason()
                .startsWith("not told apart from wander, because too few marks lie on each piece of core"));
        assertTrue(level.reason().contains("degrees from one mark to the next"), level.reason());
    }

    @Test
    void aMarkKeepsSomeSigma() {
        MarkedHole hole = MarkedHole.of(Marks.STRAIGHT, Marks.marks(10, 10, 10, 10, 10, 10, 10, 10), List.of());
        FittedParameter level = LineFit.of(Holes.plain(2, 0, 0))
                .withFree(LEVEL)
                .to(List.of(hole))
                .parameter(LEVEL);
        assertEquals(0.3, level.value(), 1e-3);
        assertEquals(Standing.AT_BOUND, level.standing());
        assertEquals("no less than 0.30 is considered", level.reason());
        LineModel bySensor = Holes.plain(2, 0, 0).withNoise(new MarkNoise(1, 0, 0, 0, 0));
        assertEquals(
                0.3,
                LineFit.of(bySensor)
                        .withFree(SENSOR)
                        .to(List.of(hole))
                        .parameter(SENSOR)
                        .value(),
                1e-3);
        FittedModel both = LineFit.of(bySensor).withFree(SENSOR, LEVEL).to(List.of(hole));
        assertEquals(Standing.TOGETHER, both.parameter(SENSOR).standing());
        assertTrue(both.parameter(SENSOR).reason().contains("together below"), both.toString());
    }

    @Test
    void startsThatNoFitConsidersAreRefused() {
        assertEquals(
                "nothing is free; expected one parameter or more",
                assertThrows(IllegalArgumentException.class, () -> new LineFit(LineModel.assumed(), Set.of()))
                        .getMessage());
        LineModel flipping = LineModel.assumed().withBlunders(new MarkBlunders(0.5, 0));
        assertEquals("start of flipped is 0.5; expected within [0, 0.3]", refusal(LineFit.of(flipping)));
        LineModel wrong = LineModel.assumed().withBlunders(new MarkBlunders(0, 1));
        MarkedHole hole = MarkedHole.of(Marks.STRAIGHT, Marks.marks(10, 12, 191), List.of());
        assertEquals(
                "the marks tell nothing: flipped: wrong marks leave it no room",
                refusal(LineFit.of(wrong).withFree(FLIPPED), hole));
    }

    @Test
    void aSideThatDoesNotExistIsRefused() {
        LineFit fit = LineFit.of(LineModel.assumed().withSide(WallReference.lowSide()));
        MarkedHole hole = MarkedHole.of(Holes.dipping(-90), Marks.marks(10, 12, 191), List.of());
        assertTrue(refusal(fit, hole).contains("there is no low side"));
    }

    @Test
    void withoutAJoinsTableEveryMarkIsADoubtfulJoin() {
        List<OrientationMark> marks =
                List.of(Marks.mark(1, 5), Marks.mark(2, 5).leftOutFor("smudged"), Marks.mark(3, 6));
        assertEquals(
                List.of(new Join(1, JoinFit.DOUBTFUL), new Join(3, JoinFit.DOUBTFUL)),
                MarkedHole.of(Marks.STRAIGHT, marks).joins());
    }

    @Test
    void textsAreReadable() {
        assertEquals("wander and locked join: -0.91", new ParameterCorrelation(WANDER, LOCKED, -0.914).toString());
        FittedModel fitted = ALL.withFree(LEVEL, WRONG)
                .to(List.of(Holes.one(LineModel.assumed(), Marks.STRAIGHT, Holes.every(3, 60), List.of(), 4)));
        String text = fitted.toString();
        assertTrue(text.startsWith("60 marks, 59 comparisons: evidence -"), text);
        assertTrue(text.contains("sensor             1.00 ->     1.00  held"), text);
        assertTrue(text.contains("The bias that all marks of a hole share (1.00 degrees as assumed)"), text);
        assertTrue(fitted.evaluations() > 10);
    }
}
