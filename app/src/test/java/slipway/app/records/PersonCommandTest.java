package slipway.app.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.app.Run;
import slipway.app.console.ExitStatus;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.caseload.PersonRow;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Episode;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.person.Person;
import slipway.care.record.person.PersonDetails;
import slipway.exercises.exercise.Language;
import slipway.store.Store;
import slipway.store.StoreSettings;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PersonCommandTest {
    @TempDir
    private Path folder = Path.of("");

    private String data() {
        return folder.resolve("data").toString();
    }

    /** Puts an example in and closes its episode at some time; gives the id of the person. */
    private String person(Instant closedAt) {
        Run.of("import", "../examples/low-irritability-stiff.yaml", "--data", data(), "--new-clinic", "Harbour Steps");
        try (Store store = Store.open(StoreSettings.inFolder(Path.of(data())))) {
            String clinic = store.records().clinics().list().get(0).id();
            var act = new Act("test", Role.PROGRAM, clinic, closedAt);
            PersonRow row = store.records().caseload().people("", "", 1, act).get(0);
            Chart chart = store.records()
                    .charts()
                    .open(row.newestEpisodeId().orElseThrow(), act)
                    .chartIfOpen()
                    .orElseThrow();
            chart.documents()
                    .add(
                            "sheet",
                            "application/pdf",
                            "%PDF".getBytes(StandardCharsets.US_ASCII),
                            java.util.OptionalInt.empty());
            tell(store, chart, act);
            wantReminders(store, chart.person(), act);
            Episode episode = chart.episode();
            chart.change(episode.version(), episode.side(), episode.therapistId(), EpisodeState.CLOSED)
                    .orThrow();
            return row.personId();
        }
    }

    /** By phone, before the first visit. */
    private static void tell(Store store, Chart chart, Act act) {
        String link = store.records()
                .links()
                .add(
                        chart.episode().id(),
                        LinkPurpose.INTAKE,
                        java.util.OptionalInt.empty(),
                        "a".repeat(64),
                        act.at().plusSeconds(60),
                        false,
                        act)
                .id();
        store.records()
                .charts()
                .open(chart.episode().id(), new Act(link, Role.PATIENT, act.clinicId(), act.at()))
                .chartIfOpen()
                .orElseThrow()
                .intakes()
                .tell(
                        true,
                        Language.ES,
                        JsonMapper.shared().createObjectNode().put("work", "panadera"),
                        Optional.empty());
    }

    private static void wantReminders(Store store, Person person, Act act) {
        PersonDetails of = person.details();
        var reachable = new PersonDetails(
                of.name(),
                of.age(),
                of.sex(),
                of.statureCm(),
                of.massKg(),
                of.language(),
                of.phone(),
                Optional.of("told@example.org"),
                of.invented());
        store.records()
                .people()
                .change(person.id(), person.version(), reachable, act)
                .orThrow();
        store.records().reminders().agree(person.id(), 18, act);
    }

    @Test
    void aPersonGetsAllThatIsKept() throws IOException {
        String person = person(Instant.now());
        Path file = folder.resolve("all.zip");
        Run run = Run.of("person", "export", person, "--data", data(), "--out", file.toString());
        assertThat(run.err()).isEmpty();
        try (var zip = new ZipFile(file.toFile())) {
            assertThat(zip.stream().map(Object::toString)).anyMatch(name -> name.matches("documents/sheet-.*\\.pdf"));
            JsonNode record = JsonMapper.shared().readTree(zip.getInputStream(zip.getEntry("record.json")));
            assertThat(record.path("person").path("id").asString()).isEqualTo(person);
            JsonNode history = record.path("episodes").path(0).path("sections").path("history");
            assertThat(history.path(0)
                            .path("content")
                            .path("history")
                            .path("durationWeeks")
                            .intValue())
                    .isEqualTo(30);
            String contents = text(zip, "tables/contents.csv");
            assertThat(contents).contains("sections.csv,").contains("content.history.durationWeeks,30");
            assertThat(contents).contains("intakes.csv,").contains(",answers.work,panadera");
            assertThat(text(zip, "tables/intakes.csv")).contains(",true,ES,");
            assertThat(record.path("reminders").path(0).path("hour").intValue()).isEqualTo(18);
            assertThat(text(zip, "tables/reminders.csv")).contains(",18,");
            assertThat(text(zip, "tables/trail.csv")).contains(",export,PROGRAM,");
            assertThat(text(zip, "tables/documents.csv")).contains(",sheet,application/pdf,4,");
            everyColumnIsExplained(zip);
            everyValueIsInATable(record, zip);
        }
    }

    private static String text(ZipFile zip, String name) throws IOException {
        try (var stream = zip.getInputStream(zip.getEntry(name))) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static void everyColumnIsExplained(ZipFile zip) throws IOException {
        String dictionary = text(zip, "tables/data-dictionary.csv");
        for (var entry : zip.stream().toList()) {
            String name = entry.getName();
            if (name.startsWith("tables/") && !name.endsWith("dictionary.csv")) {
                for (String column :
                        text(zip, name).lines().findFirst().orElseThrow().split(",", -1)) {
                    assertThat(dictionary).contains("%s,%s,".formatted(name.substring("tables/".length()), column));
                }
            }
        }
    }

    /** Every value of the JSON stands in some table; staff stand there by name. */
    private static void everyValueIsInATable(JsonNode record, ZipFile zip) throws IOException {
        var tables = new StringBuilder();
        for (var entry : zip.stream().toList()) {
            if (entry.getName().startsWith("tables/")) {
                tables.append(text(zip, entry.getName()).replace("\"\"", "\""));
            }
        }
        var values = new ArrayList<String>();
        leaves(record.path("person"), values);
        leaves(record.path("episodes"), values);
        leaves(record.path("reminders"), values);
        assertThat(values)
                .hasSizeGreaterThan(100)
                .allSatisfy(value -> assertThat(tables).contains(value));
    }

    private static void leaves(JsonNode node, List<String> values) {
        if (node.isContainer()) {
            node.forEach(each -> leaves(each, values));
        } else if (!node.isNull()) {
            values.add(node.asString());
        }
    }

    @Test
    void anErasedPersonIsGoneAndTheTrailHolds() {
        String person = person(Instant.now());
        Run without = Run.of("person", "erase", person, "--data", data(), "--reason", "asked for by letter");
        assertThat(without.status()).isEqualTo(ExitStatus.BAD_INPUT);
        Run run = Run.of("person", "erase", person, "--data", data(), "--reason", "asked for by letter", "--for-good");
        assertThat(run.err()).isEmpty();
        assertThat(Run.of(
                                "person",
                                "export",
                                person,
                                "--data",
                                data(),
                                "--out",
                                folder.resolve("x").toString())
                        .err())
                .contains("no person");
        assertThat(Run.of("audit", "verify", "--data", data()).status()).isEqualTo(ExitStatus.OK);
    }

    @Test
    void onlyWhoseTimeIsOverIsErased() {
        String person = person(Instant.now());
        // Closed now: nobody's time is over after one year.
        assertThat(Run.of("person", "retention", "--data", data(), "--years", "1", "--erase")
                        .out())
                .isEmpty();
        Run unset = Run.of("person", "retention", "--data", data());
        assertThat(unset.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(unset.err()).contains("retention.years");
        assertThat(Run.of(
                                "person",
                                "export",
                                person,
                                "--data",
                                data(),
                                "--out",
                                folder.resolve("x").toString())
                        .status())
                .isEqualTo(ExitStatus.OK);
    }
}
