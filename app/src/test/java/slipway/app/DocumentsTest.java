package slipway.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the documents promise is there. */
class DocumentsTest {
    private static final Path ROOT = Path.of("..");
    private static final Pattern TEST_NAME = Pattern.compile("`([A-Z][a-z]\\w*(?:Test|IT))(?:\\.(\\w+))?`");
    private static final Pattern LINK = Pattern.compile("]\\((?!https?:)([^)#]+)");

    @Test
    void everyLinkBetweenDocumentsLeadsSomewhere() throws IOException {
        for (Path document : documents()) {
            LINK.matcher(Files.readString(document))
                    .results()
                    .map(match -> document.resolveSibling(match.group(1)))
                    .forEach(target ->
                            assertThat(target).as("link in " + document).exists());
        }
    }

    @Test
    void readmeNamesEveryExample() throws IOException {
        String readme = Files.readString(ROOT.resolve("README.md"));
        try (Stream<Path> examples = Files.list(ROOT.resolve("examples"))) {
            assertThat(examples.filter(Files::isRegularFile)
                            .map(file -> file.getFileName().toString().replace(".yaml", "")))
                    .allSatisfy(name -> assertThat(readme).contains("| " + name + " |"));
        }
    }

    @Test
    void readmeOpensWithTheJobAndHasTheCautions() throws IOException {
        String readme = Files.readString(ROOT.resolve("README.md"));
        assertThat(readme)
                .contains("Not a diagnosis", "emergency number", "Local law", "./check")
                .doesNotContainIgnoringCase("lorem");
        assertThat(readme.indexOf("## What it is not")).isGreaterThan(readme.indexOf("workbench"));
    }

    /** Studies of the evidence table are all listed as references. */
    @Test
    void referencesListEveryStudyOfTheEvidence() throws IOException {
        String references = Files.readString(ROOT.resolve("docs/references.md"));
        var studies = slipway.mechanics.evidence.BundledTable.read("nerve-motion.csv").stream()
                .map(row -> row.get("study"))
                .distinct()
                .toList();
        assertThat(studies).hasSizeGreaterThan(15).allSatisfy(study -> {
            Pattern firstAuthor = Pattern.compile("^[A-Za-z-]+");
            var matcher = firstAuthor.matcher(study);
            assertThat(matcher.find()).isTrue();
            assertThat(references).as(study).contains(matcher.group());
        });
    }

    /** What is called tested has that test: the tables of safety and security name classes and methods. */
    @Test
    void everyTestThatADocumentNamesIsThere() throws IOException {
        Map<String, Path> tests = testClasses();
        var missing = new ArrayList<String>();
        for (Path document : documents()) {
            for (MatchResult named :
                    TEST_NAME.matcher(Files.readString(document)).results().toList()) {
                Path file = tests.get(named.group(1));
                String method = named.group(2);
                if (file == null || (method != null && !Files.readString(file).contains(" " + method + "("))) {
                    missing.add(named.group() + " in " + document);
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    private static Map<String, Path> testClasses() throws IOException {
        var tests = new HashMap<String, Path>();
        try (Stream<Path> modules = Files.list(ROOT)) {
            for (Path source : modules.map(module -> module.resolve("src/test/java"))
                    .filter(Files::isDirectory)
                    .toList()) {
                try (Stream<Path> files = Files.walk(source)) {
                    files.filter(file -> file.toString().endsWith(".java"))
                            .forEach(file ->
                                    tests.put(file.getFileName().toString().replace(".java", ""), file));
                }
            }
        }
        return tests;
    }

    private static List<Path> documents() throws IOException {
        try (Stream<Path> docs = Files.walk(ROOT.resolve("docs"));
                Stream<Path> top = Files.list(ROOT)) {
            return Stream.concat(docs, top)
                    .filter(file -> file.toString().endsWith(".md"))
                    .toList();
        }
    }
}
