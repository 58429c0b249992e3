package slipway.web.people;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/** In which units body height and mass are shown and typed. What is kept is always cm and kg. */
public enum Units {
    METRIC("cm", "kg", 1, 1),
    /** An inch is 2.54 cm and a pound 0.45359237 kg, by definition (international yard and pound agreement, 1959). */
    CUSTOMARY("in", "lb", 2.54, 0.45359237);

    private final String lengthUnit;
    private final String massUnit;
    private final double cmPerUnit;
    private final double kgPerUnit;

    Units(String lengthUnit, String massUnit, double cmPerUnit, double kgPerUnit) {
        this.lengthUnit = lengthUnit;
        this.massUnit = massUnit;
        this.cmPerUnit = cmPerUnit;
        this.kgPerUnit = kgPerUnit;
    }

    public String lengthUnit() {
        return lengthUnit;
    }

    public String massUnit() {
        return massUnit;
    }

    OptionalDouble statureCm(OptionalDouble shown) {
        return shown.isPresent() ? OptionalDouble.of(shown.getAsDouble() * cmPerUnit) : shown;
    }

    OptionalDouble massKg(OptionalDouble shown) {
        return shown.isPresent() ? OptionalDouble.of(shown.getAsDouble() * kgPerUnit) : shown;
    }

    String showStature(double statureCm) {
        return plain(statureCm / cmPerUnit);
    }

    String showMass(double massKg) {
        return plain(massKg / kgPerUnit);
    }

    /** A number with at most one digit behind the point. */
    static String plain(double value) {
        return BigDecimal.valueOf(value)
                .setScale(1, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
