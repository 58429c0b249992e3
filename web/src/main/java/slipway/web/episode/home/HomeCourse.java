package slipway.web.episode.home;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import slipway.care.casefile.CaseFiles;
import slipway.care.follow.CheckInFile;
import slipway.care.follow.Follow;
import slipway.care.follow.FollowPlans;
import slipway.care.follow.HomePlan;
import slipway.care.kept.KeptAnswers;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Decision;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.follow.Alert;
import slipway.care.record.follow.CheckIn;
import slipway.care.record.intake.Intake;
import slipway.care.visit.VisitPlan;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.MistakesException;
import slipway.exercises.yaml.YamlDocument;
import slipway.exercises.yaml.YamlText;
import slipway.reasoning.dose.StartRule;
import slipway.reasoning.response.course.Course;
import slipway.reasoning.response.propose.DoseSet;
import slipway.reasoning.response.propose.Followed;
import slipway.reasoning.response.propose.Release;
import slipway.reasoning.response.propose.VisitProposal;
import slipway.reasoning.response.propose.VisitProposals;
import slipway.web.episode.Cases;
import slipway.web.episode.attempt.Released;
import slipway.web.episode.plan.HomePlans;
import slipway.web.episode.plan.SetDoses;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The course at home of one chart: the plan that was given, within the ceilings that the therapist set, and what the
 * rules and the estimate say to each report. The same as the command {@code respond} on files. What is followed was kept with
 * the plan; only plans from before that are computed again.
 */
@Component
public class HomeCourse {
    /** Subject of the decision that lets a person go on after a stop. */
    public static final String RELEASE = "follow/release";

    private static final int KEPT = 64;

    private final Cases cases;
    private final KeptAnswers<String, Followed> answered = new KeptAnswers<>(KEPT);
    private final KeptAnswers<String, HomePlan> computed = new KeptAnswers<>(KEPT);

    HomeCourse(Cases cases) {
        this.cases = cases;
    }

    /**
     * What a person has at home.
     *
     * @param given doses, ceilings and loads of those that were tried and released
     * @param exercises their ids
     */
    public record Home(PlanVersion plan, HomePlan given, List<String> exercises) {
        public Home {
            exercises = List.copyOf(exercises);
        }
    }

    /** What the person has at home; empty before a plan was given. */
    public Optional<Home> home(Chart chart) {
        return chart.plans().released().map(plan -> {
            List<String> ids = Released.ids(chart, plan);
            return new Home(plan, given(plan).only(ids), ids);
        });
    }

    private HomePlan given(PlanVersion plan) {
        return HomePlans.read(plan.plan())
                .orElseGet(() -> computed.get(
                        Cases.digest(plan.episodeId() + plan.number()), () -> FollowPlans.home(visit(plan))));
    }

    /** The visit of what the person has at home, for papers and sheets; has its postures solved. */
    public VisitPlan visit(Home home) {
        return visit(home.plan()).only(home.exercises());
    }

    /** The visit of a plan, with the ceilings that were set when it was accepted. */
    public VisitPlan visit(PlanVersion plan) {
        byte[] inputs = plan.plan().inputs().getBytes(StandardCharsets.UTF_8);
        ObjectNode tree = (ObjectNode) YamlDocument.read("plan", inputs).root();
        ArrayNode ceilings = tree.withObject("/choices").putArray("ceilings");
        plan.plan()
                .ceilings()
                .properties()
                .forEach(each -> ceilings.addObject()
                        .put("exercise", each.getKey())
                        .put("repetitions", each.getValue().path("repetitions").asInt())
                        .put(
                                "sessionsPerDay",
                                each.getValue().path("sessionsPerDay").asInt()));
        if (ceilings.isEmpty()) {
            tree.withObject("/choices").remove("ceilings");
        }
        String text = YamlText.of(tree);
        return cases.visit(new Assembly.Complete(CaseFiles.read(text.getBytes(StandardCharsets.UTF_8), "plan"), text));
    }

