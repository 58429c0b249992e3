package slipway.reasoning.locate;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.Result.Word;
import slipway.reasoning.findings.Term;

/** Reads a complaint: where it hurts, tingles or is numb, by skin supply and by local and referred pain. */
final class SymptomReader {
    private final LocateModel model;

    SymptomReader(LocateModel model) {
        this.model = model;
    }

    /** The observation; empty if the complaint says nothing about the place. */
    Optional<Observation> read(Finding finding, Term term) {
        if (finding.result() == Word.WEAKNESS) {
            return Optional.empty();
        }
        LocateCoefficients numbers = model.coefficients();
        // Symptom terms may be those of skin areas; what is lost is counted as a complaint all the same.
        var complaint = new Term(finding.kind(), term.key(), term.how(), term.members());
        Load lost = model.lost().find(complaint, 1).orElse(Load.NONE);
        double[] keep = keep(term, finding.result() == Word.PAIN ? 1 : numbers.value("symptom.numb.referred"));
        if (lost.isNone() && keep.length == 0) {
            return Optional.empty();
        }
        var curve = new Curve(numbers.value("symptom.gain"), 1, numbers.value("symptom.background"));
        var factor = new Factor(curve.gain(), curve.falseAlarm(), 1, lost, keep, new Factor.Spread.OfKind("symptom"));
        double temper = numbers.value("symptom.temper");
        return Optional.of(
                finding.result() == Word.NONE
                        ? Observation.above(finding, List.of(factor), temper)
                        : Observation.below(finding, List.of(factor), temper));
    }

    /** Per site, the chance that pain is not referred there; empty if no site refers pain there. */
    private double[] keep(Term term, double share) {
        double[] keep = new double[model.sites().size()];
        boolean any = false;
        for (int i = 0; i < keep.length; i++) {
            String site = model.sites().get(i).name();
            double referred = Stream.concat(Stream.of(term.key()), term.members().keySet().stream())
                    .mapToDouble(area -> model.pain(site, area))
                    .max()
                    .orElse(0);
            any |= referred > 0;
            keep[i] = 1 - share * referred;
        }
        return any ? keep : new double[0];
    }
}
