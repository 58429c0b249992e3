package slipway.exchange.fhir;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.DateTimeType;
import org.hl7.fhir.r4.model.DateType;
import org.hl7.fhir.r4.model.DomainResource;
import org.hl7.fhir.r4.model.Narrative;
import org.hl7.fhir.r4.model.Reference;
import org.hl7.fhir.utilities.xhtml.NodeType;
import org.hl7.fhir.utilities.xhtml.XhtmlNode;

/** Collects the resources of a bundle. The address of a resource follows from the case and its name alone. */
final class Writer {
    private final String caseId;
    private final Map<String, DomainResource> byName = new LinkedHashMap<>();

    Writer(String caseId) {
        this.caseId = caseId;
    }

    /** Adds a resource under a name of its own, with a narrative of one sentence. */
    <R extends DomainResource> R add(String name, R resource, String narrative) {
        if (byName.put(name, resource) != null) {
            throw new IllegalStateException("two resources are named " + name);
        }
        resource.setText(narrative(narrative));
        return resource;
    }

    boolean has(String name) {
        return byName.containsKey(name);
    }

    /** A reference to a resource by its name, whether it is there already or comes later. */
    Reference to(String name) {
        return new Reference(address(name));
    }

    Reference to(String name, String display) {
        return to(name).setDisplay(display);
    }

    /** All addresses so far. */
    Iterable<String> names() {
        return byName.keySet();
    }

    String address(String name) {
        String seed = "slipway/%s/%s".formatted(caseId, name);
        return "urn:uuid:" + UUID.nameUUIDFromBytes(seed.getBytes(StandardCharsets.UTF_8));
    }

    void into(Bundle bundle) {
        byName.forEach(
                (name, resource) -> bundle.addEntry().setFullUrl(address(name)).setResource(resource));
    }

    static DateType date(LocalDate day) {
        return new DateType(day.toString());
    }

    /** A day without a time of day: none was recorded. */
    static DateTimeType dateTime(LocalDate day) {
        return new DateTimeType(day.toString());
    }

    private static Narrative narrative(String sentence) {
        var div = new XhtmlNode(NodeType.Element, "div");
        div.setAttribute("xmlns", "http://www.w3.org/1999/xhtml");
        div.addTag("p").addText(sentence);
        var narrative = new Narrative();
        narrative.setStatus(Narrative.NarrativeStatus.GENERATED);
        narrative.setDiv(div);
        return narrative;
    }
}
