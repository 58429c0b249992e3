package slipway.care.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.Examination;
import slipway.care.casefile.Patient;
import slipway.care.casefile.SiteWeight;
import slipway.care.casefile.TestEntry;
import slipway.reasoning.basis.Coefficients;

/**
 * The same case with one input a little different, to see what a plan hangs on.
 *
 * @param what the change in words
 * @param file the changed case
 */
record Variation(String what, CaseFile file) {
    private static final Coefficients DATA = Coefficients.load("visit.csv");

    /** Every input that is worth measuring again: onset angles, the place, the stature. */
    static List<Variation> of(CaseFile file, List<SiteWeight> sites) {
        var variations = new ArrayList<Variation>();
        for (int i = 0; i < file.examination().tests().size(); i++) {
            TestEntry test = file.examination().tests().get(i);
            if (test.side() == file.episode().side() && test.changed()) {
                onset(file, i, DATA.value("vary-onset-deg"), variations);
                onset(file, i, -DATA.value("vary-onset-deg"), variations);
            }
        }
        if (sites.size() > 1) {
            for (SiteWeight site : sites) {
                variations.add(new Variation("only " + site.name(), withSites(file, List.of(only(site)))));
            }
        }
        for (double sign : new double[] {1, -1}) {
            double cm = sign * DATA.value("vary-stature-cm");
            variations.add(new Variation(String.format(Locale.ROOT, "stature %+.0f cm", cm), withStature(file, cm)));
        }
        return variations;
    }

    private static void onset(CaseFile file, int at, double byDeg, List<Variation> variations) {
        TestEntry test = file.examination().tests().get(at);
        double angleDeg = test.reachedDeg() + byDeg;
        var joint = test.test().joint();
        if (angleDeg >= joint.lowDeg() && angleDeg <= joint.highDeg()) {
            variations.add(new Variation(
                    String.format(Locale.ROOT, "%s: onset %+.0f deg", NeuralMapping.name(test), byDeg),
                    withOnset(file, at, angleDeg)));
        }
    }

    private static SiteWeight only(SiteWeight site) {
        return new SiteWeight(site.name(), site.site(), 1, site.reason());
    }

    private static CaseFile withOnset(CaseFile file, int at, double angleDeg) {
        Examination old = file.examination();
        var tests = new ArrayList<>(old.tests());
        TestEntry test = tests.get(at);
        tests.set(
                at,
                new TestEntry(
                        test.test(),
                        test.side(),
                        test.start(),
                        angleDeg,
                        test.changed(),
                        test.restingSymptom(),
                        test.felt(),
                        test.remoteMovements()));
        var examination = new Examination(
                old.irritability(),
                old.ranges(),
                tests,
                old.pressureLimits(),
                old.sittingMinutes(),
                old.comfortable(),
                old.rest(),
                old.findings(),
                old.spine());
        return new CaseFile(
                file.id(),
                file.provenance(),
                file.patient(),
                file.episode(),
                file.safety(),
                examination,
                file.sites(),
                file.choices());
    }

    private static CaseFile withSites(CaseFile file, List<SiteWeight> sites) {
        return new CaseFile(
                file.id(),
                file.provenance(),
                file.patient(),
                file.episode(),
                file.safety(),
                file.examination(),
                sites,
                file.choices());
    }

    private static CaseFile withStature(CaseFile file, double byCm) {
        Patient old = file.patient();
        var patient = new Patient(old.name(), old.ageYears(), old.sex(), old.statureCm() + byCm, old.massKg());
        return new CaseFile(
                file.id(),
                file.provenance(),
                patient,
                file.episode(),
                file.safety(),
                file.examination(),
                file.sites(),
                file.choices());
    }
}
