package stenotherm.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.jspecify.annotations.Nullable;
import stenotherm.conduction.ReducibleNetwork;

/**
 * A configuration while a basis is found for it: V'GV of the vectors so far, and the answers of the
 * body, each of which starts from the best that the vectors so far can do.
 *
 * <p>What comes out is the same for any number of threads: each answer is found by one of them, and
 * no sum is split among them.
 */
final class Reduction {
  /** A part of the heat that an answer conducts, below which a change of it is round-off. */
  private static final double LEAST_CHANGE = 1e-6;

  /** Vectors that are multiplied with the whole basis at a time: as many as stay in the cache. */
  private static final int LOT = 16;

  final Configuration configuration;

  private final Crew crew;

  /** One for each thread, made when it is needed. */
  private final @Nullable ReducibleNetwork[] operators;

  private final double[] rates;

  /** What a uniform rise takes [W/K] and holds [J/K]. */
  private final double reaction;

  private final double capacity;

  private final Drives drives;
  private final Set<String> startingApart;

  /** What the answers are to [W], made when it is needed. */
  private @Nullable List<double[]> heats;

  /** Its products with the vectors so far, a row for each of these. */
  private double[][] ofHeats = new double[0][];

  /** V'GV of the vectors so far, row by row. */
  private double[] conductance = new double[0];

  private int size;
  private long iterations;

  /**
   * Makes a reduction.
   *
   * @param drives the inputs that answers are found to
   * @param startingApart blocks that may start at another temperature than the rest: what each
   *     holds is a heat with an answer as well
   */
  Reduction(Configuration configuration, Crew crew, Drives drives, Set<String> startingApart) {
    this.configuration = configuration;
    this.crew = crew;
    this.drives = drives;
    this.startingApart = startingApart;
    operators = new ReducibleNetwork[crew.threads()];
    ReducibleNetwork operator = operator(0);
    rates = ReducedModel.rates(operator.fixesLevel());
    double[] ones = operator.indicator(Optional.empty());
    double[] taken = operator.vector();
    operator.conduct(ones, taken);
    reaction = magnitude(taken);
    operator.store(ones, taken);
    capacity = magnitude(taken);
  }

