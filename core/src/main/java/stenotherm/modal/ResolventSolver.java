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
import stenotherm.base.Workers;
import stenotherm.conduction.ReducibleNetwork;

/**
 * Applies the resolvent of one configuration to loads, (G + s C)^-1 b at real shifts s, and adds
 * the results to a Krylov basis V. It keeps the Galerkin projection V'GV of the vectors so far; the
 * Galerkin solution in them is the first guess of each solve.
 *
 * <p>The result is the same for any number of threads: each linear system is solved by one of them,
 * and sums over the body are split in the same way.
 */
final class ResolventSolver {
  /** A residual below this part of the heat conducted is round-off. */
  private static final double LEAST_CHANGE = 1e-6;

  /** How many shifts share one pass through the vectors of the basis. */
  private static final int SHIFTS_TOGETHER = 2;

  final Configuration configuration;

  private final Workers workers;

  /** One for each thread, made when it is needed. */
  private final @Nullable ReducibleNetwork[] operators;

  private final double[] shifts;

  /** Heat flow that a uniform rise of the body needs [W/K]. */
  private final double reaction;

  /** Heat that it stores [J/K]. */
  private final double capacity;

  private final InputGroups groups;
  private final Set<String> startingApart;

  /** The right-hand sides b [W], made when they are needed. */
  private @Nullable List<LoadVector> loads;

  /** V'b for the vectors so far, a row for each of them. */
  private double[][] projectedLoads = new double[0][];

  /** V'GV of the vectors so far, row by row. */
  private double[] conductance = new double[0];

  private int size;
  private long iterations;

