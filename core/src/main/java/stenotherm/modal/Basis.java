package stenotherm.modal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stenotherm.conduction.ReducibleNetwork;

/**
 * Vectors that are orthonormal in the product x' C y of the heat capacities. Grows during
 * construction of a model, never afterwards: a model that needs more makes a copy.
 */
final class Basis {
  /** A vector of which less than this part is new adds nothing but round-off. */
  private static final double DEFLATION = 1e-8;

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

  private Basis(Basis other) {
    capacity = other.capacity;
    vectors = new ArrayList<>(other.vectors);
    rate = new ArrayList<>(other.rate);
  }

  Basis copy() {
    return new Basis(this);
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
    List<double[]> fresh = new ArrayList<>(some);
    double[] before = new double[fresh.size()];
    for (int n = 0; n < before.length; n++) {
      before[n] = norm(fresh.get(n));
    }
    // twice is enough: the second pass takes away what round-off left in the first
    for (int pass = 0; pass < 2; pass++) {
      takeOutOwn(fresh, crew);
      double[] least = new double[fresh.size()];
      for (int n = 0; n < least.length; n++) {
        least[n] = pass == 0 ? DEFLATION * before[n] : 0;
      }
      fresh = orthonormal(fresh, least);
    }
    vectors.addAll(fresh);
    for (int n = 0; n < fresh.size(); n++) {
      rate.add(atRate);
    }
    return fresh.size();
  }

  /** Takes what lies in the basis out of some vectors. */
  private void takeOutOwn(List<double[]> some, Crew crew) {
    List<double[]> heats = new ArrayList<>();
    for (double[] x : some) {
      heats.add(heat(x));
    }
    double[][] along = Panels.products(crew, vectors, heats);
    for (double[] row : along) {
      for (int n = 0; n < row.length; n++) {
        row[n] = -row[n];
      }
    }
    Panels.addCombinations(crew, vectors, along, some);
  }

  /** Makes vectors orthonormal among themselves; leaves out those of which too little is new. */
  private List<double[]> orthonormal(List<double[]> some, double[] least) {
    List<double[]> kept = new ArrayList<>();
    for (int n = 0; n < some.size(); n++) {
      double[] x = some.get(n);
      for (double[] v : kept) {
        Panels.add(v, -product(v, x), x, 0, x.length);
      }
      double length = norm(x);
      if (length > least[n]) {
        for (int i = 0; i < x.length; i++) {
          x[i] /= length;
        }
        kept.add(x);
      }
    }
    return kept;
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
    double[] coordinates = new double[vectors.size()];
    for (int j = 0; j < coordinates.length; j++) {
      coordinates[j] = product(vectors.get(j), x);
    }
    return coordinates;
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
