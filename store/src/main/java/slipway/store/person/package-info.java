/** People in the database, and how their names are searched. */
@NullMarked
package slipway.store.person;

import org.jspecify.annotations.NullMarked;
