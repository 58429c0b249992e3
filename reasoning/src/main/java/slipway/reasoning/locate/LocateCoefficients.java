package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Coefficients;

/**
 * The numbers of the model, from {@code locate/coefficients.csv}; immutable, so that a fit or a draw is another value.
 */
final class LocateCoefficients {
    private final Map<String, Double> values;
    private final Map<String, Curve> curves;

    private LocateCoefficients(Map<String, Double> values) {
        this.values = values;
        this.curves = new LinkedHashMap<>();
        for (String name : List.of("strength.1", "strength.2", "strength.3", "strength.4", "strength.5")) {
            addCurve(name);
        }
        for (String name : List.of("reflex.reduced", "reflex.absent", "sensation.reduced", "sensation.absent")) {
            addCurve(name);
        }
        if (!(value("strength.falseAlarm.1") <= value("strength.falseAlarm.5"))) {
            throw new IllegalArgumentException("coefficients: a false alarm must be rarer the lower the grade");
        }
    }

    static LocateCoefficients load() {
        var values = new LinkedHashMap<String, Double>();
        for (Coefficient row : Coefficients.load("locate/coefficients.csv").all()) {
            values.put(row.id(), row.value());
        }
        return new LocateCoefficients(values);
    }

    double value(String id) {
        Double value = values.get(id);
        if (value == null) {
            throw new IllegalStateException("coefficients.csv has no row " + id);
        }
        return value;
    }

    /** The curve of a cut, for example {@code strength.5} or {@code reflex.absent}. */
    Curve curve(String name) {
        Curve curve = curves.get(name);
        if (curve == null) {
            throw new IllegalStateException("no curve " + name);
        }
        return curve;
    }

    /** These numbers with some replaced. */
    LocateCoefficients with(Map<String, Double> changed) {
        var values = new LinkedHashMap<>(this.values);
        changed.forEach((id, value) -> {
            if (values.replace(id, value) == null) {
                throw new IllegalArgumentException("coefficients.csv has no row " + id);
            }
        });
        return new LocateCoefficients(values);
    }

    /** All ids that start with a prefix. */
    List<String> listIds(String prefix) {
        var ids = new ArrayList<String>();
        values.keySet().stream().filter(id -> id.startsWith(prefix)).forEach(ids::add);
        return ids;
    }

    VariantBuilder.Shapes shapes() {
        return new VariantBuilder.Shapes(
                value("fibres.motorOnly"),
                value("fibres.sensoryOnly"),
                value("sensoryNerve.sensoryOnly"),
                value("fibres.spared"),
                List.of(value("polyneuropathy.reach.feet"), value("polyneuropathy.reach.shin")));
    }

    private void addCurve(String name) {
        String kind = name.substring(0, name.indexOf('.'));
        String cut = name.substring(name.indexOf('.') + 1);
        curves.put(
                name,
                new Curve(
                        value(kind + ".gain." + cut),
                        value(kind + ".power." + cut),
                        value(kind + ".falseAlarm." + cut)));
    }
}
