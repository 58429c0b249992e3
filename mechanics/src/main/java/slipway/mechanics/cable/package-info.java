/** The numerical kernel: a tree of elastic cables in an elastic bed, solved for many draws at once. It knows nodes, edges and lanes, not anatomy. */
@NullMarked
package slipway.mechanics.cable;

import org.jspecify.annotations.NullMarked;
