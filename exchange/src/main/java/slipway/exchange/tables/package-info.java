/** A caseload without names, with shifted dates and a data dictionary, for research. */
@NullMarked
package slipway.exchange.tables;

import org.jspecify.annotations.NullMarked;
