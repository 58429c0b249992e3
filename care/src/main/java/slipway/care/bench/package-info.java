/**
 * What the nerve model says about postures and motions of a body without a person: the readings behind the bench, the
 * exercise pages and the commands about the model. Pure; pages and commands show the same readings.
 */
@NullMarked
package slipway.care.bench;

import org.jspecify.annotations.NullMarked;
