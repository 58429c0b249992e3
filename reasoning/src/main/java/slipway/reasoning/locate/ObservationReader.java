package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Pressed;
import slipway.reasoning.findings.Result.Grade;
import slipway.reasoning.findings.Result.Word;
import slipway.reasoning.findings.Term;
import slipway.reasoning.findings.Term.How;

/** Turns findings into what the model computes with; what it cannot use is named, never dropped silently. */
final class ObservationReader {
    private static final String PLANTAR = "plantar";

    private final LocateModel model;

    ObservationReader(LocateModel model) {
        this.model = model;
    }

    /** Findings of a case, ready for the posterior. */
    CaseEvidence read(List<Finding> findings) {
        var observations = new ArrayList<Observation>();
        var latents = new ArrayList<Latent>();
        var notUsed = new ArrayList<NotUsed>();
        for (Finding finding : new java.util.LinkedHashSet<>(findings)) {
            Optional<Term> term = model.vocabulary().find(finding.kind(), finding.target());
            if (term.isEmpty()) {
                notUsed.add(new NotUsed(finding, "unknown word"));
            } else if (finding.kind() == FindingKind.PROVOCATION
                    || term.get().key().equals(PLANTAR)) {
                provocation(finding, term.get(), observations, latents, notUsed);
            } else {
                Set<String> separately = testedSeparately(finding, findings);
                Optional<Observation> read = observation(finding, term.get(), separately);
                read.ifPresentOrElse(
                        observations::add, () -> notUsed.add(new NotUsed(finding, reason(finding, term.get()))));
            }
        }
        return new CaseEvidence(observations, latents, notUsed);
    }

    private static String reason(Finding finding, Term term) {
        if (finding.kind() == FindingKind.SYMPTOM) {
            return "tells nothing about the place";
        }
        return term.how() == How.REST ? "all of it was tested separately" : "not in the graph of this limb";
    }

    private Optional<Observation> observation(Finding finding, Term term, Set<String> separately) {
        if (finding.kind() == FindingKind.SYMPTOM) {
            return new SymptomReader(model).read(finding, term);
        }
        if (term.how() == How.REST) {
            return sweeping(finding, term, separately);
        }
        return model.lost().find(term).map(lost -> cut(finding, term)).map(cut -> outlined(cut, term, separately));
    }

    /** Whoever names an abnormal territory says that the loss stops at its outline: the areas outside are softly normal. */
    private Observation outlined(Observation cut, Term term, Set<String> separately) {
        var outside = new HashMap<Term, Double>();
        for (String area : model.listOutside(term.key())) {
            if (!separately.contains(area)) {
                Term member =
                        model.vocabulary().find(FindingKind.SENSATION, area).orElseThrow();
                outside.put(member, model.coefficients().value("outline.weight"));
            }
        }
        Finding finding = cut.finding();
        if (outside.isEmpty()
                || finding.kind() != FindingKind.SENSATION
                || !finding.result().abnormal()) {
            return cut;
        }
        return normalFactor(finding, outside).map(cut::and).orElse(cut);
    }

    private Observation cut(Finding finding, Term lost) {
        return switch (finding.kind()) {
            case STRENGTH -> strength(finding, lost);
            case REFLEX -> reflex(finding, lost);
            default -> feeling(finding, lost);
        };
    }

    private Observation strength(Finding finding, Term lost) {
        if (finding.result() instanceof Grade grade && grade.value() < 5) {
            boolean half = Math.abs(grade.value() - Math.floor(grade.value()) - 0.5) < 1e-9;
            int low = (int) (half ? Math.floor(grade.value()) : Math.min(4, Math.round(grade.value())));
            int high = half ? Math.min(4, low + 1) : low;
            List<Factor> lower = low == 0 ? List.of() : List.of(factor("strength." + low, lost));
            return new Observation(finding, lower, Optional.of(List.of(factor("strength." + (high + 1), lost))), 1);
        }
        if (finding.result() == Word.ABSENT) {
            return Observation.below(finding, List.of(factor("strength.2", lost)), 1);
        }
        List<Factor> full = List.of(factor("strength.5", lost));
        return finding.result().abnormal() ? Observation.below(finding, full, 1) : Observation.above(finding, full, 1);
    }

