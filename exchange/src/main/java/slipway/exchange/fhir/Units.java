package slipway.exchange.fhir;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hl7.fhir.r4.model.Quantity;
import slipway.exchange.ExchangeData;
import slipway.reasoning.measures.Measure;

/** The units that are written and taken, in UCUM. */
final class Units {
    static final String SYSTEM = "http://unitsofmeasure.org";
    private static final String POINTS = "{score}";
    private static final Map<String, String> WORDS = new LinkedHashMap<>();

    static {
        ExchangeData.table("units.csv").forEach(row -> WORDS.put(row.get("code"), row.get("words")));
    }

    private Units() {}

    /** Whether a unit may be used. */
    static boolean known(String code) {
        return WORDS.containsKey(code);
    }

    /** A number with its unit. */
    static Quantity of(double value, String code) {
        if (!known(code)) {
            throw new IllegalArgumentException("a unit must be one of %s, was %s".formatted(WORDS.keySet(), code));
        }
        var quantity = new Quantity();
        quantity.setValue(decimal(value));
        quantity.setSystem(SYSTEM).setCode(code);
        Optional.of(WORDS.getOrDefault(code, ""))
                .filter(words -> !words.isEmpty())
                .ifPresent(quantity::setUnit);
        return quantity;
    }

    /** A number of points: a plain number, since readers pass over annotations such as {@code {score}}. */
    static Quantity points(double value) {
        return count(value, "points");
    }

    /** A number of things. */
    static Quantity count(double value, String words) {
        Quantity quantity = of(value, "1");
        quantity.setUnit(words);
        return quantity;
    }

    /** A score in the unit of its measure. */
    static Quantity score(Measure measure, double value) {
        String unit = measure.range().unit();
        return unit.equals(POINTS) ? points(value) : of(value, unit);
    }

    /** Whether a quantity has the unit of a measure; points may come with or without their annotation. */
    static boolean fits(Quantity quantity, Measure measure) {
        String code = String.valueOf(quantity.getCode());
        String unit = measure.range().unit();
        return SYSTEM.equals(quantity.getSystem())
                && known(code)
                && (code.equals(unit) || (unit.equals(POINTS) && code.equals("1")));
    }

    /** Without a needless zero behind the point, so that 5 stays 5. */
    static BigDecimal decimal(double value) {
        var exact = BigDecimal.valueOf(value).stripTrailingZeros();
        return exact.scale() < 0 ? exact.setScale(0) : exact;
    }
}
