package slipway.app.locate;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.care.casefile.CaseFile;
import slipway.care.reports.PublishedCase;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.locate.ExamLimits;
import slipway.reasoning.locate.LocateRequest;
import slipway.reasoning.locate.Location;
import slipway.reasoning.locate.Locator;
import slipway.reasoning.locate.NextTests;
import slipway.reasoning.locate.SitePrior;
import slipway.reasoning.screening.Level;
import slipway.reasoning.screening.Region;
import slipway.reasoning.screening.Screening;
import slipway.reasoning.screening.ScreeningResult;
import slipway.reasoning.screening.ScreeningRules;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** {@code slipway locate}: where along the pathway is the trouble? */
@Command(
        name = "locate",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Ranks the places where the nerve may be in trouble, with how sure that is, what speaks for and against, what"
                    + " stays unexplained, and the tests that would tell most next.",
            "",
            "FILE is the case file of one person, or a list of published cases (id, strength, reflexes, sensation,"
                    + " provocation, symptoms, side). What is absent was not tested; it never means normal. Unknown words"
                    + " are listed as not used.",
            "",
            "Not a diagnosis. Screening comes first: its level is printed with every answer."
        })
public final class LocateCommand implements Callable<Integer> {
    private static final int PROGRESS_EVERY = 20;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "FILE", description = "Case file or list of cases (YAML).")
    private Path file = Path.of("");

    @Option(names = "--format", description = "text or json; default ${DEFAULT-VALUE}.", defaultValue = "text")
    private ScreenCommand.Format format = ScreenCommand.Format.TEXT;

    @Option(
            names = "--setting",
            description =
                    "Where cases come from, which decides the chances before any finding: outpatient, specialist or"
                            + " scoring (flat). Default: scoring for a list, outpatient for one person.")
    private Optional<String> setting = Optional.empty();

    @Option(names = "--quick", description = "For a list: without the intervals, about ten times faster.")
    private boolean quick;

    private final Map<Region, Locator> locators = new EnumMap<>(Region.class);

    @Override
    public Integer call() {
        CaseInput input = CaseInput.read(file);
        if (input.isList()) {
            list(input);
        } else {
            person(input.person());
        }
        return ExitStatus.OK;
    }

    private void person(CaseFile person) {
        ScreeningResult screening = Screening.load().evaluate(person.screeningInput());
        Locator locator = Locator.load(Region.LEG, prior(SitePrior.OUTPATIENT));
        var request = new LocateRequest(
                person.examination().findings(), EnumSet.of(person.episode().side()));
        Location location = locator.locate(request);
        NextTests.Advice advice = new NextTests(locator).advise(request, limits(person, screening));
        PrintWriter out = spec.commandLine().getOut();
        if (format == ScreenCommand.Format.JSON) {
            ObjectNode node = LocationView.json(person.id(), screening, location);
            NextTestView.add(node, advice);
            out.println(JsonMapper.shared().writerWithDefaultPrettyPrinter().writeValueAsString(node));
        } else {
            LocationView.text(screening, location).forEach(out::println);
            NextTestView.text(advice).forEach(out::println);
        }
        out.flush();
    }

    /** Hard stops that the screening of this person sets for further testing. */
    private static ExamLimits limits(CaseFile person, ScreeningResult screening) {
        List<String> standing = screening.listStanding().stream()
                .map(match -> match.rule().id())
                .toList();
        boolean emergencyAnswered = ScreeningRules.load().listRequired(Region.LEG).stream()
                .filter(rule -> rule.level() == Level.EMERGENCY)
                .noneMatch(rule -> screening.notAsked().contains(rule.id()));
        boolean emergency = screening.level() == Level.EMERGENCY;
        int provocation = (int) person.examination().findings().stream()
                .filter(finding -> finding.kind() == FindingKind.PROVOCATION)
                .count();
        boolean protectedJoint = standing.contains("jointReplacement")
                || standing.contains("recentSurgery")
                || standing.contains("fractureSuspected");
        return new ExamLimits(
                emergencyAnswered && !emergency,
                standing.contains("highIrritability"),
                provocation,
                protectedJoint,
                Set.of());
    }

    private void list(CaseInput input) {
        PrintWriter out = spec.commandLine().getOut();
        Screening screening = Screening.load();
        SitePrior prior = prior(SitePrior.SCORING);
        int count = input.checkedCount();
        int[] done = new int[1];
        boolean json = format == ScreenCommand.Format.JSON;
        if (json) {
            out.print("[");
        }
        input.forEach(each -> {
            ScreenedCase screened = ScreenedCase.of(each, screening);
            var request = new LocateRequest(each.findings(), each.sides());
            Locator locator = locator(each, prior);
            Location location = quick ? locator.rank(request) : locator.locate(request);
            ObjectNode node = LocationView.json(each.id(), screened.result(), location);
            LocationView.addNotUsed(node, each, screened);
            if (json) {
                out.print(done[0] == 0 ? "\n" : ",\n");
                out.print(JsonMapper.shared().writeValueAsString(node));
            } else {
                out.println(LocationView.line(each, screened, location));
            }
            progress(++done[0], count);
        });
        if (json) {
            out.println("\n]");
        }
        out.flush();
    }

    private Locator locator(PublishedCase published, SitePrior prior) {
        Region region = published.facts().getOrDefault("region", "leg").equals("arm") ? Region.ARM : Region.LEG;
        return locators.computeIfAbsent(region, limb -> Locator.load(limb, prior));
    }

    private SitePrior prior(String usual) {
        try {
            return SitePrior.load(setting.orElse(usual));
        } catch (IllegalArgumentException e) {
            throw new BadInputException("slipway: " + e.getMessage());
        }
    }

    /** Progress on a terminal only, so that redirected output stays clean. */
    private void progress(int done, int count) {
        if (Ansi.AUTO.enabled() && (done % PROGRESS_EVERY == 0 || done == count) && count > PROGRESS_EVERY) {
            PrintWriter err = spec.commandLine().getErr();
            err.printf("\r%d of %d cases", done, count);
            if (done == count) {
                err.println();
            }
            err.flush();
        }
    }
}
