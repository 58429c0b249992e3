package slipway.app.locate;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.app.console.WholeFile;
import slipway.pictures.graph.LayeredDrawing;
import slipway.pictures.graph.LayeredGraph;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Term;
import slipway.reasoning.findings.Vocabulary;
import slipway.reasoning.locate.Graph;
import slipway.reasoning.locate.GraphReader;
import slipway.reasoning.screening.Region;

/** {@code slipway anatomy}: the graph that locating rests on, as a table or a picture. */
@Command(
        name = "anatomy",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Shows the anatomical graph that locating rests on: which roots and nerves supply a muscle, a skin area or a"
                    + " reflex, with the share of each and where it comes from.",
            "",
            "Without --of all targets of the kind; with --of the path of one word of an examination. --svg writes a"
                    + " picture of the same."
        })
public final class AnatomyCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--limb", description = "leg or arm; default ${DEFAULT-VALUE}.", defaultValue = "leg")
    private Limb limb = Limb.LEG;

    @Option(
            names = "--kind",
            description = "strength, reflex or sensation; default ${DEFAULT-VALUE}.",
            defaultValue = "strength")
    private Kind kind = Kind.STRENGTH;

    @Option(names = "--of", paramLabel = "WORD", description = "A word of the examination, for example \"foot drop\".")
    private Optional<String> word = Optional.empty();

    @Option(names = "--svg", paramLabel = "FILE", description = "Write the picture here.")
    private Optional<Path> svg = Optional.empty();

    enum Limb {
        LEG,
        ARM
    }

    enum Kind {
        STRENGTH,
        REFLEX,
        SENSATION
    }

    @Override
    public Integer call() {
        Graph graph = GraphReader.read(limb == Limb.LEG ? Region.LEG : Region.ARM);
        FindingKind tested = FindingKind.valueOf(kind.name());
        Optional<Term> term = word.map(text -> term(tested, text));
        PrintWriter out = spec.commandLine().getOut();
        out.printf("%-32s %-40s %-34s %s%n", "target", "roots", "nerves", "mark");
        graph.listTargets().stream()
                .filter(target -> target.kind() == tested)
                .filter(target -> term.isEmpty() || term.get().members().containsKey(target.name()))
                .forEach(target -> out.printf(
                        "%-32s %-40s %-34s %s%n",
                        target.name(), shares(target.roots()), shares(target.nerves()), target.mark()));
        out.flush();
        svg.ifPresent(file -> WholeFile.write(
                file, LayeredDrawing.svg(drawn(graph, tested, term)).getBytes(StandardCharsets.UTF_8)));
        return ExitStatus.OK;
    }

    private static LayeredGraph drawn(Graph graph, FindingKind kind, Optional<Term> term) {
        var view = new GraphView(graph);
        try {
            return term.isPresent() ? view.pathOf(kind, term.get()) : view.whole(kind);
        } catch (IllegalArgumentException e) {
            throw new BadInputException("slipway: " + e.getMessage());
        }
    }

    private static Term term(FindingKind kind, String text) {
        Vocabulary vocabulary = Vocabulary.load();
        return vocabulary
                .find(kind, text)
                .orElseThrow(() -> new BadInputException("slipway: unknown %s item \"%s\"%s"
                        .formatted(
                                kind.key(),
                                text,
                                vocabulary
                                        .nearest(kind, text)
                                        .map(near -> "; nearest known: " + near)
                                        .orElse(""))));
    }

    private static String shares(java.util.Map<String, Double> shares) {
        return shares.entrySet().stream()
                .map(entry ->
                        entry.getValue() == 1 ? entry.getKey() : "%s %.2g".formatted(entry.getKey(), entry.getValue()))
                .collect(Collectors.joining(", "));
    }
}
