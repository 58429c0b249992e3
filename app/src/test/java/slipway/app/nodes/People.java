package slipway.app.nodes;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.Clinic;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.follow.CheckIn;
import slipway.care.record.trail.TrailForm;
import slipway.web.demo.DemoClinic;

/** Invented people with a plan at home and a code, in the clinic of the demo. */
final class People {
    /** Somebody at home. */
    record AtHome(String episodeId, String code) {}

    private final Records records;
    private final Act act;

    People(Records records) {
        this.records = records;
        Clinic clinic = records.clinics().list().get(0);
        StaffAccount therapist = records.staff().list(clinic.id()).stream()
                .filter(account -> account.login().equals("therapist"))
                .findFirst()
                .orElseThrow();
        this.act = new Act(therapist.id(), Role.THERAPIST, clinic.id(), Instant.now());
    }

    List<AtHome> make(DemoClinic clinic, int count) {
        var people = new ArrayList<AtHome>();
        for (int i = 0; i < count; i++) {
            String episode =
                    clinic.personAtHome("Invented " + i, act.at(act.at().minus(Duration.ofDays(3))));
            String code = UUID.randomUUID().toString();
            records.links()
                    .add(
                            episode,
                            LinkPurpose.GUIDE,
                            OptionalInt.empty(),
                            TrailForm.sha256(code),
                            act.at().plus(Duration.ofDays(1)),
                            false,
                            act);
            people.add(new AtHome(episode, code));
        }
        return people;
    }

    /** Ids of the reports that are kept. */
    List<String> reports(AtHome person) {
        return records.charts().open(person.episodeId(), act).chartIfOpen().orElseThrow().checkIns().list().stream()
                .map(CheckIn::id)
                .toList();
    }

    /** Kinds of the alerts that are open. */
    Set<String> alerts() {
        return records.alerts().open(act.clinicId()).stream()
                .map(alert -> alert.episodeId() + " " + alert.kind())
                .collect(Collectors.toSet());
    }
}
