package slipway.exchange.fhir;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.hl7.fhir.r4.model.CodeableConcept;
import org.hl7.fhir.r4.model.Observation;
import slipway.care.CareData;
import slipway.mechanics.body.Side;

/** Observations as they all begin. */
final class Observations {
    private static final String CATEGORY = "http://terminology.hl7.org/CodeSystem/observation-category";

    private Observations() {}

    /**
     * An observation of the person by the therapist, final.
     *
     * @param category {@code exam}, {@code survey}, {@code therapy} or {@code procedure}
     * @param day empty if the record does not say on which day it was found
     */
    static Observation begun(
            Writer out, Export export, String category, CodeableConcept code, Optional<LocalDate> day) {
        var observation = new Observation();
        observation
                .setStatus(Observation.ObservationStatus.FINAL)
                .setCode(code)
                .setSubject(out.to(FrameResources.PATIENT));
        String word = category.substring(0, 1).toUpperCase(Locale.ROOT) + category.substring(1);
        observation.addCategory(Codes.of(CATEGORY, category, word));
        day.ifPresent(known -> observation.setEffective(Writer.dateTime(known)));
        // The clinic answers for it where no therapist is named.
        observation.addPerformer(out.to(
                export.facts().frame().therapist().isPresent() ? FrameResources.THERAPIST : FrameResources.CLINIC));
        return observation;
    }

    static CodeableConcept side(Side side) {
        String word = CareData.word(side);
        return Codes.own("side-" + word, word + " side");
    }
}
