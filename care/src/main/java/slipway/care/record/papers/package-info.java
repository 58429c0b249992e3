/** Papers: what is printed and kept as bytes, and what is written and signed. */
@NullMarked
package slipway.care.record.papers;

import org.jspecify.annotations.NullMarked;
