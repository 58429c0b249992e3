package slipway.exchange.fhir;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.hl7.fhir.r4.model.Coding;
import org.hl7.fhir.r4.model.Condition;
import org.hl7.fhir.r4.model.DateTimeType;
import org.hl7.fhir.r4.model.HumanName;
import org.hl7.fhir.r4.model.Observation;
import org.hl7.fhir.r4.model.Patient;
import org.hl7.fhir.r4.model.Quantity;
import org.hl7.fhir.r4.model.ServiceRequest;
import slipway.care.facts.Taken;
import slipway.reasoning.codes.DiagnosisCodes;
import slipway.reasoning.measures.Measure;
import slipway.reasoning.measures.Measures;

/** Puts what comes from outside beside what is recorded. Names in messages would end in logs: none of them says one. */
final class Merge {
    private static final String LOINC = "http://loinc.org";
    private static final String LOINC_PAIN = "72514-3";

    private final List<String> diagnoses;
    private final List<Taken> scores;
    private final DiagnosisCodes codes;
    private Optional<String> name;
    private Optional<String> sex;
    private Optional<LocalDate> born;
    private Optional<LocalDate> ordered;
    private Optional<String> referrer;

    /** Beside what is known, which may be nothing. */
    Merge(Known current, DiagnosisCodes codes) {
        this.codes = codes;
        this.diagnoses = new ArrayList<>(current.diagnoses());
        this.scores = new ArrayList<>(current.scores());
        this.name = current.name();
        this.sex = current.sex();
        this.born = current.born();
        this.ordered = current.ordered();
        this.referrer = current.referrer();
    }

    /** What one thing comes to. */
    record Step(Preview.Kind kind, String what) {}

    private static Step leftOut(String why) {
        return new Step(Preview.Kind.LEFT_OUT, why);
    }

    private static <T> Step compared(String what, Optional<T> here, T there) {
        if (here.isEmpty()) {
            return new Step(Preview.Kind.ADD, what);
        }
        return here.get().equals(there)
                ? new Step(Preview.Kind.SAME, what)
                : new Step(Preview.Kind.CHANGE, what + ": other than recorded here");
    }

    List<Step> patient(Patient patient) {
        var steps = new ArrayList<Step>();
        Optional<String> told = patient.getName().stream()
                .map(Merge::text)
                .filter(text -> !text.isEmpty() && text.length() <= 80)
                .findFirst();
        if (told.isPresent()) {
            steps.add(compared("name", name, told.get()));
            name = told;
        }
        if (patient.hasBirthDate()) {
            Optional<LocalDate> day =
                    FhirImport.day(String.valueOf(patient.getBirthDateElement().getValueAsString()));
            steps.add(day.map(known -> compared("day of birth", born, known))
                    .orElse(leftOut("the day of birth is not told to the day")));
            born = day.or(() -> born);
        }
        gender(patient).ifPresent(word -> {
            steps.add(compared("sex", sex, word));
            sex = Optional.of(word);
        });
        if (steps.isEmpty()) {
            steps.add(new Step(Preview.Kind.NOT_UNDERSTOOD, "a patient of whom nothing is told that is kept here"));
        }
        return steps;
    }

    /** Empty if a text is there without a value: the library's own way of joining a name trips over that. */
    private static String text(HumanName name) {
        if (name.hasText()) {
            return Objects.requireNonNullElse(name.getText(), "").strip();
        }
        return Objects.requireNonNullElse(name.getNameAsSingleString(), "").strip();
    }

    private static Optional<String> gender(Patient patient) {
        return Optional.ofNullable(patient.getGender())
                .map(gender -> gender.toCode())
                .filter(word -> List.of("female", "male", "other").contains(word));
    }

    List<Step> condition(Condition condition) {
        String status = code(condition.getVerificationStatus().getCoding());
        if (status.equals("refuted") || status.equals("entered-in-error")) {
            return List.of(leftOut("the condition is " + status));
        }
        String course = code(condition.getClinicalStatus().getCoding());
        if (!course.isEmpty() && !List.of("active", "recurrence", "relapse").contains(course)) {
            return List.of(leftOut("the condition is " + course));
        }
        Optional<String> code = condition.getCode().getCoding().stream()
                .filter(coding -> DiagnosisCodes.SYSTEM.equals(coding.getSystem()))
                .map(coding -> String.valueOf(coding.getCode()))
                .filter(text -> text.matches("[A-Z][0-9][0-9A-Z](\\.[0-9A-Z]{1,4})?"))
                .findFirst();
        if (code.isEmpty()) {
            return List.of(new Step(Preview.Kind.NOT_UNDERSTOOD, "a condition without an ICD-10-CM code"));
        }
        if (diagnoses.contains(code.get())) {
            return List.of(new Step(Preview.Kind.SAME, "diagnosis " + code.get()));
        }
        diagnoses.add(code.get());
        String list = codes.knows(code.get()) ? "" : " (not in the list of this clinic)";
        return List.of(new Step(Preview.Kind.ADD, "diagnosis " + code.get() + list));
    }

