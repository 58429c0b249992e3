package slipway.web.validity;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slipway.reasoning.response.rules.Asks;
import slipway.reasoning.response.rules.Condition;
import slipway.reasoning.response.rules.Contact;
import slipway.reasoning.response.rules.Rule;
import slipway.reasoning.response.rules.RuleBook;

/**
 * A rule of response in words.
 *
 * @param when its conditions, all of which must be met
 * @param action its decision and what else it asks for
 */
public record RuleRow(Rule rule, String when, String action) {
    /** All rules, those that win first. */
    static List<RuleRow> list() {
        return RuleBook.bundled().list().stream()
                .map(rule -> new RuleRow(
                        rule,
                        rule.when().stream().map(Condition::words).collect(Collectors.joining(" and ")),
                        action(rule)))
                .toList();
    }

    private static String action(Rule rule) {
        Asks asks = rule.asks();
        var parts = new ArrayList<String>();
        parts.add(words(rule.decision().key()));
        add(parts, asks.rungsDown() > 0, asks.rungsDown() + (asks.rungsDown() == 1 ? " rung down" : " rungs down"));
        add(parts, asks.resumeDown() > 0, "resume %d down".formatted(asks.resumeDown()));
        add(parts, asks.halfRange(), "half the range");
        add(parts, asks.onceADay(), "once a day");
        add(parts, asks.slower(), "slower");
        add(parts, asks.noStepDays() > 0, "no step for %d days".formatted(asks.noStepDays()));
        add(parts, asks.barDays() > 0, "that rung barred for %d days".formatted(asks.barDays()));
        add(
                parts,
                asks.contact() != Contact.NONE,
                "contact: " + words(asks.contact().key()));
        return String.join(", ", parts);
    }

    private static void add(List<String> parts, boolean asked, String words) {
        if (asked) {
            parts.add(words);
        }
    }

    private static String words(String key) {
        return key.replace('-', ' ');
    }
}
