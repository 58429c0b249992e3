package slipway.reasoning.screening;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result.Grade;
import slipway.reasoning.findings.Result.Word;
import slipway.reasoning.findings.Term;
import slipway.reasoning.findings.Vocabulary;
import slipway.reasoning.screening.Trigger.Sign;

/** Reads warning signs from findings. */
final class SignReader {
    private static final String KEY_MUSCLES = "keyMuscleWeak";

    private final Vocabulary vocabulary;

    SignReader(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
    }

    /** The findings that show the sign, in words; empty if none does. */
    Optional<String> find(Sign sign, List<Finding> findings) {
        List<Finding> shown =
                findings.stream().filter(finding -> shows(sign, finding)).toList();
        Set<Side> sides = EnumSet.noneOf(Side.class);
        shown.forEach(finding -> sides.add(finding.side()));
        if (shown.isEmpty() || (sign.bothSides() && sides.size() < 2)) {
            return Optional.empty();
        }
        return Optional.of(
                String.join("; ", shown.stream().map(SignReader::text).toList()));
    }

    /** Weak key muscles whose grade is not written down, in words: the rule about grade 3 cannot be judged. */
    List<String> ungradedKeyMuscles(ScreeningRules rules, List<Finding> findings) {
        Optional<Sign> sign = rules.find(KEY_MUSCLES)
                .map(ScreeningRule::trigger)
                .filter(Sign.class::isInstance)
                .map(Sign.class::cast);
        var open = new ArrayList<String>();
        for (Finding finding : findings) {
            boolean key = sign.filter(known -> concerns(known, finding)).isPresent();
            if (key && finding.result() == Word.REDUCED) {
                open.add("grade needed: " + text(finding));
            }
        }
        return open;
    }

    private boolean shows(Sign sign, Finding finding) {
        if (!concerns(sign, finding) || !finding.result().abnormal()) {
            return false;
        }
        if (finding.kind() == FindingKind.SENSATION || finding.kind() == FindingKind.REFLEX) {
            return true;
        }
        if (finding.result() instanceof Grade grade) {
            return grade.value() <= sign.gradeAtMost() && grade.value() < 5;
        }
        boolean ungraded = finding.kind() == FindingKind.STRENGTH && finding.result() == Word.REDUCED;
        return !ungraded || sign.ungradedCounts() || sign.gradeAtMost() >= 5;
    }

    private boolean concerns(Sign sign, Finding finding) {
        boolean kind = sign.kind().map(wanted -> wanted == finding.kind()).orElse(true);
        String key =
                vocabulary.find(finding.kind(), finding.target()).map(Term::key).orElse(finding.target());
        return kind && finding.kind() != FindingKind.SYMPTOM && sign.targets().contains(key);
    }

    private static String text(Finding finding) {
        return finding.location().isEmpty() ? finding.text() : finding.text() + " (" + finding.location() + ")";
    }
}
