/** Charts of episodes in the database. */
@NullMarked
package slipway.store.chart;

import org.jspecify.annotations.NullMarked;
