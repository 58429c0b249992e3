/**
 * Layered drawings of a graph: nodes in columns, edges from left to right, some of them lit. Knows nothing of nerves; a text
 * equivalent goes with every drawing.
 */
@NullMarked
package slipway.pictures.graph;

import org.jspecify.annotations.NullMarked;
