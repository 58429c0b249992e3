/**
 * Simulated people on whom ways of dosing are tried before anybody trusts them. A simulation shows what follows from its
 * assumptions; it is never clinical evidence.
 */
@NullMarked
package slipway.study;

import org.jspecify.annotations.NullMarked;
