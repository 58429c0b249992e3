/** The command that runs ways of dosing on simulated people: options, progress, saving, stopping and going on. */
@NullMarked
package slipway.app.study;

import org.jspecify.annotations.NullMarked;
