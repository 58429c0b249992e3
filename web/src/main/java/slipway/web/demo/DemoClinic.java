package slipway.web.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.person.PersonDetails;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Side;
import slipway.web.episode.Cases;
import slipway.web.episode.attempt.Sheets;
import tools.jackson.databind.node.ObjectNode;

/** Fills empty records with a clinic, its staff and people in all states of care, all invented. */
@Component
public class DemoClinic {
    /** The two sign-ins that the demo prints: login and password. */
    public static final Map<String, String> SIGN_INS =
            Map.of("therapist", "nerves glide gently", "lead", "keep the house in order");

    private static final Words WORDS = Words.beside(DemoClinic.class, Language.EN);
    private static final String CLINIC = "harbour-steps";

    private final Records records;
    private final PasswordEncoder passwords;
    private final Clock clock;
    private final DemoCourse course;

    DemoClinic(Records records, PasswordEncoder passwords, Clock clock, Cases cases, Sheets sheets) {
        this.records = records;
        this.passwords = passwords;
        this.clock = clock;
        this.course = new DemoCourse(records, cases, sheets);
    }

    /** Fills the records; does nothing if there is a clinic already. */
    public void fill() {
        if (!records.clinics().list().isEmpty()) {
            return;
        }
        Instant now = clock.instant();
        var start = new Act("demo", Role.PROGRAM, CLINIC, now.minus(Duration.ofDays(150)));
        records.clinics().add(WORDS.get("clinic"), "therapy", "555 0134", "911", true, start);
        StaffAccount therapist = staff("therapist", Set.of(Role.THERAPIST), Reach.TEAM, start);
        staff("lead", EnumSet.of(Role.LEAD, Role.THERAPIST), Reach.CLINIC, start);
        StaffAccount colleague = staff("colleague", Set.of(Role.THERAPIST), Reach.OWN, start);
        var ofTherapist = new Act(therapist.id(), Role.THERAPIST, CLINIC, now);
        var ofColleague = new Act(colleague.id(), Role.THERAPIST, CLINIC, now);
        people(ofTherapist, ofColleague);
        var actors = Map.of("therapist", ofTherapist, "colleague", ofColleague);
        new DemoInCare(records, course, actors, ofTherapist).fill();
        new DemoMeasured(records, actors).fill();
    }

    /**
     * One more invented person, with a plan at home; for tests and measurements on filled records.
     *
     * @param act whose person it is, and when
     * @return id of the episode
     */
    public String personAtHome(String name, Act act) {
        LocalDate day = LocalDate.ofInstant(act.at(), ZoneOffset.UTC);
        String episode = begin(DemoCase.read("low-irritability-stiff", day).as(name), Section.CHOICES, act);
        course.release(episode, act);
        return episode;
    }

    private StaffAccount staff(String login, Set<Role> roles, Reach reach, Act act) {
        String password = SIGN_INS.get(login);
        // Whoever has no sign-in of the demo gets a hash that no password has.
        String hash = password == null ? "none" : Objects.requireNonNull(passwords.encode(password));
        return records.staff().add(login, WORDS.get("staff." + login), roles, reach, hash, act);
    }

    private void people(Act now, Act colleague) {
        LocalDate day = LocalDate.ofInstant(now.at(), ZoneOffset.UTC);
        DemoCase stiff = DemoCase.read("low-irritability-stiff", day);
        DemoCase acute = DemoCase.read("high-irritability-acute", day);
        DemoCase fibular = DemoCase.read("fibular-neck-spanish", day);

        begin(DemoCase.read("red-flag-saddle-numbness", day), Section.CHOICES, ago(now, 0));
        begin(DemoCase.read("behaves-unlike-nerve", day), Section.CHOICES, ago(now, 2));
        begin(stiff, Section.CHOICES, ago(now, 1));
        begin(acute.as(WORDS.get("person.examined")), Section.EXAMINATION, ago(now, 1));
        fresh(WORDS.get("person.fresh"), Side.LEFT, ago(now, 0));
        DemoIntake.tell(records, fresh(WORDS.get("person.told"), Side.RIGHT, ago(now, 1)), ago(now, 1));

        String easing = begin(acute, Section.CHOICES, ago(now, 10));
        course.release(easing, ago(now, 10));
        course.easing(easing, course.firstAtHome(easing, now), now);

        String silent = begin(fibular, Section.CHOICES, ago(now, 12));
        course.release(silent, ago(now, 12));

        String weak = begin(stiff.as(WORDS.get("person.weak")), Section.CHOICES, ago(now, 6));
        course.release(weak, ago(now, 6));
        course.newWeakness(
                weak,
                course.firstAtHome(weak, now),
                now.at(now.at().minus(Duration.ofHours(5))),
                WORDS.get("alert.weak"));

        begin(stiff.as(WORDS.get("person.colleague")), Section.TOLERANCE, ago(colleague, 3));
    }

    private static Act ago(Act now, int days) {
        return now.at(now.at().minus(Duration.ofDays(days)).minus(Duration.ofHours(1)));
    }

    private String begin(DemoCase person, Section last, Act act) {
        return begin(person.person(), person.split().side(), person.until(last), act);
    }

    private String fresh(String name, Side side, Act act) {
        return begin(PersonDetails.invented(name), side, Map.of(), act);
    }

    private String begin(PersonDetails details, Side side, Map<Section, ObjectNode> sections, Act act) {
        String personId = records.people().add(details, act).id();
        Chart chart = records.charts().begin(personId, side, act.userId(), sections, act);
        return chart.episode().id();
    }
}
