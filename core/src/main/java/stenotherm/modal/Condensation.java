package stenotherm.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.jspecify.annotations.Nullable;
import stenotherm.conduction.Probe;

/**
 * Projects a reduced model on few of its states: proper orthogonal decomposition (Sirovich 1987,
 * Quart. Appl. Math. 45:561, from memory). As the basis V is orthonormal in the inner product of
 * the heat capacities, coordinates are orthonormal in the usual one, and so is V W for orthonormal
 * W.
 *
 * <p>W begins with the uniform field, so that the heat balance still closes, and the states of
 * blocks that start apart. Then it takes the principal directions of what the states given have
 * beside these, the strongest first.
 */
final class Condensation {
  /** A vector of which so little is left is none of its own. */
  private static final double DEPENDENT = 1e-9;

  private final ReducedModel model;

  /** W: a column of coordinates in the old basis for each new vector. */
  private final List<double[]> columns = new ArrayList<>();

  /**
   * Chooses the directions.
   *
   * @param states coordinates of states [sqrt(J K)], at least one
   * @param size number of vectors of the new basis; fewer if the states span less
   */
  Condensation(ReducedModel model, List<double[]> states, int size) {
    this.model = model;
    Body body = model.reducedBody();
    takeUp(body.uniform().clone());
    body.apart().forEach(each -> takeUp(each.clone()));
    for (double[] direction : principal(states)) {
      if (columns.size() >= size) {
        break;
      }
      takeUp(direction);
    }
  }

  /** Adds what of a vector is orthogonal to the columns, made orthogonal twice. */
  private void takeUp(double[] vector) {
    double before = norm(vector);
    removeColumns(vector);
    removeColumns(vector);
    double left = norm(vector);
    if (left > DEPENDENT * before) {
      columns.add(Arrays.stream(vector).map(value -> value / left).toArray());
    }
  }

  private void removeColumns(double[] vector) {
    for (double[] column : columns) {
      double along = Columns.product(column, vector);
      for (int i = 0; i < vector.length; i++) {
        vector[i] -= along * column[i];
      }
    }
  }

  private static double norm(double[] vector) {
    return Math.sqrt(Columns.product(vector, vector));
  }

  /** Principal directions of what states have beside the columns, strongest first. */
  private List<double[]> principal(List<double[]> states) {
    int size = model.modes();
    DMatrixRMaj covariance = new DMatrixRMaj(size, size);
    for (double[] state : states) {
      double[] rest = state.clone();
      removeColumns(rest);
      for (int i = 0; i < size; i++) {
        for (int j = 0; j < size; j++) {
          covariance.add(i, j, rest[i] * rest[j]);
        }
      }
    }
    EigenDecomposition_F64<DMatrixRMaj> eigen = DecompositionFactory_DDRM.eig(size, true, true);
    if (!eigen.decompose(covariance)) {
      throw new IllegalStateException("the principal directions of the states were not found");
    }
    return IntStream.range(0, size)
        .boxed()
        .sorted(Comparator.comparingDouble(i -> -eigen.getEigenvalue(i).getReal()))
        .map(
            i ->
                IntStream.range(0, size)
                    .mapToDouble(row -> eigen.getEigenVector(i).get(row, 0))
                    .toArray())
        .toList();
  }

  /**
   * The parts of the model on the new basis.
   *
   * @param outputs outputs that are kept, each a linear one of the model
   */
  ReducedModel.Content content(List<Probe> outputs) {
    Body old = model.reducedBody();
    Map<String, double[]> apart = new TreeMap<>();
    int index = 0;
    for (String block : old.startingApart()) {
      apart.put(block, inNew(old.apart().get(index++)));
    }
    Body body =
        new Body(
            old.groups,
            old.capacity,
            old.solidBlocks,
            inNew(old.uniform()),
            ofNew(old.stored()),
            apart);
    ReducedNetwork network = model.network();
    double[][] ofSource =
        Arrays.stream(network.ofSource()).map(this::inNew).toArray(double[][]::new);
    ReducedNetwork reduced =
        new ReducedNetwork(
            network.ports(),
            columns.size(),
            network.terms().stream().map(this::projected).toList(),
            ofSource);
    List<ReducedModel.Spanned> spanned =
        model.spanned().stream()
            .map(each -> new ReducedModel.Spanned(each.films(), each.factors()))
            .toList();
    return new ReducedModel.Content(
        new OutputPlan(outputs),
        body,
        model.varying(),
        reduced,
        rows(outputs),
        spanned,
        model.iterations());
  }

  private ReducedModel.Rows rows(List<Probe> outputs) {
    int[] kept = outputs.stream().mapToInt(model.plan().linear::indexOf).toArray();
    InterpolatedRows read = model.rows();
    List<Projection.Rows> chosen = read.rows().stream().map(each -> each.chosen(kept)).toList();
    // means are the same at all conductivities: nothing to interpolate
    boolean areSame = chosen.stream().allMatch(chosen.get(0)::isSame);
    List<Projection.Rows> rows = new ArrayList<>();
    for (Projection.Rows each : areSame ? chosen.subList(0, 1) : chosen) {
      rows.add(new Projection.Rows(kept.length, ofNew(each.ofVector()), each.ofInput()));
    }
    InterpolatedRows interpolated =
        new InterpolatedRows(read.factors().subList(0, rows.size()), rows);
    return new ReducedModel.Rows(interpolated, new int[] {kept.length}, new int[0][]);
  }

  /** Coordinates, or a row of a linear function, in the new basis. */
  private double[] inNew(double[] coordinates) {
    return columns.stream().mapToDouble(each -> Columns.product(each, coordinates)).toArray();
  }

  /** What belongs to each vector, such as the heat content of each block. */
  private double[][] ofNew(double[][] ofVector) {
    double[][] sums = new double[columns.size()][ofVector[0].length];
    for (int column = 0; column < sums.length; column++) {
      double[] weights = columns.get(column);
      for (int j = 0; j < weights.length; j++) {
        Panels.add(ofVector[j], weights[j], sums[column], 0, sums[column].length);
      }
    }
    return sums;
  }

  private ReducedNetwork.Term projected(ReducedNetwork.Term term) {
    double @Nullable [] areas = term.areas();
    return new ReducedNetwork.Term(
        term.port(),
        term.first(),
        term.second(),
        term.ofFirst(),
        term.ofSecond(),
        term.area(),
        areas == null ? null : inNew(areas),
        projected(term.matrix()));
  }

  /** W'MW of a symmetric matrix; lower triangles, row after row. */
  private double[] projected(double[] lower) {
    int size = model.modes();
    int count = columns.size();
    double[] result = new double[count * (count + 1) / 2];
    double[] product = new double[size];
    for (int column = 0; column < count; column++) {
      double[] w = columns.get(column);
      for (int i = 0, at = 0; i < size; i++) {
        double sum = 0;
        for (int j = 0; j < i; j++, at++) {
          sum += lower[at] * w[j];
          product[j] += lower[at] * w[i];
        }
        product[i] = sum + lower[at++] * w[i];
      }
      for (int row = column; row < count; row++) {
        result[row * (row + 1) / 2 + column] = Columns.product(columns.get(row), product);
      }
    }
    return result;
  }
}
