package slipway.mechanics.pathway;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.body.Joint;
import slipway.mechanics.evidence.BundledTable;
import slipway.mechanics.nerve.Segment;

/**
 * Muscles that are the bed of the nerve for a part of its way, so that a joint lengthens the bed over their bellies and not
 * only at the joint: {@code muscle-beds.csv}.
 *
 * @param name short name
 * @param bellies what each takes of a joint's elongation; the rest falls on the zone of the joint
 */
public record MuscleBed(String name, List<Belly> bellies) {
    /** No muscle: every joint lengthens the bed at the joint alone. */
    public static final MuscleBed NONE = new MuscleBed("none", List.of());

    private static final Map<String, MuscleBed> ALL = load();

    /** What the program uses for the back of the leg: chosen by leave-one-study-out, docs/decisions/0004-cable-model.md. */
    public static final MuscleBed USED = get("calf");

    public MuscleBed {
        bellies = List.copyOf(bellies);
        for (Joint joint : Joint.values()) {
            double taken = bellies.stream()
                    .filter(belly -> belly.joint() == joint)
                    .mapToDouble(Belly::share)
                    .sum();
            if (!(taken < 1)) {
                throw new IllegalArgumentException(
                        "bed %s: the muscles must leave a part of the %s, took %s".formatted(name, joint.key(), taken));
            }
        }
    }

    /**
     * The part of a muscle beside the nerve.
     *
     * @param joint the joint that lengthens it
     * @param branches names of the branches that run in it; empty for all
     * @param segment where it lies
     * @param from its proximal end as a fraction of the segment
     * @param to its distal end as a fraction of the segment
     * @param share what it takes of the joint's elongation, above 0
     */
    public record Belly(Joint joint, List<String> branches, Segment segment, double from, double to, double share) {
        public Belly {
            branches = List.copyOf(branches);
            if (!(from >= 0 && from < to && to <= 1 && share > 0)) {
                throw new IllegalArgumentException(
                        "belly for the %s: from %s to %s must lie in the segment and share %s above 0"
                                .formatted(joint.key(), from, to, share));
            }
        }

        boolean holds(Joint other, Branch branch) {
            return joint == other && (branches.isEmpty() || branches.contains(branch.areaName()));
        }
    }

    /**
     * The bed with this name in the table.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static MuscleBed get(String name) {
        MuscleBed bed = ALL.get(name);
        if (bed == null) {
            throw new IllegalArgumentException("muscle-beds.csv has no bed \"" + name + "\", only " + ALL.keySet());
        }
        return bed;
    }

    private static Map<String, MuscleBed> load() {
        Map<String, MuscleBed> beds = new LinkedHashMap<>();
        for (CSVRecord row : BundledTable.read("muscle-beds.csv")) {
            List<Belly> one = List.of(belly(row));
            beds.merge(row.get("bed"), new MuscleBed(row.get("bed"), one), MuscleBed::with);
        }
        return beds;
    }

    private MuscleBed with(MuscleBed other) {
        var both = new ArrayList<>(bellies);
        both.addAll(other.bellies);
        return new MuscleBed(name, both);
    }

    private static Belly belly(CSVRecord row) {
        String branches = row.get("branches");
        return new Belly(
                Joint.find(row.get("joint")).orElseThrow(() -> unknown(row, "joint")),
                branches.equals("all") ? List.of() : List.of(branches.split(";", -1)),
                Segment.find(row.get("segment")).orElseThrow(() -> unknown(row, "segment")),
                Double.parseDouble(row.get("from")),
                Double.parseDouble(row.get("to")),
                Double.parseDouble(row.get("share")));
    }

    private static IllegalStateException unknown(CSVRecord row, String column) {
        return new IllegalStateException("muscle-beds.csv: unknown " + column + " " + row.get(column));
    }
}
