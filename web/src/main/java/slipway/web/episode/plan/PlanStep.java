package slipway.web.episode.plan;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.content.Section;
import slipway.care.visit.VisitPlan;
import slipway.documents.words.Words;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.reasoning.dose.Dose;
import slipway.reasoning.dose.DoseLadder;
import slipway.web.episode.BenchLink;
import slipway.web.episode.Cases;
import slipway.web.episode.Step;
import slipway.web.episode.StepPage;
import slipway.web.episode.VisitPictures;
import slipway.web.form.FormView;
import slipway.web.form.Option;

/** The plan. */
@Component
class PlanStep implements StepPage {
    private static final int RULER_WIDTH = 520;

    private static final Words WORDS = Words.beside(PlanStep.class, Language.EN);

    private final Cases cases;

    PlanStep(Cases cases) {
        this.cases = cases;
    }

    @Override
    public Step step() {
        return Step.PLAN;
    }

    @Override
    public Words words() {
        return WORDS;
    }

    @Override
    public void fill(Chart chart, FormView form, Model model) {
        Assembly assembly = cases.assemble(chart);
        Optional<VisitPlan> visit = assembly.complete().map(cases::visit);
        List<PlanVersion> versions = chart.plans().list();
        model.addAttribute("assembly", assembly);
        model.addAttribute("visit", visit);
        model.addAttribute(
                "bench", visit.map(found -> BenchLink.of(chart.episode().id(), found)));
        model.addAttribute("ruler", visit.flatMap(each -> VisitPictures.ruler(each, RULER_WIDTH)));
        model.addAttribute("pictures", visit.map(PlanStep::pictures).orElse(Map.of()));
        model.addAttribute("ceilings", visit.map(PlanStep::ceilings).orElse(Map.of()));
        model.addAttribute("versions", versions);
        Optional<PlanVersion> home = chart.plans().released();
        model.addAttribute("home", home);
        model.addAttribute(
                "changed", home.map(version -> PlanChange.of(chart, version)).filter(PlanChange::any));
        model.addAttribute("language", chart.person().details().language().code());
        model.addAttribute("same", same(versions, assembly));
        model.addAttribute("offered", offered());
        model.addAttribute("choicesVersion", chart.section(Section.CHOICES).version());
    }

    /** The newest version, if it was made from what is recorded now. */
    private static Optional<PlanVersion> same(List<PlanVersion> versions, Assembly assembly) {
        return versions.stream()
                .findFirst()
                .filter(newest -> assembly.complete()
                        .filter(whole -> Cases.digest(whole.text())
                                .equals(newest.plan().versions().digest()))
                        .isPresent());
    }

    private static Map<String, VisitPictures.Both> pictures(VisitPlan visit) {
        Map<String, VisitPictures.Both> pictures = new LinkedHashMap<>();
        visit.given()
                .forEach(dosed -> pictures.put(dosed.range().candidate().id(), VisitPictures.exercise(visit, dosed)));
        return pictures;
    }

    /** What the ceiling is unless the therapist says otherwise. */
    private static Map<String, Dose> ceilings(VisitPlan visit) {
        Map<String, Dose> ceilings = new LinkedHashMap<>();
        visit.given().forEach(dosed -> ceilings.put(dosed.range().candidate().id(), DoseLadder.ceiling(dosed.dose())));
        return ceilings;
    }

    private static List<Option> offered() {
        return Catalogue.bundled().list().stream()
                .sorted(Comparator.comparing(
                        (Exercise exercise) -> exercise.name().in(Language.EN)))
                .map(exercise -> new Option(exercise.id(), exercise.name().in(Language.EN)))
                .toList();
    }
}
