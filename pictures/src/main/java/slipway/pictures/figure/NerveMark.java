package slipway.pictures.figure;

import java.util.Optional;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;

/**
 * The nerve of the own side, drawn along its path.
 *
 * @param tract which pathway
 * @param site the place to mark, if any
 */
public record NerveMark(Tract tract, Optional<Site> site) {}
