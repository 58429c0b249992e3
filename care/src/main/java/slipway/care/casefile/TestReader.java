package slipway.care.casefile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.care.casefile.TestEntry.Felt;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;

/** Reads the neural tests. */
final class TestReader {
    private final Report report;

    private TestReader(Report report) {
        this.report = report;
    }

    static List<TestEntry> read(Fields root, Report report) {
        var reader = new TestReader(report);
        var tests = new ArrayList<TestEntry>();
        var firstOf = new HashMap<List<Object>, Fields>();
        for (Fields at : root.list("tests")) {
            reader.readTest(at).ifPresent(test -> {
                Fields first = firstOf.putIfAbsent(List.of(test.test(), test.side(), test.start()), at);
                if (first != null) {
                    report.add(
                            at,
                            "duplicate test: %s in the same posture as on %s; give one, or say what differed as posture"
                                    .formatted(test.text(), report.lineOf(first)));
                }
                tests.add(test);
            });
        }
        return tests;
    }

    private Optional<TestEntry> readTest(Fields at) {
        Optional<TestKind> kind = at.findText("test").flatMap(TestKind::find);
        Optional<Side> side = at.findSide("side");
        if (kind.isEmpty() || side.isEmpty()) {
            return Optional.empty(); // the schema has said why
        }
        Optional<Posture> start = readStart(at, kind.get());
        OptionalDouble reachedDeg = readReached(at, kind.get());
        Optional<Felt> felt = readFelt(at);
        List<RemoteMovement> remote = new RemoteMovementReader(report).read(at, kind.get());
        if (start.isEmpty() || reachedDeg.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new TestEntry(
                kind.get(),
                side.get(),
                start.get(),
                reachedDeg.getAsDouble(),
                at.has("onsetDeg"),
                at.findNumber("restingSymptom"),
                felt,
                remote));
    }

    private Optional<Posture> readStart(Fields at, TestKind kind) {
        String differs = at.findText("posture").orElse("");
        try {
            Posture start = kind.start().withParsed(differs);
            if (start.angleDeg(kind.joint(), Limb.OWN) != kind.startDeg()) {
                report.add(
                        at.child("posture"),
                        "must not name %s, the joint that moves; its angle is onsetDeg or negativeUpToDeg"
                                .formatted(kind.joint().key()));
                return Optional.empty();
            }
            return Optional.of(start);
        } catch (IllegalArgumentException e) {
            report.add(at.child("posture"), String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    private OptionalDouble readReached(Fields at, TestKind kind) {
        if (at.has("onsetDeg") == at.has("negativeUpToDeg")) {
            report.add(
                    at,
                    at.has("onsetDeg")
                            ? "must have either onsetDeg or negativeUpToDeg, had both"
                            : "must have either onsetDeg (the first change of the symptom) or negativeUpToDeg, had neither");
            return OptionalDouble.empty();
        }
        Fields angle = at.child(at.has("onsetDeg") ? "onsetDeg" : "negativeUpToDeg");
        if (angle.asNumber().isEmpty()) {
            return OptionalDouble.empty();
        }
        double deg = angle.asNumber().getAsDouble();
        if (report.checkedDeg(angle, kind.joint(), deg).isEmpty()) {
            return OptionalDouble.empty();
        }
        if (kind.rising() ? deg <= kind.startDeg() : deg >= kind.startDeg()) {
            report.add(
                    angle,
                    "must be %s %.0f deg, where the test starts, was %s"
                            .formatted(kind.rising() ? "above" : "below", kind.startDeg(), angle.written()));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(deg);
    }

    private Optional<Felt> readFelt(Fields at) {
        Optional<String> symptom = at.findText("symptom");
        Optional<Boolean> familiar = at.findYesNo("familiar");
        if (at.has("onsetDeg")) {
            for (String key : List.of("symptom", "familiar")) {
                if (!at.has(key)) {
                    report.add(at, "the key \"%s\" is missing; an onset needs it".formatted(key));
                }
            }
            if (symptom.equals(Optional.of("stretch"))) {
                report.add(
                        at.child("symptom"),
                        "a stretch is no onset: give negativeUpToDeg with symptom stretch, was onsetDeg "
                                + at.child("onsetDeg").written());
            }
        } else if (symptom.filter(kind -> !kind.equals("stretch")).isPresent() && familiar.equals(Optional.of(true))) {
            report.add(
                    at.child("familiar"),
                    "a test with the familiar symptom is not negative: give the angle as onsetDeg, was negativeUpToDeg "
                            + at.child("negativeUpToDeg").written());
        }
        return symptom.map(kind -> new Felt(kind, familiar.orElse(false)));
    }
}
