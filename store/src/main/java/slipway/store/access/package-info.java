/** Clinics, accounts, links, and how far an act may see. */
@NullMarked
package slipway.store.access;

import org.jspecify.annotations.NullMarked;
