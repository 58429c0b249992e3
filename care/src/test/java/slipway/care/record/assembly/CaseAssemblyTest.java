package slipway.care.record.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipway.care.casefile.CaseFiles;
import slipway.care.record.access.Clinic;
import slipway.care.record.chart.Episode;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.care.record.person.Age;
import slipway.care.record.person.Person;
import slipway.care.record.person.PersonDetails;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.YamlDocument;
import slipway.mechanics.body.Side;
import tools.jackson.databind.JsonNode;

class CaseAssemblyTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final Instant NOW = Instant.parse("2026-03-02T10:15:30Z");
    private static final Clinic CLINIC = new Clinic("c", "Some Clinic (invented)", "therapy", "555 01", "112", true, 1);

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("..", "examples"))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void fileSplitAndPutTogetherIsTheSameFile(Path file) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        CaseSplit split = CaseSplit.read(bytes, file.toString(), DAY);
        Assembly.Complete whole = CaseAssembly.of(
                        CaseAssembly.tree(person(split.person()), episode(split.side()), CLINIC, kept(split), DAY))
                .complete()
                .orElseThrow();
        JsonNode before = YamlDocument.read("before", bytes).root();
        JsonNode after = YamlDocument.read("after", whole.text().getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .root();
        assertThat(sorted(after)).isEqualTo(sorted(before));
        // Findings carry their line for messages; apart from that the values are equal.
        assertThat(whole.file().toString().replaceAll("line \\d+", ""))
                .isEqualTo(CaseFiles.read(bytes, "f").toString().replaceAll("line \\d+", ""));
    }

    @Test
    void everythingThatIsMissingIsToldAtOnce() {
        var unknown = PersonDetails.invented("A Person (invented)");
        Assembly none = CaseAssembly.of(CaseAssembly.tree(person(unknown), episode(Side.LEFT), CLINIC, Map.of(), DAY));
        assertThat(none).isInstanceOfSatisfying(Assembly.Incomplete.class, missing -> {
            assertThat(missing.mistakes()).isEmpty();
            assertThat(missing.missing())
                    .extracting(Mistake::path)
                    .containsExactlyInAnyOrder("person.ageYears", "person.statureCm", "screening");
        });
    }

    @Test
    void caseMadeInTheRecordTakesTheClinicOfTheEpisode() throws IOException {
        CaseSplit split = CaseSplit.read(Files.readAllBytes(examples().get(0)), "f", DAY);
        Map<Section, SectionRecord> kept = kept(split);
        kept.remove(Section.FRAME);
        var tree = CaseAssembly.tree(person(split.person()), episode(Side.LEFT), CLINIC, kept, DAY);
        assertThat(CaseAssembly.of(tree)
                        .complete()
                        .orElseThrow()
                        .file()
                        .episode()
                        .clinic()
                        .name())
                .contains(CLINIC.name());
    }

    @Test
    void toldAgeGrowsWithTheYears() {
        var age = new Age.Told(36, DAY);
        assertThat(age.yearsOn(DAY)).isEqualTo(36);
        assertThat(age.yearsOn(DAY.plusYears(2).minusDays(1))).isEqualTo(37);
        assertThat(new Age.Born(LocalDate.of(1990, 3, 3)).yearsOn(DAY)).isEqualTo(35);
    }

    private static Map<Section, SectionRecord> kept(CaseSplit split) {
        var kept = new EnumMap<Section, SectionRecord>(Section.class);
        split.sections()
                .forEach((section, content) -> kept.put(section, new SectionRecord(section, 1, content, NOW, "t")));
        return kept;
    }

    private static Person person(PersonDetails details) {
        return new Person("p", "c", 1, details, NOW);
    }

    private static Episode episode(Side side) {
        return new Episode("e-1", "p", "c", side, "t", EpisodeState.OPEN, NOW, Optional.empty(), 1);
    }

    /** Keys of an object have no order in a case file. */
    private static String sorted(JsonNode node) {
        if (node.isObject()) {
            return new java.util.TreeMap<>(node.properties().stream()
                            .collect(java.util.stream.Collectors.toMap(
                                    Map.Entry::getKey, entry -> sorted(entry.getValue()))))
                    .toString();
        }
        return node.isArray()
                ? node.valueStream().map(CaseAssemblyTest::sorted).toList().toString()
                : node.toString();
    }
}
