/** What charts share: a scale, text widths, rows in which labels do not collide. */
@NullMarked
package slipway.pictures.chart;

import org.jspecify.annotations.NullMarked;
