package slipway.exchange.fhir;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hl7.fhir.r4.model.CodeableConcept;
import org.hl7.fhir.r4.model.Coding;
import slipway.exchange.ExchangeData;

/** Codes of the program's own system, with a standard one beside where one was looked up. */
final class Codes {
    /** Address of the program's own code system. */
    static final String OWN = "urn:slipway:fhir:codes";

    private static final Map<String, List<Coding>> STANDARD = new LinkedHashMap<>();

    static {
        ExchangeData.table("standard-codes.csv")
                .forEach(row -> STANDARD.computeIfAbsent(row.get("own"), none -> new ArrayList<>())
                        .add(new Coding().setSystem(row.get("system")).setCode(row.get("code"))));
    }

    private Codes() {}

    /**
     * A concept.
     *
     * @param code letters, digits and hyphens; other characters become hyphens
     * @param words in English
     */
    static CodeableConcept own(String code, String words) {
        String key = key(code);
        var concept = new CodeableConcept();
        concept.addCoding().setSystem(OWN).setCode(key).setDisplay(words);
        STANDARD.getOrDefault(key, List.of()).forEach(coding -> concept.addCoding(coding.copy()));
        return concept.setText(words);
    }

    /** The code of the own system in a concept; empty text if there is none. */
    static String ownIn(CodeableConcept concept) {
        return concept.getCoding().stream()
                .filter(coding -> OWN.equals(coding.getSystem()) && coding.hasCode())
                .map(Coding::getCode)
                .findFirst()
                .orElse("");
    }

    static CodeableConcept of(String system, String code, String display) {
        var concept = new CodeableConcept();
        concept.addCoding().setSystem(system).setCode(code).setDisplay(display.isEmpty() ? null : display);
        return concept;
    }

    static String key(String text) {
        return text.strip().replaceAll("[^A-Za-z0-9]+", "-").replaceAll("^-|-$", "");
    }
}
