/** All that is kept of one person, for that person: as JSON, as tables, and the documents as they are. */
@NullMarked
package slipway.exchange.person;

import org.jspecify.annotations.NullMarked;
