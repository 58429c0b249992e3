package slipway.care.reports;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slipway.care.reports.Located.Items;
import slipway.care.reports.Located.Mapping;
import slipway.care.reports.Located.Scalar;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.FindingChecks;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Vocabulary;

/** Reads one case of the list. */
final class CaseReader {
    /** Keys that say something about the case but are not examined: texts for people. */
    private static final Set<String> TEXT_KEYS = Set.of(
            "id",
            "title",
            "source",
            "seen",
            "age",
            "sex",
            "duration_weeks",
            "history",
            "confirmed_by",
            "diagnosis_site",
            "side",
            "detail",
            "status",
            "red_flags",
            "care",
            "inferred",
            "other_findings",
            "not_nerve_cause",
            "strength_raw",
            "expectedLevel",
            "expectedLevelBecause",
            "region");

    /** What a block means that holds one word for all of it ({@code strength: normal}). */
    private static final Map<FindingKind, String> SWEEPING = Map.of(
            FindingKind.STRENGTH, "all_leg_muscles",
            FindingKind.REFLEX, "all_leg_reflexes",
            FindingKind.SENSATION, "leg");

    private final Mapping node;
    private final List<String> mistakes;

    CaseReader(Mapping node, List<String> mistakes) {
        this.node = node;
        this.mistakes = mistakes;
    }

    PublishedCase read() {
        mistakes.addAll(node.duplicates());
        String id = node.text("id");
        if (id.isEmpty()) {
            mistakes.add(node.place() + ": a case needs an id");
        }
        Set<Side> sides = sides(node.text("side"));
        var blocks = new BlockReader();
        var notUsed = new ArrayList<String>();
        node.values().forEach((key, value) -> {
            Optional<FindingKind> kind = FindingKind.findByBlock(key);
            if (kind.isPresent() && value instanceof Mapping block) {
                blocks.read(kind.get(), kind.get() == FindingKind.STRENGTH ? exact(block) : block, sides);
            } else if (kind.isPresent()
                    && value instanceof Scalar whole
                    && !empty(whole)
                    && SWEEPING.containsKey(kind.get())) {
                blocks.read(kind.get(), sweeping(kind.get(), whole), sides);
            } else if (!TEXT_KEYS.contains(key) && !empty(value)) {
                notUsed.add("key %s (%s)".formatted(key, value.place()));
            }
        });
        notUsed.addAll(blocks.notUsed());
        mistakes.addAll(blocks.mistakes());
        mistakes.addAll(FindingChecks.contradictions(blocks.findings(), Vocabulary.load()));
        return new PublishedCase(
                id, diagnosis(), sides, blocks.findings(), texts("red_flags"), age(), facts(), notUsed);
    }

    /** The block with half grades where the source gave them. */
    private Mapping exact(Mapping strength) {
        var values = new LinkedHashMap<>(strength.values());
        node.find("strength_raw")
                .filter(Mapping.class::isInstance)
                .map(Mapping.class::cast)
                .ifPresent(raw -> raw.values().forEach((muscle, grade) -> {
                    if (values.containsKey(muscle)) {
                        values.put(muscle, grade);
                    }
                }));
        return new Mapping(values, strength.duplicates(), strength.place());
    }

    private static Mapping sweeping(FindingKind kind, Scalar whole) {
        String item = java.util.Objects.requireNonNull(SWEEPING.get(kind));
        return new Mapping(Map.of(item, whole), List.of(), whole.place());
    }

    private Optional<String> diagnosis() {
        String site = node.text("diagnosis_site");
        return site.isEmpty() ? Optional.empty() : Optional.of(site);
    }

    private OptionalInt age() {
        String age = node.text("age");
        return age.matches("\\d{1,3}") ? OptionalInt.of(Integer.parseInt(age)) : OptionalInt.empty();
    }

    private Map<String, String> facts() {
        var facts = new LinkedHashMap<String, String>();
        for (String key : List.of(
                "title", "detail", "side", "region", "not_nerve_cause", "expectedLevel", "expectedLevelBecause")) {
            if (!node.text(key).isEmpty()) {
                facts.put(key, node.text(key));
            }
        }
        return facts;
    }

    private List<String> texts(String key) {
        var texts = new ArrayList<String>();
        if (node.find(key).orElse(node) instanceof Items items) {
            for (Located item : items.items()) {
                if (item instanceof Scalar scalar) {
                    texts.add(scalar.text());
                }
            }
        }
        return texts;
    }

    private static boolean empty(Located value) {
        return value instanceof Scalar scalar && scalar.text().isEmpty();
    }

    private static Set<Side> sides(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "left" -> EnumSet.of(Side.LEFT);
            case "bilateral", "both" -> EnumSet.allOf(Side.class);
            default -> EnumSet.of(Side.RIGHT);
        };
    }
}
