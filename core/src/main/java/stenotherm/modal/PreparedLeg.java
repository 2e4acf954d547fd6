package stenotherm.modal;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A configuration in its modes, and in those of the coarser models. Immutable. */
final class PreparedLeg {
  final Configuration configuration;
  final ModalSystem whole;
  final ModalSystem[] coarser;

  /** All nodes of the blocks with extremes; none in a model that was read. */
  private final @Nullable BlockNodes[] nodes;

  /**
   * Positions among the outputs, after the linear ones, of the first candidate of each block with
   * extremes; one more at the end.
   */
  final int[] firstCandidate;

  final ModalSystem.RowBlock outputs;
  final ModalSystem.SingleRows[] coarserOutputs;

  /** Heat flow into the body through each boundary. */
  final ModalSystem.RowBlock flows;

  PreparedLeg(
      ProjectedLeg of, List<Candidates> candidates, KrylovBasis basis, BasisSettings settings) {
    Projection projection = of.projection;
    this.configuration = of.configuration;
    this.whole = of.whole;
    this.nodes = of.nodes;
    this.firstCandidate = new int[nodes.length + 1];
    int linear = projection.firstNode[0];
    firstCandidate[0] = linear;
    for (int block = 0; block < nodes.length; block++) {
      firstCandidate[block + 1] = firstCandidate[block] + candidates.get(block).count();
    }
    int[] chosen = new int[firstCandidate[nodes.length]];
    for (int row = 0; row < linear; row++) {
      chosen[row] = row;
    }
    for (int block = 0; block < nodes.length; block++) {
      for (int c = 0; c < candidates.get(block).count(); c++) {
        chosen[firstCandidate[block] + c] =
            projection.firstNode[block] + candidates.get(block).node(c);
      }
    }
    Projection.Rows rows = projection.outputs.chosen(chosen);
    this.outputs = whole.rows(rows);
    this.flows = whole.rows(projection.flows);
    this.coarser = new ModalSystem[settings.shiftsLeftOut.length];
    this.coarserOutputs = new ModalSystem.SingleRows[settings.shiftsLeftOut.length];
    for (int model = 0; model < coarser.length; model++) {
      coarser[model] =
          new ModalSystem(projection, basis.membersWithoutShift(settings.shiftsLeftOut[model]));
      coarserOutputs[model] = coarser[model].singleRows(rows);
    }
  }

  /** Takes over what was read. */
  PreparedLeg(
      Configuration configuration,
      ModalSystem whole,
      ModalSystem.RowBlock outputs,
      ModalSystem.RowBlock flows,
      int[] firstCandidate,
      ModalSystem[] coarser,
      ModalSystem.SingleRows[] coarserOutputs) {
    this.configuration = configuration;
    this.whole = whole;
    this.outputs = outputs;
    this.flows = flows;
    this.nodes = new BlockNodes[firstCandidate.length - 1];
    this.firstCandidate = firstCandidate;
    this.coarser = coarser;
    this.coarserOutputs = coarserOutputs;
  }

  /** All nodes of a block with extremes. */
  BlockNodes nodes(int block) {
    BlockNodes of = nodes[block];
    if (of == null) {
      throw ReducedModel.withoutCells("what extremes miss");
    }
    return of;
  }
}
