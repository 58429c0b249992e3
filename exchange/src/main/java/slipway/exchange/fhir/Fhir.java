package slipway.exchange.fhir;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.parser.IParser;
import org.hl7.fhir.r4.model.Bundle;

/** Bundles as JSON text. The first use costs about a second. */
public final class Fhir {
    private static final FhirContext CONTEXT = FhirContext.forR4Cached();

    private Fhir() {}

    static FhirContext context() {
        return CONTEXT;
    }

    /** A bundle as JSON, indented, ending in a new line. Equal bundles give equal text. */
    public static String write(Bundle bundle) {
        IParser parser = CONTEXT.newJsonParser().setPrettyPrint(true);
        // Ids come from the full address alone; a resource without one stays without.
        parser.setOverrideResourceIdWithBundleEntryFullUrl(false);
        return parser.encodeResourceToString(bundle) + "\n";
    }
}
