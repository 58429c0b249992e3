package slipway.exchange.fhir;

import java.util.Date;
import org.hl7.fhir.r4.model.Bundle;

/** An episode as a FHIR R4 bundle. The same export gives the same bundle. */
public final class EpisodeBundle {
    /** System of the identifiers of cases. */
    static final String CASES = "urn:slipway:case";

    private EpisodeBundle() {}

    /** The bundle, of type collection. */
    public static Bundle of(Export export) {
        var out = new Writer(export.facts().file().id());
        new FrameResources(out, export).write();
        new FindingResources(out, export).write();
        new MeasureResources(out, export).write();
        new PlanResources(out, export).write();
        new VisitResources(out, export).write();
        new PaperResources(out, export).write();
        var bundle = new Bundle();
        bundle.setType(Bundle.BundleType.COLLECTION);
        bundle.setTimestamp(Date.from(export.issued()));
        bundle.getIdentifier().setSystem(CASES).setValue(export.facts().file().id());
        out.into(bundle);
        return bundle;
    }
}
