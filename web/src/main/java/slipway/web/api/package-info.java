/**
 * Version 1 of the interface for other programs: cases, plans, check-ins, documents, FHIR. It calls what the pages and
 * the commands call, and adds what programs need: tokens, versions, problems that name every mistake. It computes
 * nothing of its own. {@code openapi.yaml} describes every address.
 */
@NullMarked
package slipway.web.api;

import org.jspecify.annotations.NullMarked;
