/**
 * The body as the rest of the program sees it: joints, sides, postures and named positions. One posture type serves
 * mechanics, figures, exercises and case files. Nothing here knows about nerves.
 */
@NullMarked
package slipway.mechanics.body;

import org.jspecify.annotations.NullMarked;
