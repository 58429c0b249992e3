/**
 * Diagnosis codes as dated data: whether a code may be billed for a day of service, whether its side fits, and which codes
 * exclude each other. A small set; the official file comes first. Chooses no diagnosis.
 */
@NullMarked
package slipway.reasoning.codes;

import org.jspecify.annotations.NullMarked;
