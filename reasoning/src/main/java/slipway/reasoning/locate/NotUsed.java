package slipway.reasoning.locate;

import slipway.reasoning.findings.Finding;

/**
 * A finding that the ranking could not use.
 *
 * @param finding what was found
 * @param reason why not
 */
public record NotUsed(Finding finding, String reason) {}
