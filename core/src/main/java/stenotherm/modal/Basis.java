package stenotherm.modal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stenotherm.conduction.ReducibleNetwork;

/**
 * Vectors that are orthonormal in the product x' C y of the heat capacities. Grows during
 * construction of a model, never afterwards.
 */
final class Basis {
  /** A vector of which less than this part is new adds nothing but round-off. */
  private static final double DEFLATION = 1e-8;

  /** Of a vector of which this part is left, round-off has left little that is not orthogonal. */
  private static final double ENOUGH_LEFT = 0.5;

  private final double[] capacity;
  private final List<double[]> vectors;

  /** Number of the rate that each vector is an answer at. */
  private final List<Integer> rate;

  Basis(ReducibleNetwork operator) {
    double[] ones = operator.indicator(Optional.empty());
    capacity = operator.vector();
    operator.store(ones, capacity);
    vectors = new ArrayList<>();
    rate = new ArrayList<>();
  }

  int size() {
    return vectors.size();
  }

  /** All vectors. */
  int[] members() {
    return IntStream.range(0, vectors.size()).toArray();
  }

  /** The vectors of a coarser model that goes without the answers at one rate. */
  int[] membersWithout(int rateLeftOut) {
    return IntStream.range(0, vectors.size()).filter(j -> rate.get(j) != rateLeftOut).toArray();
  }

  double[] vector(int index) {
    return vectors.get(index);
  }

  /**
   * Adds what is new in some vectors, which are overwritten.
   *
   * @param atRate number of the rate that they are answers at; negative if of none
   * @return how many brought something new
   */
  int add(List<double[]> some, int atRate, Crew crew) {
    List<Fresh> fresh = new ArrayList<>();
    some.forEach(x -> fresh.add(new Fresh(x, atRate)));
    return add(fresh, crew);
  }

  /**
   * Adds what is new in some vectors, which are overwritten.
   *
   * @return how many brought something new
   */
  int add(List<Fresh> some, Crew crew) {
    double[] enough = new double[some.size()];
    double[] least = new double[some.size()];
    for (int n = 0; n < least.length; n++) {
      double norm = norm(some.get(n).x);
      enough[n] = ENOUGH_LEFT * norm;
      least[n] = DEFLATION * norm;
    }
    takeOutOwn(some, crew);
    List<Fresh> found = new ArrayList<>();
    List<Fresh> small = new ArrayList<>();
    double[] leastOfSmall = new double[some.size()];
    for (int n = 0; n < least.length; n++) {
      if (!addNew(some.get(n), enough[n], found, List.of())) {
        leastOfSmall[small.size()] = least[n];
        small.add(some.get(n));
      }
    }
    // twice is enough: the second pass takes away what round-off left in the first
    List<Fresh> once = new ArrayList<>();
    for (int n = 0; n < small.size(); n++) {
      addNew(small.get(n), leastOfSmall[n], once, found);
    }
    takeOutOwn(once, crew);
    List<Fresh> twice = new ArrayList<>();
    for (Fresh each : once) {
      addNew(each, 0, twice, found);
    }
    found.addAll(twice);
    for (Fresh each : found) {
      vectors.add(each.x);
      rate.add(each.atRate);
    }
    return found.size();
  }

  /** A vector on its way into a basis. */
  static final class Fresh {
    private final double[] x;
    private final int atRate;

    /**
     * Takes a vector.
     *
     * @param atRate number of the rate that it is an answer at; negative if of none
     */
    Fresh(double[] x, int atRate) {
      this.x = x;
      this.atRate = atRate;
    }
  }

  /**
   * Takes others out of a vector, and adds it to the first of them as a unit vector.
   *
   * @param least norm that must be left
   * @return whether it was
   */
  private boolean addNew(Fresh fresh, double least, List<Fresh> to, List<Fresh> others) {
    double[] x = fresh.x;
    for (List<Fresh> some : List.of(others, to)) {
      for (Fresh other : some) {
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

  /** Takes what lies in the basis out of some vectors. */
  private void takeOutOwn(List<Fresh> fresh, Crew crew) {
    List<double[]> some = fresh.stream().map(each -> each.x).toList();
    List<double[]> heats = some.stream().map(this::heat).toList();
    double[][] along = Panels.products(crew, vectors, heats);
    for (double[] row : along) {
      for (int n = 0; n < row.length; n++) {
        row[n] = -row[n];
      }
    }
    Panels.addCombinations(crew, vectors, along, some);
  }

  private double norm(double[] x) {
    return Math.sqrt(product(x, x));
  }

  private double[] heat(double[] x) {
    double[] heat = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      heat[i] = capacity[i] * x[i];
    }
    return heat;
  }

  /** Coordinates of the closest state within the basis; it has the same heat content. */
  double[] project(double[] x) {
    return vectors.stream().mapToDouble(vector -> product(vector, x)).toArray();
  }

  /** The state with the coordinates given; those left out are zero. */
  double[] expand(double[] coordinates) {
    double[] x = new double[capacity.length];
    for (int j = 0; j < coordinates.length; j++) {
      Panels.add(vectors.get(j), coordinates[j], x, 0, x.length);
    }
    return x;
  }

  /** The states with the coordinates given, a column for each. */
  List<double[]> expand(double[][] coordinates, int count, Crew crew) {
    List<double[]> states = new ArrayList<>();
    for (int n = 0; n < count; n++) {
      states.add(new double[capacity.length]);
    }
    Panels.addCombinations(crew, vectors.subList(0, coordinates.length), coordinates, states);
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
