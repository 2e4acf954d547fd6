package stenotherm.modal;

/** A configuration in its modes, and in those of the coarser model. */
final class PreparedLeg {
  final Configuration configuration;
  final ModalSystem whole;
  final ModalSystem coarser;

  /** Position of the first candidate of each block among the outputs; one more at the end. */
  final int[] firstCandidate;

  /** What the candidates of each block can miss. */
  final Candidates[] candidates;

  PreparedLeg(Configuration configuration, Projection projection, Basis basis, OutputPlan plan) {
    this.configuration = configuration;
    int linear = plan.linear.size();
    this.candidates = new Candidates[plan.blocks.size()];
    this.firstCandidate = new int[candidates.length + 1];
    firstCandidate[0] = linear;
    int count = linear;
    for (int block = 0; block < candidates.length; block++) {
      candidates[block] =
          Candidates.of(projection, projection.firstNode[block], projection.firstNode[block + 1]);
      count += candidates[block].rows.length;
      firstCandidate[block + 1] = count;
    }
    int[] chosen = new int[count];
    for (int row = 0; row < linear; row++) {
      chosen[row] = row;
    }
    for (int block = 0; block < candidates.length; block++) {
      int[] rows = candidates[block].rows;
      System.arraycopy(rows, 0, chosen, firstCandidate[block], rows.length);
    }
    this.whole = new ModalSystem(projection, basis.members(true), chosen);
    this.coarser = new ModalSystem(projection, basis.members(false), chosen);
  }
}
