package slipway.web.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.AccessLink;
import slipway.care.record.access.LinkPurpose;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Cases;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What an invented person told by phone before the first visit. */
final class DemoIntake {
    private static final Duration CODE = Duration.ofDays(14);
    private static final Duration UNTIL_TOLD = Duration.ofHours(9);

    private DemoIntake() {}

    /** Gives a code, which nobody knows, and tells everything by it. */
    static void tell(Records records, String episodeId, Act act) {
        AccessLink link = records.links()
                .add(
                        episodeId,
                        LinkPurpose.INTAKE,
                        OptionalInt.empty(),
                        Cases.digest(UUID.randomUUID().toString()),
                        act.at().plus(CODE),
                        false,
                        act);
        var person = new Act(link.id(), Role.PATIENT, act.clinicId(), act.at().plus(UNTIL_TOLD));
        records.charts()
                .open(episodeId, person)
                .chartIfOpen()
                .orElseThrow()
                .intakes()
                .tell(true, Language.EN, answers(), Optional.empty());
    }

    private static ObjectNode answers() {
        try (InputStream stream = Objects.requireNonNull(DemoIntake.class.getResourceAsStream("told.json"))) {
            return (ObjectNode) JsonMapper.shared().readTree(stream);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read told.json", e);
        }
    }
}
