package slipway.care.reports;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import slipway.care.reports.Located.Items;
import slipway.care.reports.Located.Mapping;
import slipway.care.reports.Located.Scalar;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result;
import slipway.reasoning.findings.ResultReader;

/** Reads one block of an examination (strength, reflexes and so on) into findings. */
final class BlockReader {
    private static final Map<String, Side> SIDES = Map.of("left", Side.LEFT, "right", Side.RIGHT);

    private final List<Finding> findings = new ArrayList<>();
    private final List<String> notUsed = new ArrayList<>();
    private final List<String> mistakes = new ArrayList<>();

    List<Finding> findings() {
        return findings;
    }

    List<String> notUsed() {
        return notUsed;
    }

    List<String> mistakes() {
        return mistakes;
    }

    /** Reads a block found on these sides; a nested {@code left:} or {@code right:} says its own side. */
    void read(FindingKind kind, Mapping block, Set<Side> sides) {
        mistakes.addAll(block.duplicates());
        block.values().forEach((key, value) -> {
            Side own = SIDES.get(key);
            if (own != null && value instanceof Mapping nested) {
                read(kind, nested, Set.of(own));
            } else {
                item(kind, key, value, sides);
            }
        });
    }

    private void item(FindingKind kind, String key, Located value, Set<Side> sides) {
        if (value instanceof Items items) {
            items.items().forEach(each -> item(kind, key, each, sides));
            return;
        }
        String text = value instanceof Mapping mapping ? mapping.text("positive") : ((Scalar) value).text();
        OptionalDouble degrees = value instanceof Mapping mapping ? degrees(key, mapping) : OptionalDouble.empty();
        Optional<Result> result = result(kind, key, text, value);
        result.ifPresent(found -> {
            for (Side side : Side.values()) {
                if (sides.contains(side)) {
                    add(kind, key, side, found, degrees, value);
                }
            }
        });
    }

    private void add(FindingKind kind, String key, Side side, Result result, OptionalDouble degrees, Located value) {
        boolean contralateral = key.startsWith("contralateral_");
        String target = contralateral ? key.substring("contralateral_".length()) : key;
        Side tested = contralateral ? side.opposite() : side;
        try {
            findings.add(new Finding(
                    kind, target, tested, result, degrees, value.place().toString()));
        } catch (IllegalArgumentException e) {
            mistakes.add("%s: %s".formatted(value.place(), e.getMessage()));
        }
    }

    private Optional<Result> result(FindingKind kind, String key, String text, Located value) {
        try {
            Optional<Result> result = ResultReader.read(kind, text);
            if (result.isEmpty()) {
                notUsed.add("%s %s: \"%s\" (%s)".formatted(kind.block(), key, text, value.place()));
            }
            return result;
        } catch (IllegalArgumentException e) {
            mistakes.add("%s: %s of %s: %s".formatted(value.place(), kind.key(), key, e.getMessage()));
            return Optional.empty();
        }
    }

    private OptionalDouble degrees(String key, Mapping mapping) {
        String text = mapping.text("degrees");
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Double.parseDouble(text));
        } catch (NumberFormatException e) {
            mistakes.add("%s: the angle of %s must be a number of degrees, was \"%s\""
                    .formatted(mapping.place(), key, text));
            return OptionalDouble.empty();
        }
    }
}
