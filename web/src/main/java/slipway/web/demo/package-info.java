/** The clinic of invented people that the demo starts with. */
@NullMarked
package slipway.web.demo;

import org.jspecify.annotations.NullMarked;
