package slipway.mechanics.pathway;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.NerveModel;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Segment;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.DrawSet;

/**
 * The nerve model of one body in every draw: the tree from the brainstem and the conus to the ends of both legs.
 *
 * <p>Cost: one posture takes a few Newton steps over some two hundred nodes for every draw; draws are solved in blocks
 * on all cores. Answers do not depend on what was asked before. Safe for use by several threads, one at a time.
 */
public final class PathwayModel implements NerveModel {
    /** Draws that are solved together at most: vector loops shorter than this lose much of their time at both ends. */
    private static final int LARGEST_BLOCK = 128;

    /** The same at least; between the two there are two blocks, so that two cores have work. */
    private static final int SMALLEST_BLOCK = 32;

    private final PathwayMesh mesh;
    private final Geometry geometry;
    private final DrawSet draws;
    private final List<LaneBlock> blocks;
    private final List<Stance> stances;
    private final int blockSize;
    private final SiteReader siteReader;

    /** A model on the standard mesh. */
    public PathwayModel(Person person, DrawSet draws) {
        this(person, draws, MeshDensity.STANDARD);
    }

    /** A model on a mesh of a given density. */
    public PathwayModel(Person person, DrawSet draws, MeshDensity density) {
        this(new Geometry(person), draws, density, person.scale(), Site.all().values());
    }

    /**
     * A model of either pathway on the standard mesh, with its named sites. Of the front of the leg there is hardly any published
     * measurement: its lengths and arms are stated in {@code geometry-front.csv}, what holds the nerve is taken from the back.
     */
    public static PathwayModel of(Pathway pathway, Person person, DrawSet draws) {
        return new PathwayModel(
                new Geometry(person, pathway),
                draws,
                MeshDensity.STANDARD,
                person.scale(),
                Site.of(pathway).values());
    }

    /** A model on the standard mesh that follows these sites instead of the named ones. */
    public static PathwayModel following(Person person, DrawSet draws, Collection<Site> sites) {
        return new PathwayModel(new Geometry(person), draws, MeshDensity.STANDARD, person.scale(), sites);
    }

    /** A model of the standard person on the standard mesh whose nerve has another bed than the program uses. */
    public static PathwayModel on(MuscleBed bed, DrawSet draws, Collection<Site> sites) {
        var geometry = new Geometry(Person.STANDARD, Pathway.BACK, bed);
        return new PathwayModel(geometry, draws, MeshDensity.STANDARD, Person.STANDARD.scale(), sites);
    }

    private PathwayModel(
            Geometry geometry, DrawSet draws, MeshDensity density, double bodyScale, Collection<Site> sites) {
        this.draws = draws;
        this.geometry = geometry;
        mesh = new MeshBuilder(geometry, density).build();
        blocks = new ArrayList<>();
        blockSize = Math.max(SMALLEST_BLOCK, Math.min(LARGEST_BLOCK, (draws.size() + 1) / 2));
        for (int from = 0; from < draws.size(); from += blockSize) {
            int to = Math.min(draws.size(), from + blockSize);
            blocks.add(new LaneBlock(geometry, mesh, draws.vectors().subList(from, to), bodyScale));
        }
        stances = blocks.stream().map(LaneBlock::newStance).toList();
        siteReader = new SiteReader(geometry, mesh, draws, sites);
    }

    @Override
    public int draws() {
        return draws.size();
    }

    /** Number of nodes of the mesh. */
    public int nodes() {
        return mesh.tree().nodes();
    }

    @Override
    public PostureResponse respond(Posture posture) {
        return respondAlong(List.of(posture)).get(0);
    }

    @Override
    public List<PostureResponse> respondAlong(List<Posture> motion) {
        return respondAlong(motion, this::fresh);
    }

    @Override
    public NerveModel walk() {
        return new Walk();
    }

    private synchronized List<PostureResponse> respondAlong(List<Posture> motion, IntFunction<Stance> stances) {
        List<SiteValues> values =
                motion.stream().map(p -> siteReader.newValues()).toList();
        IntStream.range(0, blocks.size()).parallel().forEach(b -> {
            LaneBlock block = blocks.get(b);
            Stance stance = stances.apply(b);
            for (int i = 0; i < motion.size(); i++) {
                block.solve(motion.get(i), stance);
                siteReader.read(block, b * blockSize, values.get(i));
            }
        });
        return List.copyOf(values);
    }

