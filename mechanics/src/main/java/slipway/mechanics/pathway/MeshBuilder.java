package slipway.mechanics.pathway;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.cable.CableTree;
import slipway.mechanics.nerve.Tract;

/** Lays a graded mesh over the pathway: fine within the joint zones, coarser elsewhere. */
final class MeshBuilder {
    /** How much wider than in the table a zone may be in a draw; wider ones are cut off. */
    private static final double WIDEST_ZONE = 3;

    /** Two break points nearer than this are one, m. */
    static final double SAME_PLACE_M = 1e-6;

    private final Geometry geometry;
    private final List<Joint> joints;
    private final MeshDensity density;
    private final List<Integer> parent = new ArrayList<>();
    private final List<Double> edgeLengthM = new ArrayList<>();
    private final List<Double> nodeArcM = new ArrayList<>();
    private final List<Branch> edgeBranch = new ArrayList<>();
    private final Map<BranchOfLimb, List<Integer>> nodesOf = new LinkedHashMap<>();

    private record BranchOfLimb(Branch branch, Limb limb) {}

    MeshBuilder(Geometry geometry, MeshDensity density) {
        this.geometry = geometry;
        joints = Geometry.joints(geometry.pathway());
        this.density = density;
    }

    PathwayMesh build() {
        addNode(-1, 0, Branch.CORD);
        addBranch(Branch.CORD, Limb.OWN);
        for (Limb limb : Limb.values()) {
            for (Branch branch : Branch.values()) {
                if (branch != Branch.CORD && branch.runsIn(geometry.pathway())) {
                    addBranch(branch, limb);
                }
            }
        }
        double[] middles = new double[parent.size()];
        for (int i = 1; i < middles.length; i++) {
            middles[i] = nodeArcM.get(i) - 0.5 * edgeLengthM.get(i);
        }
        var tree = new CableTree(
                parent.stream().mapToInt(Integer::intValue).toArray(),
                edgeLengthM.stream().mapToDouble(Double::doubleValue).toArray());
        return new PathwayMesh(tree, List.copyOf(edgeBranch), middles, arms(), paths());
    }

    private int addNode(int parentNode, double arcM, Branch branch) {
        parent.add(parentNode);
        nodeArcM.add(arcM);
        edgeLengthM.add(parentNode < 0 ? 0.0 : arcM - nodeArcM.get(parentNode));
        edgeBranch.add(branch);
        return parent.size() - 1;
    }

    private void addBranch(Branch branch, Limb limb) {
        int last = branch.parent().map(above -> lastNode(above, limb)).orElse(0);
        var nodes = new ArrayList<Integer>();
        nodes.add(last);
        List<Double> breaks = breaks(branch);
        for (int b = 1; b < breaks.size(); b++) {
            double from = breaks.get(b - 1);
            double to = breaks.get(b);
            int cells = density.parts() * (int) Math.ceil((to - from) / cellM(branch, limb, 0.5 * (from + to)) - 1e-9);
            for (int c = 1; c <= cells; c++) {
                last = addNode(last, from + (to - from) * c / cells, branch);
                nodes.add(last);
            }
        }
        nodesOf.put(new BranchOfLimb(branch, limb), nodes);
    }

    private int lastNode(Branch branch, Limb limb) {
        List<Integer> nodes = nodes(branch, limb);
        return nodes.get(nodes.size() - 1);
    }

    private List<Integer> nodes(Branch branch, Limb limb) {
        return nodesOf.getOrDefault(new BranchOfLimb(branch, branch == Branch.CORD ? Limb.OWN : limb), List.of());
    }