    private static String code(List<Coding> codings) {
        return codings.stream()
                .map(each -> String.valueOf(each.getCode()))
                .findFirst()
                .orElse("");
    }

    // A field with a word that the standard does not know is there, but has no value: hasStatus() says yes then.

    /** A request with the intent of an order is a referral; plans and options order nothing. */
    List<Step> referral(ServiceRequest request) {
        String intent = Optional.ofNullable(request.getIntent())
                .map(each -> each.toCode())
                .orElse("");
        if (!List.of("order", "original-order", "filler-order", "instance-order")
                .contains(intent)) {
            return List.of(leftOut("a request that is no order"));
        }
        String status = Optional.ofNullable(request.getStatus())
                .map(each -> each.toCode())
                .orElse("");
        if (!List.of("active", "completed").contains(status) || request.getDoNotPerform()) {
            return List.of(leftOut("an order that does not stand"));
        }
        var steps = new ArrayList<Step>();
        Optional<LocalDate> day = request.hasAuthoredOn()
                ? FhirImport.day(String.valueOf(request.getAuthoredOnElement().getValueAsString()))
                : Optional.empty();
        if (day.isPresent()) {
            steps.add(compared("order of " + day.get(), ordered, day.get()));
            ordered = day;
        } else {
            steps.add(leftOut("an order without a day is no proof of an order"));
        }
        Optional<String> who = Optional.ofNullable(request.getRequester().getDisplay())
                .map(String::strip)
                .filter(text -> !text.isEmpty() && text.length() <= 120);
        if (who.isPresent()) {
            steps.add(compared("who referred", referrer, who.get()));
            referrer = who;
        }
        return steps;
    }

    List<Step> observation(Observation observation) {
        String status = Optional.ofNullable(observation.getStatus())
                .map(each -> each.toCode())
                .orElse("");
        if (!List.of("final", "amended", "corrected").contains(status)) {
            return List.of(leftOut("an observation that is not final"));
        }
        Optional<Measure> measure = measure(observation);
        if (measure.isEmpty()) {
            boolean own = !Codes.ownIn(observation.getCode()).isEmpty();
            return List.of(
                    own
                            ? leftOut("findings and angles belong to the examination: enter them there")
                            : new Step(
                                    Preview.Kind.NOT_UNDERSTOOD, "an observation with a code that is not known here"));
        }
        if (!(observation.getValue() instanceof Quantity quantity)
                || quantity.getValue() == null
                || quantity.hasComparator()) {
            return List.of(leftOut("a score without a plain number"));
        }
        if (!Units.fits(quantity, measure.get())) {
            return List.of(leftOut("a score in another unit than %s has here"
                    .formatted(measure.get().name())));
        }
        Optional<LocalDate> day = observation.getEffective() instanceof DateTimeType at
                ? FhirImport.day(String.valueOf(at.getValueAsString()))
                : Optional.empty();
        if (day.isEmpty()) {
            return List.of(leftOut("a score without its day"));
        }
        return List.of(score(measure.get(), day.get(), quantity.getValue().doubleValue()));
    }

    private static Optional<Measure> measure(Observation observation) {
        String own = Codes.ownIn(observation.getCode());
        if (own.startsWith(MeasureResources.CODE_PREFIX)) {
            return Measures.bundled().find(own.substring(MeasureResources.CODE_PREFIX.length()));
        }
        boolean pain = observation.getCode().getCoding().stream()
                .anyMatch(coding -> LOINC.equals(coding.getSystem()) && LOINC_PAIN.equals(coding.getCode()));
        return pain ? Measures.bundled().find("pain") : Optional.empty();
    }

    private Step score(Measure measure, LocalDate day, double value) {
        String what = "%s on %s".formatted(measure.name(), day);
        if (!measure.range().holds(value)) {
            return leftOut(what + ": not a possible score");
        }
        List<Taken> same = scores.stream()
                .filter(taken ->
                        taken.measure().id().equals(measure.id()) && taken.day().equals(day))
                .toList();
        if (same.stream().anyMatch(taken -> taken.score().equals(Optional.of(value)))) {
            return new Step(Preview.Kind.SAME, what);
        }
        scores.add(new Taken(measure, day, OptionalDouble.of(value), new TreeMap<>()));
        return same.isEmpty()
                ? new Step(Preview.Kind.ADD, what)
                : new Step(Preview.Kind.ADD, what + ": a second score of that day");
    }

    /** What is known with everything that was taken. */
    Known result() {
        return new Known(name, sex, born, ordered, referrer, diagnoses, scores);
    }
}
