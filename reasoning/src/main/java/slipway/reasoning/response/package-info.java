/**
 * What a person's reports between visits lead to: do more, the same, less, stop, or send on, and why. The parts are in the
 * packages below: the reports, the ladder of doses, the rules, the course of one exercise, the estimate of what this
 * nerve bears, and the proposal made from both. Nothing here asks for the time or stores anything: the same log gives the
 * same answer in whatever order it arrives.
 */
@NullMarked
package slipway.reasoning.response;

import org.jspecify.annotations.NullMarked;
