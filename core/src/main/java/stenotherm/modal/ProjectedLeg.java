package stenotherm.modal;

/** A configuration in its modes, with all nodes of the blocks whose extremes are asked for. */
final class ProjectedLeg {
  final Configuration configuration;
  final Projection projection;
  final ModalSystem whole;
  final BlockNodes[] nodes;

  ProjectedLeg(Configuration configuration, Projection projection, KrylovBasis basis) {
    this.configuration = configuration;
    this.projection = projection;
    this.whole = new ModalSystem(projection, basis.members());
    this.nodes = new BlockNodes[projection.firstNode.length - 1];
    for (int block = 0; block < nodes.length; block++) {
      int from = projection.firstNode[block];
      nodes[block] = new BlockNodes(projection.outputs, from, projection.firstNode[block + 1]);
    }
  }
}
