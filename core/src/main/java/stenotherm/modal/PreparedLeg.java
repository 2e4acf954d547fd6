package stenotherm.modal;

/** A configuration in its modes, and in those of the coarser models. Immutable. */
final class PreparedLeg {
  final Configuration configuration;
  final ModalSystem whole;
  final ModalSystem[] coarser;

  /** The nodes of the blocks with extremes. */
  final BlockNodes[] nodes;

  /** Which of them are looked at. */
  final Candidates[] candidates;

  /** Position of the first candidate of each block among the outputs, after the linear ones. */
  final int[] firstCandidate;

  final ModalSystem.RowBlock outputs;
  final ModalSystem.SingleRows[] coarserOutputs;

  /** Heat flow into the body through each boundary. */
  final ModalSystem.RowBlock flows;

  PreparedLeg(ProjectedLeg of, Candidates[] candidates, Basis basis, Fineness fineness) {
    Projection projection = of.projection;
    this.configuration = of.configuration;
    this.whole = of.whole;
    this.nodes = of.nodes;
    this.candidates = candidates;
    this.firstCandidate = new int[candidates.length];
    int linear = projection.firstNode[0];
    int count = linear;
    for (int block = 0; block < candidates.length; block++) {
      firstCandidate[block] = count;
      count += candidates[block].count();
    }
    int[] chosen = new int[count];
    for (int row = 0; row < linear; row++) {
      chosen[row] = row;
    }
    for (int block = 0; block < candidates.length; block++) {
      for (int c = 0; c < candidates[block].count(); c++) {
        chosen[firstCandidate[block] + c] = projection.firstNode[block] + candidates[block].node(c);
      }
    }
    Projection.Rows rows = projection.outputs.chosen(chosen);
    this.outputs = whole.rows(rows);
    this.flows = whole.rows(projection.flows);
    this.coarser = new ModalSystem[fineness.leftOut.length];
    this.coarserOutputs = new ModalSystem.SingleRows[fineness.leftOut.length];
    for (int model = 0; model < coarser.length; model++) {
      coarser[model] = new ModalSystem(projection, basis.membersWithout(fineness.leftOut[model]));
      coarserOutputs[model] = coarser[model].singleRows(rows);
    }
  }
}
