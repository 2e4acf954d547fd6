package stenotherm.warmer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;

/**
 * When a warmer goes out in the cold, or runs away when it gets more air: only where the reaction
 * holds it back, not the film. Regression of an earlier trial of our own: pouch of the 40 hour
 * class against a lid, whose film alone would warm it by 61 K.
 */
class WarmerStallTest {
  private static final double FILM_RISE = 61;
  private static final double IRON = 0.048;
  private static final WarmerClass.PadSize PAD = new WarmerClass.PadSize(0.128, 0.082, 0.012);
  private static final double HEAT =
      0.2095 * 101_325 * OxidationProduct.LEPIDOCROCITE.heatPerOxygen();
  private static final double FILM = 2.5e-10;
  private static final double RESISTANCE = FILM_RISE / (FILM * HEAT);

  /** Powder that takes so many times at 40 °C what the whole film lets through. */
  private static IronPowder powder(double surplus, double activation, double open) {
    return new IronPowder(
        IRON,
        new AirFilm(FILM * open / PAD.face(), PAD.face(), AirFilm.Transport.KNUDSEN),
        0.5,
        new PowderKinetics(surplus * FILM / IRON, activation, 600),
        OxidationProduct.LEPIDOCROCITE);
  }

  /** Temperatures at which heat given and heat lost are the same [K], ascending. */
  private static List<Double> steady(IronPowder powder, double ambient) {
    List<Double> found = new ArrayList<>();
    double step = 0.02;
    double before = surplus(powder, ambient, ambient);
    for (double t = ambient + step; t < ambient + FILM_RISE; t += step) {
      double now = surplus(powder, t, ambient);
      if (before > 0 != now > 0) {
        found.add(t);
      }
      before = now;
    }
    return found;
  }

  private static double surplus(IronPowder powder, double temperature, double ambient) {
    return RESISTANCE * HEAT * powder.uptake(0.05, 1e6, at(temperature)) - (temperature - ambient);
  }

  private static IronPowder.Supply at(double temperature) {
    return new IronPowder.Supply(1, 101_325, temperature);
  }

  /**
   * Folds of the trial at fixed oxygen and 60 kJ/mol: between -17 and -13 °C for a surplus of 8.
   */
  @ParameterizedTest
  @CsvSource({
    "8, -22, 1",
    "8, -15, 3",
    "8, -8, 1",
    "4, -13, 1",
    "4, -7.5, 3",
    "4, -2, 1",
    "2, -4, 1",
    "2, 1.5, 3",
    "2, 7, 1"
  })
  void aPouchThatItsReactionLimitsHasTwoStatesInTheCold(
      double surplus, double celsius, int states) {
    IronPowder powder = powder(surplus, 60e3, 1);
    double ambient = Temperatures.fromCelsius(celsius);
    List<Double> found = steady(powder, ambient);
    assertEquals(states, found.size(), found.toString());
    for (int state = 0; state < found.size(); state++) {
      double temperature = found.get(state);
      double gain = powder.growth(0.05, 1e6, at(temperature)) * (temperature - ambient);
      // of three the middle one cannot last
      assertTrue(state == 1 ? gain > 1 : gain < 1, "gain " + gain);
    }
    assertTrue(FILM_RISE * powder.kinetics().growth(ambient) > 4);
  }

  @Test
  void aPouchThatItsFilmLimitsHasOneStateAtAnyAmbient() {
    IronPowder powder = powder(8, 40e3, 1);
    for (double celsius = -40; celsius <= 40; celsius += 5) {
      double ambient = Temperatures.fromCelsius(celsius);
      List<Double> found = steady(powder, ambient);
      assertEquals(1, found.size(), celsius + " °C: " + found);
      double rise = found.get(0) - ambient;
      assertTrue(powder.growth(0.05, 1e6, at(found.get(0))) * rise < 1);
    }
    assertTrue(FILM_RISE * powder.kinetics().growth(Temperatures.fromCelsius(5)) < 4);
  }

  /** Where there are two states, it depends on the start which one a warmer comes to. */
  @Test
  void aSlowWarmerGoesOutWhenItStartsCold() {
    double ambient = Temperatures.fromCelsius(-7.5);
    double conductance = 1 / RESISTANCE;
    double face = PAD.face();
    Bench cold =
        new Bench(
            new Bench.BenchSide(2 * face / conductance, ambient),
            new Bench.BenchSide(2 * (face + PAD.edges()) / conductance, ambient));
    IronPowder slow = powder(4, 60e3, 1);
    double time = Times.fromHours(3);
    double fromCold = cold.run(PAD, slow, 140, ambient).curve().at(time);
    double fromWarm = cold.run(PAD, slow, 140, 313).curve().at(time);
    assertTrue(fromCold - ambient < 12, "rise " + (fromCold - ambient));
    assertTrue(fromWarm - ambient > 30, "rise " + (fromWarm - ambient));
    // the usual powder comes to one state from both
    IronPowder usual = powder(8, 40e3, 1);
    double later = Times.fromHours(8);
    assertEquals(
        cold.run(PAD, usual, 140, 313).curve().at(later),
        cold.run(PAD, usual, 140, ambient).curve().at(later),
        1);
  }

  /** A slow powder that gets a little more air jumps; behind a film that limits it, it does not. */
  @Test
  void aSlowWarmerRunsAwayWithMoreAir() {
    double ambient = Temperatures.fromCelsius(4);
    double jump = coldest(powder(2, 60e3, 1), ambient) - coldest(powder(2, 60e3, 0.8), ambient);
    double creep = coldest(powder(8, 40e3, 1), ambient) - coldest(powder(8, 40e3, 0.8), ambient);
    assertTrue(jump > 25, "jump " + jump);
    assertTrue(creep > 0 && creep < 15, "creep " + creep);
  }

  /** The state that a warmer comes to from the cold. */
  private static double coldest(IronPowder powder, double ambient) {
    return steady(powder, ambient).get(0);
  }
}
