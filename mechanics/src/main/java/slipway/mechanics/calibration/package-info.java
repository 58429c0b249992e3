/** Published rows, what the model predicts for them, and the fit of the parameters to those that may be fitted. */
@NullMarked
package slipway.mechanics.calibration;

import org.jspecify.annotations.NullMarked;
