package io.github.kernlot.survey.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** docs/conventions.md: its drawings are those that the library makes, and the result in each row is what the library answers. */
class ConventionsTest {

    private static final Path PAGE =
            ConventionPictures.FOLDER.resolve("../../conventions.md").normalize();

    /** What is given, the result, the source, the expression. */
    private static final Pattern ROW =
            Pattern.compile("^\\| ([^|]+) \\| ([^|]+) \\| ([^|]+) \\| `([^`|]+)` \\|$", Pattern.MULTILINE);

    @BeforeAll
    static void writeThemWhereAsked() throws IOException {
        if (System.getProperty("conventions.write") != null) {
            ConventionPictures.write(ConventionPictures.FOLDER);
        }
    }

    @TestFactory
    Stream<DynamicTest> theDrawingIsTheOneThatTheLibraryMakes() {
        return ConventionPictures.all().entrySet().stream()
                .map(picture -> DynamicTest.dynamicTest(
                        picture.getKey(),
                        () -> assertEquals(
                                picture.getValue().get().finish(),
                                Files.readString(ConventionPictures.FOLDER.resolve(picture.getKey() + ".svg")),
                                "to write the drawings anew, see DEVELOPERS.md")));
    }

    @TestFactory
    Stream<DynamicTest> theTextsOfADrawingKeepApartAndInside() {
        return ConventionPictures.all().entrySet().stream()
                .map(picture -> DynamicTest.dynamicTest(
                        picture.getKey(), () -> keepApart(picture.getValue().get())));
    }

    private static void keepApart(Sheet sheet) {
        List<Sheet.Box> texts = sheet.texts();
        for (Sheet.Box text : texts) {
            assertTrue(text.left() >= 0 && text.right() <= sheet.width(), text.toString());
            assertTrue(text.top() >= 0 && text.bottom() <= sheet.height(), text.toString());
            for (Sheet.Box other : texts.subList(0, texts.indexOf(text))) {
                assertFalse(text.overlaps(other), text + " and " + other);
            }
        }
    }

    @Test
    void thePageShowsEachDrawingOnceAndNoOther() throws IOException {
        List<String> shown = Pattern.compile(
                        "<img src=\"pictures/conventions/([^\"]+)\\.svg\" width=\"\\d+\" alt=\"[^\"]{20,}\">")
                .matcher(Files.readString(PAGE))
                .results()
                .map(found -> found.group(1))
                .sorted()
                .toList();
        assertEquals(new ArrayList<>(new TreeSet<>(ConventionPictures.all().keySet())), shown);
        try (Stream<Path> files = Files.list(ConventionPictures.FOLDER)) {
            Set<String> there = files.map(file -> file.getFileName().toString().replace(".svg", ""))
                    .collect(Collectors.toSet());
            assertEquals(ConventionPictures.all().keySet(), there);
        }
    }

    @TestFactory
    Stream<DynamicTest> theLibraryAnswersWhatTheRowSays() throws IOException {
        JShell shell = DocsTest.shell();
        for (String block : DocsTest.blocks(PAGE, "java")) {
            DocsTest.run(shell, block);
        }
        List<MatchResult> rows = ROW.matcher(Files.readString(PAGE)).results().toList();
        assertTrue(rows.size() >= ConventionPictures.all().size(), "rows: " + rows.size());
        return rows.stream()
                .map(row -> DynamicTest.dynamicTest(row.group(1), () -> assertEquals(row.group(2), answer(shell, row))))
                .onClose(shell::close);
    }

    private static String answer(JShell shell, MatchResult row) throws IOException {
        String answer = DocsTest.run(shell, row.group(4)).replaceFirst("^\\$ ==> ", "");
        return answer.startsWith("\"") ? answer.substring(1, answer.length() - 1) : answer;
    }
}
