/**
 * What a person reports on a session, and how several reports on one session become one. All of it is self-report: words
 * made from it say "reported".
 */
@NullMarked
package slipway.reasoning.response.checkin;

import org.jspecify.annotations.NullMarked;
