package io.github.kernlot.survey.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.hole.OrientedHole;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LineStripTest {

    static Stream<OrientedHole> holes() {
        return Stream.of(
                SampleHoles.inclined(),
                SampleHoles.wandering(),
                SampleHoles.upward(),
                SampleHoles.partlyVertical(),
                SampleHoles.vertical(),
                SampleHoles.empty(),
                SampleHoles.crowded(10_000, 60));
    }

    @ParameterizedTest
    @MethodSource("holes")
    void everyPictureIsSoundAndSmall(OrientedHole hole) {
        Picture picture = LineStrip.of(hole);
        Drawn drawn = Drawn.of(picture);
        drawn.assertSound();
        long inVertical = hole.log().id().equals("TW-4") ? 1 : 0;
        assertEquals(
                hole.line().marks().size() - inVertical, drawn.symbols("marks").size());
        assertTrue(picture.svg().length() < 300_000, "length " + picture.svg().length());
    }

    /** The axis is centred on the line to the next 15 degrees, 400 wide for a whole turn; depth 620 high from 122 on. */
    @Test
    void aMarkStandsWhereItPutsTheLine() {
        OrientedHole hole = SampleHoles.inclined();
        Drawn drawn = Drawn.of(LineStrip.of(hole));
        double end = Holes.end(hole);
        List<Point> marks = drawn.symbols("marks");
        for (var judgement : hole.line().marks()) {
            double y = 122 + 620 * judgement.mark().depth() / end;
            Point symbol = marks.stream()
                    .filter(point -> Math.abs(point.y() - y) < 0.01)
                    .findFirst()
                    .orElseThrow();
            double lowSideX = xOf(drawn, "low side");
            double angle = (symbol.x() - lowSideX) * 360 / 400;
            // a mark of the low side stands at its offset from the line, so the line lies at minus the offset
            double missed = Math.IEEEremainder(angle + judgement.mark().offset(), 360);
            assertEquals(0, missed, 0.02, () -> judgement.mark().toString());
        }
    }

    private static double xOf(Drawn drawn, String text) {
        return drawn.all("text").stream()
                .filter(element -> element.getTextContent().equals(text))
                .mapToDouble(element -> Double.parseDouble(element.getAttribute("x")))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theLegendCountsVerdictsAndJoins() {
        List<String> texts = Drawn.of(LineStrip.of(SampleHoles.inclined())).texts();
        assertTrue(texts.containsAll(
                List.of("sound 24", "flipped 1", "wrong 1", "left out 1", "broken joins 2", "doubtful joins 2")));
    }

    @Test
    void thereIsNoBandBetweenBrokenJoinsWhereNoMarksAgree() {
        OrientedHole hole = SampleHoles.inclined();
        double end = Holes.end(hole);
        double upper = 122 + 620 * 118.2 / end;
        double lower = 122 + 620 * 131.7 / end;
        List<Point> line = Drawn.of(LineStrip.of(hole)).pathsIn("line").stream()
                .flatMap(path -> Drawn.points(path.getAttribute("d")).stream())
                .toList();
        assertFalse(line.isEmpty());
        assertTrue(line.stream().noneMatch(point -> point.y() > upper + 0.02 && point.y() < lower - 0.02));
        assertTrue(line.stream().anyMatch(point -> Math.abs(point.y() - upper) < 0.02), "down to the join");
        assertTrue(line.stream().anyMatch(point -> Math.abs(point.y() - lower) < 0.02), "from the join on");
    }

    @Test
    void inAWanderingHoleTheLineGoesRoundWithoutAJump() {
        Drawn drawn = Drawn.of(LineStrip.of(SampleHoles.wandering()));
        double widest = drawn.pathsIn("line").stream()
                .mapToDouble(path -> widestStep(Drawn.points(path.getAttribute("d"))))
                .max()
                .orElseThrow();
        assertTrue(widest < 20, "widest step " + widest);
        assertTrue(drawn.pathsIn("line").size() > 1);
    }

    private static double widestStep(List<Point> points) {
        double widest = 0;
        for (int i = 1; i < points.size(); i++) {
            widest = Math.max(
                    widest, Math.abs(points.get(i).x() - points.get(i - 1).x()));
        }
        return widest;
    }

    @Test
    void aVerticalStretchSaysThatThereIsNoLowSide() {
        Drawn drawn = Drawn.of(LineStrip.of(SampleHoles.partlyVertical()));
        assertTrue(drawn.texts().contains("vertical: no low side"));
        assertTrue(drawn.texts().contains("no low side"));
        double top = 122 + 620 * 41 / 120.0;
        double bottom = 122 + 620 * 79 / 120.0;
        for (String part : List.of("line", "turn")) {
            assertTrue(drawn.pathsIn(part).stream()
                    .flatMap(path -> Drawn.points(path.getAttribute("d")).stream())
                    .noneMatch(point -> point.y() > top && point.y() < bottom));
        }
    }

    @Test
    void marksOfNorthGiveAVerticalHoleItsLine() {
        Drawn drawn = Drawn.of(LineStrip.of(SampleHoles.vertical()));
        assertTrue(drawn.texts().contains("line angle from north, degrees"));
        assertFalse(drawn.pathsIn("line").isEmpty());
        assertFalse(drawn.texts().contains("vertical: no low side"));
        assertTrue(drawn.texts().contains("no low side"), "the scribe has none");
    }

    @Test
    void aHoleWithNothingSaysSo() {
        List<String> texts = Drawn.of(LineStrip.of(SampleHoles.empty())).texts();
        assertTrue(texts.containsAll(List.of("no marks", "no structures", "vertical: no low side")));
        assertFalse(texts.contains("line, one sigma"));
    }
}
