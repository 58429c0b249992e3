/** The tables and their columns with the types they have in Java. A test holds them against both databases. */
@NullMarked
package slipway.store.tables;

import org.jspecify.annotations.NullMarked;
