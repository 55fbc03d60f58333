package io.github.kernlot.survey.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.VarSnippet;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs every Java block and every JShell dialogue of the pages, with the imports of docs/jshell/start.jsh. A comment that begins with an arrow
 * tells what its line prints, and a block of text right below a Java block all that this one prints.
 */
class DocsTest {

    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final String PROMPT = "jshell> ";
    private static final Pattern TOLD = Pattern.compile("; *// -> (.*)");
    private static final String MARK = "-- told --";

    @TestFactory
    Stream<DynamicTest> theBlocksOfThePagesRun() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md")));
        try (Stream<Path> found = Files.walk(ROOT.resolve("docs"))) {
            pages.addAll(found.filter(file -> file.toString().endsWith(".md")).toList());
        }
        List<DynamicTest> tests = new ArrayList<>();
        for (Path page : pages) {
            List<Printed> java = printed(page);
            List<String> dialogues = blocks(page, "text").stream()
                    .filter(block -> block.contains(PROMPT))
                    .toList();
            if (!java.isEmpty()) {
                tests.add(DynamicTest.dynamicTest("Java of " + ROOT.relativize(page), () -> runAll(java)));
            }
            if (!dialogues.isEmpty()) {
                tests.add(DynamicTest.dynamicTest("JShell of " + ROOT.relativize(page), () -> converse(dialogues)));
            }
        }
        assertFalse(tests.isEmpty());
        return tests.stream();
    }

    static List<String> blocks(Path page, String language) throws IOException {
        Pattern fence = Pattern.compile("^```" + language + "\\n(.*?)^```", Pattern.MULTILINE | Pattern.DOTALL);
        return fence.matcher(Files.readString(page))
                .results()
                .map(found -> found.group(1))
                .toList();
    }

    /** A Java block and what the page says that it prints. */
    private record Printed(String java, Optional<String> text) {}

    private static List<Printed> printed(Path page) throws IOException {
        Pattern pair = Pattern.compile(
                "^```java\\n(.*?)^```\\n(?:\\n*^```text\\n(.*?)^```\\n)?", Pattern.MULTILINE | Pattern.DOTALL);
        return pair.matcher(Files.readString(page))
                .results()
                .map(found -> new Printed(
                        found.group(1), Optional.ofNullable(found.group(2)).filter(text -> !text.contains(PROMPT))))
                .toList();
    }

    private static void runAll(List<Printed> blocks) throws IOException {
        try (JShell shell = shell()) {
            for (Printed block : blocks) {
                String output = outputOf(
                        shell, TOLD.matcher(block.java()).replaceAll(";System.out.println(\"" + MARK + "\");"));
                block.text().ifPresent(text -> assertEquals(text.strip(), output.strip()));
                String[] parts = output.split(MARK);
                List<String> told = TOLD.matcher(block.java())
                        .results()
                        .map(found -> found.group(1))
                        .toList();
                for (int i = 0; i < told.size(); i++) {
                    assertTrue(tells(parts[i], told.get(i)), parts[i] + " is told as " + told.get(i));
                }
            }
        }
    }

    private static String outputOf(JShell shell, String java) {
        PrintStream before = System.out;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PrintStream caught = new PrintStream(bytes, true, StandardCharsets.UTF_8)) {
            System.setOut(caught);
            run(shell, java);
        } finally {
            System.setOut(before);
        }
        return bytes.toString(StandardCharsets.UTF_8);
    }

    /** Whether what was printed ends with a line that begins as told, or is the number told but for rounding. */
    private static boolean tells(String printed, String told) {
        String result = told.split(";")[0].strip();
        if (result.matches("-?\\d+\\.\\d+")) {
            BigDecimal number = new BigDecimal(printed.strip().lines().reduce("", (first, last) -> last));
            return number.setScale(new BigDecimal(result).scale(), RoundingMode.HALF_UP)
                    .equals(new BigDecimal(result));
        }
        String start = result.replaceFirst(" \\.\\.\\.$", "");
        return printed.lines().anyMatch(result.equals(start) ? start::equals : line -> line.startsWith(start));
    }

    /** A line after a prompt is what the shell answers. */
    private static void converse(List<String> dialogues) throws IOException {
        try (JShell shell = shell()) {
            for (String dialogue : dialogues) {
                for (String turn : dialogue.split(Pattern.quote(PROMPT))) {
                    String[] lines = turn.strip().split("\n", 2);
                    if (!lines[0].isEmpty()) {
                        String answer = run(shell, lines[0]);
                        if (lines.length > 1) {
                            assertEquals(nameless(lines[1]), answer.replace(ROOT + File.separator, ""), lines[0]);
                        }
                    }
                }
            }
        }
    }

    static JShell shell() throws IOException {
        JShell shell = JShell.builder().executionEngine("local").build();
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            shell.addToClasspath(entry);
        }
        run(shell, "import java.util.*;");
        run(shell, Files.readString(ROOT.resolve("docs/jshell/start.jsh")));
        return shell;
    }

    /** Runs a text and gives what the shell says of its last snippet. */
    static String run(JShell shell, String text) {
        String rest = text.replace("\"docs/demo/", "\"" + ROOT.resolve("docs/demo") + "/");
        String answer = "";
        while (!rest.isBlank()) {
            SourceCodeAnalysis.CompletionInfo next = shell.sourceCodeAnalysis().analyzeCompletion(rest);
            for (SnippetEvent event : shell.eval(next.source())) {
                if (event.causeSnippet() == null) {
                    String errors = shell.diagnostics(event.snippet())
                            .map(diagnostic -> diagnostic.getMessage(null))
                            .collect(Collectors.joining("; "));
                    assertEquals(Snippet.Status.VALID, event.status(), next.source() + ": " + errors);
                    assertNull(event.exception(), next.source());
                    answer = answer(event);
                }
            }
            rest = next.remaining();
        }
        return answer;
    }

    /** The shell numbers what has no name, from another start than a shell that a user opens. */
    private static String nameless(String answer) {
        return answer.strip().replaceFirst("^\\$\\d+ ", "\\$ ");
    }

    private static String answer(SnippetEvent event) {
        if (!(event.snippet() instanceof VarSnippet) || event.value() == null) {
            return "";
        }
        return nameless(((VarSnippet) event.snippet()).name() + " ==> " + event.value());
    }
}
