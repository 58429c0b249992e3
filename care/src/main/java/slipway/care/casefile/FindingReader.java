package slipway.care.casefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.exercises.yaml.NearestWord;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingChecks;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result;
import slipway.reasoning.findings.ResultReader;
import slipway.reasoning.findings.Vocabulary;

/** Reads the neurological findings in the words that locating a lesion knows. */
final class FindingReader {
    private final Report report;
    private final Vocabulary vocabulary = Vocabulary.load();

    private FindingReader(Report report) {
        this.report = report;
    }

    static List<Finding> read(Fields root, Report report) {
        var reader = new FindingReader(report);
        var all = new ArrayList<Finding>();
        for (Side side : Side.values()) {
            Fields block = root.child("examination").child(side == Side.RIGHT ? "right" : "left");
            var places = new ArrayList<Fields>();
            List<Finding> findings = reader.readSide(block, side, places);
            FindingChecks.conflicts(findings, reader.vocabulary)
                    .forEach(conflict -> report.addTogether(
                            block,
                            List.of(places.get(conflict.earlier()), places.get(conflict.later())),
                            conflict.text()));
            all.addAll(findings);
        }
        return all;
    }

    /**
     * The findings of a side.
     *
     * @param places gets where each of them stands
     */
    private List<Finding> readSide(Fields block, Side side, List<Fields> places) {
        var findings = new ArrayList<Finding>();
        for (FindingKind kind : FindingKind.values()) {
            Fields items = block.child(kind.block());
            for (String item : items.keys()) {
                readItem(kind, item, items.child(item), side).ifPresent(finding -> {
                    findings.add(finding);
                    places.add(items.child(item));
                });
            }
        }
        return findings;
    }

    private Optional<Finding> readItem(FindingKind kind, String item, Fields at, Side side) {
        if (!vocabulary.knows(kind, item)) {
            report.add(
                    at,
                    "unknown %s item \"%s\"%s"
                            .formatted(
                                    kind.key(),
                                    NearestWord.shortened(item),
                                    vocabulary
                                            .nearest(kind, item)
                                            .map(near -> " (nearest: " + near + ")")
                                            .orElse("")));
            return Optional.empty();
        }
        String written = at.node().isObject() ? at.child("positive").written() : at.written();
        try {
            Optional<Result> result = ResultReader.read(kind, written);
            if (result.isEmpty()) {
                report.add(
                        at, "no result of a %s item, was \"%s\"".formatted(kind.key(), NearestWord.shortened(written)));
                return Optional.empty();
            }
            OptionalDouble degrees = at.node().isObject() ? at.findNumber("degrees") : OptionalDouble.empty();
            return Optional.of(new Finding(kind, item, side, result.get(), degrees, report.lineOf(at)));
        } catch (IllegalArgumentException e) {
            report.add(at, e.getMessage() + ", was " + NearestWord.shortened(written));
            return Optional.empty();
        }
    }
}
