/** Alerts that nobody takes rise by the clock of the clinic's opening hours, first to a lead. */
@NullMarked
package slipway.web.alerts;

import org.jspecify.annotations.NullMarked;
