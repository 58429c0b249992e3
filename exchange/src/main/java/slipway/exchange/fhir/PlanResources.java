package slipway.exchange.fhir;

import java.time.LocalDate;
import java.util.Optional;
import org.hl7.fhir.r4.model.CarePlan;
import org.hl7.fhir.r4.model.CodeableConcept;
import org.hl7.fhir.r4.model.Communication;
import org.hl7.fhir.r4.model.Goal;
import org.hl7.fhir.r4.model.ServiceRequest;
import org.hl7.fhir.r4.model.StringType;
import org.hl7.fhir.r4.model.Timing;
import slipway.care.facts.Frame;
import slipway.care.visit.Companion;
import slipway.exercises.exercise.Language;
import slipway.reasoning.course.CourseReport;
import slipway.reasoning.course.Outlook;
import slipway.reasoning.dose.DosedExercise;

/** Goals, the plan of care, each exercise as a request, what was sent. */
final class PlanResources {
    static final String PLAN = "plan";

    private final Writer out;
    private final Export export;
    private final Optional<LocalDate> start;

    PlanResources(Writer out, Export export) {
        this.out = out;
        this.export = export;
        this.start = export.facts().start();
    }

    void write() {
        export.facts().completeGoals().forEach(this::goal);
        export.plan().given().forEach(this::exercise);
        export.plan().companions().forEach(this::companion);
        carePlan();
        var letters = export.facts().frame().letters();
        for (int i = 0; i < letters.size(); i++) {
            sent(i, letters.get(i));
        }
    }

    private void goal(slipway.reasoning.course.Goal written) {
        var goal = new Goal();
        Optional<Outlook.State> state = export.facts()
                .course(export.day())
                .map(CourseReport::goals)
                .flatMap(goals -> goals.stream()
                        .filter(outlook -> outlook.goal().id().equals(written.id()))
                        .map(Outlook::state)
                        .findFirst());
        goal.setLifecycleStatus(Goal.GoalLifecycleStatus.ACTIVE)
                .setSubject(out.to(FrameResources.PATIENT))
                .getDescription()
                .setText(written.sentence());
        goal.setAchievementStatus(achievement(state));
        start.ifPresent(day -> goal.setStart(Writer.date(day)));
        goal.addTarget()
                .setMeasure(Codes.own(
                        MeasureResources.CODE_PREFIX + written.measure().id(),
                        written.measure().name()))
                .setDetail(Units.score(written.measure(), written.target()))
                .setDue(Writer.date(written.due()));
        out.add(goalName(written), goal, written.sentence());
    }

    private static String goalName(slipway.reasoning.course.Goal goal) {
        return "goal/" + goal.id();
    }

    private static CodeableConcept achievement(Optional<Outlook.State> state) {
        String code = state.map(known -> switch (known) {
                    case MET -> "achieved";
                    case MISSED -> "not-achieved";
                    case OPEN, TOO_FEW_SCORES -> "in-progress";
                })
                .orElse("in-progress");
        String words = switch (code) {
            case "achieved" -> "Achieved";
            case "not-achieved" -> "Not Achieved";
            default -> "In Progress";
        };
        return Codes.of("http://terminology.hl7.org/CodeSystem/goal-achievement", code, words);
    }

    private void exercise(DosedExercise dosed) {
        String id = dosed.range().candidate().id();
        String name = export.plan().exercise(id).name().in(Language.EN);
        ServiceRequest request = request(id, name, dosed.dose().sessionsPerDay());
        request.setQuantity(Units.count(dosed.dose().repetitions(), "repetitions"));
        request.addNote()
                .setText("%d repetitions, %d set(s), %d time(s) a day, no hold; expected below where symptoms began"
                        .formatted(
                                dosed.dose().repetitions(),
                                dosed.dose().sets(),
                                dosed.dose().sessionsPerDay()));
        out.add(exerciseName(id), request, name);
    }

