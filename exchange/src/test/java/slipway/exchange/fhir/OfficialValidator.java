package slipway.exchange.fhir;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.context.support.IValidationSupport;
import ca.uhn.fhir.validation.FhirValidator;
import ca.uhn.fhir.validation.ResultSeverityEnum;
import java.util.List;
import java.util.Locale;
import org.hl7.fhir.common.hapi.validation.support.CommonCodeSystemsTerminologyService;
import org.hl7.fhir.common.hapi.validation.support.InMemoryTerminologyServerValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.PrePopulatedValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.SnapshotGeneratingValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain;
import org.hl7.fhir.common.hapi.validation.validator.FhirInstanceValidator;
import org.hl7.fhir.instance.model.api.IBaseResource;
import org.hl7.fhir.r4.model.CodeSystem;
import org.hl7.fhir.r4.model.Enumerations.PublicationStatus;
import org.hl7.fhir.r4.model.Questionnaire;
import org.jspecify.annotations.Nullable;
import slipway.exchange.ExchangeData;

/**
 * The validator of HL7 as HAPI packages it, with the definitions of FHIR R4 (4.0.1) and no network: structure, types,
 * cardinalities, invariants, required value sets, UCUM. It knows no LOINC, SNOMED CT or ICD-10-CM and no US Core profile.
 */
final class OfficialValidator {
    private static final FhirValidator VALIDATOR = validator();

    private OfficialValidator() {}

    private static FhirValidator validator() {
        var context = Fhir.context();
        var own = new PrePopulatedValidationSupport(context);
        // What the codes are is not for the outside validator to know; that they are of an own system is.
        own.addCodeSystem(new CodeSystem()
                .setUrl(Codes.OWN)
                .setStatus(PublicationStatus.ACTIVE)
                .setContent(CodeSystem.CodeSystemContentMode.NOTPRESENT));
        var chain = new ValidationSupportChain(
                new DefaultProfileValidationSupport(context),
                own,
                new OwnQuestionnaire(),
                new InMemoryTerminologyServerValidationSupport(context),
                new CommonCodeSystemsTerminologyService(context),
                new SnapshotGeneratingValidationSupport(context));
        return context.newValidator().registerValidatorModule(new FhirInstanceValidator(chain));
    }

    /** Hands out the questionnaire that the program ships. */
    private static final class OwnQuestionnaire implements IValidationSupport {
        private final Questionnaire checkIn = Fhir.context()
                .newJsonParser()
                .parseResource(Questionnaire.class, ExchangeData.text("questionnaire-check-in.json"));

        @Override
        public FhirContext getFhirContext() {
            return Fhir.context();
        }

        @Override
        public <T extends IBaseResource> @Nullable T fetchResource(@Nullable Class<T> type, String address) {
            if (type == null || !type.isInstance(checkIn) || !address.equals(checkIn.getUrl())) {
                return null;
            }
            return type.cast(checkIn);
        }
    }

    /** Everything it says above information, as {@code severity place: words}. */
    static List<String> complaints(String json) {
        return VALIDATOR.validateWithResult(json).getMessages().stream()
                .filter(message -> message.getSeverity().ordinal() >= ResultSeverityEnum.WARNING.ordinal())
                .map(message -> "%s %s: %s"
                        .formatted(
                                message.getSeverity().name().toLowerCase(Locale.ROOT),
                                message.getLocationString(),
                                message.getMessage()))
                .toList();
    }
}