    /** One answer for each report on this plan, in the order of the reports. */
    public Followed followed(Chart chart, Home home) {
        List<CheckIn> kept = chart.checkIns().list();
        List<Release> releases = releases(chart);
        List<DoseSet> sets = sets(chart, home);
        String key = Cases.digest(home.plan().episodeId()
                + home.plan().number()
                + home.exercises()
                + kept.stream().map(CheckIn::id).toList()
                + releases
                + sets.stream().map(DoseSet::id).toList());
        return answered.get(key, () -> {
            var read = new ArrayList<slipway.reasoning.response.checkin.CheckIn>();
            kept.forEach(each -> read.addAll(readable(each, home)));
            return Follow.of(home.given().followed(), read, releases, sets, Optional.empty());
        });
    }

    /** What to propose for each glide that the person has at home, at a visit of now; none while everything rests. */
    public List<VisitProposal> proposals(Chart chart, Home home) {
        if (locked(chart, home)) {
            return List.of();
        }
        return VisitProposals.of(
                home.given().followed(),
                sets(chart, home),
                followed(chart, home),
                StartRule.of(home.given().irritability()));
    }

    /** What the therapist set on this plan, oldest first. */
    private static List<DoseSet> sets(Chart chart, Home home) {
        var sets = new ArrayList<DoseSet>();
        for (SetDoses.Kept kept : SetDoses.list(chart, home.plan())) {
            if (home.exercises().contains(kept.exercise())) {
                kept.setting()
                        .flatMap(setting -> home.given().set(kept.exercise(), setting))
                        .ifPresent(
                                exercise -> sets.add(new DoseSet(kept.decision().id(), at(kept.decision()), exercise)));
            }
        }
        return sets;
    }

    /**
     * Whether everything rests until a clinician lets the person go on: by the rules, or because an alert is not taken
     * or was raised since the last release, whatever else the report said.
     */
    public boolean locked(Chart chart, Home home) {
        Instant released = chart.decisions().about(RELEASE).stream()
                .map(Decision::at)
                .max(Comparator.naturalOrder())
                .orElse(Instant.MIN);
        return followed(chart, home).state().lock().isPresent()
                || chart.checkIns().alerts().stream()
                        .anyMatch(alert -> alert.acknowledged().isEmpty()
                                || (alert.raisedAt().isAfter(released) && !isOfIntake(alert)));
    }

    /** Of before the first visit: once it is taken, the plan that the therapist gave afterwards counts. */
    private static boolean isOfIntake(Alert alert) {
        return alert.kind().startsWith(Intake.ALERT);
    }

    /** Whether nothing may be done now: everything was stopped, or each exercise by itself. */
    public boolean rests(Chart chart, Home home) {
        return locked(chart, home)
                || home.exercises().stream()
                        .allMatch(id -> Optional.ofNullable(
                                        followed(chart, home).state().courses().get(id))
                                .filter(Course::stopped)
                                .isPresent());
    }

    /** A report on another plan than this one is not read; it stays in the record. */
    private static List<slipway.reasoning.response.checkin.CheckIn> readable(CheckIn kept, Home home) {
        int plan = kept.body().path("plan").asInt(home.plan().number());
        if (plan != home.plan().number()) {
            return List.of();
        }
        return mistakes(kept.body(), home).isEmpty() ? read(kept.body(), home) : List.of();
    }

    private static List<slipway.reasoning.response.checkin.CheckIn> read(JsonNode body, Home home) {
        return CheckInFile.read("check-in", CheckInFile.text(body).getBytes(StandardCharsets.UTF_8), home.exercises());
    }

    /** What is wrong with a report, by the rules of the file of reports. */
    public static List<Mistake> mistakes(JsonNode body, Home home) {
        try {
            read(body, home);
            return List.of();
        } catch (MistakesException e) {
            return e.mistakes();
        }
    }

    private static List<Release> releases(Chart chart) {
        return chart.decisions().about(RELEASE).stream()
                .map(decision -> new Release(decision.id(), decision.by(), at(decision)))
                .toList();
    }

    private static java.time.OffsetDateTime at(Decision decision) {
        return decision.at().atOffset(ZoneOffset.UTC);
    }
}
