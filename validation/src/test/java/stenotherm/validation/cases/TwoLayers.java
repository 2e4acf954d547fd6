package stenotherm.validation.cases;

import java.util.ArrayList;
import java.util.List;

/**
 * A core of 20 mm, insulated at x = 0, under 30 mm of foam with a film, after a step of the ambient
 * from 1 to 0. In the core an eigenfunction is cos(b1 x), in the foam its continuation with equal
 * temperature and flux, b = sqrt(l rho c / k); the film gives the eigenvalues l.
 */
final class TwoLayers {
  private static final double CORE = 0.02;
  private static final double FOAM = 0.03;
  private static final double FILM = 8;
  private static final double K1 = 0.2;
  private static final double C1 = 1.6e6;
  private static final double K2 = 0.036;
  private static final double C2 = 20 * 1450.0;

  /** Enough that what is left has died away within 600 s. */
  private static final double LARGEST = 0.3;

  private final List<Mode> modes = new ArrayList<>();

  /** One eigenfunction; a and b are the coefficients of cosine and sine in the foam. */
  private record Mode(double eigenvalue, double b1, double b2, double a, double b) {
    static Mode of(double eigenvalue) {
      double b1 = Math.sqrt(eigenvalue * C1 / K1);
      double b2 = Math.sqrt(eigenvalue * C2 / K2);
      double b = -K1 * b1 * Math.sin(b1 * CORE) / (K2 * b2);
      return new Mode(eigenvalue, b1, b2, Math.cos(b1 * CORE), b);
    }

    double at(double x) {
      double s = b2 * (x - CORE);
      return x <= CORE ? Math.cos(b1 * x) : a * Math.cos(s) + b * Math.sin(s);
    }

    /** Outward flux by conduction less that through the film; zero for an eigenvalue. */
    double mismatch() {
      double s = b2 * FOAM;
      return K2 * b2 * (-a * Math.sin(s) + b * Math.cos(s))
          + FILM * (a * Math.cos(s) + b * Math.sin(s));
    }

    double integralOfCore() {
      return Math.sin(b1 * CORE) / b1;
    }

    double integralOfFoam() {
      double s = b2 * FOAM;
      return (a * Math.sin(s) + b * (1 - Math.cos(s))) / b2;
    }

    /** Coefficient in the expansion of 1, by the weight rho c. */
    double weight() {
      double s = b2 * FOAM;
      double square1 = CORE / 2 + Math.sin(2 * b1 * CORE) / (4 * b1);
      double square2 =
          (a * a + b * b) * FOAM / 2
              + (a * a - b * b) * Math.sin(2 * s) / (4 * b2)
              + a * b * Math.sin(s) * Math.sin(s) / b2;
      return (C1 * integralOfCore() + C2 * integralOfFoam()) / (C1 * square1 + C2 * square2);
    }
  }

  TwoLayers() {
    double step = 2e-5;
    double root = 1e-5;
    while (root * root < LARGEST) {
      double next = root + step;
      if (Mode.of(root * root).mismatch() * Mode.of(next * next).mismatch() < 0) {
        modes.add(eigenvalue(root, next));
      }
      root = next;
    }
  }

  private static Mode eigenvalue(double from, double to) {
    double low = from;
    double high = to;
    double signOfLow = Mode.of(low * low).mismatch();
    for (int halving = 0; halving < 60; halving++) {
      double middle = (low + high) / 2;
      if (Mode.of(middle * middle).mismatch() * signOfLow > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Mode.of(low * low);
  }

  double at(double x, double time) {
    double sum = 0;
    for (Mode mode : modes) {
      sum += mode.weight() * Math.exp(-mode.eigenvalue() * time) * mode.at(x);
    }
    return sum;
  }

  double meanOfCore(double time) {
    double sum = 0;
    for (Mode mode : modes) {
      sum += mode.weight() * Math.exp(-mode.eigenvalue() * time) * mode.integralOfCore() / CORE;
    }
    return sum;
  }

  double meanOfFoam(double time) {
    double sum = 0;
    for (Mode mode : modes) {
      sum += mode.weight() * Math.exp(-mode.eigenvalue() * time) * mode.integralOfFoam() / FOAM;
    }
    return sum;
  }
}
