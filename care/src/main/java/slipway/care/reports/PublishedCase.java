package slipway.care.reports;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;

/**
 * One published case.
 *
 * @param id as in the file
 * @param diagnosisSite the confirmed site, if it is given
 * @param sides sides of the lesion; a side that is not stated is taken as the right
 * @param findings what the examination found, with line and column
 * @param redFlags free notes; an empty list answers no question
 * @param ageYears age, if given
 * @param facts other short texts by key (title, detail, expectedLevel and so on)
 * @param notUsed keys and words that could not be used, with their places
 */
public record PublishedCase(
        String id,
        Optional<String> diagnosisSite,
        Set<Side> sides,
        List<Finding> findings,
        List<String> redFlags,
        OptionalInt ageYears,
        Map<String, String> facts,
        List<String> notUsed) {
    public PublishedCase {
        sides = Set.copyOf(sides);
        findings = List.copyOf(findings);
        redFlags = List.copyOf(redFlags);
        facts = Map.copyOf(facts);
        notUsed = List.copyOf(notUsed);
    }
}
