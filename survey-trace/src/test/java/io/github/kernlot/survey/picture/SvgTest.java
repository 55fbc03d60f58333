package io.github.kernlot.survey.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SvgTest {

    @ParameterizedTest
    @CsvSource({"0, 0", "-0.001, 0", "1.5, 1.5", "-1.05, -1.05", "0.999, 1", "12.345, 12.35", "-0.1, -0.1", "100, 100"})
    void numbersHaveTwoDecimalsAtMost(double value, String text) {
        assertEquals(text, Svg.number(value));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1e10})
    void aCoordinateThatIsNoneIsRefused(double value) {
        assertThrows(IllegalArgumentException.class, () -> Svg.number(value));
    }

    @Test
    void textIsEscapedAndWhatXmlCannotHoldIsReplaced() {
        assertEquals("&lt;a&gt; &amp; &quot;b&quot; &#39;", Svg.escaped("<a> & \"b\" '"));
        assertEquals("\uFFFDx\uFFFD\uFFFD\tA\u00E9", Svg.escaped("\u0001x\uD800\uFFFE\tA\u00E9"));
        Drawn.of("<a>" + Svg.escaped("\u0000\u001F\u007F\u0085 ]]> \uDC00 \uD83D\uDE00") + "</a>");
    }

    @Test
    void aLongTextIsCutBetweenCharacters() {
        assertEquals("short", Svg.shortened("short", 10, 100));
        assertEquals("\uD83D\uDE00\u2026", Svg.shortened("\uD83D\uDE00\uD83D\uDE00\uD83D\uDE00\uD83D\uDE00", 10, 29));
        assertTrue(Svg.widthOf(Svg.shortened("x".repeat(500), 13, 140), 13) <= 140);
    }

    @Test
    void aCaptionIsBrokenBetweenWords() {
        List<String> lines = Svg.lines(List.of("one two three four", "five"), 2 * Ink.MARGIN + 12.5 * 4);
        assertEquals(List.of("one two", "three", "four", "five"), lines);
    }

    @Test
    void aSavedPictureIsXmlInUtf8(@TempDir Path folder) throws IOException {
        Picture picture = new Svg(300, 200, "\u00C5 <title>", "what").finish();
        Path file = folder.resolve("picture.svg");
        picture.save(file);
        String read = Files.readString(file);
        assertTrue(read.startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg "));
        assertTrue(read.endsWith(picture.svg()));
        assertEquals("\u00C5 <title>", picture.title());
        assertTrue(picture.toString().startsWith("\u00C5 <title> (SVG, "));
        Drawn.of(picture).assertSound();
    }
}
