package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Role;
import slipway.care.record.Saving;
import slipway.care.record.access.ApiScope;
import slipway.care.record.access.ApiToken;
import slipway.care.record.access.ApiTokens;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;

class ApiTokensTest {
    private static final String DIGEST = "ab".repeat(32);
    private static final Instant LATER = World.NOON.plus(Duration.ofDays(30));

    @ParameterizedTest
    @EnumSource
    void aTokenIsFoundByItsDigestUntilItEnds(Databases kind) {
        try (var world = new World(kind)) {
            ApiToken token = token(world, "ada");
            ApiToken found = world.records.tokens().find(DIGEST).orElseThrow();
            assertThat(found).isEqualTo(token);
            assertThat(found.scopes()).isEqualTo(EnumSet.of(ApiScope.CASES_READ, ApiScope.FHIR_READ));
            assertThat(found.isUsableAt(LATER.minusSeconds(1))).isTrue();
            assertThat(found.isUsableAt(LATER)).isFalse();
            assertThat(world.records.tokens().find("cd".repeat(32))).isEmpty();

            world.records.tokens().used(found, World.NOON.plusSeconds(5));
            world.records.tokens().used(world.records.tokens().find(DIGEST).orElseThrow(), World.NOON.plusSeconds(30));
            assertThat(world.records.tokens().list(World.CLINIC).get(0).lastUsedAt())
                    .contains(World.NOON.plusSeconds(5));

            world.records.tokens().revoke(token.id(), World.PROGRAM);
            assertThat(world.records.tokens().find(DIGEST).orElseThrow().isUsableAt(World.NOON))
                    .isFalse();
            assertThat(world.records.trail().list(Chain.ofClinic(World.CLINIC), 0, 2))
                    .extracting(TrailEntry::entity, TrailEntry::action)
                    .containsExactly(
                            org.assertj.core.groups.Tuple.tuple("api-token", Action.LINK_REVOKED),
                            org.assertj.core.groups.Tuple.tuple("api-token", Action.CREATE));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aTokenBelongsToAnAccountOfTheClinic(Databases kind) {
        try (var world = new World(kind)) {
            ApiToken token = token(world, "ada");
            var elsewhere = new Act("import", Role.PROGRAM, "hill", World.NOON);
            world.records.clinics().add("Hill Road", "therapy", "", "112", true, elsewhere);
            assertThatThrownBy(() -> world.records.tokens().revoke(token.id(), elsewhere))
                    .isInstanceOf(NotThere.class);
            assertThatThrownBy(() -> world.records.tokens().add(token, "ef".repeat(32), elsewhere))
                    .isInstanceOf(NotThere.class);
        }
    }

    @ParameterizedTest
    @EnumSource
    void whatIsAskedOnceIsDoneOnce(Databases kind) {
        try (var world = new World(kind)) {
            ApiTokens tokens = world.records.tokens();
            String id = token(world, "ada").id();
            assertThat(tokens.begin(id, "key-0001", "a", World.NOON)).isInstanceOf(ApiTokens.Once.First.class);
            assertThat(tokens.begin(id, "key-0001", "a", World.NOON)).isInstanceOf(ApiTokens.Once.Unfinished.class);
            tokens.finish(id, "key-0001", "made");
            assertThat(tokens.begin(id, "key-0001", "a", World.NOON)).isEqualTo(new ApiTokens.Once.Before("made"));
            assertThat(tokens.begin(id, "key-0001", "b", World.NOON)).isInstanceOf(ApiTokens.Once.Other.class);
            assertThat(tokens.begin(id, "key-0001", "b", World.NOON.plus(Duration.ofDays(8))))
                    .isInstanceOf(ApiTokens.Once.First.class);
        }
    }

    @ParameterizedTest
    @EnumSource
    void theTrailNamesTheToken(Databases kind) {
        try (var world = new World(kind)) {
            StaffAccount ada = world.therapist("ada", Reach.OWN);
            Act own = World.act(ada, Role.THERAPIST);
            Chart chart = world.chart(world.person("Ines Palo", own), own);
            var through = new Act(ada.id(), Role.THERAPIST, World.CLINIC, World.NOON, "k7q2abcdefgh");
            Chart opened = world.records
                    .charts()
                    .open(chart.episode().id(), through)
                    .chartIfOpen()
                    .orElseThrow();
            opened.save(Section.HISTORY, 0, World.json("{}")).orThrow();
            assertThat(world.records.trail().list(Chain.ofPerson(chart.person().id()), 0, 2))
                    .extracting(TrailEntry::who)
                    .containsOnly(ada.id() + "/k7q2abcdefgh");
            assertThat(opened.section(Section.HISTORY).changedBy()).isEqualTo(ada.id());
            assertThat(world.records.trail().verify().breaks()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void severalSectionsAreWrittenTogetherOrNotAtAll(Databases kind) {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Chart chart = world.chart(world.person("Ines Palo", act), act);
            Map<Section, Long> read = versions(chart);
            chart.save(Section.SITES, 0, World.json("{}")).orThrow();
            var contents = Map.of(
                    Section.HISTORY,
                    World.json("{\"history\":{\"durationWeeks\":3}}"),
                    Section.CHOICES,
                    World.json("{}"));
            assertThat(chart.saveAll(read, contents)).isInstanceOf(Saving.Stale.class);
            assertThat(chart.section(Section.HISTORY).version()).isZero();
            assertThat(chart.saveAll(versions(chart), contents)).isInstanceOf(Saving.Saved.class);
            assertThat(chart.section(Section.HISTORY).version()).isEqualTo(1);
            assertThat(chart.section(Section.CHOICES).version()).isEqualTo(1);
            assertThat(chart.section(Section.SITES).version()).isEqualTo(1);
        }
    }

    private static Map<Section, Long> versions(Chart chart) {
        var versions = new EnumMap<Section, Long>(Section.class);
        chart.sections().forEach((section, kept) -> versions.put(section, kept.version()));
        return versions;
    }

    private static ApiToken token(World world, String login) {
        String staffId = world.therapist(login, Reach.OWN).id();
        var token = new ApiToken(
                "k7q2abcdefgh",
                World.CLINIC,
                staffId,
                "records of the hospital",
                Set.of(ApiScope.CASES_READ, ApiScope.FHIR_READ),
                World.NOON,
                World.PROGRAM.userId(),
                LATER,
                Optional.empty(),
                Optional.empty());
        return world.records.tokens().add(token, DIGEST, World.PROGRAM);
    }
}
