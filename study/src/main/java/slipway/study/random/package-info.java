/**
 * Random numbers by name: what happens to a person on a day does not depend on which way of dosing is tried, on the order
 * of people or on the number of threads.
 */
@NullMarked
package slipway.study.random;

import org.jspecify.annotations.NullMarked;