  /**
   * Takes a configuration.
   *
   * @param groups the inputs, each group of which is a load
   * @param startingApart blocks that may start at another temperature than the rest: the heat
   *     capacities of each are a load as well
   */
  ResolventSolver(
      Configuration configuration, Workers workers, InputGroups groups, Set<String> startingApart) {
    this.configuration = configuration;
    this.workers = workers;
    this.groups = groups;
    this.startingApart = startingApart;
    operators = new ReducibleNetwork[workers.threads()];
    ReducibleNetwork operator = operator(0);
    shifts = ReducedModel.shifts(operator.fixesLevel());
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

  /** Iterations of the linear solver so far. */
  long iterations() {
    return iterations;
  }

  /** Loads of the strong groups, then of the starts, then of the weak groups. */
  private List<LoadVector> loads() {
    if (loads == null) {
      ReducibleNetwork operator = operator(0);
      List<LoadVector> ofInputs = groups.loads(operator);
      loads = new ArrayList<>(ofInputs.subList(0, groups.strong()));
      for (String block : startingApart) {
        double[] held = operator.vector();
        operator.store(operator.indicator(Optional.of(block)), held);
        loads.add(new LoadVector(held));
      }
      loads.addAll(ofInputs.subList(groups.strong(), ofInputs.size()));
    }
    return loads;
  }

  private int strongLoads() {
    return groups.strong() + startingApart.size();
  }

  /** V'GV of a basis, row by row; what is known of its first vectors is kept. */
  double[] conductance(KrylovBasis basis) {
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
            workers,
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

  /** The resolvent at a shift, applied to a load: (G + s C)^-1 b, on its way into a basis. */
  private static final class Resolvent {
    private final int shiftIndex;
    private final LoadVector load;

    /** Temperatures [K]: first the guess, then the solution, then their difference. */
    private final double[] x;

    /** Estimated error of the guess, in units of {@link #level}. */
    private double error;

    Resolvent(int shiftIndex, LoadVector load, double[] guess) {
      this.shiftIndex = shiftIndex;
      this.load = load;
      this.x = guess;
    }
  }

  /** The uniform rise that a load would cause at a shift: the scale of errors [K]. */
  private double level(Resolvent resolvent) {
    return resolvent.load.magnitude() / (reaction + shifts[resolvent.shiftIndex] * capacity);
  }

  /**
   * Applies the resolvent at one shift to all loads but weak ones and adds the results to a basis.
   *
   * @param shiftIndex index of the shift
   * @param threshold error of the Galerkin solution up to which nothing is added, in units of
   *     {@link #level}; 0 to add all
   * @param tolerance error of the solutions, in the same units
   */
  void addResolvents(int shiftIndex, double threshold, double tolerance, KrylovBasis basis) {
    addInaccurate(guesses(new int[] {shiftIndex}, basis), threshold, tolerance, basis);
  }

  /**
   * Adds to a basis what it lacks for weak loads, after all others but those that coarser models
   * leave out.
   *
   * @param settings at which shifts, and which error of their Galerkin solutions is left
   */
  void addWeak(BasisSettings settings, KrylovBasis basis) {
    double threshold = settings.weakThreshold;
    for (int shiftIndex : settings.weakShifts) {
      for (int load = strongLoads(); load < loads().size(); load++) {
        // one by one: walls help one another
        List<Resolvent> one = guesses(new int[] {shiftIndex}, load, load + 1, basis);
        addInaccurate(one, threshold, BasisSettings.ENRICHED * threshold, basis);
      }
    }
  }

  /** Solves for what the basis does not have accurately enough, and adds it. */
  private void addInaccurate(
      List<Resolvent> guesses, double threshold, double tolerance, KrylovBasis basis) {
    if (threshold > 0) {
      estimate(guesses);
      guesses.removeIf(guess -> guess.error <= threshold);
    }
    basis.add(solve(guesses, tolerance), workers);
  }

  /** Estimates the errors of guesses from their residuals. */
  private void estimate(List<Resolvent> resolvents) {
    int[] indices =
        resolvents.stream().mapToInt(resolvent -> resolvent.shiftIndex).distinct().toArray();
    // all of a shift on one thread: each shift needs a factorisation of its own
    workers.run(
        indices.length,
        (worker, n) -> {
          for (Resolvent resolvent : resolvents) {
            if (resolvent.shiftIndex == indices[n]) {
              double shift = shifts[resolvent.shiftIndex];
              double error = operator(worker).error(shift, resolvent.load.vector(), resolvent.x);
              resolvent.error = error / level(resolvent);
            }
          }
        });
  }

  /**
   * Solves (G + s C) x = b, from the guesses.
   *
   * @param tolerance error of the solutions, in units of {@link #level}
   * @return the differences of solutions and guesses, where a guess was not good enough
   */
  private List<KrylovBasis.NewVector> solve(List<Resolvent> resolvents, double tolerance) {
    int[] taken = new int[resolvents.size()];
    workers.run(
        taken.length,
        (worker, n) -> {
          Resolvent resolvent = resolvents.get(n);
          double[] guess = resolvent.x.clone();
          double[] load = resolvent.load.vector();
          double allowed = tolerance * level(resolvent);
          taken[n] =
              operator(worker).solve(shifts[resolvent.shiftIndex], load, resolvent.x, allowed);
          for (int i = 0; i < guess.length; i++) {
            resolvent.x[i] -= guess[i];
          }
        });
    List<KrylovBasis.NewVector> added = new ArrayList<>();
    for (int n = 0; n < taken.length; n++) {
      iterations += taken[n];
      if (taken[n] > 0) {
        added.add(new KrylovBasis.NewVector(resolvents.get(n).x, resolvents.get(n).shiftIndex));
      }
    }
    return added;
  }

  /**
   * Adds to a basis the resolvents whose Galerkin solution has too large an error.
   *
   * @param threshold the error up to which nothing is added, in units of {@link #level}
   */
  void enrich(BasisSettings settings, double threshold, KrylovBasis basis) {
    int[] order = settings.allShifts();
    for (int from = 0; from < order.length; from += SHIFTS_TOGETHER) {
      int to = Math.min(from + SHIFTS_TOGETHER, order.length);
      List<Resolvent> resolvents = guesses(Arrays.copyOfRange(order, from, to), basis);
      addInaccurate(resolvents, threshold, BasisSettings.ENRICHED * threshold, basis);
    }
  }

  /**
   * Adds what happens within minutes after a run goes from another configuration to this one. The
   * steady states of the other are not steady here: their residuals act as loads, far from where
   * any input acts.
   *
   * @param before the other configuration
   */
  void addSwitch(ResolventSolver before, BasisSettings settings, KrylovBasis basis) {
    if (settings.switchShifts.length > 0) {
      List<LoadVector> residuals = steadyResiduals(before, basis);
      for (int shiftIndex : settings.switchShifts) {
        List<Resolvent> resolvents = new ArrayList<>();
        residuals.forEach(
            residual -> resolvents.add(new Resolvent(shiftIndex, residual, operator(0).vector())));
        basis.add(solve(resolvents, settings.tolerance(shiftIndex)), workers);
      }
      before.release();
      release();
    }
  }

  /** Residuals b - G x here of the steady states x of another configuration [W]. */
  private List<LoadVector> steadyResiduals(ResolventSolver other, KrylovBasis basis) {
    List<Resolvent> resolvents = other.guesses(new int[] {0}, basis);
    List<LoadVector> residuals = new ArrayList<>();
    for (int group = 0; group < groups.strong(); group++) {
      double[] residual = operator(0).vector();
      double[] here = operator(0).vector();
      other.operator(0).conduct(resolvents.get(group).x, residual);
      operator(0).conduct(resolvents.get(group).x, here);
      double conducted = magnitude(residual);
      double[] loadThere = other.loads().get(group).vector();
      double[] loadHere = loads().get(group).vector();
      for (int i = 0; i < residual.length; i++) {
        residual[i] += loadHere[i] - loadThere[i] - here[i];
      }
      if (magnitude(residual) > LEAST_CHANGE * conducted) {
        residuals.add(new LoadVector(residual));
      }
    }
    return residuals;
  }

  /** Frees the working space; it is made again when needed. */
  void release() {
    Arrays.fill(operators, null);
    loads = null;
  }

  /**
   * The Galerkin solutions for all loads but weak ones at some shifts, V (V'GV + s)^-1 V'b.
   *
   * @param indices of the shifts
   */
  private List<Resolvent> guesses(int[] indices, KrylovBasis basis) {
    return guesses(indices, 0, strongLoads(), basis);
  }

  private List<Resolvent> guesses(int[] indices, int from, int to, KrylovBasis basis) {
    double[] projected = conductance(basis);
    projectLoads(basis);
    int count = to - from;
    double[][] coordinates = new double[size][indices.length * count];
    LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.symmPosDef(size);
    DMatrixRMaj rightHandSide = new DMatrixRMaj(size, 1);
    DMatrixRMaj solution = new DMatrixRMaj(size, 1);
    for (int n = 0; n < indices.length; n++) {
      DMatrixRMaj matrix = new DMatrixRMaj(size, size, true, projected.clone());
      for (int i = 0; i < size; i++) {
        matrix.add(i, i, shifts[indices[n]]);
      }
      // where round-off leaves the small matrix without a factor, the guesses are zero
      boolean hasFactor = solver.setA(matrix);
      for (int load = 0; hasFactor && load < count; load++) {
        for (int i = 0; i < size; i++) {
          rightHandSide.set(i, 0, projectedLoads[i][from + load]);
        }
        solver.solve(rightHandSide, solution);
        for (int i = 0; i < size; i++) {
          coordinates[i][n * count + load] = solution.get(i, 0);
        }
      }
    }
    List<double[]> guesses = basis.expand(coordinates, indices.length * count, workers);
    List<Resolvent> resolvents = new ArrayList<>();
    for (int n = 0; n < guesses.size(); n++) {
      resolvents.add(
          new Resolvent(indices[n / count], loads().get(from + n % count), guesses.get(n)));
    }
    return resolvents;
  }

  /** Computes V'b for the vectors that are new. */
  private void projectLoads(KrylovBasis basis) {
    int known = projectedLoads.length;
    List<LoadVector> loads = loads();
    projectedLoads = Arrays.copyOf(projectedLoads, size);
    workers.run(
        size - known,
        (worker, n) -> {
          double[] v = basis.vector(known + n);
          projectedLoads[known + n] = loads.stream().mapToDouble(load -> load.product(v)).toArray();
        });
  }
}
