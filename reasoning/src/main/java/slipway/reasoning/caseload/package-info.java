/**
 * How the people of a clinic do as a whole: changes, days with a report, time to discharge, stalls, and whether a group differs from
 * the rest by more than chance. Small counts are not shown. Descriptions, never proof that care caused a change.
 */
@NullMarked
package slipway.reasoning.caseload;

import org.jspecify.annotations.NullMarked;
