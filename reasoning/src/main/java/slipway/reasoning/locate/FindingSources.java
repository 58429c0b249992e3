package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Pressed;
import slipway.reasoning.findings.Term;
import slipway.reasoning.findings.Vocabulary;
import slipway.reasoning.screening.Region;

/** Where the numbers come from by which a finding weighs. */
public final class FindingSources {
    private static final Vocabulary VOCABULARY = Vocabulary.load();
    private static final Graph LEG = GraphReader.read(Region.LEG);

    private FindingSources() {}

    /**
     * One number, or one set of numbers.
     *
     * @param says what the number is, with its value
     * @param source the study, or the reason where it is an assumption
     * @param mark {@code seen}, {@code assumption} and so on; empty where the source says it
     */
    public record Source(String says, String source, String mark) {}

    /** The numbers behind a finding of the leg; empty for a word that is not known. */
    public static List<Source> of(Finding finding) {
        Optional<Term> term = VOCABULARY.find(finding.kind(), finding.target());
        if (term.isEmpty()) {
            return List.of();
        }
        return switch (finding.kind()) {
            case PROVOCATION -> provocation(term.get().key());
            case SYMPTOM -> coefficients("symptom.");
            case STRENGTH -> tested(finding.kind(), term.get(), "strength.falseAlarm.5", "strength.gain.5");
            case REFLEX -> tested(finding.kind(), term.get(), "reflex.falseAlarm.reduced", "reflex.gain.reduced");
            case SENSATION ->
                tested(finding.kind(), term.get(), "sensation.falseAlarm.reduced", "sensation.gain.reduced");
        };
    }

    private static List<Source> tested(FindingKind kind, Term term, String... coefficients) {
        var sources = new ArrayList<Source>();
        for (String id : coefficients) {
            sources.addAll(coefficients(id));
        }
        for (String member : term.members().keySet()) {
            LEG.find(kind, member)
                    .ifPresent(target -> sources.add(new Source(
                            "%s: nerves %s, roots %s"
                                    .formatted(member.replace('_', ' '), target.nerves(), target.roots()),
                            target.mark(),
                            "")));
        }
        return sources;
    }

    private static List<Source> provocation(String key) {
        Optional<Pressed> pressed = Pressed.parse(key);
        if (pressed.isPresent()) {
            return coefficients(pressed.get().tapped() ? "pressed.tapped." : "pressed.pressed.");
        }
        var sources = new ArrayList<Source>();
        for (CSVRecord row : ReasoningData.table("locate/latent-tests.csv")) {
            if (row.get("test").equals(key)) {
                sources.add(new Source(
                        "positive in %s of nerves that are mechanosensitive, in %s of those that are not"
                                .formatted(row.get("sensitive"), row.get("notSensitive")),
                        row.get("mark"),
                        ""));
            }
        }
        for (CSVRecord row : ReasoningData.table("locate/tests.csv")) {
            if (row.get("test").equals(key) && !row.get("sens").isBlank()) {
                sources.add(new Source(
                        "sensitivity %s, specificity %s (%s)"
                                .formatted(row.get("sens"), row.get("spec"), row.get("design")),
                        row.get("mark"),
                        ""));
            }
        }
        return sources;
    }

    private static List<Source> coefficients(String prefix) {
        return ReasoningData.table("locate/coefficients.csv").stream()
                .filter(row -> row.get("id").startsWith(prefix))
                .map(row -> new Source(
                        "%s = %s".formatted(row.get("id"), row.get("value")), row.get("source"), row.get("mark")))
                .toList();
    }
}