    private Observation reflex(Finding finding, Term lost) {
        Factor notBrisk = notBrisk();
        if (finding.result() == Word.INCREASED) {
            return Observation.below(finding, List.of(notBrisk), 1);
        }
        Factor kept = factor("reflex.reduced", lost);
        Factor present = factor("reflex.absent", lost);
        if (finding.result() == Word.NORMAL) {
            return Observation.above(finding, List.of(kept, notBrisk), 1);
        }
        return finding.result() == Word.ABSENT
                ? Observation.below(finding, List.of(present), 1)
                : new Observation(finding, List.of(present, notBrisk), Optional.of(List.of(kept, notBrisk)), 1);
    }

    private Factor notBrisk() {
        double background = model.coefficients().value("reflex.brisk");
        double central = model.coefficients().value("reflex.brisk.upperMotorNeurone");
        double[] keep = new double[model.sites().size()];
        for (int i = 0; i < keep.length; i++) {
            boolean lesion = model.sites().get(i).kind().equals("upper_motor_neurone");
            keep[i] = lesion ? (1 - central) / (1 - background) : 1;
        }
        return Factor.ofSites(background, keep, new Factor.Spread.Fixed());
    }

    /** Reports write "reduced" for any loss of feeling; only a stated absence says more. */
    private Observation feeling(Finding finding, Term lost) {
        if (finding.result() == Word.ABSENT) {
            return Observation.below(finding, List.of(factor("sensation.absent", lost)), 1);
        }
        List<Factor> kept = List.of(factor("sensation.reduced", lost));
        return finding.result().abnormal() ? Observation.below(finding, kept, 1) : Observation.above(finding, kept, 1);
    }

    private Optional<Observation> sweeping(Finding finding, Term term, Set<String> separately) {
        var left = new HashMap<Term, Double>();
        term.members().forEach((word, weight) -> {
            Term member = model.vocabulary().find(finding.kind(), word).orElseThrow();
            if (overlap(member, separately) < model.coefficients().value("rest.overlap")) {
                left.put(member, weight);
            }
        });
        if (left.isEmpty()) {
            return Optional.empty();
        }
        if (finding.result().abnormal()) {
            var members = new HashMap<String, Double>();
            left.forEach((member, weight) ->
                    member.members().forEach((target, share) -> members.merge(target, weight * share, Double::sum)));
            var mixed = new Term(
                    finding.kind(),
                    term.key() + members.keySet().stream().sorted().toList(),
                    How.MEAN,
                    normalised(members));
            return model.lost().find(mixed).map(lost -> cut(finding, mixed));
        }
        return sweepingNormal(finding, left);
    }

    private Optional<Observation> sweepingNormal(Finding finding, Map<Term, Double> members) {
        double temper = model.coefficients().value("sweeping.temper");
        return normalFactor(finding, members).map(factor -> Observation.above(finding, List.of(factor), temper));
    }

    /** The chance that all members are normal, each as surely as it was looked at. */
    private Optional<Factor> normalFactor(Finding finding, Map<Term, Double> members) {
        Curve curve = model.coefficients()
                .curve(
                        finding.kind() == FindingKind.STRENGTH
                                ? "strength.5"
                                : finding.kind().key() + ".reduced");
        double[] load = new double[model.variants().size()];
        double times = 0;
        for (Map.Entry<Term, Double> member : members.entrySet()) {
            Optional<double[]> lost = model.lost().find(member.getKey());
            if (lost.isPresent()) {
                times += member.getValue();
                for (int v = 0; v < load.length; v++) {
                    load[v] += member.getValue() * Math.pow(lost.get()[v], curve.power());
                }
            }
        }
        if (times == 0) {
            return Optional.empty();
        }
        return Optional.of(Factor.ofCurve(finding.kind().key(), curve, times, Load.of(load)));
    }

    /** The targets that were tested by name, on the side of the finding. */
    private Set<String> testedSeparately(Finding sweeping, List<Finding> findings) {
        var targets = new HashSet<String>();
        for (Finding finding : findings) {
            if (finding.kind() == sweeping.kind() && finding.side() == sweeping.side()) {
                model.vocabulary()
                        .find(finding.kind(), finding.target())
                        .filter(term -> term.how() != How.REST)
                        .ifPresent(term -> targets.addAll(term.members().keySet()));
            }
        }
        return targets;
    }