  private static double magnitude(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += Math.abs(value);
    }
    return sum;
  }

  /** The operator of a thread, 0 for the one that calls. */
  ReducibleNetwork operator(int worker) {
    ReducibleNetwork operator = operators[worker];
    if (operator == null) {
      operator = configuration.operator();
      operators[worker] = operator;
    }
    return operator;
  }

  Crew crew() {
    return crew;
  }

  /** Iterations of the linear solver so far. */
  long iterations() {
    return iterations;
  }

  private List<double[]> heats() {
    if (heats == null) {
      ReducibleNetwork operator = operator(0);
      heats = drives.heats(operator);
      for (String block : startingApart) {
        double[] held = operator.vector();
        operator.store(operator.indicator(Optional.of(block)), held);
        heats.add(held);
      }
    }
    return heats;
  }

  /** V'GV of a basis, row by row; what is known of its first vectors is kept. */
  double[] conductance(Basis basis) {
    int known = size;
    size = basis.size();
    if (known == size) {
      return conductance;
    }
    double[] larger = new double[size * size];
    for (int i = 0; i < known; i++) {
      System.arraycopy(conductance, i * known, larger, i * size, known);
    }
    conductance = larger;
    for (int from = known; from < size; from += LOT) {
      addColumns(basis, from, Math.min(from + LOT, size));
    }
    return conductance;
  }

  private void addColumns(Basis basis, int from, int to) {
    List<double[]> heats = new ArrayList<>();
    for (int j = from; j < to; j++) {
      heats.add(operator(0).vector());
    }
    crew.run(
        heats.size(),
        (worker, n) -> operator(worker).conduct(basis.vector(from + n), heats.get(n)));
    double[][] products = Panels.products(crew, basis.vectors().subList(0, to), heats);
    for (int j = from; j < to; j++) {
      for (int i = 0; i <= j; i++) {
        conductance[i * size + j] = products[i][j - from];
        conductance[j * size + i] = products[i][j - from];
      }
    }
  }

  /**
   * Finds the answers at one rate and adds them to a basis.
   *
   * @param number number of the rate
   * @param fits error up to which the answer that the basis has already will do, as part of the
   *     mean rise that the heat would cause; 0 if all are wanted
   * @param accuracy error of those that are found
   */
  void addAnswers(int number, double fits, double accuracy, Basis basis) {
    List<double[]> to = heats();
    basis.add(solve(number, to, guesses(to, rates[number], basis), fits, accuracy), number, crew);
  }

  /** Finds answers from guesses, which are overwritten; returns those that were not good enough. */
  private List<double[]> solve(
      int number, List<double[]> to, List<double[]> answers, double fits, double accuracy) {
    double rate = rates[number];
    int[] taken = new int[to.size()];
    boolean[] isWanted = new boolean[to.size()];
    crew.run(
        to.size(),
        (worker, n) -> {
          double[] heat = to.get(n);
          double[] answer = answers.get(n);
          // the mean rise that the heat would cause if it spread evenly
          double level = magnitude(heat) / (reaction + rate * capacity);
          ReducibleNetwork operator = operator(worker);
          isWanted[n] = fits == 0 || operator.error(rate, heat, answer) > fits * level;
          if (isWanted[n]) {
            taken[n] = operator.solve(rate, heat, answer, accuracy * level);
          }
        });
    List<double[]> wanted = new ArrayList<>();
    for (int n = 0; n < taken.length; n++) {
      iterations += taken[n];
      if (isWanted[n]) {
        wanted.add(answers.get(n));
      }
    }
    return wanted;
  }

  /** Adds those answers that a basis does not yet know well enough. */
  void addMissing(Fineness fineness, Basis basis) {
    for (int rate : fineness.rates) {
      addAnswers(rate, fineness.fits, fineness.accuracy(rate), basis);
    }
  }

  /**
   * Adds what happens within minutes when a run passes to this configuration: inputs have made
   * differences of temperature through which heat now goes otherwise.
   *
   * @param before the configuration from which it passes
   */
  void addPassage(Reduction before, Fineness fineness, Basis basis) {
    if (fineness.passages.length > 0) {
      List<double[]> changes = changes(before, basis);
      for (int number : fineness.passages) {
        List<double[]> answers = new ArrayList<>();
        changes.forEach(change -> answers.add(operator(0).vector()));
        basis.add(solve(number, changes, answers, 0, fineness.accuracy(number)), number, crew);
      }
      before.release();
      release();
    }
  }

  /** How much more heat cells get here in the steady answers of another one to its inputs [W]. */
  private List<double[]> changes(Reduction other, Basis basis) {
    List<double[]> answers = other.guesses(other.heats(), other.rates[0], basis);
    List<double[]> changes = new ArrayList<>();
    for (int drive = 0; drive < drives.count(); drive++) {
      double[] change = operator(0).vector();
      double[] here = operator(0).vector();
      other.operator(0).conduct(answers.get(drive), change);
      operator(0).conduct(answers.get(drive), here);
      double conducted = magnitude(change);
      for (int i = 0; i < change.length; i++) {
        change[i] += heats().get(drive)[i] - other.heats().get(drive)[i] - here[i];
      }
      if (magnitude(change) > LEAST_CHANGE * conducted) {
        changes.add(change);
      }
    }
    return changes;
  }

  /** Gives up the working space, until it is needed again. */
  void release() {
    Arrays.fill(operators, null);
    heats = null;
  }

  /** The best answers within a basis: by Galerkin's method, V (V'GV + s)^-1 V'b. */
  private List<double[]> guesses(List<double[]> to, double rate, Basis basis) {
    double[] ofBasis = conductance(basis);
    DMatrixRMaj matrix = new DMatrixRMaj(size, size);
    System.arraycopy(ofBasis, 0, matrix.data, 0, ofBasis.length);
    for (int i = 0; i < size; i++) {
      matrix.add(i, i, rate);
    }
    int known = ofHeats.length;
    if (known < size) {
      double[][] more = Panels.products(crew, basis.vectors().subList(known, size), to);
      ofHeats = Arrays.copyOf(ofHeats, size);
      System.arraycopy(more, 0, ofHeats, known, more.length);
    }
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(size);
    double[][] coordinates = new double[size][to.size()];
    if (solver.setA(matrix)) {
      DMatrixRMaj solution = new DMatrixRMaj(size, to.size());
      solver.solve(new DMatrixRMaj(ofHeats), solution);
      for (int i = 0; i < size; i++) {
        for (int n = 0; n < to.size(); n++) {
          coordinates[i][n] = solution.get(i, n);
        }
      }
    }
    // where round-off leaves the small matrix without a factor, the guesses are zero
    return basis.expand(coordinates, to.size(), crew);
  }
}
