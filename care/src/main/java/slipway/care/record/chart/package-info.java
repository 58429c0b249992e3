/**
 * What is kept of one episode of care: its content, visits, results, plans and decisions. A chart is opened by somebody:
 * who may, is decided there and once; the opening is noted; what is read through it is covered by that, and what is
 * written through it carries the name.
 */
@NullMarked
package slipway.care.record.chart;

import org.jspecify.annotations.NullMarked;
