/** What every page shares: the frame, the signed-in person, words, assets and the answers to errors. */
@NullMarked
package slipway.web.shell;

import org.jspecify.annotations.NullMarked;
