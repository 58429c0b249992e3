/**
 * Notes and letters of an episode: assembled sentence by sentence from what was recorded, edited, signed, compared and
 * printed. Every assembled sentence names the record that it came from; what was not recorded is a sentence that says so.
 * Improvement is told, never its cause.
 */
@NullMarked
package slipway.documents.paper;

import org.jspecify.annotations.NullMarked;
