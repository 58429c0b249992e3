package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.codes.CodesFile;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.Saving;
import slipway.care.record.access.Reach;
import slipway.care.record.codes.ClinicCodes;
import slipway.care.record.codes.CodeFiles;
import slipway.care.record.codes.CodeLoad;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;
import slipway.reasoning.codes.CodeExclusion;
import slipway.reasoning.codes.CodeSet;

class ClinicCodesTest {
    private static CodeFiles set(String... lines) {
        String text = String.join(",", CodesFile.COLUMNS) + "\n" + String.join("\n", lines);
        return CodeFiles.of(new CodeSet(
                CodesFile.codes("test.csv", text.getBytes(StandardCharsets.UTF_8)),
                List.of(new CodeExclusion("G57.0", "G57.1", 1, "a \"note\", invented"))));
    }

    @ParameterizedTest
    @EnumSource
    void aLoadIsKeptWithWhoAndWhenAndTheNewestIsInUse(Databases kind) {
        try (var world = new World(kind)) {
            ClinicCodes codes = world.records.codes();
            assertThat(codes.inUse(World.CLINIC)).isEqualTo(CodeSet.EMPTY);
            Act lead = World.act(world.account("lea", Role.LEAD, Reach.CLINIC), Role.LEAD);
            CodeFiles first =
                    set("G57.01,yes,right,2026-10-01,2027-10-01,\"ischiático, \"\"own\"\" words\",official file");
            CodeFiles second = set(
                    "G57.01,yes,right,2026-10-01,2027-10-01,own words,official file",
                    "G57.01,no,none,2027-10-01,,own words,official file");
            CodeLoad one = codes.load(first, 0, lead).orThrow();
            assertThat(codes.inUse(World.CLINIC)).isEqualTo(first.set());
            CodeLoad two = codes.load(second, 1, lead).orThrow();
            assertThat(codes.inUse(World.CLINIC)).isEqualTo(second.set());
            assertThat(codes.files(World.CLINIC, 1)).contains(first);
            assertThat(codes.loads(World.CLINIC)).containsExactly(two, one);
            assertThat(one)
                    .extracting(CodeLoad::by, CodeLoad::at, CodeLoad::codes, CodeLoad::exclusions)
                    .containsExactly(lead.userId(), World.NOON, 1, 1);
            assertThat(world.records.trail().list(Chain.ofClinic(World.CLINIC), 0, 2))
                    .extracting(TrailEntry::entity, TrailEntry::action, TrailEntry::version, TrailEntry::who)
                    .containsExactly(
                            Tuple.tuple("codes", Action.IMPORT, 2L, lead.userId()),
                            Tuple.tuple("codes", Action.IMPORT, 1L, lead.userId()));
            assertThat(world.records.trail().verify().breaks()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whoHasNotSeenTheNewestReplacesNothingAndClinicsAreApart(Databases kind) {
        try (var world = new World(kind)) {
            ClinicCodes codes = world.records.codes();
            CodeFiles first = set("G57.01,yes,right,2026-10-01,,own words,official file");
            codes.load(first, 0, World.PROGRAM).orThrow();
            assertThat(codes.load(set(), 0, World.PROGRAM)).isInstanceOf(Saving.Stale.class);
            assertThat(codes.load(set(), 2, World.PROGRAM)).isInstanceOf(Saving.Stale.class);
            var hill = new Act("codes", Role.PROGRAM, "hill", World.NOON);
            world.records.clinics().add("Hill", "therapy", "", "112", true, hill);
            assertThat(codes.inUse("hill")).isEqualTo(CodeSet.EMPTY);
            codes.load(set(), 0, hill).orThrow();
            assertThat(codes.inUse(World.CLINIC)).isEqualTo(first.set());
            assertThat(codes.inUse(World.CLINIC).entries().get(0).validFrom()).isEqualTo(LocalDate.of(2026, 10, 1));
        }
    }
}
