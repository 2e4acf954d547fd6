package stenotherm.modal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stenotherm.base.Workers;
import stenotherm.conduction.ReducibleNetwork;

/**
 * The basis V of a rational Krylov space, orthonormal in the inner product x' C y of the heat
 * capacities. It grows while a model is built, never afterwards.
 */
final class KrylovBasis {
  /**
   * If the new part of a vector is smaller than this, relative to the vector, it is only round-off.
   */
  private static final double DEFLATION = 1e-8;

  /** One Gram-Schmidt pass is enough where at least this part of the norm is left. */
  private static final double ENOUGH_LEFT = 0.5;

  private final double[] capacity;
  private final List<double[]> vectors;

  /** Index of the shift of each vector; negative if it has none. */
  private final List<Integer> shift;

  KrylovBasis(ReducibleNetwork operator) {
    double[] ones = operator.indicator(Optional.empty());
    capacity = operator.vector();
    operator.store(ones, capacity);
    vectors = new ArrayList<>();
    shift = new ArrayList<>();
  }

  int size() {
    return vectors.size();
  }

  /** All vectors. */
  int[] members() {
    return IntStream.range(0, vectors.size()).toArray();
  }

  /** The vectors of a coarser model that leaves out the resolvents at one shift. */
  int[] membersWithoutShift(int shiftLeftOut) {
    return IntStream.range(0, vectors.size()).filter(j -> shift.get(j) != shiftLeftOut).toArray();
  }

  double[] vector(int index) {
    return vectors.get(index);
  }

  /**
   * Adds the linearly independent part of some vectors, which are overwritten.
   *
   * @param shiftIndex index of their shift; negative if they have none
   * @return how many vectors the basis has grown by
   */
  int add(List<double[]> some, int shiftIndex, Workers workers) {
    List<NewVector> fresh = new ArrayList<>();
    some.forEach(x -> fresh.add(new NewVector(x, shiftIndex)));
    return add(fresh, workers);
  }

  /**
   * Adds the linearly independent part of some vectors, which are overwritten: block Gram-Schmidt,
   * with a second pass where the first cancels much.
   *
   * @return how many vectors the basis has grown by
   */
  int add(List<NewVector> some, Workers workers) {
    double[] enough = new double[some.size()];
    double[] least = new double[some.size()];
    for (int n = 0; n < least.length; n++) {
      double norm = norm(some.get(n).x);
      enough[n] = ENOUGH_LEFT * norm;
      least[n] = DEFLATION * norm;
    }
    orthogonalise(some, workers);
    List<NewVector> found = new ArrayList<>();
    List<NewVector> small = new ArrayList<>();
    double[] leastOfSmall = new double[some.size()];
    for (int n = 0; n < least.length; n++) {
      if (!addNew(some.get(n), enough[n], found, List.of())) {
        leastOfSmall[small.size()] = least[n];
        small.add(some.get(n));
      }
    }
    // twice is enough: the second pass removes what round-off left in the first
    List<NewVector> once = new ArrayList<>();
    for (int n = 0; n < small.size(); n++) {
      addNew(small.get(n), leastOfSmall[n], once, found);
    }
    orthogonalise(once, workers);
    List<NewVector> twice = new ArrayList<>();
    for (NewVector each : once) {
      addNew(each, 0, twice, found);
    }
    found.addAll(twice);
    for (NewVector each : found) {
      vectors.add(each.x);
      shift.add(each.shiftIndex);
    }
    return found.size();
  }

  /** A vector on its way into a basis. */
  static final class NewVector {
    private final double[] x;
    private final int shiftIndex;

    /**
     * Takes a vector.
     *
     * @param shiftIndex index of its shift; negative if it has none
     */
    NewVector(double[] x, int shiftIndex) {
      this.x = x;
      this.shiftIndex = shiftIndex;
    }
  }

  /**
   * Makes a vector orthogonal to some others and to a list, normalises it and adds it to the list.
   *
   * @param least norm that must be left
   * @return whether it was
   */
  private boolean addNew(
      NewVector fresh, double least, List<NewVector> to, List<NewVector> others) {
    double[] x = fresh.x;
    for (List<NewVector> some : List.of(others, to)) {
      for (NewVector other : some) {
        Panels.add(other.x, -product(other.x, x), x, 0, x.length);
      }
    }
    double length = norm(x);
    if (!(length > least)) {
      return false;
    }
    for (int i = 0; i < x.length; i++) {
      x[i] /= length;
    }
    to.add(fresh);
    return true;
  }

  /** Makes some vectors orthogonal to the basis. */
  private void orthogonalise(List<NewVector> fresh, Workers workers) {
    List<double[]> some = fresh.stream().map(each -> each.x).toList();
    List<double[]> weighted = some.stream().map(this::timesCapacity).toList();
    double[][] along = Panels.products(workers, vectors, weighted);
    for (double[] row : along) {
      for (int n = 0; n < row.length; n++) {
        row[n] = -row[n];
      }
    }
    Panels.addCombinations(workers, vectors, along, some);
  }

  private double norm(double[] x) {
    return Math.sqrt(product(x, x));
  }

  /** C x. */
  private double[] timesCapacity(double[] x) {
    double[] product = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      product[i] = capacity[i] * x[i];
    }
    return product;
  }

  /** Coordinates of the closest state within the basis; it has the same heat content. */
  double[] project(double[] x) {
    return vectors.stream().mapToDouble(vector -> product(vector, x)).toArray();
  }

  /** The linear combination with the coordinates given; those left out are zero. */
  double[] expand(double[] coordinates) {
    double[] x = new double[capacity.length];
    for (int j = 0; j < coordinates.length; j++) {
      Panels.add(vectors.get(j), coordinates[j], x, 0, x.length);
    }
    return x;
  }

  /** The linear combinations with the coordinates given, a column for each. */
  List<double[]> expand(double[][] coordinates, int count, Workers workers) {
    List<double[]> states = new ArrayList<>();
    for (int n = 0; n < count; n++) {
      states.add(new double[capacity.length]);
    }
    Panels.addCombinations(workers, vectors.subList(0, coordinates.length), coordinates, states);
    return states;
  }

  List<double[]> vectors() {
    return Collections.unmodifiableList(vectors);
  }

  private double product(double[] a, double[] b) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int i = 0;
    for (; i + 3 < a.length; i += 4) {
      s0 += capacity[i] * a[i] * b[i];
      s1 += capacity[i + 1] * a[i + 1] * b[i + 1];
      s2 += capacity[i + 2] * a[i + 2] * b[i + 2];
      s3 += capacity[i + 3] * a[i + 3] * b[i + 3];
    }
    for (; i < a.length; i++) {
      s0 += capacity[i] * a[i] * b[i];
    }
    return s0 + s1 + (s2 + s3);
  }
}
