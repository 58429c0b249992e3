package slipway.reasoning.locate;

import java.util.List;
import slipway.mechanics.body.Side;

/** Chances of all neural tests of one nerve on one side, summed over whether the nerve is mechanosensitive. */
final class LatentChances {
    private final Latent.Nerve nerve;
    private final double ifSensitive;
    private final double ifNot;
    private final double elsewhere;

    private LatentChances(Latent.Nerve nerve, double ifSensitive, double ifNot, double elsewhere) {
        this.nerve = nerve;
        this.ifSensitive = ifSensitive;
        this.ifNot = ifNot;
        this.elsewhere = elsewhere;
    }

    static LatentChances of(List<Latent> latents, Latent.Nerve nerve, Side side, double elsewhere) {
        double sensitive = 1;
        double not = 1;
        for (Latent latent : latents) {
            if (latent.nerve() == nerve && latent.finding().side() == side) {
                sensitive *= latent.chance(true);
                not *= latent.chance(false);
            }
        }
        return new LatentChances(nerve, sensitive, not, elsewhere);
    }

    /** Chance of the tests when the lesion is at this site on their side. */
    double at(LesionSite site) {
        return mixed(nerve.sensitivity(site));
    }

    /** Chance of the tests with two lesions on their side. */
    double at(LesionSite first, LesionSite second) {
        return mixed(Math.max(nerve.sensitivity(first), nerve.sensitivity(second)));
    }

    /** Chance of the tests without a lesion on their side. */
    double base() {
        return mixed(elsewhere);
    }

    /** Chance that the nerve is mechanosensitive, given the tests and a lesion at this site on their side. */
    double sensitivity(LesionSite site) {
        double before = nerve.sensitivity(site);
        return before * ifSensitive / mixed(before);
    }

    private double mixed(double sensitive) {
        return sensitive * ifSensitive + (1 - sensitive) * ifNot;
    }
}
