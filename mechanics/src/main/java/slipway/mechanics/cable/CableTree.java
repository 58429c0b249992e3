package slipway.mechanics.cable;

import java.util.Arrays;

/**
 * The mesh of a tree of cables. Node 0 is the root; every other node hangs on a parent with a smaller index by the edge
 * of the same index. Immutable.
 */
public final class CableTree {
    private final int[] parent;
    private final double[] edgeLengthM;

    /**
     * @param parent parent of each node; -1 for node 0, otherwise smaller than the node's own index
     * @param edgeLengthM length of the edge from each node to its parent, m; the value of node 0 is ignored
     * @throws IllegalArgumentException if a parent or a length breaks these rules
     */
    public CableTree(int[] parent, double[] edgeLengthM) {
        if (parent.length < 2 || parent.length != edgeLengthM.length || parent[0] != -1) {
            throw new IllegalArgumentException("a cable tree needs two nodes or more, one length per node, root first");
        }
        for (int i = 1; i < parent.length; i++) {
            if (parent[i] < 0 || parent[i] >= i || !(edgeLengthM[i] > 0) || Double.isInfinite(edgeLengthM[i])) {
                throw new IllegalArgumentException(
                        "node %d: parent must be a smaller index and the edge length positive, was %d, %s m"
                                .formatted(i, parent[i], edgeLengthM[i]));
            }
        }
        this.parent = parent.clone();
        this.edgeLengthM = edgeLengthM.clone();
    }

    /** Number of nodes. */
    public int nodes() {
        return parent.length;
    }

    /** Parent of a node; -1 for the root. */
    public int parent(int node) {
        return parent[node];
    }

    /** Length of the edge from a node to its parent, m. */
    public double edgeLengthM(int node) {
        return edgeLengthM[node];
    }

    /** Whether no node hangs on this one. */
    public boolean isLeaf(int node) {
        return Arrays.stream(parent).noneMatch(p -> p == node);
    }
}
