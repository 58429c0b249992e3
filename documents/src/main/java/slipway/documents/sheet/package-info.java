/**
 * The sheet for home: what a person takes along on paper. {@link HomeSheet} says what stands on it,
 * {@link HomeSheetPrinter} puts it on paper. No dose is worked out here and no rule is applied; whoever fills the
 * records has already decided, and a therapist has released it.
 */
@NullMarked
package slipway.documents.sheet;

import org.jspecify.annotations.NullMarked;
