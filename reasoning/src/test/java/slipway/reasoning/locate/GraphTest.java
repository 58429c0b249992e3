package slipway.reasoning.locate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Term;
import slipway.reasoning.findings.Vocabulary;
import slipway.reasoning.screening.Region;

class GraphTest {
    private static final double ROUNDING = 1e-12;

    private final Graph leg = GraphReader.read(Region.LEG);

    @Test
    void bothLimbsLoadAndSatisfyTheirChecks() {
        assertThat(leg.listTargets()).hasSizeGreaterThan(60);
        assertThat(leg.listRoots()).contains("L2", "L3", "L4", "L5", "S1", "S2", "S3");
        assertThat(GraphReader.read(Region.ARM).listRoots()).contains("C5", "C6", "C7", "C8", "T1");
    }

    @Test
    void aLesionTakesTheFibresThatPassIt() {
        Graph.Target tibialisAnterior =
                leg.find(FindingKind.STRENGTH, "tibialis_anterior").orElseThrow();
        assertThat(leg.lostShare(tibialisAnterior, Map.of("common_fibular_neck", 0.8)))
                .isCloseTo(0.8, within(ROUNDING));
        assertThat(leg.lostShare(tibialisAnterior, Map.of("L5", 1.0))).isCloseTo(0.5, within(ROUNDING));
        assertThat(leg.lostShare(tibialisAnterior, Map.of("tibial_popliteal", 1.0)))
                .isZero();
        assertThat(leg.listPath("deep_fibular")).endsWith("sciatic_gluteal_fibular", "plexus_sacral");
    }

    @Test
    void namesEveryMistakeOfAGraphAtOnce() {
        var nodes = List.of(
                node("a", Optional.of("b")),
                node("b", Optional.of("a")),
                node("c", Optional.of("missing")),
                node("d", Optional.empty()));
        var traits = new Graph.Traits(0, 0);
        var targets = List.of(
                new Graph.Target(FindingKind.STRENGTH, "m", Map.of("a", 1.0), Map.of("L5", 0.7), traits, "t"),
                new Graph.Target(FindingKind.STRENGTH, "n", Map.of("zz", 1.0), Map.of("L5", 1.0), traits, "t"));
        assertThatThrownBy(() -> new Graph(nodes, targets))
                .hasMessageContaining("circle")
                .hasMessageContaining("the parent missing of c does not exist")
                .hasMessageContaining("node d supplies nothing")
                .hasMessageContaining("shares of roots must be positive and sum to 1")
                .hasMessageContaining("its nerve zz does not exist");
    }

    @Test
    void everyWordOfTheVocabularyThatNamesATargetIsInAGraph() {
        Graph arm = GraphReader.read(Region.ARM);
        for (FindingKind kind : List.of(FindingKind.STRENGTH, FindingKind.REFLEX, FindingKind.SENSATION)) {
            for (String word : Vocabulary.load().list(kind)) {
                Term term = Vocabulary.load().find(kind, word).orElseThrow();
                if (term.how() != Term.How.REST && !term.key().equals("plantar")) {
                    assertThat(term.members().keySet())
                            .as(word)
                            .allMatch(target -> leg.find(kind, target).isPresent()
                                    || arm.find(kind, target).isPresent());
                }
            }
        }
    }

    private static Graph.Node node(String name, Optional<String> parent) {
        return new Graph.Node(name, parent, Optional.empty(), name, "test");
    }
}
