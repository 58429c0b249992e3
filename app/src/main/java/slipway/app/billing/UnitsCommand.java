package slipway.app.billing;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.reasoning.billing.TimeUnits;
import slipway.reasoning.billing.TimedService;
import slipway.reasoning.billing.UnitRule;

/** {@code slipway units}: units from minutes. */
@Command(
        name = "units",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Says how many units the timed services of one day come to, and how they go to the services.",
            "",
            "Only direct one-on-one minutes count. Which rule holds is a setting of the payer; without --rule both are"
                    + " shown. Where services have an equal claim to the last unit the choice is named, not hidden.",
            "",
            "Not billing advice: the payer's own text comes first.",
            "",
            "Example: slipway units 24,23 --rule eight-minute"
        })
public final class UnitsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "MINUTES", description = "Minutes of each service, like 24,23 or manual=24,exercise=23.")
    private String minutes = "";

    @Option(names = "--rule", description = "eight-minute or midpoint; both if left out.")
    private @Nullable String rule;

    @Override
    public Integer call() {
        var mistakes = new ArrayList<String>();
        List<TimedService> services = MinutesText.read(minutes, mistakes);
        List<UnitRule> rules = rules(mistakes);
        if (!mistakes.isEmpty()) {
            throw new BadInputException(String.join("\n", mistakes));
        }
        PrintWriter out = spec.commandLine().getOut();
        for (int i = 0; i < rules.size(); i++) {
            if (i > 0) {
                out.println();
            }
            UnitsText.of(TimeUnits.allocate(rules.get(i), services)).forEach(out::println);
        }
        return ExitStatus.OK;
    }

    private List<UnitRule> rules(List<String> mistakes) {
        if (rule == null) {
            return List.of(UnitRule.values());
        }
        var found = UnitRule.find(rule);
        if (found.isEmpty()) {
            mistakes.add("--rule must be eight-minute or midpoint, was " + rule);
        }
        return found.stream().toList();
    }
}
