/**
 * Tables and files: everything that is kept of one person, for that person; and a caseload without names, with shifted
 * dates and a data dictionary, for research.
 */
@NullMarked
package slipway.exchange.tables;

import org.jspecify.annotations.NullMarked;
