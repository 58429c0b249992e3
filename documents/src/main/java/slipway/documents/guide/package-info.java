/**
 * The moving guide: the sheet for home as one page for a phone, with figures that keep the pace. The page is whole in
 * itself: it loads nothing, sends nothing and keeps nothing. What it says is what the sheet says.
 */
@NullMarked
package slipway.documents.guide;

import org.jspecify.annotations.NullMarked;
