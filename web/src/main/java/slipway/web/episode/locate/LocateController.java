package slipway.web.episode.locate;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.casefile.CaseParts;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.ComputedResult;
import slipway.care.record.chart.ResultKind;
import slipway.care.record.chart.Verdict;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.locate.Location;
import slipway.web.episode.Cases;
import slipway.web.episode.Desk;
import slipway.web.episode.EpisodeHead;
import slipway.web.episode.Heads;
import slipway.web.episode.Step;
import slipway.web.shell.Area;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;
import tools.jackson.databind.node.ObjectNode;

/** What the therapist does with located places: take them, refuse them, look at an earlier result. */
@Controller
class LocateController {
    private final Desk desk;
    private final Heads heads;
    private final Pages pages;
    private final Locating locating;

    LocateController(Desk desk, Heads heads, Pages pages, Locating locating) {
        this.desk = desk;
        this.heads = heads;
        this.pages = pages;
        this.locating = locating;
    }

    /** Takes the located places as those that the plan rests on. */
    @PostMapping("/episodes/{id}/locate/accept")
    String accept(
            @PathVariable String id,
            @RequestParam String digest,
            @RequestParam long version,
            HttpServletRequest request) {
        Chart chart = desk.open(id);
        Optional<Location> location = locating.locate(chart);
        if (location.isEmpty() || !Cases.digest(locating.input(chart)).equals(digest)) {
            return back(id, request, "accept.stale");
        }
        ObjectNode content = Proposal.content(location.get());
        Saving<SectionRecord> saving = chart.save(Section.SITES, version, content);
        if (saving instanceof Saving.Stale) {
            return back(id, request, "accept.changed");
        }
        locating.keep(chart);
        chart.decisions().add(LocateStep.ABOUT, Verdict.ACCEPT, Proposal.inShort(content), "", "");
        return back(id, request, "accept.done");
    }

    /** Refuses them; the places of the record stay as they are. */
    @PostMapping("/episodes/{id}/locate/refuse")
    String refuse(@PathVariable String id, @RequestParam String reason, HttpServletRequest request) {
        Chart chart = desk.open(id);
        Optional<Location> location = locating.locate(chart);
        if (location.isEmpty()) {
            return back(id, request, "accept.stale");
        }
        if (reason.isBlank()) {
            return back(id, request, "refuse.reason");
        }
        locating.keep(chart);
        chart.decisions()
                .add(LocateStep.ABOUT, Verdict.REFUSE, location.get().verdict().sentence(), "", reason.strip());
        return back(id, request, "refuse.done");
    }

    /** An earlier result as it was, beside what the same findings and those of now give today. */
    @GetMapping("/episodes/{id}/sites/{result}")
    String result(@PathVariable String id, @PathVariable String result, HttpServletRequest request, Model model) {
        Chart chart = desk.open(id);
        ComputedResult kept = chart.results().list(ResultKind.SITES).stream()
                .filter(each -> each.id().equals(result))
                .findFirst()
                .orElseThrow(() -> new NotThere("result", result));
        EpisodeHead head = heads.of(chart);
        model.addAttribute("page", pages.page(request, Area.PEOPLE, LocateStep.WORDS.get("result.title")));
        model.addAttribute("head", head);
        model.addAttribute("step", Step.LOCATE);
        model.addAttribute("t", LocateStep.WORDS);
        model.addAttribute("kept", kept);
        model.addAttribute(
                "rows",
                KeptSites.compare(
                        kept,
                        locating.locate(before(chart, kept), chart.episode().side()),
                        locating.locate(chart)));
        return "episode/locate-result";
    }

    /** The findings that a kept result was computed from. */
    private static List<Finding> before(Chart chart, ComputedResult kept) {
        return Optional.ofNullable(kept.inputs().versions().get(Section.EXAMINATION))
                .flatMap(version -> chart.earlier(Section.EXAMINATION, version))
                .map(record -> CaseParts.findings(record.content()))
                .orElse(List.of());
    }

    private static String back(String id, HttpServletRequest request, String said) {
        Notices.put(request, LocateStep.WORDS.get(said));
        return "redirect:/episodes/" + id + "/locate";
    }
}
