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
 * sums over the body have the same parts.
 */
final class Reduction {
  /** A part of the heat that an answer conducts, below which a change of it is round-off. */
  private static final double LEAST_CHANGE = 1e-6;

  /** Rates far apart whose answers are looked at in one go through the vectors. */
  private static final int LOOKED_AT_TOGETHER = 2;

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
  private @Nullable List<HeatPattern> heats;

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

  private List<HeatPattern> heats() {
    if (heats == null) {
      ReducibleNetwork operator = operator(0);
      heats = drives.heats(operator);
      for (String block : startingApart) {
        double[] held = operator.vector();
        operator.store(operator.indicator(Optional.of(block)), held);
        heats.add(new HeatPattern(held));
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
    double[][] products =
        Panels.symmetricProducts(
            crew,
            basis.vectors(),
            known,
            (worker, v, from, count, result) -> operator(worker).conduct(v, from, count, result));
    for (int j = known; j < size; j++) {
      for (int i = 0; i <= j; i++) {
        conductance[i * size + j] = products[i][j - known];
        conductance[j * size + i] = products[i][j - known];
      }
    }
    return conductance;
  }

  /** An answer to a heat at a rate, on its way into a basis. */
  private static final class Answer {
    private final int number;
    private final HeatPattern heat;

    /** The temperatures [K], by and by: a guess, the answer, what the answer adds to the guess. */
    private final double[] x;

    /** Error of the guess, as a part of the mean rise that the heat would cause. */
    private double error;

    Answer(int number, HeatPattern heat, double[] guess) {
      this.number = number;
      this.heat = heat;
      this.x = guess;
    }
  }

  /** The mean rise that a heat would cause at a rate if it spread evenly [K]. */
  private double level(Answer answer) {
    return answer.heat.magnitude() / (reaction + rates[answer.number] * capacity);
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
    addThoseThatDoNotFit(guesses(new int[] {number}, basis), fits, accuracy, basis);
  }

  private void addThoseThatDoNotFit(
      List<Answer> guesses, double fits, double accuracy, Basis basis) {
    if (fits > 0) {
      estimate(guesses);
      guesses.removeIf(guess -> guess.error <= fits);
    }
    basis.add(find(guesses, accuracy), crew);
  }

  /** Estimates the errors of guesses. */
  private void estimate(List<Answer> answers) {
    int[] numbers = answers.stream().mapToInt(answer -> answer.number).distinct().toArray();
    // all of a rate by one thread, as each factors anew for another rate
    crew.run(
        numbers.length,
        (worker, n) -> {
          for (Answer answer : answers) {
            if (answer.number == numbers[n]) {
              double rate = rates[answer.number];
              double error = operator(worker).error(rate, answer.heat.vector(), answer.x);
              answer.error = error / level(answer);
            }
          }
        });
  }

  /**
   * Goes from guesses to answers.
   *
   * @param accuracy error of the answers, as a part of the mean rise that the heat would cause
   * @return what they add to the guesses, as far as these were not good enough
   */
  private List<Basis.Fresh> find(List<Answer> answers, double accuracy) {
    int[] taken = new int[answers.size()];
    crew.run(
        taken.length,
        (worker, n) -> {
          Answer answer = answers.get(n);
          double[] guess = answer.x.clone();
          double[] heat = answer.heat.vector();
          double allowed = accuracy * level(answer);
          taken[n] = operator(worker).solve(rates[answer.number], heat, answer.x, allowed);
          for (int i = 0; i < guess.length; i++) {
            answer.x[i] -= guess[i];
          }
        });
    List<Basis.Fresh> added = new ArrayList<>();
    for (int n = 0; n < taken.length; n++) {
      iterations += taken[n];
      if (taken[n] > 0) {
        added.add(new Basis.Fresh(answers.get(n).x, answers.get(n).number));
      }
    }
    return added;
  }

  /** Error of an answer that a basis found for other configurations may leave. */
  double fits(Fineness fineness) {
    return fineness.fits(heatCount());
  }

  private int heatCount() {
    return drives.count() + startingApart.size();
  }

  /** Adds those answers that a basis does not yet know well enough. */
  void addMissing(Fineness fineness, Basis basis) {
    int[] rates = fineness.rates;
    for (int from = 0; from < rates.length; from += LOOKED_AT_TOGETHER) {
      int to = Math.min(from + LOOKED_AT_TOGETHER, rates.length);
      List<Answer> answers = guesses(Arrays.copyOfRange(rates, from, to), basis);
      addThoseThatDoNotFit(answers, fits(fineness), fineness.grown(heatCount()), basis);
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
      List<HeatPattern> changes = changes(before, basis);
      for (int number : fineness.passages) {
        List<Answer> answers = new ArrayList<>();
        changes.forEach(change -> answers.add(new Answer(number, change, operator(0).vector())));
        basis.add(find(answers, fineness.accuracy(number)), crew);
      }
      before.release();
      release();
    }
  }

  /** How much more heat cells get here in the steady answers of another one to its inputs [W]. */
  private List<HeatPattern> changes(Reduction other, Basis basis) {
    List<Answer> answers = other.guesses(new int[] {0}, basis);
    List<HeatPattern> changes = new ArrayList<>();
    for (int drive = 0; drive < drives.count(); drive++) {
      double[] change = operator(0).vector();
      double[] here = operator(0).vector();
      other.operator(0).conduct(answers.get(drive).x, change);
      operator(0).conduct(answers.get(drive).x, here);
      double conducted = magnitude(change);
      double[] heatThere = other.heats().get(drive).vector();
      double[] heatHere = heats().get(drive).vector();
      for (int i = 0; i < change.length; i++) {
        change[i] += heatHere[i] - heatThere[i] - here[i];
      }
      if (magnitude(change) > LEAST_CHANGE * conducted) {
        changes.add(new HeatPattern(change));
      }
    }
    return changes;
  }

  /** Gives up the working space, until it is needed again. */
  void release() {
    Arrays.fill(operators, null);
    heats = null;
  }

  /**
   * The best answers to all heats within a basis, at some rates: by Galerkin's method, V (V'GV +
   * s)^-1 V'b.
   */
  private List<Answer> guesses(int[] numbers, Basis basis) {
    double[] ofBasis = conductance(basis);
    multiplyHeats(basis);
    int count = heats().size();
    double[][] coordinates = new double[size][numbers.length * count];
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(size);
    DMatrixRMaj right = new DMatrixRMaj(size, 1);
    DMatrixRMaj solution = new DMatrixRMaj(size, 1);
    for (int n = 0; n < numbers.length; n++) {
      DMatrixRMaj matrix = new DMatrixRMaj(size, size, true, ofBasis.clone());
      for (int i = 0; i < size; i++) {
        matrix.add(i, i, rates[numbers[n]]);
      }
      // where round-off leaves the small matrix without a factor, the guesses are zero
      boolean hasFactor = solver.setA(matrix);
      for (int heat = 0; hasFactor && heat < count; heat++) {
        for (int i = 0; i < size; i++) {
          right.set(i, 0, ofHeats[i][heat]);
        }
        solver.solve(right, solution);
        for (int i = 0; i < size; i++) {
          coordinates[i][n * count + heat] = solution.get(i, 0);
        }
      }
    }
    List<double[]> guesses = basis.expand(coordinates, numbers.length * count, crew);
    List<Answer> answers = new ArrayList<>();
    for (int n = 0; n < guesses.size(); n++) {
      answers.add(new Answer(numbers[n / count], heats().get(n % count), guesses.get(n)));
    }
    return answers;
  }

  /** Multiplies the heats with those vectors that are new. */
  private void multiplyHeats(Basis basis) {
    int known = ofHeats.length;
    List<HeatPattern> heats = heats();
    ofHeats = Arrays.copyOf(ofHeats, size);
    crew.run(
        size - known,
        (worker, n) -> {
          double[] v = basis.vector(known + n);
          ofHeats[known + n] = heats.stream().mapToDouble(heat -> heat.product(v)).toArray();
        });
  }
}
