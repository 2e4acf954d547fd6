package stenotherm.transit;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;

/**
 * Tells the mean temperatures of a stage when a run comes to its beginning: those of a usual run,
 * and linearly what follows from how the run differs from it by then. The weights are fitted to a
 * few runs.
 *
 * <p>What a run differs by: the temperature of each block now, for surfaces the mean of all blocks;
 * and what {@link Course#conditions} has, the mean ambient of the stage among them.
 *
 * @param usual what the usual run met
 * @param ofSurfaces weights of what a run differs by, for each surface
 * @param ofBlocks the same for each block
 */
@SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
record StageForecast(Met usual, double[][] ofSurfaces, double[][] ofBlocks) {
  /** Part of the diagonal that is added to it: a difference that no run has gets no weight. */
  private static final double RIDGE = 1e-6;

  /**
   * What a run has met in a stage.
   *
   * @param atStart mean temperature of each block at the beginning [K]
   * @param conditions see {@link Course#conditions}
   * @param means mean temperatures over the stage
   */
  record Met(double[] atStart, double[] conditions, Temperatures means) {
    private double warmth() {
      double sum = 0;
      for (double each : atStart) {
        sum += each;
      }
      return atStart.length == 0 ? 0 : sum / atStart.length;
    }
  }

  /** Fits weights to runs. */
  static StageForecast fitted(Met usual, List<Met> runs) {
    double[][] ofSurfaces = new double[usual.means.surfaces().length][];
    for (int n = 0; n < ofSurfaces.length; n++) {
      int surface = n;
      ofSurfaces[n] = weights(usual, runs, Met::warmth, met -> met.means.surfaces()[surface]);
    }
    double[][] ofBlocks = new double[usual.means.blocks().length][];
    for (int n = 0; n < ofBlocks.length; n++) {
      int block = n;
      ofBlocks[n] =
          weights(usual, runs, met -> met.atStart[block], met -> met.means.blocks()[block]);
    }
    return new StageForecast(usual, ofSurfaces, ofBlocks);
  }

  /** The same weights about another usual run. */
  StageForecast about(Met other) {
    return new StageForecast(other, ofSurfaces, ofBlocks);
  }

  private static double[] weights(
      Met usual, List<Met> runs, ToDoubleFunction<Met> now, ToDoubleFunction<Met> mean) {
    int count = 1 + usual.conditions.length;
    DMatrixRMaj differences = new DMatrixRMaj(runs.size(), count);
    DMatrixRMaj changes = new DMatrixRMaj(runs.size(), 1);
    for (int row = 0; row < runs.size(); row++) {
      Met run = runs.get(row);
      differences.set(row, 0, now.applyAsDouble(run) - now.applyAsDouble(usual));
      for (int n = 1; n < count; n++) {
        differences.set(row, n, run.conditions[n - 1] - usual.conditions[n - 1]);
      }
      changes.set(row, 0, mean.applyAsDouble(run) - mean.applyAsDouble(usual));
    }
    DMatrixRMaj normal = new DMatrixRMaj(count, count);
    DMatrixRMaj right = new DMatrixRMaj(count, 1);
    CommonOps_DDRM.multTransA(differences, differences, normal);
    CommonOps_DDRM.multTransA(differences, changes, right);
    for (int n = 0; n < count; n++) {
      normal.set(n, n, normal.get(n, n) * (1 + RIDGE) + Double.MIN_NORMAL);
    }
    DMatrixRMaj weights = new DMatrixRMaj(count, 1);
    CommonOps_DDRM.solve(normal, right, weights);
    return weights.getData();
  }

  /** The mean temperatures to expect in a run that differs from the usual one. */
  Temperatures means(double[] atStart, double[] conditions) {
    Met run = new Met(atStart, conditions, usual.means);
    double[] surfaces = usual.means.surfaces().clone();
    for (int n = 0; n < surfaces.length; n++) {
      surfaces[n] += change(ofSurfaces[n], run.warmth() - usual.warmth(), conditions);
    }
    double[] blocks = usual.means.blocks().clone();
    for (int n = 0; n < blocks.length; n++) {
      blocks[n] += change(ofBlocks[n], atStart[n] - usual.atStart[n], conditions);
    }
    return new Temperatures(surfaces, blocks);
  }

  private double change(double[] weights, double now, double[] conditions) {
    double sum = weights[0] * now;
    for (int n = 0; n < conditions.length; n++) {
      sum += weights[n + 1] * (conditions[n] - usual.conditions[n]);
    }
    return sum;
  }
}
