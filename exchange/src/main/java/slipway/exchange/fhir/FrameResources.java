package slipway.exchange.fhir;

import java.time.LocalDate;
import java.util.Optional;
import org.hl7.fhir.r4.model.CodeableConcept;
import org.hl7.fhir.r4.model.Condition;
import org.hl7.fhir.r4.model.ContactPoint;
import org.hl7.fhir.r4.model.Enumerations.AdministrativeGender;
import org.hl7.fhir.r4.model.EpisodeOfCare;
import org.hl7.fhir.r4.model.Organization;
import org.hl7.fhir.r4.model.Patient;
import org.hl7.fhir.r4.model.Practitioner;
import org.hl7.fhir.r4.model.ServiceRequest;
import slipway.care.CareData;
import slipway.care.casefile.CaseFile;
import slipway.care.facts.Frame;
import slipway.reasoning.codes.CodeEntry;
import slipway.reasoning.codes.DiagnosisCodes;

/** The person, who treats, who referred, the episode, the diagnoses. */
final class FrameResources {
    static final String PATIENT = "patient";
    static final String CLINIC = "clinic";
    static final String THERAPIST = "therapist";
    static final String REFERRER = "referrer";
    static final String REFERRAL = "referral";
    static final String EPISODE = "episode";
    private static final String ICD = DiagnosisCodes.SYSTEM;

    private final Writer out;
    private final Export export;
    private final CaseFile file;
    private final Frame frame;

    FrameResources(Writer out, Export export) {
        this.out = out;
        this.export = export;
        this.file = export.facts().file();
        this.frame = export.facts().frame();
    }

    void write() {
        patient();
        clinic();
        frame.therapist().ifPresent(this::therapist);
        frame.referrer().ifPresent(this::referrer);
        frame.orderedOn().ifPresent(this::referral);
        frame.diagnoses().forEach(this::condition);
        episode();
    }

    private void patient() {
        var patient = new Patient();
        patient.addIdentifier().setSystem(EpisodeBundle.CASES).setValue(file.id());
        file.patient().name().ifPresent(name -> patient.addName().setText(name));
        patient.setGender(
                switch (file.patient().sex().orElse("")) {
                    case "female" -> AdministrativeGender.FEMALE;
                    case "male" -> AdministrativeGender.MALE;
                    case "other" -> AdministrativeGender.OTHER;
                    default -> AdministrativeGender.UNKNOWN;
                });
        frame.born().ifPresent(born -> patient.setBirthDateElement(Writer.date(born)));
        telecom(patient, ContactPoint.ContactPointSystem.PHONE, export.contact().phone());
        telecom(patient, ContactPoint.ContactPointSystem.EMAIL, export.contact().email());
        patient.addCommunication()
                .setPreferred(true)
                .setLanguage(
                        Codes.of("urn:ietf:bcp:47", file.episode().language().code(), ""));
        out.add(PATIENT, patient, file.patient().name().orElse("Person of case " + file.id()));
    }

    private static void telecom(Patient patient, ContactPoint.ContactPointSystem system, Optional<String> value) {
        value.ifPresent(known -> patient.addTelecom().setSystem(system).setValue(known));
    }

    private void clinic() {
        var clinic = new Organization();
        String name = file.episode().clinic().name().orElse("Clinic (name not recorded)");
        clinic.setActive(true).setName(name);
        file.episode()
                .clinic()
                .phone()
                .ifPresent(phone -> clinic.addTelecom()
                        .setSystem(ContactPoint.ContactPointSystem.PHONE)
                        .setValue(phone));
        out.add(CLINIC, clinic, name);
    }

    private void therapist(Frame.Therapist therapist) {
        var practitioner = new Practitioner();
        practitioner.addName().setText(therapist.name());
        therapist
                .licence()
                .ifPresent(number -> practitioner
                        .addIdentifier()
                        .setSystem("urn:slipway:licence")
                        .setValue(number));
        out.add(THERAPIST, practitioner, therapist.text());
    }

    private void referrer(String name) {
        var practitioner = new Practitioner();
        practitioner.addName().setText(name);
        out.add(REFERRER, practitioner, name);
    }

    private void referral(LocalDate ordered) {
        var request = new ServiceRequest();
        request.setStatus(ServiceRequest.ServiceRequestStatus.ACTIVE)
                .setIntent(ServiceRequest.ServiceRequestIntent.ORDER)
                .setCode(Codes.own("referral", "Referral to physical therapy"))
                .setSubject(out.to(PATIENT))
                .setAuthoredOnElement(Writer.dateTime(ordered));
        frame.referrer().ifPresent(name -> request.setRequester(out.to(REFERRER, name)));
        out.add(REFERRAL, request, "Referral of " + ordered);
    }

    private void condition(String code) {
        var condition = new Condition();
        String words =
                export.codes().find(code, export.day()).map(CodeEntry::words).orElse("");
        CodeableConcept concept = Codes.of(ICD, code, "");
        concept.setText(words.isEmpty() ? code : words);
        condition
                .setCode(concept)
                .setSubject(out.to(PATIENT))
                .setClinicalStatus(
                        Codes.of("http://terminology.hl7.org/CodeSystem/condition-clinical", "active", "Active"));
        condition.addCategory(Codes.of(
                "http://terminology.hl7.org/CodeSystem/condition-category",
                "encounter-diagnosis",
                "Encounter Diagnosis"));
        condition.addBodySite(side());
        out.add("condition/" + code, condition, "Diagnosis code " + code);
    }

    private CodeableConcept side() {
        String side = CareData.word(file.episode().side());
        return Codes.own("leg-" + side, side + " leg");
    }

    private void episode() {
        var episode = new EpisodeOfCare();
        Optional<LocalDate> start = export.facts().start();
        episode.setStatus(
                start.isPresent()
                        ? EpisodeOfCare.EpisodeOfCareStatus.ACTIVE
                        : EpisodeOfCare.EpisodeOfCareStatus.PLANNED);
        episode.addIdentifier().setSystem(EpisodeBundle.CASES).setValue(file.id());
        episode.setPatient(out.to(PATIENT)).setManagingOrganization(out.to(CLINIC));
        start.ifPresent(day -> episode.getPeriod().setStartElement(Writer.dateTime(day)));
        frame.therapist().ifPresent(therapist -> episode.setCareManager(out.to(THERAPIST, therapist.name())));
        for (int i = 0; i < frame.diagnoses().size(); i++) {
            episode.addDiagnosis()
                    .setCondition(out.to("condition/" + frame.diagnoses().get(i)))
                    .setRank(i + 1);
        }
        if (frame.orderedOn().isPresent()) {
            episode.addReferralRequest(out.to(REFERRAL));
        }
        out.add(
                EPISODE,
                episode,
                "Episode of care, " + CareData.word(file.episode().side()) + " leg");
    }
}
