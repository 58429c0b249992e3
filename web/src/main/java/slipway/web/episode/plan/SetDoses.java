package slipway.web.episode.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.care.follow.HomeSetting;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Decision;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.chart.Verdict;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.dose.Dose;

/** The doses and ceilings that the therapist set on a plan since it was given: decisions of the record. */
public final class SetDoses {
    private SetDoses() {}

    /**
     * A decision on the next dose of an exercise.
     *
     * @param setting what it put in force; empty if the proposal was refused
     */
    public record Kept(Decision decision, String exercise, Optional<HomeSetting> setting) {}

    /** What a decision on the next dose of an exercise is about. */
    public static String subject(PlanVersion plan, String exerciseId) {
        return subject(plan) + "/" + exerciseId;
    }

    private static String subject(PlanVersion plan) {
        return "plan/" + plan.number() + "/dose";
    }

    /** All on a plan, oldest first. */
    public static List<Kept> list(Chart chart, PlanVersion plan) {
        var list = new ArrayList<Kept>();
        for (Decision decision : chart.decisions().about(subject(plan))) {
            String exercise = decision.about().substring(subject(plan).length() + 1);
            String words = decision.verdict() == Verdict.CHANGE ? decision.chosen() : decision.proposed();
            Optional<HomeSetting> setting =
                    decision.verdict() == Verdict.REFUSE ? Optional.empty() : HomeSetting.read(words);
            list.add(new Kept(decision, exercise, setting));
        }
        return list;
    }

    /** A visit with what was set since in place of its own doses. */
    public static VisitPlan applied(Chart chart, PlanVersion plan, VisitPlan visit) {
        Map<String, HomeSetting> newest = new HashMap<>();
        list(chart, plan).forEach(kept -> kept.setting().ifPresent(set -> newest.put(kept.exercise(), set)));
        Map<String, Dose> doses = new HashMap<>();
        visit.given().forEach(dosed -> {
            String id = dosed.range().candidate().id();
            Optional.ofNullable(newest.get(id))
                    .ifPresent(set -> doses.put(id, set.dose(dosed.dose().secondsPerDirection())));
        });
        return doses.isEmpty() ? visit : visit.dosed(doses);
    }

    /** The number on paper: of the plan, and behind a point how often a dose was set since. */
    public static String version(Chart chart, PlanVersion plan) {
        long sets = list(chart, plan).stream()
                .filter(kept -> kept.setting().isPresent())
                .count();
        return sets == 0 ? String.valueOf(plan.number()) : plan.number() + "." + sets;
    }
}
