/** {@code slipway fhir}: out to and in from other systems. */
@NullMarked
package slipway.app.exchange;

import org.jspecify.annotations.NullMarked;
