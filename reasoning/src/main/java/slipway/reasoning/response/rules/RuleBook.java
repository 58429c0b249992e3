package slipway.reasoning.response.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;

/** The rules that ship with the program ({@code response/rules.csv}), looked at in a fixed order. */
public final class RuleBook {
    private static final RuleBook BUNDLED = new RuleBook(readAll());

    private final List<Rule> rules;
    private final Rule stepUp;

    private RuleBook(List<Rule> rules) {
        this.rules = rules.stream()
                .sorted(Comparator.comparing(Rule::decision).thenComparingInt(Rule::order))
                .toList();
        this.stepUp = rules.stream()
                .filter(rule -> rule.decision() == Decision.STEP_UP)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("rules.csv has no rule that steps up"));
        check(rules);
    }

    /** The bundled rules. */
    public static RuleBook bundled() {
        return BUNDLED;
    }

    private static void check(List<Rule> rules) {
        var ids = new HashSet<String>();
        for (Rule rule : rules) {
            if (!ids.add(rule.id())) {
                throw new IllegalStateException("rules.csv: " + rule.id() + " is given twice");
            }
        }
    }

    /** All rules, those that win first. */
    public List<Rule> list() {
        return rules;
    }

    /** The one rule that allows a step up; its conditions say what is missing for one. */
    public Rule stepUp() {
        return stepUp;
    }

    /** The rule of this id. */
    public Rule get(String id) {
        return rules.stream()
                .filter(rule -> rule.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("there is no rule " + id));
    }

    /**
     * The rule among these whose words the person reads: the first that has any.
     *
     * @param ids as in a ruling
     */
    public Rule spoken(List<String> ids) {
        return ids.stream()
                .map(this::get)
                .filter(rule -> !rule.en().isBlank())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("none of the rules %s has words".formatted(ids)));
    }

    /**
     * The ruling on a report: every rule that matches, and the decision that wins among them.
     *
     * @throws IllegalArgumentException if no rule matches: the facts must tell whether rise and settle time are known
     */
    public Ruling onReport(Facts facts) {
        return Ruling.of(matching(Rule.Stage.REPORT, facts));
    }

    /**
     * The ruling on a break before a session.
     *
     * @param gapDays days since the last session
     */
    public Ruling onGap(double gapDays) {
        return onReport(new Facts().set(Fact.GAP_DAYS, gapDays).set(Fact.REST_DAY, true));
    }

    /**
     * The ruling on strength tested again in the room; empty if nothing was lost that asks for the screening.
     *
     * @param gradesLost grades of a muscle lost since the first test, not a number if not tested
     * @param heelRaisesFewer heel raises fewer than at the first test, likewise
     */
    public Optional<Ruling> onRetest(double gradesLost, double heelRaisesFewer) {
        List<Rule> matching = matching(
                Rule.Stage.REPORT,
                new Facts().set(Fact.GRADES_LOST, gradesLost).set(Fact.HEEL_RAISES_FEWER, heelRaisesFewer));
        return matching.isEmpty() ? Optional.empty() : Optional.of(Ruling.of(matching));
    }

    /** The ruling with the rules on its outcome added; {@code facts} must tell the outcome. */
    public Ruling onOutcome(Ruling report, Facts facts) {
        return report.and(matching(Rule.Stage.OUTCOME, facts));
    }

    /** The ruling with the rules on the estimate added; {@code facts} must tell the estimate. */
    public Ruling onEstimate(Ruling outcome, Facts facts) {
        return outcome.decision().eases() ? outcome : outcome.and(matching(Rule.Stage.ESTIMATE, facts));
    }

    private List<Rule> matching(Rule.Stage stage, Facts facts) {
        var matching = new ArrayList<Rule>(4);
        for (int i = 0; i < rules.size(); i++) {
            Rule rule = rules.get(i);
            if (rule.stage() == stage && rule.matches(facts)) {
                matching.add(rule);
            }
        }
        return matching;
    }

    private static List<Rule> readAll() {
        return ReasoningData.table("response/rules.csv").stream()
                .map(RuleBook::read)
                .toList();
    }

    private static Rule read(CSVRecord row) {
        return new Rule(
                row.get("id"),
                Integer.parseInt(row.get("order")),
                Rule.Stage.valueOf(row.get("stage").toUpperCase(Locale.ROOT)),
                Condition.readAll(row.get("when")),
                Decision.of(row.get("decision")),
                Asks.read(words(row.get("effects")), Contact.of(row.get("contact"))),
                row.get("fixed").equals("yes"),
                row.get("why"),
                row.get("en"),
                row.get("es"),
                row.get("mark"),
                row.get("source"));
    }

    private static Map<String, String> words(String text) {
        var words = new LinkedHashMap<String, String>();
        for (String word : text.isBlank() ? new String[0] : text.split(";", -1)) {
            String[] parts = word.strip().split("=", 2);
            words.put(parts[0], parts.length > 1 ? parts[1] : "");
        }
        return words;
    }
}
