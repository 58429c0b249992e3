package slipway.web.episode;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Episode;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.chart.PlanState;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.chart.SupervisedTry;
import slipway.care.record.chart.VisitRecord;
import slipway.care.record.content.Section;
import slipway.care.record.follow.Alert;
import slipway.care.record.person.Person;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Side;
import slipway.web.told.Telling;

/** Makes the head of an episode's pages from its chart. */
@Component
public class Heads {
    private static final Words WORDS = Words.beside(Heads.class, Language.EN);
    private static final int DAYS_A_WEEK = 7;

    private final Clock clock;

    Heads(Clock clock) {
        this.clock = clock;
    }

    /** The head. */
    public EpisodeHead of(Chart chart) {
        Person person = chart.person();
        return new EpisodeHead(
                chart.episode().id(),
                person.id(),
                person.details().name(),
                facts(chart.episode(), person),
                news(chart),
                marks(chart),
                Optional.empty(),
                WORDS);
    }

    private List<String> facts(Episode episode, Person person) {
        var facts = new ArrayList<String>();
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault());
        person.details().age().ifPresent(age -> facts.add(WORDS.get("age", Math.round(age.yearsOn(today)))));
        facts.add(WORDS.get(episode.side() == Side.RIGHT ? "side.right" : "side.left"));
        long week = Duration.between(episode.openedAt(), clock.instant()).toDays() / DAYS_A_WEEK + 1;
        facts.add(WORDS.get("week", week));
        if (episode.state() != EpisodeState.OPEN) {
            facts.add(WORDS.get("state." + episode.state().name()));
        }
        return facts;
    }

    /** What happened since the last visit that has ended: check-ins, alerts, changes by others. */
    private static List<String> news(Chart chart) {
        var news = new ArrayList<String>();
        Optional<Instant> since = chart.visits().list().stream()
                .flatMap(visit -> visit.endedAt().stream())
                .max(Instant::compareTo);
        if (since.isEmpty()) {
            return news;
        }
        int checkIns = (int) chart.checkIns().list().stream()
                .filter(checkIn -> checkIn.receivedAt().isAfter(since.get()))
                .count();
        news.add(WORDS.counted("news.checkIns", checkIns));
        List<Alert> open = chart.checkIns().alerts().stream()
                .filter(alert -> alert.acknowledged().isEmpty())
                .toList();
        if (!open.isEmpty()) {
            news.add(WORDS.counted("news.alerts", open.size()));
        }
        chart.plans()
                .newest()
                .ifPresent(
                        plan -> news.add(WORDS.get("news.plan." + plan.state().name(), plan.number())));
        return news;
    }

    private static List<EpisodeHead.Mark> marks(Chart chart) {
        var marks = new ArrayList<EpisodeHead.Mark>();
        Optional<PlanVersion> plan = chart.plans().newest();
        for (Step step : Step.values()) {
            marks.add(mark(step, state(step, chart, plan)));
        }
        return marks;
    }

    private static EpisodeHead.Mark mark(Step step, String state) {
        return new EpisodeHead.Mark(
                step, WORDS.get("step." + step.key()), WORDS.get("sign." + state), WORDS.get("says." + state));
    }

    private static String state(Step step, Chart chart, Optional<PlanVersion> plan) {
        Optional<Section> section = step.section();
        if (step == Step.PLAN) {
            return plan.isEmpty() ? "open" : plan.get().state() == PlanState.PROPOSED ? "ask" : "done";
        }
        if (step == Step.SCREEN
                && Telling.of(chart).filter(told -> !told.openSigns().isEmpty()).isPresent()) {
            return "ask";
        }
        if (section.isPresent() && step != Step.WRITE) {
            return chart.section(section.get()).isEmpty() ? "open" : "done";
        }
        boolean done = switch (step) {
            case TRY -> released(chart, plan);
            case FOLLOW -> chart.checkIns().newest().isPresent();
            case MEASURE -> !chart.measures().list().isEmpty();
            default ->
                chart.papers().list().stream()
                        .anyMatch(paper -> paper.signature().isPresent());
        };
        boolean alert = step == Step.FOLLOW
                && chart.checkIns().alerts().stream()
                        .anyMatch(each -> each.acknowledged().isEmpty());
        return alert ? "ask" : done ? "done" : "open";
    }

    private static boolean released(Chart chart, Optional<PlanVersion> plan) {
        List<SupervisedTry> tries = chart.visits().tries();
        return plan.isPresent()
                && tries.stream()
                        .anyMatch(each -> each.planVersion() == plan.get().number()
                                && each.entry().released());
    }

    /** The visit that goes on, started if there is none. */
    public static VisitRecord visit(Chart chart) {
        return chart.visits().current().orElseGet(() -> chart.visits().start());
    }
}
