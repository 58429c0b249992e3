/**
 * The bench: what any posture does to the nerve, seen at once. Nothing is stored and nobody is named; the address of a
 * page holds the posture.
 */
@NullMarked
package slipway.web.bench;

import org.jspecify.annotations.NullMarked;
