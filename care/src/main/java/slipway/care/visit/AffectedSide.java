package slipway.care.visit;

import java.util.List;
import java.util.Locale;
import slipway.care.casefile.CaseFile;
import slipway.reasoning.findings.FindingKind;

/** Findings of the affected side. */
final class AffectedSide {
    private AffectedSide() {}

    /** Whether one of these items was found abnormal on the affected side. */
    static boolean abnormal(CaseFile file, FindingKind kind, List<String> targets) {
        return file.examination().findings().stream()
                .filter(finding -> finding.kind() == kind
                        && finding.side() == file.episode().side())
                .anyMatch(finding -> finding.result().abnormal() && targets.contains(key(finding.target())));
    }

    private static String key(String target) {
        return target.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s/-]+", "_");
    }
}
