package io.github.kernlot.survey.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.line.LogTime;
import io.github.kernlot.orientation.line.MarkSource;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.orientation.line.audit.ToolCheck;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.hole.AuditEntry;
import io.github.kernlot.survey.hole.HoleLog;
import io.github.kernlot.survey.hole.OrientationSettings;
import io.github.kernlot.survey.hole.OrientedHole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportPageTest {

    @Test
    void thePageNeedsNothingButItself() {
        String html = ReportPage.of(SampleHoles.three()).html();
        assertTrue(html.startsWith("<!DOCTYPE html>"));
        assertFalse(
                html.contains("<script") || html.contains("<link") || html.contains("<img") || html.contains("url("));
        assertEquals(Set.of("http://www.w3.org/2000/svg"), addresses(html));
        assertFalse(html.contains("NaN"));
        assertTrue(html.contains("assumed values") && html.contains("qualified person"));
        assertEquals(2 + 3 * 3, html.split("<svg ", -1).length - 1);
    }

    private static Set<String> addresses(String html) {
        Set<String> found = new TreeSet<>();
        var matcher = java.util.regex.Pattern.compile("https?://[^\"' <)]*").matcher(html);
        while (matcher.find()) {
            found.add(matcher.group());
        }
        return found;
    }

    /** The page is written as XML too, but for the few elements that HTML leaves open. */
    private static Drawn asXml(String html) {
        return Drawn.of(html.replace("<!DOCTYPE html>\n", "").replaceAll("<meta ([^>]*)>", "<meta $1/>"));
    }

    @Test
    void strangeNamesAreText() {
        OrientedHole strange = SampleHoles.crowded(40, 3);
        String html = ReportPage.of(List.of(strange)).titled("<b> & </title>").html();
        Drawn page = asXml(html);
        assertEquals("<b> & </title>", page.all("h1").get(0).getTextContent());
        assertEquals("TW-7 <&>", page.all("h2").get(0).getTextContent());
        assertTrue(
                page.all("td").stream().anyMatch(cell -> cell.getTextContent().startsWith("kind <1> & \"more\"")));
    }

    @Test
    void tablesShowStructuresMarksAndFindings() {
        OrientedHole hole = SampleHoles.inclined();
        Drawn page = asXml(ReportPage.of(List.of(hole))
                .withFindings(Map.of("TW-1", List.of(Finding.at(30, Finding.Level.ERROR, "a station stands out"))))
                .html());
        List<String> cells =
                page.all("td").stream().map(element -> element.getTextContent()).toList();
        assertTrue(cells.containsAll(
                List.of("a station stands out", "unoriented", "core <spun> in the tube", "left out")));
        assertTrue(cells.indexOf("error") < cells.indexOf("warning"));
        var plane = hole.structures().get(0).plane().orElseThrow();
        assertTrue(cells.stream().anyMatch(cell -> plane.toString().startsWith(cell + " (") && cell.contains("/")));
        assertEquals(
                2
                        + hole.structures().size()
                        + hole.line().marks().size()
                        + hole.findings().size()
                        + 1
                        + 3,
                page.all("tr").size());
    }

    @Test
    void aMarkWithoutASideHasNoSigma() {
        String html = ReportPage.of(List.of(SampleHoles.partlyVertical())).html();
        assertTrue(html.contains("no side to mark"));
        assertFalse(html.contains("Infinity"));
    }

    @Test
    void aHundredThousandStructuresKeepThePageSmall() {
        String html = ReportPage.of(List.of(SampleHoles.crowded(100_000, 5))).html();
        assertTrue(html.length() < 1_500_000, "length " + html.length());
        assertTrue(html.contains("The first 200 of 100000 rows."));
    }

    @Test
    void manyHolesAreShownInTheTableAlone() {
        List<OrientedHole> many = new ArrayList<>();
        for (int i = 0; i < ReportText.MOST_HOLES + 5; i++) {
            many.add(SampleHoles.upward());
        }
        Drawn page = asXml(ReportPage.of(many).html());
        assertEquals(ReportText.MOST_HOLES, page.all("h2").size());
    }

    @Test
    void aFolderHoldsThePageAndItsPictures(@TempDir Path folder) throws IOException {
        Path out = folder.resolve("new").resolve("out");
        Files.createDirectories(out);
        Files.writeString(out.resolve("oriented.csv"), "");
        Files.writeString(out.resolve("unrelated.csv"), "");
        ReportPage.of(List.of(SampleHoles.upward(), SampleHoles.crowded(5000, 3), SampleHoles.upward()))
                .write(out);
        assertEquals(
                new TreeSet<>(List.of(
                        "index.html",
                        "line-TW-3U.svg",
                        "line-TW-3U_2.svg",
                        "line-TW-7____.svg",
                        "oriented.csv",
                        "plan-and-section-TW-3U.svg",
                        "plan-and-section-TW-3U_2.svg",
                        "plan-and-section-TW-7____.svg",
                        "plan-and-section.svg",
                        "stereonet-TW-3U.svg",
                        "stereonet-TW-3U_2.svg",
                        "stereonet-TW-7____.svg",
                        "stereonet.svg",
                        "unrelated.csv")),
                names(out));
        String html = Files.readString(out.resolve("index.html"));
        assertTrue(html.contains("<a href=\"oriented.csv\">oriented.csv</a> holds all."));
        assertFalse(html.contains("unrelated.csv") || html.contains("marks.csv"));
    }

    private static Set<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            Set<String> names = new TreeSet<>();
            files.forEach(file -> names.add(file.getFileName().toString()));
            return names;
        }
    }

    @Test
    void theBytesAreTheSameTwiceAndInEveryLocale(@TempDir Path folder) throws IOException {
        Locale usual = Locale.getDefault();
        try {
            Locale.setDefault(Locale.ROOT);
            ReportPage.of(SampleHoles.three()).write(folder.resolve("one"));
            Locale.setDefault(Locale.GERMANY);
            ReportPage.of(SampleHoles.three()).write(folder.resolve("two"));
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            ReportPage.of(SampleHoles.three()).write(folder.resolve("three"));
        } finally {
            Locale.setDefault(usual);
        }
        for (String name : names(folder.resolve("one"))) {
            byte[] first = Files.readAllBytes(folder.resolve("one").resolve(name));
            assertArrayEquals(first, Files.readAllBytes(folder.resolve("two").resolve(name)), name);
            assertArrayEquals(first, Files.readAllBytes(folder.resolve("three").resolve(name)), name);
        }
    }

    @Test
    void aPageWithoutAHoleSaysSoAndWhy(@TempDir Path folder) throws IOException {
        ReportPage page = ReportPage.of(List.of())
                .withFindings(
                        Map.of("TW-9", List.of(Finding.ofHole(Finding.Level.ERROR, "its survey has two north ends"))));
        page.write(folder);
        String html = Files.readString(folder.resolve("index.html"));

        assertEquals(html, page.html());
        assertTrue(html.contains("<p>There is no hole to show.</p>"));
        assertTrue(html.contains("TW-9 is not shown: its survey has two north ends"));
        assertEquals("Oriented core", asXml(html).all("h1").get(0).getTextContent());
        assertEquals(Set.of("index.html"), Set.copyOf(names(folder)));
        assertEquals("Oriented core: a page of 0 holes", page.toString());
    }

    @Test
    void aPageSaysHowManyHolesItHas() {
        assertEquals(
                "Oriented core, TW-6: a page of 1 hole",
                ReportPage.of(List.of(SampleHoles.empty())).toString());
    }

    @Test
    void aHoleThatWasSetAsideIsNamedWithTheReason() {
        String html = ReportPage.of(List.of(SampleHoles.inclined()))
                .withFindings(
                        Map.of("TW-9", List.of(Finding.ofHole(Finding.Level.ERROR, "its survey has two north ends"))))
                .html();
        assertTrue(html.contains("TW-9 is not shown: its survey has two north ends"));
    }

    @Test
    void theAuditStandsOnThePageWhereThereIsOne() {
        List<ToolCheck> checks = List.of(
                new ToolCheck("T <1>", LogTime.parse("2026-03-01T06:00"), 10, 18),
                new ToolCheck("T <1>", LogTime.parse("2026-03-01T06:05"), 130, 139),
                new ToolCheck("T <1>", LogTime.parse("2026-03-01T06:10"), 250, 257));
        List<OrientedHole> holes = SampleHoles.three();
        ReportPage page = ReportPage.of(holes);

        assertFalse(page.html().contains("Marks by tool"));
        List<String> cells = asXml(page.withAudit(AuditEntry.all(holes, checks))
                        .titled("x")
                        .html())
                .all("td")
                .stream()
                .map(cell -> cell.getTextContent())
                .toList();
        int place = cells.indexOf("T <1>");
        assertEquals("check", cells.get(place - 1));
        // 8, 9 and 7: mean 8; Student's t with 2 degrees of freedom, 4.3027 (table, from memory), times 1 / sqrt 3 is
        // 2.48
        assertEquals(
                List.of("3", "0.8", "8.0", "5.5 to 10.5", "0.0052", "0 (0 to 71) %", ""),
                cells.subList(place + 1, place + 8));
    }

    @Test
    void marksWithSourcesAreAudited() {
        HoleLog log = SampleHoles.three().get(0).log();
        List<OrientationMark> marks = new ArrayList<>();
        for (OrientationMark mark : log.marks()) {
            String crew = marks.size() % 2 == 0 ? "day" : "night";
            marks.add(mark.withSource(new MarkSource(Optional.empty(), Optional.of(crew), Optional.of("good"))));
        }
        HoleLog known = new HoleLog(log.id(), log.trace(), marks, log.joins(), log.structures());
        OrientedHole hole = OrientedHole.orient(known, OrientationSettings.assumed());
        List<AuditEntry> audit = AuditEntry.all(List.of(hole), List.of());

        assertEquals(
                List.of(
                        "crew day",
                        "crew night",
                        "grade good",
                        "depth 0 to 100 m",
                        "depth 100 to 200 m",
                        "depth 200 to 300 m"),
                audit.stream().map(entry -> entry.kind() + " " + entry.group()).toList());
        String html = ReportPage.of(List.of(hole)).withAudit(audit).html();
        assertTrue(html.contains("<td class=\"w\">night</td>"));
    }
}