    /** Ends of the spans of a branch and of the joint zones that reach into it. */
    private List<Double> breaks(Branch branch) {
        var points = new TreeSet<Double>();
        for (Branch.Span span : branch.spans()) {
            points.add(geometry.arcM(span.segment(), span.from()));
            points.add(geometry.arcM(span.segment(), span.to()));
        }
        if (branch == Branch.TRUNK) {
            // A hold at one point needs a node there, or the mesh would converge at first order only.
            points.add(geometry.notchM());
        }
        double from = points.first();
        double to = points.last();
        for (Joint joint : joints) {
            JointZone zone = geometry.zone(joint);
            for (double end : new double[] {zone.fromM(), zone.toM()}) {
                if (end > from && end < to) {
                    points.add(end);
                }
            }
        }
        var breaks = new ArrayList<Double>();
        for (double point : points) {
            if (breaks.isEmpty() || point - breaks.get(breaks.size() - 1) > SAME_PLACE_M) {
                breaks.add(point);
            }
        }
        return breaks;
    }

    private double cellM(Branch branch, Limb limb, double arcM) {
        boolean inZone = joints.stream().map(geometry::zone).anyMatch(zone -> arcM > zone.fromM() && arcM < zone.toM());
        double cell = inZone && branch != Branch.CORD ? density.fineM() : density.coarseM();
        return limb == Limb.OTHER && branch != Branch.TRUNK ? cell * density.farFactor() : cell;
    }

    private List<BedArm> arms() {
        var arms = new ArrayList<BedArm>();
        nodesOf.forEach((place, nodes) -> {
            for (Joint joint : joints) {
                BedArm arm = arm(joint, place, nodes);
                if (arm.edges().length > 0) {
                    arms.add(arm);
                }
            }
        });
        return arms;
    }

    private BedArm arm(Joint joint, BranchOfLimb place, List<Integer> nodes) {
        JointBed reach = geometry.bed(joint, place.branch()).scaled(WIDEST_ZONE);
        int[] edges = nodes.subList(1, nodes.size()).stream()
                .mapToInt(Integer::intValue)
                .filter(node -> reach.share(nodeArcM.get(node) - edgeLengthM.get(node), nodeArcM.get(node)) > 0)
                .toArray();
        double[] to = Arrays.stream(edges).mapToDouble(nodeArcM::get).toArray();
        double[] from = Arrays.stream(edges)
                .mapToDouble(node -> nodeArcM.get(node) - edgeLengthM.get(node))
                .toArray();
        return new BedArm(joint, joint.paired() ? place.limb() : Limb.OWN, place.branch(), edges, from, to);
    }

    private Map<Limb, EnumMap<Tract, NervePath>> paths() {
        var paths = new EnumMap<Limb, EnumMap<Tract, NervePath>>(Limb.class);
        for (Limb limb : Limb.values()) {
            var byTract = new EnumMap<Tract, NervePath>(Tract.class);
            for (Tract tract : geometry.pathway().tracts()) {
                byTract.put(tract, path(tract, limb));
            }
            paths.put(limb, byTract);
        }
        return paths;
    }

    private NervePath path(Tract tract, Limb limb) {
        var nodes = new ArrayList<Integer>(List.of(0));
        for (Branch branch : branchesTo(end(tract))) {
            List<Integer> own = nodes(branch, limb);
            nodes.addAll(own.subList(1, own.size()));
        }
        return new NervePath(
                nodes.stream().mapToInt(Integer::intValue).toArray(),
                nodes.stream().mapToDouble(nodeArcM::get).toArray());
    }

    private static Branch end(Tract tract) {
        return switch (tract) {
            case SCIATIC_TIBIAL -> Branch.TIBIAL;
            case SCIATIC_SURAL -> Branch.SURAL;
            case SCIATIC_FIBULAR -> Branch.DEEP_FIBULAR;
            case SCIATIC_SUPERFICIAL_FIBULAR -> Branch.SUPERFICIAL_FIBULAR;
            case FEMORAL_SAPHENOUS -> Branch.SAPHENOUS;
            case FEMORAL_QUADRICEPS -> Branch.QUADRICEPS;
        };
    }

    private static List<Branch> branchesTo(Branch end) {
        var branches = new ArrayList<Branch>();
        for (var branch = Optional.of(end);
                branch.isPresent();
                branch = branch.get().parent()) {
            branches.add(0, branch.get());
        }
        return branches;
    }
}
