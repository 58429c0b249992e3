/**
 * Published case reports in their list format: a YAML list, each case with what its examination found, as the source
 * worded it. Read one case at a time, so that a file may hold thousands. Nothing stricter than the format is asked for:
 * unknown keys and words are reported as not used, never dropped silently; only what cannot be true (a grade of 7, one item
 * with two results) is refused, with line and column.
 */
@NullMarked
package slipway.care.reports;

import org.jspecify.annotations.NullMarked;
