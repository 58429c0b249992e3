/** The load ruler: tolerance, tests and exercises on one scale of nerve load. */
@NullMarked
package slipway.pictures.ruler;

import org.jspecify.annotations.NullMarked;
