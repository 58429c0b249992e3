/**
 * FHIR R4 (version 4.0.1): an episode as a bundle, and a preview of what a bundle from elsewhere would change. Codes of
 * standard systems stand only where they were looked up; everything else has a code of the program's own system. Nothing
 * from outside is taken over without a preview, and what is not understood is listed.
 */
@NullMarked
package slipway.exchange.fhir;

import org.jspecify.annotations.NullMarked;
