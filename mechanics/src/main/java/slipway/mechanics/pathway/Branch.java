package slipway.mechanics.pathway;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.Segment;

/**
 * A cable between two forks. Each leg has one of every kind but the cord, which both share. The forks and the spans are
 * assumptions except where they follow from the segments.
 */
enum Branch {
    CORD("cord", null, span(Segment.CORD, 0, 1)),
    /** The roots of one leg as one cable, the plexus and the sciatic nerve down to its division. */
    TRUNK("trunk", CORD, span(Segment.CANAL, 0, 1), span(Segment.PELVIS, 0, 1), span(Segment.THIGH, 0, 0.80)),
    TIBIAL_PROXIMAL("tibial", TRUNK, span(Segment.THIGH, 0.80, 1), span(Segment.SHANK, 0, 0.05)),
    TIBIAL("tibial", TIBIAL_PROXIMAL, span(Segment.SHANK, 0.05, 1), span(Segment.FOOT, 0, 1)),
    SURAL("sural", TIBIAL_PROXIMAL, span(Segment.SHANK, 0.05, 1), span(Segment.FOOT, 0, 0.6)),
    COMMON_FIBULAR("common fibular", TRUNK, span(Segment.THIGH, 0.80, 1), span(Segment.SHANK, 0, 0.10)),
    DEEP_FIBULAR("deep fibular", COMMON_FIBULAR, span(Segment.SHANK, 0.10, 1), span(Segment.FOOT, 0, 0.6)),
    SUPERFICIAL_FIBULAR(
            "superficial fibular", COMMON_FIBULAR, span(Segment.SHANK, 0.10, 1), span(Segment.FOOT, 0, 0.6)),
    /** The upper lumbar roots of one leg as one cable and the femoral nerve down to its division below the groin. */
    FEMORAL("femoral", CORD, span(Segment.CANAL, 0, 1), span(Segment.PELVIS, 0, 1), span(Segment.THIGH, 0, 0.10)),
    /** The branch that ends in the muscle at the front of the thigh, whose bed is the muscle. */
    QUADRICEPS("quadriceps", FEMORAL, span(Segment.THIGH, 0.10, 0.60)),
    SAPHENOUS("saphenous", FEMORAL, span(Segment.THIGH, 0.10, 1), span(Segment.SHANK, 0, 1), span(Segment.FOOT, 0, 1));

    private static final Set<Branch> OF_FRONT = EnumSet.of(FEMORAL, QUADRICEPS, SAPHENOUS);

    private final String areaName;
    private final Optional<Branch> parent;

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable.
    private final List<Span> spans;

    Branch(String areaName, @Nullable Branch parent, Span... spans) {
        this.areaName = areaName;
        this.parent = Optional.ofNullable(parent);
        this.spans = List.of(spans);
    }

    /** Name of this cable in the areas of {@code geometry.csv}. */
    String areaName() {
        return areaName;
    }

    Optional<Branch> parent() {
        return parent;
    }

    List<Span> spans() {
        return spans;
    }

    /** Whether it belongs to a pathway; the cord belongs to each. */
    boolean runsIn(Pathway pathway) {
        return this == CORD || (pathway == Pathway.FRONT) == OF_FRONT.contains(this);
    }

    boolean distalEnd() {
        return this == TIBIAL || this == SURAL || this == DEEP_FIBULAR || this == SUPERFICIAL_FIBULAR;
    }

    /** The part of a segment from one fraction of it to another. */
    record Span(Segment segment, double from, double to) {}

    private static Span span(Segment segment, double from, double to) {
        return new Span(segment, from, to);
    }
}
