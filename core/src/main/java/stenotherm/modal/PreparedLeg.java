package stenotherm.modal;

import java.util.stream.IntStream;
import stenotherm.conduction.ReducibleNetwork;

/** A configuration in its modes, and in those of the coarser models. */
final class PreparedLeg {
  final Configuration configuration;
  final ModalSystem whole;
  final ModalSystem[] coarser;

  /** Position of the first candidate of each block among the outputs; one more at the end. */
  final int[] firstCandidate;

  final ModalSystem.RowBlock outputs;
  final ModalSystem.RowBlock flows;
  final ModalSystem.RowBlock[] coarserOutputs;

  PreparedLeg(
      Configuration configuration,
      ReducibleNetwork operator,
      Projection projection,
      Basis basis,
      OutputPlan plan,
      Body body,
      Fineness fineness) {
    this.configuration = configuration;
    this.whole = new ModalSystem(projection, basis.members());
    UsualStates usual =
        new UsualStates(
            whole, body.drives, ReducedModel.rates(operator.fixesLevel()), body.apart());
    int linear = plan.linear.size();
    Candidates[] candidates = new Candidates[plan.blocks.size()];
    this.firstCandidate = new int[candidates.length + 1];
    firstCandidate[0] = linear;
    for (int block = 0; block < candidates.length; block++) {
      int from = projection.firstNode[block];
      candidates[block] = new Candidates(projection, from, projection.firstNode[block + 1], usual);
      firstCandidate[block + 1] = firstCandidate[block] + candidates[block].rows.length;
    }
    int[] chosen = IntStream.range(0, firstCandidate[candidates.length]).toArray();
    for (int block = 0; block < candidates.length; block++) {
      int[] rows = candidates[block].rows;
      System.arraycopy(rows, 0, chosen, firstCandidate[block], rows.length);
    }
    this.outputs = whole.rows(projection.outputs, chosen);
    this.flows = whole.rows(projection.flows, IntStream.range(0, projection.boundaries).toArray());
    this.coarser = new ModalSystem[fineness.leftOut.length];
    this.coarserOutputs = new ModalSystem.RowBlock[fineness.leftOut.length];
    for (int model = 0; model < coarser.length; model++) {
      coarser[model] = new ModalSystem(projection, basis.membersWithout(fineness.leftOut[model]));
      coarserOutputs[model] = coarser[model].rows(projection.outputs, chosen);
    }
  }
}
