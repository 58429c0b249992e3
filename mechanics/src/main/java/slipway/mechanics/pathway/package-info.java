/** The anatomy as a tree: branches, landmarks, joint zones, and the mesh that the kernel solves on. */
@NullMarked
package slipway.mechanics.pathway;

import org.jspecify.annotations.NullMarked;