    private void companion(Companion companion) {
        String id = companion.exercise().id();
        String name = companion.exercise().name().in(Language.EN);
        ServiceRequest request = request(id, name, companion.exercise().dose().sessionsPerDay());
        request.addNote().setText(companion.because());
        out.add(exerciseName(id), request, name);
    }

    private ServiceRequest request(String id, String name, int sessionsPerDay) {
        var timing = new Timing();
        timing.getRepeat().setFrequency(sessionsPerDay).setPeriod(1).setPeriodUnit(Timing.UnitsOfTime.D);
        return new ServiceRequest()
                .setStatus(ServiceRequest.ServiceRequestStatus.ACTIVE)
                .setIntent(ServiceRequest.ServiceRequestIntent.PLAN)
                .setCode(Codes.own("exercise-" + id, name))
                .setSubject(out.to(FrameResources.PATIENT))
                .setOccurrence(timing);
    }

    private static String exerciseName(String id) {
        return "exercise/" + id;
    }

    private void carePlan() {
        var plan = new CarePlan();
        plan.setStatus(export.plan().stopped() ? CarePlan.CarePlanStatus.ONHOLD : CarePlan.CarePlanStatus.ACTIVE)
                .setIntent(CarePlan.CarePlanIntent.PLAN)
                .setSubject(out.to(FrameResources.PATIENT))
                .setTitle("Plan of care");
        plan.addCategory(Codes.of("http://hl7.org/fhir/us/core/CodeSystem/careplan-category", "assess-plan", ""));
        Frame frame = export.facts().frame();
        start.ifPresent(day -> plan.getPeriod().setStartElement(Writer.dateTime(day)));
        frame.dosage().ends().ifPresent(day -> plan.getPeriod().setEndElement(Writer.dateTime(day)));
        frame.therapist().ifPresent(therapist -> plan.setAuthor(out.to(FrameResources.THERAPIST, therapist.name())));
        frame.diagnoses().forEach(code -> plan.addAddresses(out.to("condition/" + code)));
        export.facts().completeGoals().forEach(goal -> plan.addGoal(out.to(goalName(goal))));
        export.plan()
                .given()
                .forEach(dosed -> plan.addActivity()
                        .setReference(
                                out.to(exerciseName(dosed.range().candidate().id()))));
        export.plan()
                .companions()
                .forEach(companion -> plan.addActivity()
                        .setReference(out.to(exerciseName(companion.exercise().id()))));
        out.add(PLAN, plan, narrative(frame));
    }

    private String narrative(Frame frame) {
        if (export.plan().stopped()) {
            return "No plan: the screening stops it.";
        }
        String seen = frame.dosage().timesAWeek().isPresent()
                ? frame.dosage().timesAWeek().getAsInt() + " visit(s) a week"
                : "visits a week not recorded";
        return "Plan of care: %s, %d exercises for home."
                .formatted(
                        seen,
                        export.plan().given().size()
                                + export.plan().companions().size());
    }

    /** Also the proof that the plan was sent. */
    private void sent(int index, Frame.Sent sent) {
        var message = new Communication();
        message.setStatus(Communication.CommunicationStatus.COMPLETED)
                .setSubject(out.to(FrameResources.PATIENT))
                .setSentElement(Writer.dateTime(sent.day()))
                .addCategory(Codes.own("sent-" + sent.what(), sent.what().replace('-', ' ')));
        message.addAbout(out.to(PLAN));
        if (!sent.to().isEmpty()) {
            message.addRecipient().setDisplay(sent.to());
        }
        String how = sent.how().isEmpty() ? "way not recorded" : sent.how();
        message.addPayload()
                .setContent(new StringType("%s: %s".formatted(sent.what().replace('-', ' '), how)));
        out.add("sent/" + index, message, "%s on %s".formatted(sent.what().replace('-', ' '), sent.day()));
    }
}
