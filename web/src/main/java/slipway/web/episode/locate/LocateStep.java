package slipway.web.episode.locate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.ComputedResult;
import slipway.care.record.chart.Decision;
import slipway.care.record.chart.ResultKind;
import slipway.care.record.chart.Verdict;
import slipway.care.record.content.Section;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.locate.Location;
import slipway.web.episode.Cases;
import slipway.web.episode.Step;
import slipway.web.episode.StepPage;
import slipway.web.form.FormView;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Where the trouble is. */
@Component
class LocateStep implements StepPage {
    static final Words WORDS = Words.beside(LocateStep.class, Language.EN);

    /** What decisions on the places are about. */
    static final String ABOUT = "sites";

    private static final int NEXT = 3;
    private static final int LEAST_SHOWN = 4;
    private static final double SHOWN_FROM = 0.02;
    private static final int SPARE_ROWS = 2;

    private final Locating locating;
    private final SitePicture picture = new SitePicture(WORDS);

    LocateStep(Locating locating) {
        this.locating = locating;
    }

    @Override
    public Step step() {
        return Step.LOCATE;
    }

    @Override
    public Words words() {
        return WORDS;
    }

    /** A row without a word in it was not used. */
    @Override
    public ObjectNode adjust(Chart chart, ObjectNode sent) {
        if (sent.get("sites") instanceof ArrayNode sites) {
            ArrayNode used = JsonMapper.shared().createArrayNode();
            sites.valueStream().filter(site -> !site.isEmpty()).forEach(used::add);
            if (used.isEmpty()) {
                sent.remove("sites");
            } else {
                sent.set("sites", used);
            }
        }
        return sent;
    }

    /** Places of one's own are a change of what was proposed; why is said place by place. */
    @Override
    public void saved(Chart chart) {
        locating.keep(chart);
        ObjectNode own = chart.section(Section.SITES).content();
        var reasons = new ArrayList<String>();
        own.path("sites").forEach(site -> reasons.add(site.path("reason").asString("")));
        String proposed = locating.locate(chart)
                .map(location -> location.verdict().sentence())
                .orElse("");
        chart.decisions()
                .add(
                        ABOUT,
                        Verdict.CHANGE,
                        proposed,
                        own.path("sites").isEmpty() ? WORDS.get("taken.back") : Proposal.inShort(own),
                        reasons.isEmpty() ? WORDS.get("taken.back") : String.join("; ", reasons));
    }

    @Override
    public void fill(Chart chart, FormView form, Model model) {
        List<Finding> findings = locating.findings(chart);
        Optional<Location> location = locating.locate(chart);
        model.addAttribute("findings", findings.size());
        model.addAttribute("location", location);
        model.addAttribute(
                "weighed", location.map(found -> weighed(found, findings)).orElse(List.of()));
        model.addAttribute("rest", location.map(LocateStep::rest).orElse(0.0));
        model.addAttribute("picture", location.map(picture::of));
        model.addAttribute("advice", locating.advice(chart, NEXT));
        model.addAttribute("digest", Cases.digest(locating.input(chart)));
        model.addAttribute("sitesVersion", chart.section(Section.SITES).version());
        model.addAttribute("decision", last(chart));
        model.addAttribute("kept", chart.results().list(ResultKind.SITES));
        model.addAttribute("outdated", outdated(chart));
        model.addAttribute("rows", form.size("sites") + SPARE_ROWS);
        model.addAttribute("places", List.copyOf(Site.all().keySet()));
    }

    private static List<Weighed> weighed(Location location, List<Finding> findings) {
        List<Location.RankedSite> sites = location.sites();
        var shown = new ArrayList<Weighed>();
        for (Location.RankedSite site : sites) {
            if (shown.size() < LEAST_SHOWN || site.probability() >= SHOWN_FROM) {
                shown.add(Weighed.of(site, findings));
            }
        }
        return shown;
    }

    /** The chance of all places that are not shown. */
    private static double rest(Location location) {
        return location.sites().stream()
                .skip(LEAST_SHOWN)
                .mapToDouble(Location.RankedSite::probability)
                .filter(chance -> chance < SHOWN_FROM)
                .sum();
    }

    private static Optional<Decision> last(Chart chart) {
        return chart.decisions().about(ABOUT).stream().reduce((earlier, later) -> later);
    }

    /** Whether places were decided on before the findings of now were recorded. */
    private boolean outdated(Chart chart) {
        Optional<ComputedResult> before = last(chart)
                .flatMap(decision -> chart.results().list(ResultKind.SITES).stream()
                        .filter(result -> !result.at().isAfter(decision.at()))
                        .findFirst());
        JsonNode sites = chart.section(Section.SITES).content().path("sites");
        return !sites.isEmpty()
                && before.filter(result -> !result.inputs().digest().equals(Cases.digest(locating.input(chart))))
                        .isPresent();
    }
}
