/**
 * What survives a kill: one process writes and says what was confirmed, another kills it at a random moment and looks
 * whether all of it is there. Run by {@code store/src/test/shell/kill-rounds}, not with the tests.
 */
@NullMarked
package slipway.store.faults;

import org.jspecify.annotations.NullMarked;