    private static double overlap(Term member, Set<String> separately) {
        double total = 0;
        double tested = 0;
        for (Map.Entry<String, Double> target : member.members().entrySet()) {
            total += target.getValue();
            tested += separately.contains(target.getKey()) ? target.getValue() : 0;
        }
        return tested / total;
    }

    private void provocation(
            Finding finding, Term term, List<Observation> observations, List<Latent> latents, List<NotUsed> notUsed) {
        boolean positive = finding.result() == Word.POSITIVE || finding.result() == Word.INCREASED;
        double steep = model.coefficients().value("provocation.steepAngle");
        ProvocationTest test = model.tests().get(term.key().equals(PLANTAR) ? "babinski" : term.key());
        if (positive && finding.degrees().orElse(0) > steep) {
            notUsed.add(new NotUsed(finding, "positive only beyond %s deg: stretch of muscle".formatted((int) steep)));
        } else if (test == null) {
            pressed(finding, term, positive)
                    .ifPresentOrElse(
                            observations::add, () -> notUsed.add(new NotUsed(finding, "no accuracy known for it")));
        } else if (test.latent().isPresent()) {
            latents.add(new Latent(finding, test.latent().get(), positive, model.rates(test.name())));
        } else {
            testOfSites(finding, test, positive)
                    .ifPresentOrElse(
                            observations::add,
                            () -> notUsed.add(new NotUsed(finding, "not in the graph of this limb")));
        }
    }

    private Optional<Observation> testOfSites(Finding finding, ProvocationTest test, boolean positive) {
        Accuracy accuracy = test.accuracy();
        var spread = new Factor.Spread.OfCounts(
                accuracy.sensitivity(),
                accuracy.counts().diseased(),
                accuracy.counts().healthy(),
                accuracy.cap());
        return siteFactor(test.sites(), accuracy.sensitivity(), accuracy.falsePositive(), spread)
                .map(factor -> positive
                        ? Observation.below(finding, List.of(factor), 1)
                        : Observation.above(finding, List.of(factor), 1));
    }

    private Optional<Observation> pressed(Finding finding, Term term, boolean positive) {
        Pressed pressed = Pressed.parse(term.key()).orElseThrow();
        String manner = pressed.tapped() ? "pressed.tapped." : "pressed.pressed.";
        double sensitivity = model.coefficients().value(manner + "sens");
        double falsePositive = model.coefficients().value(manner + "false");
        double people = model.coefficients().value("guess.people");
        var sites = new HashMap<String, Double>();
        model.vocabulary().listSitesAt(pressed.place()).forEach(site -> sites.put(site, 1.0));
        var spread = new Factor.Spread.OfCounts(
                sensitivity, people, people, model.coefficients().value("likelihoodRatio.cap"));
        return siteFactor(sites, sensitivity, falsePositive, spread)
                .map(factor -> positive
                        ? Observation.below(finding, List.of(factor), 1)
                        : Observation.above(finding, List.of(factor), 1));
    }

    private Optional<Factor> siteFactor(
            Map<String, Double> sites, double sensitivity, double falsePositive, Factor.Spread spread) {
        double[] keep = new double[model.sites().size()];
        Arrays.fill(keep, 1);
        double full = (1 - sensitivity) / (1 - falsePositive);
        boolean any = false;
        for (int i = 0; i < keep.length; i++) {
            double share = sites.getOrDefault(model.sites().get(i).name(), 0.0);
            any |= share > 0;
            keep[i] = 1 - share * (1 - full);
        }
        return any ? Optional.of(Factor.ofSites(falsePositive, keep, spread)) : Optional.empty();
    }

    private Factor factor(String cut, Term lost) {
        Curve curve = model.coefficients().curve(cut);
        Load load = model.lost().find(lost, curve.power()).orElseThrow();
        return Factor.ofCurve(cut.substring(0, cut.indexOf('.')), curve, 1, load);
    }

    private static Map<String, Double> normalised(Map<String, Double> weights) {
        double total =
                weights.values().stream().mapToDouble(Double::doubleValue).sum();
        var normalised = new HashMap<String, Double>();
        weights.forEach((name, weight) -> normalised.put(name, weight / total));
        return normalised;
    }
}
