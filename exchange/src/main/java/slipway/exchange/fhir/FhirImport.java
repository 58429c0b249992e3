package slipway.exchange.fhir;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.hl7.fhir.r4.model.Bundle;
import org.hl7.fhir.r4.model.Condition;
import org.hl7.fhir.r4.model.DomainResource;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.Patient;
import org.hl7.fhir.r4.model.Reference;
import org.hl7.fhir.r4.model.Resource;
import org.hl7.fhir.r4.model.ServiceRequest;
import slipway.care.facts.EpisodeFacts;
import slipway.reasoning.codes.DiagnosisCodes;

/** Previews what a bundle would change: patient, conditions, a referral, scores. */
public final class FhirImport {
    private final Bundle bundle;
    private final Merge merge;
    private final List<Preview.Item> items = new ArrayList<>();

    private FhirImport(Bundle bundle, Known current, DiagnosisCodes codes) {
        this.bundle = bundle;
        this.merge = new Merge(current, codes);
    }

    /**
     * The preview.
     *
     * @param text the bundle as JSON
     * @param current the episode that it is to go into; empty to see what the bundle holds
     * @throws RefusedException if the text is too large, too deep, or no bundle: then nothing of it was used
     */
    public static Preview preview(byte[] text, Optional<EpisodeFacts> current) {
        Preview preview = preview(text, current.map(Known::of).orElse(Known.NOTHING), DiagnosisCodes.bundled());
        return new Preview(preview.items(), preview.known(), current.map(preview.known()::in));
    }

    static Preview preview(byte[] text, Known current, DiagnosisCodes codes) {
        BundleReader.Read read = BundleReader.read(text);
        var reading = new FhirImport(read.bundle(), current, codes);
        read.unknown().forEach(what -> reading.add(0, "Bundle", Preview.Kind.NOT_UNDERSTOOD, what));
        return reading.run();
    }

    private Preview run() {
        List<Bundle.BundleEntryComponent> entries = bundle.getEntry();
        if (hasIdTwice(entries)) {
            throw new RefusedException("two resources have the same type and id");
        }
        List<String> people = entries.stream()
                .filter(entry -> entry.getResource() instanceof Patient)
                .map(FhirImport::address)
                .toList();
        if (people.size() > 1) {
            throw new RefusedException("a bundle must be about one patient, had %d".formatted(people.size()));
        }
        for (int i = 0; i < entries.size(); i++) {
            entry(i + 1, entries.get(i), people);
        }
        return new Preview(items, merge.result(), Optional.empty());
    }

    /** The gate has looked at full addresses; without one it is type and id that tell who is meant. */
    private static boolean hasIdTwice(List<Bundle.BundleEntryComponent> entries) {
        var seen = new HashSet<String>();
        return entries.stream()
                .filter(entry -> entry.getResource() != null && !entry.hasFullUrl())
                .map(Bundle.BundleEntryComponent::getResource)
                .filter(resource -> resource.getIdElement().hasIdPart())
                .map(resource ->
                        resource.fhirType() + "/" + resource.getIdElement().getIdPart())
                .anyMatch(address -> !seen.add(address));
    }

    private static String address(Bundle.BundleEntryComponent entry) {
        return entry.hasFullUrl()
                ? entry.getFullUrl()
                : String.valueOf(entry.getResource().getId());
    }

    private void entry(int number, Bundle.BundleEntryComponent entry, List<String> people) {
        Resource resource = entry.getResource();
        if (resource == null) {
            add(number, "", Preview.Kind.NOT_UNDERSTOOD, "an entry without a resource");
            return;
        }
        String type = resource.fhirType();
        Optional<String> objection = objection(resource, people);
        if (objection.isPresent()) {
            add(number, type, Preview.Kind.LEFT_OUT, objection.get());
            return;
        }
        try {
            read(number, type, resource);
        } catch (IllegalArgumentException | DateTimeException e) {
            add(
                    number,
                    type,
                    Preview.Kind.NOT_UNDERSTOOD,
                    "a value that cannot be: " + e.getClass().getSimpleName());
        }
    }

    private void read(int number, String type, Resource resource) {
        if (resource instanceof Patient patient) {
            add(number, type, merge.patient(patient));
        } else if (resource instanceof Condition condition) {
            add(number, type, merge.condition(condition));
        } else if (resource instanceof ServiceRequest request) {
            add(number, type, merge.referral(request));
        } else if (resource instanceof Observation observation) {
            add(number, type, merge.observation(observation));
        } else {
            add(number, type, Preview.Kind.LEFT_OUT, "resources of this type are not taken over");
        }
    }

    /** Reasons that hold for every resource. */
    private static Optional<String> objection(Resource resource, List<String> people) {
        if (resource.hasImplicitRules()) {
            return Optional.of("it has implicit rules, which nobody here knows");
        }
        if (resource instanceof DomainResource domain && domain.hasModifierExtension()) {
            return Optional.of("an extension changes its meaning");
        }
        Optional<Reference> subject = subject(resource);
        if (subject.isPresent()
                && !people.isEmpty()
                && !people.contains(String.valueOf(subject.get().getReference()))) {
            return Optional.of("it is about somebody else than the patient of the bundle");
        }
        return Optional.empty();
    }

    private static Optional<Reference> subject(Resource resource) {
        if (resource instanceof Condition condition) {
            return Optional.of(condition.getSubject());
        }
        if (resource instanceof ServiceRequest request) {
            return Optional.of(request.getSubject());
        }
        return resource instanceof Observation observation ? Optional.of(observation.getSubject()) : Optional.empty();
    }

    private void add(int entry, String resource, Preview.Kind kind, String what) {
        items.add(new Preview.Item(entry, resource, kind, what));
    }

    private void add(int entry, String resource, List<Merge.Step> steps) {
        steps.forEach(step -> add(entry, resource, step.kind(), step.what()));
    }

    /** A FHIR date of a whole day; empty if it is coarser. */
    static Optional<LocalDate> day(String text) {
        return text.length() >= 10 ? Optional.of(LocalDate.parse(text.substring(0, 10))) : Optional.empty();
    }
}
