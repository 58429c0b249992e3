package slipway.mechanics.pathway;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Person;
import slipway.mechanics.evidence.BundledTable;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.Segment;
import slipway.mechanics.nerve.Site;

/**
 * Lengths, joint zones and cross-section areas of one person's pathway, from the table of the pathway and the stature. Arc
 * length s (m) runs from the brainstem; every branch of a leg shares it.
 */
final class Geometry {
    private static final Map<Pathway, List<CSVRecord>> TABLES = Map.of(
            Pathway.BACK, BundledTable.read(Pathway.BACK.geometryTable()),
            Pathway.FRONT, BundledTable.read(Pathway.FRONT.geometryTable()));
    private static final Site NOTCH = Site.get("greater sciatic notch");
    private static final String REFERENCE_AREA = "trunk";

    private final Pathway pathway;
    private final List<CSVRecord> rows;
    private final MuscleBed muscles;
    private final double statureM;
    private final Map<Segment, Double> startM = new EnumMap<>(Segment.class);
    private final Map<Segment, Double> lengthM = new EnumMap<>(Segment.class);

    /** The back of the leg. */
    Geometry(Person person) {
        this(person, Pathway.BACK);
    }

    Geometry(Person person, Pathway pathway) {
        this(person, pathway, pathway == Pathway.BACK ? MuscleBed.USED : MuscleBed.NONE);
    }

    Geometry(Person person, Pathway pathway, MuscleBed muscles) {
        this.pathway = pathway;
        this.muscles = muscles;
        rows = TABLES.getOrDefault(pathway, List.of());
        statureM = person.statureM();
        for (CSVRecord row : rows) {
            if (row.get("kind").equals("length")) {
                lengthM.put(segment(row), number(row, "value") * statureM);
            }
        }
        double start = 0;
        for (Segment segment : Segment.values()) {
            startM.put(segment, start);
            start += length(segment);
        }
    }

    Pathway pathway() {
        return pathway;
    }

    /** The joints that lengthen the bed of a pathway: those with a zone in its table. */
    static List<Joint> joints(Pathway pathway) {
        List<CSVRecord> rows = TABLES.getOrDefault(pathway, List.of());
        return Arrays.stream(Joint.values())
                .filter(joint -> rows.stream().anyMatch(row -> isZone(row, joint)))
                .toList();
    }

    private static boolean isZone(CSVRecord row, Joint joint) {
        return row.get("kind").equals("zone") && row.get("branch").equals(joint.key());
    }

    double length(Segment segment) {
        Double length = lengthM.get(segment);
        if (length == null) {
            throw new IllegalStateException(pathway.geometryTable() + ": no length for " + segment.key());
        }
        return length;
    }

    /** Arc length of a place given as a fraction of a segment, m. */
    double arcM(Segment segment, double fraction) {
        return startM.getOrDefault(segment, 0.0) + fraction * length(segment);
    }

    /** Where the sciatic nerve leaves the pelvis and is tethered, m. */
    double notchM() {
        return arcM(NOTCH.segment(), NOTCH.position());
    }

    /** The segment that holds an arc length. */
    Segment segmentAt(double arcM) {
        Segment found = Segment.CORD;
        for (Segment segment : Segment.values()) {
            if (arcM >= startM.getOrDefault(segment, 0.0)) {
                found = segment;
            }
        }
        return found;
    }

    /** Where a joint lengthens the bed. */
    JointZone zone(Joint joint) {
        for (CSVRecord row : rows) {
            if (isZone(row, joint)) {
                return new JointZone(arcM(segment(row), number(row, "position")), number(row, "value") * statureM);
            }
        }
        throw new IllegalArgumentException("the nerve model has no zone for " + joint.key());
    }

    /** Where a joint lengthens the bed of a branch. */
    JointBed bed(Joint joint, Branch branch) {
        List<JointBed.Stretch> bellies = muscles.bellies().stream()
                .filter(belly -> belly.holds(joint, branch))
                .map(this::stretch)
                .toList();
        return new JointBed(zone(joint), bellies);
    }

    private JointBed.Stretch stretch(MuscleBed.Belly belly) {
        double fromM = arcM(belly.segment(), belly.from());
        double toM = arcM(belly.segment(), belly.to());
        return new JointBed.Stretch(new JointZone(0.5 * (fromM + toM), 0.5 * (toM - fromM)), belly.share());
    }

    /** Natural logarithm of the area of a branch at an arc length, relative to the sciatic nerve at mid-thigh. */
    double logAreaRatio(Branch branch, double arcM) {
        return logArea(branch.areaName(), arcM) - logArea(REFERENCE_AREA, arcM(Segment.THIGH, 0.55));
    }

    private double logArea(String branch, double arcM) {
        List<double[]> knots = knots(branch);
        if (knots.isEmpty()) {
            return logArea(REFERENCE_AREA, arcM);
        }
        double[] before = knots.get(0);
        for (double[] knot : knots) {
            if (knot[0] > arcM) {
                double span = knot[0] - before[0];
                double t = span > 0 ? Math.max(0, (arcM - before[0]) / span) : 0;
                return before[1] + t * (knot[1] - before[1]);
            }
            before = knot;
        }
        return before[1];
    }

    private List<double[]> knots(String branch) {
        var knots = new ArrayList<double[]>();
        for (CSVRecord row : rows) {
            if (row.get("kind").equals("area") && row.get("branch").equals(branch)) {
                knots.add(new double[] {arcM(segment(row), number(row, "position")), Math.log(number(row, "value"))});
            }
        }
        knots.sort(Comparator.comparingDouble(knot -> knot[0]));
        return knots;
    }

    private static Segment segment(CSVRecord row) {
        return Segment.find(row.get("segment"))
                .orElseThrow(() -> new IllegalStateException("table of lengths: segment " + row.get("segment")));
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
