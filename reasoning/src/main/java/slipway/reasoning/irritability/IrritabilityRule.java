package slipway.reasoning.irritability;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.basis.Reason;

/** Judges irritability by rule; the therapist's judgement is an equal input, and of the two the higher counts. */
public final class IrritabilityRule {
    private static final Coefficients DATA = Coefficients.load("irritability.csv");

    private IrritabilityRule() {}

    /** The level with every reason that led to it. */
    public static IrritabilityReport judge(IrritabilityFindings findings) {
        var reasons = new ArrayList<Reason>();
        Irritability level = byRule(findings, reasons);
        if (findings.judgement().isPresent()) {
            Irritability judged = findings.judgement().get();
            reasons.add(judgement(judged, level));
            level = level.orHigher(judged);
        }
        return new IrritabilityReport(level, reasons);
    }

    private static Irritability byRule(IrritabilityFindings findings, List<Reason> reasons) {
        List<Reason> high = highReasons(findings);
        if (!high.isEmpty()) {
            reasons.addAll(high);
            return Irritability.HIGH;
        }
        if (low(findings)) {
            reasons.add(Reason.by(
                            DATA.get("low-worst-pain"),
                            "irritability.low",
                            "Worst pain is low, symptoms settle within minutes and come only at the end of range.")
                    .with("worst pain", findings.worstPain().orElseThrow(), "points of 10")
                    .with("settle time", findings.settleMinutes().orElseThrow(), "min"));
            return Irritability.LOW;
        }
        reasons.add(Reason.practice(
                "irritability.moderate",
                "Nothing makes the irritability high, and low would need a worst pain of 3 or less, settling within 10"
                        + " minutes and symptoms only at the end of range."));
        return Irritability.MODERATE;
    }

    private static List<Reason> highReasons(IrritabilityFindings findings) {
        var reasons = new ArrayList<Reason>();
        Coefficient pain = DATA.get("high-rest-or-night-pain");
        atLeast(reasons, "Pain at rest is %.0f of 10.", "irritability.rest-pain", findings.restPain(), pain);
        atLeast(reasons, "Pain at night is %.0f of 10.", "irritability.night-pain", findings.nightPain(), pain);
        Coefficient flare = DATA.get("high-flare");
        if (findings.trivialFlareMinutes().orElse(0) > flare.value()) {
            add(
                    reasons,
                    "A trivial activity flares the symptoms for %.0f minutes.",
                    "irritability.flare",
                    findings.trivialFlareMinutes().getAsDouble(),
                    flare);
        }
        Coefficient onset = DATA.get("high-onset");
        if (findings.raisedLegOnsetDeg().orElse(Double.POSITIVE_INFINITY) < onset.value()) {
            add(
                    reasons,
                    "Symptoms begin at %.0f deg of leg raise.",
                    "irritability.early-onset",
                    findings.raisedLegOnsetDeg().getAsDouble(),
                    onset);
        }
        return reasons;
    }

    private static void atLeast(
            List<Reason> reasons, String text, String rule, OptionalDouble value, Coefficient limit) {
        if (value.isPresent() && value.getAsDouble() >= limit.value()) {
            add(reasons, text, rule, value.getAsDouble(), limit);
        }
    }

    private static void add(List<Reason> reasons, String text, String rule, double value, Coefficient limit) {
        reasons.add(
                Reason.by(limit, rule, String.format(Locale.ROOT, text, value)).with("found", value, limit.unit()));
    }

    /** What is unknown does not count as low. */
    private static boolean low(IrritabilityFindings findings) {
        return findings.onlyAtEndRange()
                && findings.worstPain().orElse(Double.POSITIVE_INFINITY) <= DATA.value("low-worst-pain")
                && findings.settleMinutes().orElse(Double.POSITIVE_INFINITY) <= DATA.value("low-settle");
    }

    private static Reason judgement(Irritability judged, Irritability ruled) {
        String text = judged == ruled
                ? "The therapist judges it %s too.".formatted(judged.key())
                : "The therapist judges it %s, the rule says %s: the higher counts."
                        .formatted(judged.key(), ruled.key());
        return Reason.by(DATA.get("judgement-kappa"), "irritability.judgement", text);
    }
}