    /** The stance of a block for who asks once, in the reference posture. */
    private Stance fresh(int block) {
        Stance stance = stances.get(block);
        stance.reset();
        return stance;
    }

    /** Stands where its last question ended. */
    private final class Walk implements NerveModel {
        private final List<Stance> own =
                blocks.stream().map(LaneBlock::newStance).toList();

        @Override
        public int draws() {
            return PathwayModel.this.draws();
        }

        @Override
        public PostureResponse respond(Posture posture) {
            return respondAlong(List.of(posture)).get(0);
        }

        @Override
        public List<PostureResponse> respondAlong(List<Posture> motion) {
            return PathwayModel.this.respondAlong(motion, own::get);
        }
    }

    /** What {@link #respond} and {@link #profile} say about one posture. */
    public record Whole(PostureResponse response, TractProfile profile) {}

    /** Response and profile of one posture for the cost of one. */
    public synchronized Whole whole(Posture posture, Tract tract) {
        SiteValues values = siteReader.newValues();
        var profile = new TractProfile.Collector(mesh.path(tract, Limb.OWN), draws.size());
        IntStream.range(0, blocks.size()).parallel().forEach(b -> {
            LaneBlock block = blocks.get(b);
            block.solve(posture, fresh(b));
            siteReader.read(block, b * blockSize, values);
            profile.add(block, b * blockSize);
        });
        return new Whole(values, profile.finish());
    }

    /** Strain and glide along one tract of the own leg in one posture, as medians over the draws. */
    public synchronized TractProfile profile(Posture posture, Tract tract) {
        var profile = new TractProfile.Collector(mesh.path(tract, Limb.OWN), draws.size());
        // Every block has its own columns, so they may be filled at the same time.
        IntStream.range(0, blocks.size()).parallel().forEach(b -> {
            LaneBlock block = blocks.get(b);
            block.solve(posture, fresh(b));
            profile.add(block, b * blockSize);
        });
        return profile.finish();
    }

    /** By how much the bed of a tract of the own leg is longer than in the reference posture, mm, per draw. */
    public double[] bedElongationMm(Posture posture, Tract tract) {
        return perDraw(posture, (block, lane) -> 1000 * block.bedElongationM(mesh.path(tract, Limb.OWN), lane));
    }

    /** By how much the nerve of a tract of the own leg is longer than in the reference posture, mm, per draw. */
    public double[] nerveElongationMm(Posture posture, Tract tract) {
        return perDraw(posture, (block, lane) -> 1000 * block.nerveElongationM(mesh.path(tract, Limb.OWN), lane));
    }

    private interface LaneValue {
        double of(LaneBlock block, int lane);
    }

    private synchronized double[] perDraw(Posture posture, LaneValue value) {
        double[] values = new double[draws.size()];
        for (int b = 0; b < blocks.size(); b++) {
            LaneBlock block = blocks.get(b);
            block.solve(posture, fresh(b));
            for (int l = 0; l < block.lanes(); l++) {
                values[b * blockSize + l] = value.of(block, l);
            }
        }
        return values;
    }

    /** Where a landmark lies on the way from the brainstem to the toes, m. */
    public double arcM(Site site) {
        return geometry.arcM(site.segment(), site.position());
    }

    /** Where a segment begins on the way from the brainstem to the toes, m. */
    public double startM(Segment segment) {
        return geometry.arcM(segment, 0);
    }

    /** The joints of a posture whose effect on the back of the leg the model leaves out, by name. */
    public static List<String> notModelled(Posture posture) {
        return notModelled(posture, Pathway.BACK);
    }

    /** The joints of a posture whose effect on a pathway the model leaves out, by name; empty when there are none. */
    public static List<String> notModelled(Posture posture, Pathway pathway) {
        return List.copyOf(MomentArms.notModelled(posture, pathway));
    }
}
