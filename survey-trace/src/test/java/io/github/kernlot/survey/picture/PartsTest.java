package io.github.kernlot.survey.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.LineOrientation;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PartsTest {

    private static final Net NET = new Net(new Point(0, 0), 1);

    /** r = sqrt(2) sin((90 - plunge)/2); from memory: 0 at the centre, 1 at the rim, sqrt(1 - sin plunge) between. */
    @ParameterizedTest
    @CsvSource({"90, 0", "30, 0.70710678118654752", "0, 1", "60, 0.36602540378443865", "45, 0.54119610014619698"})
    void theNetIsEqualArea(double plunge, double radius) {
        Point place = NET.at(LineOrientation.ofPlungeAndTrend(plunge, 90));
        assertEquals(radius, place.x(), 1e-12);
        assertEquals(0, place.y(), 1e-12);
    }

    /** Equal area itself: the share of the disc inside plunge p is the share of the hemisphere's area, 1 - sin p. */
    @Property
    void discAndHemisphereShareTheirAreas(@ForAll @DoubleRange(max = 90) double plunge) {
        double radius = -NET.at(plunge, 0).y();
        assertEquals(1 - Math.sin(Math.toRadians(plunge)), radius * radius, 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, -1", "90, 1, 0", "180, 0, 1", "270, -1, 0"})
    void northIsUpAndEastIsRight(double trend, double x, double y) {
        Point place = NET.at(0, trend);
        assertEquals(x, place.x(), 1e-12);
        assertEquals(y, place.y(), 1e-12);
    }

    @Property
    void ticksAreRoundedAndInside(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double low,
            @ForAll @DoubleRange(min = 0.01, max = 1e5) double span,
            @ForAll @IntRange(min = 2, max = 20) int count) {
        Ticks ticks = Ticks.between(low, low + span, count);
        assertTrue(ticks.values().size() <= count + 1);
        int leading = ticks.step().unscaledValue().intValueExact();
        assertTrue(Set.of(1, 2, 5).contains(leading), ticks::toString);
        for (BigDecimal value : ticks.values()) {
            assertTrue(value.doubleValue() >= low - 1e-6 * span && value.doubleValue() <= low + span * (1 + 1e-6));
            assertEquals(0, value.remainder(ticks.step()).signum());
        }
    }

    @Test
    void ticksAreWrittenPlainly() {
        Ticks ticks = Ticks.between(-0.25, 0.25, 5);
        assertEquals(
                List.of("-0.2", "-0.1", "0", "0.1", "0.2"),
                ticks.values().stream().map(Ticks::text).toList());
        assertEquals(
                "6900000",
                Ticks.text(Ticks.between(6_899_990, 6_900_100, 1).values().get(0)));
    }

    @ParameterizedTest
    @EnumSource
    void aSymbolBeginsInItsCentreAndStaysNear(Glyph glyph) {
        List<Point> points = Drawn.points(glyph.path(50, 60, 4));
        assertEquals(new Point(50, 60), points.get(0));
        for (Point point : points) {
            assertTrue(Math.hypot(point.x() - 50, point.y() - 60) < 8, () -> glyph + " reaches to " + point);
        }
    }

    @Test
    void everyKindWithASymbolHasItsOwn() {
        KindKey key = KindKey.of(IntStream.range(0, KindKey.OWN).mapToObj(i -> "kind " + i));
        Set<KindKey.Symbol> symbols = new HashSet<>();
        key.names().forEach(name -> assertTrue(symbols.add(key.symbol(name)), name));
        assertFalse(key.names().contains(KindKey.OTHERS));
    }

    @Test
    void frequentKindsComeFirstAndRareOnesShareASymbol() {
        Stream<String> kinds = IntStream.range(0, KindKey.OWN + 4)
                .boxed()
                .flatMap(i -> Stream.generate(() -> "kind " + i).limit(i + 1L));
        KindKey key = KindKey.of(kinds);
        assertEquals("kind " + (KindKey.OWN + 3), key.names().get(0));
        assertEquals(KindKey.OTHERS, key.names().get(KindKey.OWN));
        assertEquals(KindKey.OTHERS, key.nameOf("kind 0"));
        assertNotEquals(key.symbol("kind 9"), key.symbol(KindKey.OTHERS));
    }

    @Test
    void thinningKeepsOneOfEachGroup() {
        List<Integer> numbers = IntStream.range(0, 5000).boxed().toList();
        List<Integer> thin = Thinning.thinned(numbers, i -> new Point(i % 7, 0), i -> i % 3, 10);
        assertEquals(3, thin.stream().map(i -> i % 3).distinct().count());
        assertTrue(thin.size() <= 10);
        assertEquals(numbers, Thinning.thinned(numbers, i -> new Point(0, 0), i -> 0, 5000));
        assertEquals(List.of(0, 1, 6, 7), Thinning.everyNth(List.of(0, 1, 2, 3, 4, 5, 6, 7), i -> i % 2, 3));
    }

    @Test
    void aBandThatCrossesTheEdgeGoesOnAtTheOther() {
        AngleAxis axis = new AngleAxis(100, 360, 0);
        AngleAxis.Band band = AngleAxis.Band.empty();
        for (int i = 0; i <= 40; i++) {
            band.add(i, 160 + i, 5);
        }
        List<List<Point>> outlines = axis.outlines(band);
        assertEquals(2, outlines.size());
        outlines.stream()
                .flatMap(List::stream)
                .forEach(point -> assertTrue(point.x() >= 100 && point.x() <= 460, point::toString));
        List<List<Point>> curves =
                axis.curves(band).stream().filter(curve -> curve.size() > 1).toList();
        assertEquals(2, curves.size());
        assertEquals(new Point(100 + 340, 0), curves.get(0).get(0));
        assertEquals(new Point(100 + 20, 40), curves.get(1).get(curves.get(1).size() - 1));
    }

    @Property
    void aWhiskerHasItsLengthOnBothSidesOfTheEdge(
            @ForAll @DoubleRange(max = 360) double middle,
            @ForAll @DoubleRange(max = 360) double angle,
            @ForAll @DoubleRange(min = 2, max = 400) double half) {
        AngleAxis axis = new AngleAxis(0, 360, middle);
        double length = axis.spans(angle, half).stream()
                .mapToDouble(span -> span.to() - span.from())
                .sum();
        assertEquals(2 * Math.min(180, half), length, 1 + 1e-9);
    }

    @Test
    void namesDoNotLieOnEachOther() {
        Svg svg = new Svg(400, 400, "names", "names");
        Labels labels = new Labels(0, 0, 400, 400);
        Point place = new Point(200, 200);
        labels.avoid(place, 5);
        int written = 0;
        while (labels.write(svg, place, "name", 12)) {
            written++;
        }
        assertTrue(written >= 8 && written < 60, "written " + written);
        List<String> places = Drawn.of(svg.finish()).all("text").stream()
                .filter(text -> text.getTextContent().equals("name"))
                .map(text -> text.getAttribute("x") + " " + text.getAttribute("y"))
                .toList();
        assertEquals(places.size(), new HashSet<>(places).size());
        assertFalse(new Labels(0, 0, 10, 10).write(svg, new Point(5, 5), "too long", 12));
    }
}
