package slipway.app.respond;

import java.util.Locale;
import slipway.reasoning.basis.Quantity;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.response.propose.NextDose;
import slipway.reasoning.response.propose.RespondResult;
import slipway.reasoning.response.rules.Contact;
import slipway.reasoning.response.rules.RuleBook;

/** An answer in sentences, for the therapist, with what the person reads. */
final class RespondText {
    private RespondText() {}

    static String of(RespondResult result) {
        var text = new StringBuilder();
        text.append(result.checkinId())
                .append(": ")
                .append(result.decision().key().toUpperCase(Locale.ROOT));
        if (result.contact() != Contact.NONE) {
            text.append(", contact: ").append(result.contact().key());
        }
        text.append(System.lineSeparator());
        line(text, "next", result.nextDose().map(RespondText::dose).orElse("nothing until a clinician releases it"));
        result.excessFlareChance()
                .ifPresent(chance -> line(
                        text,
                        "excess chance of a flare in 7 days",
                        String.format(
                                Locale.ROOT,
                                "%.2f (90 %% interval %.2f to %.2f)",
                                chance.median(),
                                chance.low(),
                                chance.high())));
        line(text, "the person reads", RuleBook.bundled().spoken(result.rules()).en());
        for (Reason reason : result.reasons()) {
            text.append("  - ").append(reason.text());
            for (Quantity number : reason.numbers()) {
                text.append(String.format(Locale.ROOT, " [%s: %.4g %s]", number.name(), number.value(), number.unit())
                        .replace(" ]", "]"));
            }
            text.append(System.lineSeparator());
        }
        return text.toString();
    }

    private static void line(StringBuilder text, String what, String value) {
        text.append("  ").append(what).append(": ").append(value).append(System.lineSeparator());
    }

    private static String dose(NextDose next) {
        return String.format(
                Locale.ROOT,
                "%s, rung %d: %d repetitions, %d set(s), %d time(s) a day, %.0f %% of the given range, %.1f s each way",
                next.exercise(),
                next.rung(),
                next.dose().repetitions(),
                next.dose().sets(),
                next.dose().sessionsPerDay(),
                100 * next.dose().rangeFraction(),
                next.dose().secondsPerDirection());
    }
}
