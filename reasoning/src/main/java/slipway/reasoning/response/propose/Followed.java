package slipway.reasoning.response.propose;

import java.util.List;

/**
 * What a log comes to.
 *
 * @param results one for each check-in, in the order in which they were received
 */
public record Followed(List<RespondResult> results, PersonState state) {
    public Followed {
        results = List.copyOf(results);
    }
}
