/** Several servers on one database: in one process for the tests, and as processes that are killed. */
@NullMarked
package slipway.app.nodes;

import org.jspecify.annotations.NullMarked;
