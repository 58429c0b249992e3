package slipway.exercises.format;

import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Prop;
import slipway.mechanics.body.Support;

/**
 * Words that say something about the movement ({@code wording-rules.csv}).
 *
 * @param language of the words
 * @param phrase what to look for in the lower-case text
 * @param claim what the words say
 */
record WordingRule(Language language, Pattern phrase, Claim claim) {
    /** What a text says about the movement. */
    sealed interface Claim permits AngleClaim, ChangeClaim, SupportClaim, PropClaim {}

    /** The joint is bent at most, or at least, so far. */
    record AngleClaim(Joint joint, boolean atMost, double degrees) implements Claim {}

    /** The angle of the joint grows, or shrinks. */
    record ChangeClaim(Joint joint, boolean rises) implements Claim {}

    /** The body is carried in one of these ways. */
    record SupportClaim(List<Support> supports) implements Claim {}

    /** The thing is used. */
    record PropClaim(Prop prop) implements Claim {}

    static WordingRule of(CSVRecord row) {
        return new WordingRule(
                Language.find(row.get("language")).orElseThrow(() -> broken(row)),
                // Unicode classes, so that \b sees the accented letters as letters.
                Pattern.compile(row.get("phrase"), Pattern.UNICODE_CHARACTER_CLASS),
                claim(row));
    }

    private static Claim claim(CSVRecord row) {
        String[] words = row.get("rule").split(" ", 2);
        return switch (words[0]) {
            case "support" ->
                new SupportClaim(java.util.Arrays.stream(words[1].split("\\|", -1))
                        .map(key -> Support.find(key).orElseThrow(() -> broken(row)))
                        .toList());
            case "prop" -> new PropClaim(Prop.find(words[1]).orElseThrow(() -> broken(row)));
            default -> jointClaim(row, Joint.find(words[0]).orElseThrow(() -> broken(row)), words[1]);
        };
    }

    private static Claim jointClaim(CSVRecord row, Joint joint, String rule) {
        String[] words = rule.split(" ", -1);
        return switch (words[0]) {
            case "rises" -> new ChangeClaim(joint, true);
            case "falls" -> new ChangeClaim(joint, false);
            case "at" -> new AngleClaim(joint, words[1].equals("most"), Double.parseDouble(words[2]));
            default -> throw broken(row);
        };
    }

    private static IllegalStateException broken(CSVRecord row) {
        return new IllegalStateException("wording-rules.csv: unreadable rule " + row.toList());
    }
}
