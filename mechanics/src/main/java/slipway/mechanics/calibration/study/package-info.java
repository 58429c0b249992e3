/**
 * How far the nerve model can be believed: predictions of studies that were left out, of rows that were never fitted,
 * of the spread between people; how the answers hang on assumed angles, on priors and on the mesh; and what the load
 * measure says about two facts of practice. Computes numbers only; tables and pictures are made from them elsewhere.
 */
@NullMarked
package slipway.mechanics.calibration.study;

import org.jspecify.annotations.NullMarked;
