package slipway.care.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.IrritabilityReport;
import slipway.care.casefile.PressureLimit;
import slipway.care.casefile.RangesOfMotion;
import slipway.care.casefile.TestEntry;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Side;
import slipway.reasoning.dose.DoseFindings;
import slipway.reasoning.dose.KeptOut;
import slipway.reasoning.dose.MeasuredRange;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.irritability.IrritabilityFindings;

/** What a case says about irritability and about the limits of a dose. */
final class DoseMapping {
    private static final String RAISE = "straight-leg-raise";

    private DoseMapping() {}

    static IrritabilityFindings irritability(CaseFile file) {
        IrritabilityReport report = file.examination().irritability();
        return new IrritabilityFindings(
                report.restPain(),
                report.nightPain(),
                report.worstPain(),
                trivialFlareMinutes(report),
                report.settleMinutes(),
                raiseOnset(file),
                report.onlyAtEndRange().orElse(false),
                report.judgement().map(word -> Irritability.valueOf(word.toUpperCase(Locale.ROOT))));
    }

    /** How long a trivial activity flares the symptoms: as long as they take to settle, where the file says that one does. */
    private static OptionalDouble trivialFlareMinutes(IrritabilityReport report) {
        if (report.provokedByTrivialActivity().isEmpty()) {
            return OptionalDouble.empty();
        }
        return report.provokedByTrivialActivity().get() ? report.settleMinutes() : OptionalDouble.of(0);
    }

    private static OptionalDouble raiseOnset(CaseFile file) {
        return file.examination().tests().stream()
                .filter(test -> test.test().name().equals(RAISE))
                .filter(test -> test.side() == file.episode().side() && test.changed())
                .mapToDouble(TestEntry::reachedDeg)
                .min();
    }

    static DoseFindings dose(CaseFile file) {
        return new DoseFindings(
                file.examination().irritability().usualPain(),
                ranges(file),
                file.examination().pressureLimits().stream()
                        .map(limit -> keptOut(limit, file.episode().side()))
                        .toList(),
                file.examination().spine().neckScreened().orElse(false),
                Set.of());
    }

    private static List<MeasuredRange> ranges(CaseFile file) {
        RangesOfMotion measured = file.examination().ranges();
        var ranges = new ArrayList<MeasuredRange>();
        for (Joint joint : Joint.values()) {
            for (Limb limb : Limb.values()) {
                if (limb == Limb.OWN || joint.paired()) {
                    range(measured, file.episode().side(), joint, limb).ifPresent(ranges::add);
                }
            }
        }
        return ranges;
    }

    /** An end that was not measured stays where the joint itself ends. */
    private static Optional<MeasuredRange> range(RangesOfMotion measured, Side own, Joint joint, Limb limb) {
        RangesOfMotion.Ends ends = measured.of(limb == Limb.OWN ? own : own.opposite(), joint);
        if (ends.lowDeg().isEmpty() && ends.highDeg().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new MeasuredRange(
                joint,
                limb,
                ends.lowDeg().orElse(joint.lowDeg()),
                ends.highDeg().orElse(joint.highDeg())));
    }

    private static KeptOut keptOut(PressureLimit limit, Side own) {
        Joint joint = limit.joint();
        Limb limb = limit.side() == own ? Limb.OWN : Limb.OTHER;
        double lowDeg = limit.towardsPositive() ? limit.limitDeg() : joint.lowDeg();
        double highDeg = limit.towardsPositive() ? joint.highDeg() : limit.limitDeg();
        return new KeptOut(
                joint.key() + " limit", limit.because(), List.of(new MeasuredRange(joint, limb, lowDeg, highDeg)));
    }
}
