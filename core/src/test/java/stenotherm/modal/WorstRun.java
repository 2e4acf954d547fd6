package stenotherm.modal;

/**
 * A run of one configuration in which a node gets as far above all of some candidates as inputs
 * within their spans can bring it, nearly. In each round the inputs take, within each panel of
 * time, what raises the node most over a mixture of the candidates; the mixture then takes more of
 * the candidate that is warmest under the mean of all inputs so far. These means are the run.
 */
final class WorstRun {
  private static final int ROUNDS = 1500;

  private final Causes causes;
  private final int panels;

  /** What a node makes of each input in each panel of time. */
  private final double[][] answer;

  /** The inputs, less the middle of the ambient's span. */
  private final double[] input;

  WorstRun(Causes causes, BlockNodes nodes, int node, int[] candidates) {
    this.causes = causes;
    this.panels = causes.ever.panels;
    answer = new double[candidates.length][];
    for (int c = 0; c < candidates.length; c++) {
      answer[c] = answers(causes.row(nodes.row(candidates[c])));
    }
    double[] ofNode = answers(causes.row(nodes.row(node)));
    input = new double[ofNode.length];
    double[] mixture = new double[ofNode.length];
    int warmest = 0;
    for (int round = 1; round <= ROUNDS; round++) {
      for (int q = 0; q < mixture.length; q++) {
        mixture[q] += (answer[warmest][q] - mixture[q]) / round;
        var range = causes.inputs.get(q / panels).range();
        double best = ofNode[q] > mixture[q] ? range.high() : range.low();
        input[q] += (best - input[q]) / round;
      }
      double most = Double.NEGATIVE_INFINITY;
      for (int c = 0; c < candidates.length; c++) {
        double temperature = Columns.product(answer[c], input);
        warmest = temperature > most ? c : warmest;
        most = Math.max(most, temperature);
      }
    }
  }

  private double[] answers(double[] row) {
    double[] answers = new double[causes.inputs.size() * panels];
    for (int q = 0; q < answers.length; q++) {
      double[] drive = causes.inputs.get(q / panels).ofModes();
      for (int j = causes.ever.decaying; j < row.length; j++) {
        answers[q] += row[j] * drive[j] * causes.ever.integral[j][q % panels];
      }
    }
    return answers;
  }

  /** Follows it with an engine of a model without inputs that go together, from long ago. */
  void follow(ModalEngine engine, double level) {
    for (int panel = panels - 1; panel >= 0; panel--) {
      double[] inputs = new double[causes.inputs.size()];
      for (int i = 0; i < inputs.length; i++) {
        inputs[i] = input[i * panels + panel];
        inputs[i] += engine.inputs().get(i).unit().equals("K") ? level : 0;
      }
      engine.advance(causes.ever.width[panel], inputs, inputs);
    }
  }
}
