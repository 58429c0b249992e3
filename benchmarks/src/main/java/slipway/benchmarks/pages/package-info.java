/** How the pages answer as the records grow. */
@NullMarked
package slipway.benchmarks.pages;

import org.jspecify.annotations.NullMarked;
