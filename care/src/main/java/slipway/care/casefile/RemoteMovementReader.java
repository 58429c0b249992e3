package slipway.care.casefile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.care.casefile.RemoteMovement.Change;
import slipway.exercises.yaml.NearestWord;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;

/** Reads what a joint far from the symptom did to it. */
final class RemoteMovementReader {
    private static final String OTHER_PREFIX = "other-";

    private final Report report;

    RemoteMovementReader(Report report) {
        this.report = report;
    }

    List<RemoteMovement> read(Fields test, TestKind kind) {
        var movements = new ArrayList<RemoteMovement>();
        for (Fields at : test.list("remoteMovements")) {
            readOne(at, kind).ifPresent(movements::add);
        }
        return movements;
    }

    private Optional<RemoteMovement> readOne(Fields at, TestKind kind) {
        String name = at.findText("joint").orElse("");
        Limb limb = name.startsWith(OTHER_PREFIX) ? Limb.OTHER : Limb.OWN;
        Optional<Joint> joint = Joint.find(limb == Limb.OTHER ? name.substring(OTHER_PREFIX.length()) : name)
                .filter(found -> limb == Limb.OWN || found.paired());
        if (joint.isEmpty()) {
            if (!name.isEmpty()) {
                report.add(
                        at.child("joint"),
                        NearestWord.complaint(
                                "joint",
                                name,
                                Arrays.stream(Joint.values()).map(Joint::key).toList()));
            }
            return Optional.empty();
        }
        if (joint.get() == kind.joint() && limb == Limb.OWN) {
            report.add(at.child("joint"), "must be another joint than the one that the test moves, was " + name);
        }
        OptionalDouble fromDeg = angle(at.child("fromDeg"), joint.get());
        OptionalDouble toDeg = angle(at.child("toDeg"), joint.get());
        Optional<Boolean> limbHeld = at.findYesNo("limbHeld");
        Optional<Change> change = at.findText("change").flatMap(RemoteMovementReader::change);
        if (fromDeg.isEmpty() || toDeg.isEmpty() || limbHeld.isEmpty() || change.isEmpty()) {
            return Optional.empty();
        }
        if (fromDeg.equals(toDeg)) {
            report.add(
                    at,
                    "must move between two angles, was %s deg twice"
                            .formatted(at.child("toDeg").written()));
        }
        return Optional.of(new RemoteMovement(
                joint.get(), limb, fromDeg.getAsDouble(), toDeg.getAsDouble(), limbHeld.get(), change.get()));
    }

    private OptionalDouble angle(Fields at, Joint joint) {
        OptionalDouble written = at.asNumber();
        return written.isPresent() ? report.checkedDeg(at, joint, written.getAsDouble()) : written;
    }

    private static Optional<Change> change(String text) {
        return switch (text) {
            case "eased", "worsened", "none" -> Optional.of(Change.valueOf(text.toUpperCase(Locale.ROOT)));
            default -> Optional.empty();
        };
    }
}
