/**
 * What is known of an episode beyond its case: visits, scores, goals, reports from home, what was sent. One value that
 * papers, exports and lists draw on, filled from an episode file or from the record. It judges nothing and invents
 * nothing: what was not recorded is absent.
 */
@NullMarked
package slipway.care.facts;

import org.jspecify.annotations.NullMarked;
