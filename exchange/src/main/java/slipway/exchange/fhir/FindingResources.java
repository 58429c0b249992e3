package slipway.exchange.fhir;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.Quantity;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.RangesOfMotion;
import slipway.care.casefile.TestEntry;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.tolerance.SiteTolerance;

/** Findings, angles and what the model makes of them, as observations. */
final class FindingResources {
    private final Writer out;
    private final Export export;
    private final CaseFile file;
    private final Optional<LocalDate> day;

    FindingResources(Writer out, Export export) {
        this.out = out;
        this.export = export;
        this.file = export.facts().file();
        // A case file has no day of its own; it is examined at the first visit.
        this.day = export.facts().start();
    }

    void write() {
        file.examination().findings().forEach(this::finding);
        for (int i = 0; i < file.examination().tests().size(); i++) {
            test(i, file.examination().tests().get(i));
        }
        for (Map.Entry<Side, Map<Joint, RangesOfMotion.Ends>> side :
                file.examination().ranges().bySide().entrySet()) {
            // Sorted, since the record keeps no order of joints.
            side.getValue().entrySet().stream()
                    .sorted(Map.Entry.comparingByKey())
                    .forEach(joint -> range(side.getKey(), joint.getKey(), joint.getValue()));
        }
        export.plan()
                .result()
                .ifPresent(result -> result.plan().tolerance().perSite().forEach(this::tolerance));
    }

    private Observation begun(String code, String words) {
        return Observations.begun(out, export, "exam", Codes.own(code, words), day);
    }

    private void finding(Finding finding) {
        String code = finding.kind().key() + "-" + finding.target();
        String words = finding.kind().key() + ", " + finding.target().replace('_', ' ');
        Observation observation = begun(code, words);
        String result = finding.result().text();
        observation.setValue(Codes.own("result-" + result.replace("+", "-plus").replace("-", "-minus"), result));
        observation.setBodySite(Observations.side(finding.side()));
        finding.degrees()
                .ifPresent(deg -> observation
                        .addComponent()
                        .setCode(Codes.own("angle", "Angle at which it was found"))
                        .setValue(Units.of(deg, "deg")));
        out.add("finding/" + code + "/" + finding.side(), observation, finding.text());
    }

    private void test(int index, TestEntry test) {
        Observation observation =
                begun("neural-" + test.test().name(), test.test().name().replace('-', ' '));
        observation.setBodySite(Observations.side(test.side()));
        Quantity angle = Units.of(test.reachedDeg(), "deg");
        if (!test.changed()) {
            // Nothing was felt up to here: the angle of a change, if there is one, lies beyond.
            angle.setComparator(Quantity.QuantityComparator.GREATER_OR_EQUAL);
        }
        observation.setValue(angle);
        test.felt()
                .ifPresent(felt -> observation
                        .addComponent()
                        .setCode(Codes.own("felt", "What was felt"))
                        .setValue(Codes.own("felt-" + felt.kind(), felt.kind())));
        test.restingSymptom()
                .ifPresent(before -> observation
                        .addComponent()
                        .setCode(Codes.own("resting-symptom", "Symptom before the test, 0 to 10"))
                        .setValue(Units.points(before)));
        for (int i = 0; i < test.remoteMovements().size(); i++) {
            var far = test.remoteMovements().get(i);
            String change = far.change().name().toLowerCase(Locale.ROOT);
            observation
                    .addComponent()
                    .setCode(Codes.own(
                            "far-" + far.joint().key(),
                            "Effect of moving the " + far.joint().key()))
                    .setValue(Codes.own("far-" + change, change));
        }
        out.add("test/" + index, observation, test.text());
    }

    private void range(Side side, Joint joint, RangesOfMotion.Ends ends) {
        if (ends.lowDeg().isEmpty() && ends.highDeg().isEmpty()) {
            return;
        }
        String name = "range/" + joint.key() + "/" + side;
        Observation observation =
                begun("range-" + joint.key(), "Range of motion, " + joint.key().replace('-', ' '));
        observation.setBodySite(Observations.side(side));
        end(observation, "low", ends.lowDeg());
        end(observation, "high", ends.highDeg());
        out.add(name, observation, "Range of motion, " + joint.key());
    }

    private static void end(Observation observation, String which, OptionalDouble deg) {
        deg.ifPresent(value -> observation
                .addComponent()
                .setCode(Codes.own("range-" + which, "Measured end, " + which))
                .setValue(Units.of(value, "deg")));
    }

    private void tolerance(SiteTolerance site) {
        Observation observation = Observations.begun(
                out, export, "exam", Codes.own("tolerance", "Estimated tolerance, strain above rest"), day);
        observation.setMethod(Codes.own("model-estimate", "Estimate of a model; not measured"));
        observation.setBodySite(Codes.own("site-" + site.site(), site.site()));
        observation.setValue(Units.of(rounded(site.medianPct()), "%"));
        for (String end : new String[] {"low", "high"}) {
            double value = end.equals("low") ? site.lowPct() : site.highPct();
            observation
                    .addComponent()
                    .setCode(Codes.own("interval-" + end, "90 % interval, " + end))
                    .setValue(Units.of(rounded(value), "%"));
        }
        out.add("tolerance/" + site.site(), observation, "Estimated tolerance at the " + site.site());
    }

    /** The model is not surer than this. */
    private static double rounded(double percent) {
        return Math.rint(percent * 100) / 100;
    }
}
