package slipway.reasoning.dose;

import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Coefficients;

/** The coefficients of {@code dose.csv}. */
final class DoseData {
    private static final Coefficients DATA = Coefficients.load("dose.csv");

    private DoseData() {}

    static double value(String id) {
        return DATA.value(id);
    }

    static Coefficient get(String id) {
        return DATA.get(id);
    }
}
