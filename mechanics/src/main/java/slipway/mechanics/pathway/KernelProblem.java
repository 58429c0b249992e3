package slipway.mechanics.pathway;

import java.util.List;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.cable.CableTree;
import slipway.mechanics.cable.Tissue;
import slipway.mechanics.parameters.ParameterVector;

/**
 * The equations of one posture as the kernel gets them, so that other solvers can be held against it.
 *
 * @param tree nodes and edges
 * @param tissue what they are made of, one lane per draw
 * @param bedElongation elongation of the bed along each edge, {@code [node][lane]}
 */
public record KernelProblem(CableTree tree, Tissue tissue, double[][] bedElongation) {
    /** The equations of a posture on the standard mesh. */
    public static KernelProblem of(Person person, List<ParameterVector> lanes, Posture posture) {
        var geometry = new Geometry(person);
        PathwayMesh mesh = new MeshBuilder(geometry, MeshDensity.STANDARD).build();
        var block = new LaneBlock(geometry, mesh, lanes, person.scale());
        return new KernelProblem(
                mesh.tree(), new TissueBuilder(geometry, mesh).build(lanes), block.bedElongation(posture));
    }
}
