package slipway.app.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.app.Main;
import slipway.app.console.ExitStatus;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.person.Age;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;
import slipway.store.Store;
import slipway.store.StoreSettings;

class FhirTakeCommandTest {
    private static final Path BUNDLE = Path.of("../examples/referral.json");
    private static final Pattern WORD = Pattern.compile("--confirm ([0-9a-f]{16})");
    private static final Pattern EPISODE = Pattern.compile("taken over into episode (\\S+)");

    @TempDir
    private Path folder = Path.of("");

    private String said = "";

    @BeforeEach
    void makeAClinic() {
        try (Store store = Store.open(StoreSettings.inFolder(folder))) {
            Act act = act();
            store.records().clinics().add("Harbour Street", "therapy", "", "112", true, act);
            store.records().staff().add("ada", "Invented Ada", Set.of(Role.THERAPIST), Reach.OWN, "{none}", act);
        }
    }

    private static Act act() {
        return new Act("test", Role.PROGRAM, "harbour", java.time.Instant.now());
    }

    private int run(Path bundle, String... more) {
        var all = new ArrayList<>(List.of("fhir", "take", bundle.toString(), "--data", folder.toString()));
        all.addAll(List.of(more));
        var out = new StringWriter();
        int status = Main.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(out))
                .execute(all.toArray(String[]::new));
        said = out.toString();
        return status;
    }

    private static String found(Pattern pattern, String text) {
        var matcher = pattern.matcher(text);
        assertThat(matcher.find()).as(text).isTrue();
        return matcher.group(1);
    }

    private String changes() {
        return said.lines()
                .takeWhile(line -> !line.startsWith("To take") && !line.startsWith("taken"))
                .reduce("", (one, next) -> one + "\n" + next);
    }

    @Test
    void aNewPersonIsWhatWasShownAndNothingElse() {
        assertThat(run(BUNDLE, "--new", "right")).isEqualTo(ExitStatus.OK);
        String shown = changes();
        assertThat(shown).contains("diagnosis M54.16", "who referred", "left out (1)", "MedicationRequest");
        String word = found(WORD, said);
        assertThat(run(BUNDLE, "--new", "right", "--confirm", "0123456789abcdef"))
                .isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(run(BUNDLE, "--new", "right", "--confirm", word)).isEqualTo(ExitStatus.OK);
        assertThat(changes()).isEqualTo(shown);

        try (Store store = Store.open(StoreSettings.inFolder(folder))) {
            Chart chart = store.records()
                    .charts()
                    .open(found(EPISODE, said), act())
                    .chartIfOpen()
                    .orElseThrow();
            assertThat(chart.person().details().name()).isEqualTo("Ilka Brandauer (invented)");
            assertThat(chart.person().details().age()).contains(new Age.Born(LocalDate.of(1979, 5, 14)));
            assertThat(chart.section(Section.PAPERWORK)
                            .content()
                            .at("/paperwork/diagnoses/0")
                            .asString())
                    .isEqualTo("M54.16");
            assertThat(chart.section(Section.PAPERWORK)
                            .content()
                            .at("/paperwork/orderedOn")
                            .asString())
                    .isEqualTo("2026-03-01");
            assertThat(chart.measures().list()).hasSize(1);
            assertThat(store.records()
                            .trail()
                            .list(Chain.ofPerson(chart.person().id()), 0, 20))
                    .extracting(TrailEntry::action)
                    .contains(Action.IMPORT);
        }
    }

    @Test
    void intoAnEpisodeTheSameTwiceChangesNothingAndAnOldWordDoesNotFit() throws IOException {
        run(BUNDLE, "--new", "right");
        run(BUNDLE, "--new", "right", "--confirm", found(WORD, said));
        String episode = found(EPISODE, said);
        assertThat(run(BUNDLE, "--into", episode)).isEqualTo(ExitStatus.OK);
        assertThat(said).contains("Nothing would change.");

        Path other = folder.resolve("other.json");
        Files.writeString(
                other, Files.readString(BUNDLE).replace("M54.16", "M54.17").replace("\"value\": 6", "\"value\": 4"));
        run(other, "--into", episode);
        assertThat(said).contains("diagnosis M54.17", "a second score of that day");
        String word = found(WORD, said);
        try (Store store = Store.open(StoreSettings.inFolder(folder))) {
            Chart chart =
                    store.records().charts().open(episode, act()).chartIfOpen().orElseThrow();
            var details = chart.person().details();
            store.records()
                    .people()
                    .change(
                            chart.person().id(),
                            chart.person().version(),
                            new slipway.care.record.person.PersonDetails(
                                    details.name(),
                                    details.age(),
                                    details.sex(),
                                    java.util.OptionalDouble.of(171),
                                    details.massKg(),
                                    details.language(),
                                    details.phone(),
                                    details.email(),
                                    details.invented()),
                            act())
                    .orThrow();
        }
        assertThat(run(other, "--into", episode, "--confirm", word)).isEqualTo(ExitStatus.BAD_INPUT);
        try (Store store = Store.open(StoreSettings.inFolder(folder))) {
            assertThat(store.records()
                            .charts()
                            .open(episode, act())
                            .chartIfOpen()
                            .orElseThrow()
                            .measures()
                            .list())
                    .hasSize(1);
        }
        run(other, "--into", episode);
        assertThat(run(other, "--into", episode, "--confirm", found(WORD, said)))
                .isEqualTo(ExitStatus.OK);
        try (Store store = Store.open(StoreSettings.inFolder(folder))) {
            Chart chart =
                    store.records().charts().open(episode, act()).chartIfOpen().orElseThrow();
            assertThat(chart.measures().list()).hasSize(2);
            assertThat(chart.person().details().statureCm()).hasValue(171);
        }
    }

    @Test
    void aBundleWithoutAPatientOrWithAnAddressTwiceIsRefused() throws IOException {
        Path broken = folder.resolve("broken.json");
        Files.writeString(broken, Files.readString(BUNDLE).replace("8a3b7c04", "8a3b7c03"));
        assertThat(run(broken, "--new", "left")).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(said).contains("the same fullUrl");
        Files.writeString(broken, "{\"resourceType\":\"Bundle\",\"type\":\"collection\"}");
        assertThat(run(broken, "--new", "left")).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(said).contains("names no patient");
    }
}
