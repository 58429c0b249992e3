/**
 * The episode: one page per step of the job. What the steps share is here (who may open it, the head, saving a section);
 * each step has a package of its own that adds what it shows.
 */
@NullMarked
package slipway.web.episode;

import org.jspecify.annotations.NullMarked;
