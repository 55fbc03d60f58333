package io.github.kernlot.survey.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

/** Runs every Java block and every JShell dialogue of the pages, with the imports of docs/jshell/start.jsh. */
class DocsTest {

    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final String PROMPT = "jshell> ";

    @TestFactory
    Stream<DynamicTest> theBlocksOfThePagesRun() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md")));
        try (Stream<Path> found = Files.walk(ROOT.resolve("docs"))) {
            pages.addAll(found.filter(file -> file.toString().endsWith(".md")).toList());
        }
        List<DynamicTest> tests = new ArrayList<>();
        for (Path page : pages) {
            List<String> java = blocks(page, "java");
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

    private static void runAll(List<String> blocks) throws IOException {
        try (JShell shell = shell()) {
            for (String block : blocks) {
                run(shell, block);
            }
        }
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
