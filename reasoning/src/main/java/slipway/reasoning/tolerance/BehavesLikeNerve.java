package slipway.reasoning.tolerance;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Reason;

/** Whether the symptoms behave like a nerve that is sensitive to load. */
public enum BehavesLikeNerve {
    YES,
    UNDETERMINED,
    NO;

    /** The name used in files, for example {@code undetermined}. */
    @JsonValue
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The judgement with its reasons. */
    public record Judgement(BehavesLikeNerve answer, List<Reason> reasons) {
        public Judgement {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Judged by the change on a remote movement with the limb held: any change speaks for nerve. Only when it is missing
     * in two tests and something else explains the symptoms, the answer is no; one missing change never vetoes.
     */
    public static Judgement judge(NeuralFindings findings) {
        List<NeuralTest> own = findings.ownTests();
        List<String> changed = named(own, RemoteChange.CHANGED);
        List<String> unchanged = named(own, RemoteChange.UNCHANGED);
        Coefficient needed = ToleranceData.COEFFICIENTS.get("remote-tests-for-no");
        var reasons = new ArrayList<Reason>();
        if (!changed.isEmpty()) {
            reasons.add(Reason.finding(
                    "nerve.remote-change",
                    "A remote movement with the limb held changed the symptom in %s.".formatted(join(changed))));
            return new Judgement(YES, reasons);
        }
        boolean explained = !findings.otherExplanations().isEmpty();
        if (!unchanged.isEmpty()) {
            reasons.add(Reason.by(
                            needed,
                            "nerve.no-remote-change",
                            "A remote movement with the limb held changed nothing in %s.".formatted(join(unchanged)))
                    .with("tests without change", unchanged.size(), "tests"));
        }
        if (explained) {
            reasons.add(Reason.finding(
                    "nerve.other-explanation",
                    "Something else would explain the symptoms: %s.".formatted(join(findings.otherExplanations()))));
        }
        if (explained && unchanged.size() >= needed.value()) {
            return new Judgement(NO, reasons);
        }
        reasons.add(Reason.practice(
                "nerve.undetermined",
                unchanged.isEmpty()
                        ? "No remote movement with the limb held was tested, so nerve is neither shown nor excluded."
                        : "This is not enough to exclude nerve: some people show no change on a remote movement."));
        return new Judgement(UNDETERMINED, reasons);
    }

    private static List<String> named(List<NeuralTest> tests, RemoteChange change) {
        return tests.stream()
                .filter(test -> test.remote() == change)
                .map(NeuralTest::id)
                .toList();
    }

    private static String join(List<String> names) {
        return String.join(", ", names);
    }
}
