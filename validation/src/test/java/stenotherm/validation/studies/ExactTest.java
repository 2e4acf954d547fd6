package stenotherm.validation.studies;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.validation.studies.Exact.CoolingShape;

/** The closed forms of the studies against tables that another program computed. */
class ExactTest {
  /** Bi, then first root and coefficient; as many digits as the tables have. */
  @ParameterizedTest
  @CsvSource({
    "SLAB, 0.1, 0.31105285, 1.0160942",
    "CYLINDER, 0.1, 0.44168178, 1.0245794",
    "SPHERE, 0.1, 0.54228089, 1.0297977",
    "SLAB, 1, 0.86033359, 1.1191320",
    "CYLINDER, 1, 1.2557837, 1.2070921",
    "SPHERE, 1, 1.5707963, 1.2732395",
    "SLAB, 10, 1.4288700, 1.2619626",
    "CYLINDER, 10, 2.1794966, 1.5676918",
    "SPHERE, 10, 2.8363004, 1.9249086"
  })
  void firstTerms(CoolingShape body, double biot, double root, double coefficient) {
    assertEquals(root, body.root(biot, 0), 6e-8);
    assertEquals(coefficient, body.weight(body.root(biot, 0)), 1e-7);
  }

  /** Bi = 1, Fo = 0.5: centre and surface. */
  @ParameterizedTest
  @CsvSource({
    "SLAB, 0.77252638, 0.50452193",
    "CYLINDER, 0.5485862, 0.35278584",
    "SPHERE, 0.37077743, 0.23604967"
  })
  void series(CoolingShape body, double centre, double surface) {
    assertEquals(centre, body.cooling(1, 0.5, 0), 1e-8);
    assertEquals(surface, body.cooling(1, 0.5, 1), 1e-8);
  }

  @ParameterizedTest
  @CsvSource({"0.05, 0.156820922", "0.1, 0.220016273", "1, 0.620062633", "3, 0.91375127"})
  void frontOfOnePhase(double number, double coefficient) {
    assertEquals(coefficient, Exact.stefan(number), 1e-9);
  }

  /** Water at 10 °C that freezes under a surface at -10 °C. */
  @Test
  void frontOfTwoPhases() {
    double coefficient =
        Exact.neumann(
            new Exact.Phase(2.22, 2.22 / (1000 * 2100), 10),
            new Exact.Phase(0.58, 0.58 / (1000 * 4200), 10),
            1000 * 333_600.0);
    assertEquals(0.1573199815, coefficient, 1e-10);
  }
}
