/**
 * How a person at home is known again: a signed cookie of the patient's pages, apart from the sessions of staff, and the
 * proof that a form came from these pages.
 */
@NullMarked
package slipway.web.door;

import org.jspecify.annotations.NullMarked;
