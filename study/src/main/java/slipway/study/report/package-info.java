/**
 * What a study says: tables, intervals, plots, with what it cannot show.
 */
@NullMarked
package slipway.study.report;

import org.jspecify.annotations.NullMarked;
