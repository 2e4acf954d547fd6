package stenotherm.modal;

import java.util.ArrayList;
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
   * Adds what is new in a vector, which is overwritten.
   *
   * @param atRate number of the rate that it is an answer at; negative if of none
   * @return whether anything was
   */
  boolean add(double[] x, int atRate) {
    double before = Math.sqrt(product(x, x));
    // twice is enough: the second pass takes away what round-off left in the first
    for (int pass = 0; pass < 2; pass++) {
      for (double[] v : vectors) {
        double along = product(v, x);
        for (int i = 0; i < x.length; i++) {
          x[i] -= along * v[i];
        }
      }
    }
    double after = Math.sqrt(product(x, x));
    if (!(after > DEFLATION * before)) {
      return false;
    }
    for (int i = 0; i < x.length; i++) {
      x[i] /= after;
    }
    vectors.add(x);
    rate.add(atRate);
    return true;
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
      double[] v = vectors.get(j);
      double along = coordinates[j];
      for (int i = 0; i < x.length; i++) {
        x[i] += along * v[i];
      }
    }
    return x;
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

  /** Products of a vector with the first vectors of the basis, without the heat capacities. */
  void products(double[] x, double[] result, int count) {
    for (int j = 0; j < count; j++) {
      double[] v = vectors.get(j);
      double s0 = 0;
      double s1 = 0;
      int i = 0;
      for (; i + 1 < x.length; i += 2) {
        s0 += v[i] * x[i];
        s1 += v[i + 1] * x[i + 1];
      }
      for (; i < x.length; i++) {
        s0 += v[i] * x[i];
      }
      result[j] = s0 + s1;
    }
  }
}
