package slipway.web.alerts;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.follow.Alert;
import slipway.mechanics.body.Side;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.web.Charts;

/** Opening hours are the usual ones: Monday to Friday, 8 to 18. */
class EscalationTest {
    private static final String CLINIC = "harbour";
    /** A Friday ten minutes before closing. */
    private static final ZonedDateTime FRIDAY =
            LocalDateTime.parse("2026-03-06T17:50").atZone(ZoneId.systemDefault());

    private static final ZonedDateTime MONDAY = FRIDAY.plusDays(3).withHour(8).withMinute(0);

    @TempDir
    Path folder;

    private Store store;
    private String alertId;

    @BeforeEach
    void anAlertIsRaised() {
        store = Store.open(StoreSettings.inFolder(folder));
        Act program = new Act("test", Role.PROGRAM, CLINIC, FRIDAY.toInstant());
        var records = store.records();
        records.clinics().add("Harbour Street", "therapy", "", "112", true, program);
        String therapist = staff("therapist", Role.THERAPIST);
        var act = new Act(therapist, Role.THERAPIST, CLINIC, FRIDAY.toInstant());
        String person =
                records.people().add(Charts.details("Invented Person"), act).id();
        alertId = records.charts()
                .begin(person, Side.LEFT, therapist, Map.of(), act)
                .checkIns()
                .raise("new-weakness", "Check-in: new weakness", Optional.empty(), therapist)
                .id();
    }

    private String staff(String login, Role role) {
        return store.records()
                .staff()
                .add(
                        login,
                        login,
                        Set.of(role),
                        Reach.OWN,
                        "{none}",
                        new Act("test", Role.PROGRAM, CLINIC, FRIDAY.toInstant()))
                .id();
    }

    @AfterEach
    void close() {
        store.close();
    }

    private int run(ZonedDateTime at) {
        return new Escalation(store.records(), Clock.fixed(at.toInstant(), at.getZone())).run();
    }

    private Alert alert() {
        return store.records().alerts().open(CLINIC).get(0);
    }

    @Test
    void itGoesToALeadAfterHalfAnHourOfOpeningTimeAndThenToAnother() {
        String lead = staff("lead", Role.LEAD);
        String other = staff("second", Role.LEAD);
        assertThat(run(FRIDAY.plusHours(2)))
                .as("closed since ten minutes after")
                .isZero();
        assertThat(run(MONDAY.plusMinutes(19))).as("ten and nineteen minutes").isZero();
        assertThat(run(MONDAY.plusMinutes(20))).isEqualTo(1);
        assertThat(alert().level()).isEqualTo(1);
        String first = alert().ownerId();
        assertThat(first).isIn(lead, other);
        assertThat(run(MONDAY.plusMinutes(49))).isZero();
        assertThat(run(MONDAY.plusMinutes(50))).isEqualTo(1);
        assertThat(alert().ownerId()).isIn(lead, other).isNotEqualTo(first);
        assertThat(run(MONDAY.plusHours(9))).as("nobody is left").isZero();
    }

    @Test
    void theSettingOfTheClinicDecides() {
        staff("lead", Role.LEAD);
        store.records()
                .clinics()
                .set(Escalation.SETTING, 0, "5", new Act("test", Role.PROGRAM, CLINIC, FRIDAY.toInstant()));
        assertThat(run(FRIDAY.plusMinutes(4))).isZero();
        assertThat(run(FRIDAY.plusMinutes(6))).isEqualTo(1);
    }

    @Test
    void whatWasTakenStaysWithWhoTookIt() {
        String lead = staff("lead", Role.LEAD);
        store.records().alerts().acknowledge(alertId, "called", new Act(lead, Role.LEAD, CLINIC, FRIDAY.toInstant()));
        assertThat(run(MONDAY.plusHours(4))).isZero();
    }

    @Test
    void withoutALeadItStaysVisibleWithItsOwner() {
        assertThat(run(MONDAY.plusHours(4))).isZero();
        assertThat(alert().level()).isZero();
    }
}
