package io.github.kernlot.survey.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.hole.CoreLineReading;
import io.github.kernlot.survey.hole.OrientationSettings;
import io.github.kernlot.survey.hole.OrientedHole;
import io.github.kernlot.survey.hole.OrientedStructure;
import io.github.kernlot.survey.hole.Structure;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StereonetTest {

    private static final double CENTRE_X = 320;
    private static final double CENTRE_Y = 338;
    private static final double RADIUS = 250;

    /** Poles worked out by hand: the pole plunges 90 - dip away from the dip direction; radius from memory as in {@link PartsTest}. */
    @ParameterizedTest
    @CsvSource({
        "90, 90, -1, 0",
        "0, 0, 0, 0",
        "0, 217, 0, 0",
        "90, 0, 0, 1",
        "60, 180, 0, -0.70710678",
        "30, 270, 0.36602540, 0",
        "60, 45, -0.5, 0.5"
    })
    void thePoleLiesOppositeTheDipDirection(double dip, double direction, double x, double y) {
        Picture picture = Stereonet.of(
                "one", North.TRUE, Map.of("joint", List.of(PlaneOrientation.ofDipAndDirection(dip, direction))));
        Drawn drawn = Drawn.of(picture);
        drawn.assertSound();
        List<Point> symbols = drawn.symbols("poles");
        assertEquals(1, symbols.size());
        assertEquals(CENTRE_X + RADIUS * x, symbols.get(0).x(), 0.006);
        assertEquals(CENTRE_Y + RADIUS * y, symbols.get(0).y(), 0.006);
        assertTrue(drawn.texts().contains("joint 1"));
        assertTrue(
                drawn.description()
                        .startsWith(
                                "Lower hemisphere, equal area: poles to planes. Azimuths from true north. 1 oriented structure."));
    }

    @Test
    void everyOrientedStructureHasItsSymbol() {
        List<OrientedHole> holes = SampleHoles.three();
        long oriented = holes.stream()
                .flatMap(hole -> hole.structures().stream())
                .filter(OrientedStructure::isOriented)
                .count();
        long lines = holes.stream()
                .flatMap(hole -> hole.structures().stream())
                .filter(structure -> structure.lineation().isPresent())
                .count();
        long all = holes.stream().mapToLong(hole -> hole.structures().size()).sum();
        Drawn drawn = Drawn.of(Stereonet.of(holes));
        drawn.assertSound();
        assertEquals(oriented, drawn.symbols("poles").size());
        assertEquals(lines, drawn.symbols("lines").size());
        assertTrue(lines > 0 && oriented < all);
        assertTrue(drawn.texts().contains("unoriented, not shown " + (all - oriented)));
        assertTrue(drawn.texts().containsAll(List.of("TW-1", "TW-2 long", "TW-3U")));
        assertTrue(drawn.texts().contains("lines in planes " + lines));
    }

    /** A line at axis angle 0 runs along the hole and needs no mark: straight down it lies in the centre. */
    @Test
    void aLineThroughTheCoreAloneHasItsSymbolAndIsCounted() {
        OrientedHole hole = SampleHoles.orient(
                "TW-4",
                SampleHoles.trace(
                        Position.ofEastingNorthingElevation(41200, 76350, 402),
                        SurveyStation.ofDip(0, -90, 0),
                        SurveyStation.ofDip(50, -90, 0)),
                List.of(),
                Optional.empty(),
                List.of(Structure.ofLine(20, "lineation", new CoreLineReading(0, OptionalDouble.empty()))));
        Drawn drawn = Drawn.of(Stereonet.of(List.of(hole)));
        drawn.assertSound();
        assertEquals(List.of(), drawn.symbols("poles"));
        Point symbol = drawn.symbols("lines").get(0);
        assertEquals(CENTRE_X, symbol.x(), 0.006);
        assertEquals(CENTRE_Y, symbol.y(), 0.006);
        assertTrue(drawn.texts().contains("lines 1"));
        assertTrue(drawn.description().contains("poles to planes and lines."), drawn.description());
        assertTrue(drawn.description().contains("1 oriented structure."), drawn.description());
    }

    @Test
    void theLegendCountsTheKinds() {
        OrientedHole hole = SampleHoles.inclined();
        long bedding = hole.structures().stream()
                .filter(structure ->
                        structure.isOriented() && structure.structure().kind().equals("bedding"))
                .count();
        assertTrue(Drawn.of(Stereonet.of(List.of(hole))).texts().contains("bedding " + bedding));
    }

    @Test
    void aHoleWithNothingGivesAnEmptyNet() {
        Drawn drawn = Drawn.of(Stereonet.of(List.of(SampleHoles.empty())));
        drawn.assertSound();
        assertEquals(0, drawn.symbols("poles").size());
        assertTrue(drawn.texts().contains("no oriented structures"));
    }

    @Test
    void tenThousandStructuresAreSampledEvenlyAndSaySo() {
        OrientedHole hole = SampleHoles.crowded(10_000, 40);
        Picture picture = Stereonet.of(List.of(hole));
        Drawn drawn = Drawn.of(picture);
        drawn.assertSound();
        int symbols = drawn.symbols("poles").size();
        assertTrue(symbols > 1500 && symbols <= Stereonet.MOST_SYMBOLS + KindKey.OWN + 1, "symbols " + symbols);
        assertTrue(picture.svg().length() < 500_000);
        assertTrue(drawn.description().contains("one in 5 of each kind is drawn"), drawn.description());
        assertTrue(drawn.texts().stream().anyMatch(text -> text.startsWith(KindKey.OTHERS)));
    }

    @Test
    void kindsWithoutASymbolOfTheirOwnLieBelowTheOthers() {
        Drawn drawn = Drawn.of(Stereonet.of(List.of(SampleHoles.crowded(10_000, 40))));
        var first = (org.w3c.dom.Element) drawn.pathsIn("poles").get(0).getParentNode();
        assertEquals(Ink.PENCIL, first.getAttribute("fill"));
    }

    @Test
    void holesWithDifferentNorthsAreRefused() {
        OrientedHole grid = SampleHoles.inclined();
        OrientationSettings assumed = OrientationSettings.assumed();
        OrientedHole magnetic = OrientedHole.orient(SampleHoles.magneticLog(), assumed.withOutput(North.MAGNETIC));
        assertThrows(IllegalArgumentException.class, () -> Stereonet.of(List.of(grid, magnetic)));
        assertThrows(IllegalArgumentException.class, () -> Stereonet.of(List.of()));
        Drawn.of(Stereonet.of(List.of(magnetic))).assertSound();
    }

    @Test
    void theHolesDirectionIsTurnedToTheNorthOfTheResults() {
        OrientationSettings assumed = OrientationSettings.assumed();
        OrientedHole magnetic = OrientedHole.orient(SampleHoles.magneticLog(), assumed.withOutput(North.MAGNETIC));
        // the hole was surveyed horizontal along magnetic azimuth 90: its ring lies at the east rim
        Drawn drawn = Drawn.of(Stereonet.of(List.of(magnetic)));
        assertTrue(drawn.all("circle").stream()
                .anyMatch(circle -> circle.getAttribute("cx").equals("570")
                        && circle.getAttribute("cy").equals("338")));
        assertTrue(drawn.description().contains("Azimuths from magnetic north"));
    }
}
