package slipway.benchmarks.load;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.UUID;
import org.springframework.security.crypto.password.PasswordEncoder;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanDraft;
import slipway.care.record.chart.PlanState;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.chart.SupervisedTry;
import slipway.care.record.chart.VisitRecord;
import slipway.care.record.content.Section;
import slipway.care.record.person.PersonDetails;
import slipway.care.record.trail.TrailForm;
import slipway.web.WebServer;
import slipway.web.demo.DemoClinic;
import tools.jackson.databind.node.ObjectNode;

/**
 * Invented people with a plan at home, shared among therapists. The first goes through the program's own doors; the
 * others get the same chart with another body weight, so that no two have the same plan and each has to be computed.
 */
final class Crowd {
    static final String PASSWORD = "only for this measurement";

    private final Records records;
    private final WebServer server;
    private String firstEpisode = "";
    private final Act program =
            new Act("benchmark", Role.PROGRAM, UUID.randomUUID().toString(), Instant.now());

    Crowd(Records records, WebServer server) {
        this.records = records;
        this.server = server;
    }

    /** Makes them; gives the secret codes of the people, one each. */
    List<String> make(int people, int therapists) {
        records.clinics().add("Benchmark", "therapy", "", "112", true, program);
        String hash = Objects.requireNonNull(server.part(PasswordEncoder.class).encode(PASSWORD));
        var acts = new ArrayList<Act>();
        for (int i = 0; i < therapists; i++) {
            StaffAccount account = records.staff()
                    .add(login(i), "Bench " + i, EnumSet.of(Role.THERAPIST), Reach.CLINIC, hash, program);
            acts.add(new Act(
                    account.id(),
                    Role.THERAPIST,
                    program.clinicId(),
                    program.at().minus(Duration.ofDays(3))));
        }
        firstEpisode = server.part(DemoClinic.class).personAtHome("Bench First", acts.get(0));
        Chart pattern = open(firstEpisode, acts.get(0));
        var codes = new ArrayList<String>();
        for (int i = 0; i < people; i++) {
            codes.add(code(copy(pattern, i, acts.get(i % therapists)), acts.get(i % therapists)));
        }
        return codes;
    }

    /** The episode that the others were made after. */
    String firstEpisode() {
        return firstEpisode;
    }

    static String login(int number) {
        return "bench-" + number;
    }

    private Chart open(String episode, Act act) {
        return records.charts().open(episode, act).chartIfOpen().orElseThrow();
    }

    private String copy(Chart pattern, int number, Act act) {
        Map<Section, ObjectNode> sections = new EnumMap<>(Section.class);
        pattern.sections().forEach((section, record) -> sections.put(section, record.content()));
        String person = records.people().add(details(number), act).id();
        Chart chart = records.charts().begin(person, pattern.episode().side(), act.userId(), sections, act);
        VisitRecord seen = chart.visits().start();
        PlanDraft draft = pattern.plans().released().orElseThrow().plan();
        String inputs = draft.inputs().replaceFirst("massKg: *[0-9.]+", "massKg: " + (60 + number * 0.01));
        PlanVersion plan = chart.plans()
                .add(new PlanDraft(
                        inputs, draft.versions(), draft.stamp(), draft.body(), draft.ceilings(), draft.home()));
        chart.plans().move(plan.number(), PlanState.PROPOSED, PlanState.ACCEPTED);
        for (SupervisedTry tried : pattern.visits().tries()) {
            chart.visits().addTry(seen.id(), plan.number(), tried.entry());
        }
        chart.plans().move(plan.number(), PlanState.ACCEPTED, PlanState.RELEASED);
        chart.visits().end(seen.id(), seen.version());
        return chart.episode().id();
    }

    private String code(String episode, Act act) {
        String code = UUID.randomUUID().toString();
        Instant end = Instant.now().plus(Duration.ofDays(2));
        records.links().add(episode, LinkPurpose.GUIDE, OptionalInt.empty(), TrailForm.sha256(code), end, false, act);
        return code;
    }

    private static PersonDetails details(int number) {
        return PersonDetails.invented("Bench Person " + number);
    }
}
