package slipway.care.casefile;

import java.util.ArrayList;
import java.util.List;
import slipway.care.CareData;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result;

/**
 * The leg raise may stand twice in a file: as a test with its onset, and among the findings that locate. Both must say
 * the same, since one of the two decides how far a patient goes.
 */
final class RaiseChecks {
    private static final String TEST = "straight-leg-raise";
    private static final String FINDING = "slr";

    private RaiseChecks() {}

    static void check(Fields root, List<TestEntry> tests, List<Finding> findings, Report report) {
        double allowedDeg = Coefficients.load("visit.csv").value("same-raise-deg");
        for (Finding finding : findings) {
            if (finding.kind() != FindingKind.PROVOCATION || !finding.target().equals(FINDING)) {
                continue;
            }
            List<TestEntry> same = tests.stream()
                    .filter(test -> test.test().name().equals(TEST) && test.side() == finding.side())
                    .toList();
            if (!same.isEmpty() && same.stream().noneMatch(test -> agree(test, finding, allowedDeg))) {
                report.addTogether(
                        root.child("tests"),
                        places(root, finding),
                        "%s %s disagrees with the finding \"%s\"%s"
                                .formatted(
                                        TEST,
                                        CareData.word(finding.side()),
                                        finding.text(),
                                        finding.location().isEmpty() ? "" : " on " + finding.location()));
            }
        }
    }

    /** The finding, and the tests of the same leg. */
    private static List<Fields> places(Fields root, Finding finding) {
        String side = CareData.word(finding.side());
        var places = new ArrayList<Fields>();
        places.add(root.child("examination")
                .child(side)
                .child(finding.kind().block())
                .child(finding.target()));
        for (Fields test : root.list("tests")) {
            if (test.child("test").written().equals(TEST)
                    && test.child("side").written().equals(side)) {
                places.add(test);
            }
        }
        return places;
    }

    private static boolean agree(TestEntry test, Finding finding, double allowedDeg) {
        boolean positive = finding.result() == Result.Word.POSITIVE;
        boolean onset =
                test.changed() && test.felt().map(TestEntry.Felt::familiar).orElse(true);
        boolean near = finding.degrees().isEmpty()
                || Math.abs(finding.degrees().getAsDouble() - test.reachedDeg()) <= allowedDeg;
        return positive == onset && (near || !positive);
    }
}
