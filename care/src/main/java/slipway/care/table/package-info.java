/** Tables in text files: rows of values that know their line and column, so that every mistake can be named. */
@NullMarked
package slipway.care.table;

import org.jspecify.annotations.NullMarked;
