/**
 * From a log of reports to decisions: rules first, then, within what they allow, the estimate. The log may arrive in any
 * order and more than once; what counts is when each report was received and when its session began.
 */
@NullMarked
package slipway.reasoning.response.propose;

import org.jspecify.annotations.NullMarked;
