package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jooq.SQLDialect;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.assembly.CaseAssembly;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanState;
import slipway.care.record.content.Section;
import slipway.care.record.follow.CheckIn;
import slipway.care.record.trail.TrailReport;
import slipway.store.db.Migrations;
import slipway.store.db.Pools;

/** Records that the first version of the tables held, with every script since run over them. */
class UpgradeTest {
    private static final String EPISODE = "019cae6c-50db-72d1-b276-2795d18211a1";
    /** As it was when the file was made. */
    private static final String HEADS = "1d43fe9a63a9b0f65b51aca93bec81ff48cc04903752df47f57509cd2a1ac4ed";

    @ParameterizedTest
    @EnumSource
    void nothingIsLostOnTheWayFromTheFirstVersion(Databases kind) {
        try (Databases.Fresh database = kind.fresh()) {
            fill(database, kind);
            try (Store store = Store.open(database.settings())) {
                TrailReport report = store.records().trail().verify();
                assertThat(report.breaks()).isEmpty();
                assertThat(report.entries()).isEqualTo(17);
                assertThat(report.headsDigest()).isEqualTo(HEADS);
                check(store);
            }
        }
    }

    private static void check(Store store) {
        Act act = new Act("import", Role.PROGRAM, "harbour", World.NOON);
        Chart chart = store.records().charts().open(EPISODE, act).chartIfOpen().orElseThrow();
        assertThat(CaseAssembly.tree(
                                chart.person(),
                                chart.episode(),
                                store.records().clinics().find("harbour").orElseThrow(),
                                chart.sections(),
                                LocalDate.of(2026, 3, 2))
                        .path("history")
                        .path("durationWeeks")
                        .intValue())
                .isEqualTo(30);
        assertThat(chart.section(Section.SITES).version()).isEqualTo(2);
        assertThat(chart.plans().released().orElseThrow().state()).isEqualTo(PlanState.RELEASED);
        assertThat(chart.checkIns().list()).extracting(CheckIn::id).containsExactly("check-in-0001");
        String document = chart.documents().list().get(0).id();
        assertThat(chart.documents().bytes(document).orElseThrow()).containsExactly(1, 2, -1, 0);
        assertThat(store.records().staff().credentials("ada")).isPresent();
    }

    private static void fill(Databases.Fresh database, Databases kind) {
        boolean sqlite = kind == Databases.SQLITE;
        StoreSettings settings = database.settings();
        try (Pools pools = sqlite
                ? Pools.sqlite(settings.url(), 1)
                : Pools.postgres(settings.url(), settings.user(), settings.password(), 2, 1)) {
            Migrations.runUpTo("1", pools.writing(), sqlite ? SQLDialect.SQLITE : SQLDialect.POSTGRES);
        }
        for (String line : lines()) {
            database.run(line.replace("${bytes-open}", sqlite ? "X'" : "'\\x").replace("${bytes-close}", "'"));
        }
    }

    private static List<String> lines() {
        try (var in = Objects.requireNonNull(UpgradeTest.class.getResourceAsStream("first-version.sql"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> line.startsWith("insert"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
