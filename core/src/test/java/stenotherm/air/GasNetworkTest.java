package stenotherm.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.InvalidInputException;

class GasNetworkTest {
  private static final double SEA_LEVEL = StandardAtmosphere.SEA_LEVEL_PRESSURE;
  private static final AmbientAir DRY = new AmbientAir(293.15, SEA_LEVEL, 0);

  /** Heat per oxygen of iron that becomes Fe2O3 [J/mol]: 824.2 kJ/mol by 1.5 mol of oxygen. */
  private static final double HEAT = 549.5e3;

  private static final double LITRES_PER_HOUR = 1e-3 / 3600;

  private static GasNetwork box(double volume, AmbientAir air) {
    return new GasNetwork(new double[] {volume}, new int[0], new double[0], air, air.temperature());
  }

  private static double moles(double volume, AmbientAir air) {
    return air.pressure() * volume / (MoistAir.GAS_CONSTANT * air.temperature());
  }

  private static void setExchange(GasNetwork network, int volume, double conductance) {
    for (Gas gas : Gas.values()) {
      network.setExchange(volume, gas, conductance);
    }
  }

  private static void run(GasNetwork network, double duration, double step) {
    for (int i = 0; i < Math.round(duration / step); i++) {
      network.step(step);
    }
  }

  /**
   * 5 L at 2 W last 3.3 h in a rigid box, and 4.2 h where what is used up is replaced by outside
   * air (both rounded): a constant draw r takes r (1 - 0.2095) from the oxygen inside.
   */
  @Test
  void sealedBoxAtConstantDraw() {
    GasNetwork box = box(0.005, DRY);
    double draw = 2 / HEAT;
    box.setUptake(0, draw);
    run(box, 7200, 60);
    double oxygen = 0.2095 * moles(0.005, DRY);
    assertEquals(3.3, oxygen / draw / 3600, 0.05);
    double lost = oxygen - box.amount(0, Gas.OXYGEN);
    // make-up is found to 1e-5
    assertEquals(7200 * draw * (1 - 0.2095), lost, 1e-5 * lost);
    assertEquals(4.2, 7200 * oxygen / lost / 3600, 0.08);
    assertEquals(draw, box.makeUp(0), 1e-12);
  }

  /**
   * Drawn in proportion to what is left, oxygen decays with V p / (K R T) = 3.3 h for 2 W at first,
   * slowed by the make-up as above, and never runs out.
   */
  @Test
  void sealedBoxWithFilmDecays() {
    GasNetwork box = box(0.005, DRY);
    double sink = 2 / HEAT / 0.2095;
    box.setSink(0, sink);
    double constant = moles(0.005, DRY) / sink;
    assertEquals(3.3, constant / 3600, 0.05);
    run(box, 4 * 3600, 60);
    double expected = 0.2095 * Math.exp(-4 * 3600 * (1 - 0.2095) / constant);
    assertEquals(expected, box.fraction(0, Gas.OXYGEN), 1e-6);
    run(box, 400 * 3600, 900);
    assertTrue(box.amount(0, Gas.OXYGEN) > 0);
  }

  /**
   * Steady oxygen of a warmer limited by its film: x / 0.2095 = G / (G + 3.77 q), with q what it
   * draws from fresh air and 0.79 / 0.2095 = 3.77. The figures were worked out by hand: 17.4, 10.1
   * and 5.8 % for 5.8, 1.1 and 0.45 L/h and 2 W.
   */
  @ParameterizedTest
  @CsvSource({"5.8, 17.4, 1.66", "1.1, 10.1, 0.96", "0.45, 5.8, 0.55"})
  void steadyOxygenOfTheClosedForm(double conductance, double percent, double power) {
    GasNetwork box = box(0.005, DRY);
    setExchange(box, 0, conductance * LITRES_PER_HOUR);
    box.setSink(0, 2 / HEAT / 0.2095);
    run(box, 100 * 3600, 600);
    double draw = 2 / HEAT * MoistAir.GAS_CONSTANT * 293.15 / SEA_LEVEL / LITRES_PER_HOUR;
    assertEquals(2 * 0.1576, draw, 0.01 * draw);
    double closed = conductance / (conductance + 3.77 * draw);
    assertEquals(closed, box.fraction(0, Gas.OXYGEN) / 0.2095, 0.001 * closed);
    assertEquals(percent, 100 * box.fraction(0, Gas.OXYGEN), 0.01 * percent);
    assertEquals(power, HEAT * box.oxygenToSink(0), 0.02 * power);
  }

  private static final double HOURS = 6 * 3600;

  /** A climb from sea level to 75 kPa, while a warmer draws, an animal breathes, a towel dries. */
  private static FineIntegration climb(AmbientAir air, double wetness) {
    FineIntegration fine = new FineIntegration(0.0025, 0.0003);
    fine.pressure = air.pressure();
    fine.pressureRate = -26_000 / HOURS;
    fine.outsideTemperature = air.temperature();
    fine.temperature = new double[] {293.15, 291.15};
    fine.warming = new double[] {15 / HOURS, 5 / HOURS};
    for (int s = 0; s < 4; s++) {
      Gas gas = Gas.values()[s];
      fine.x[s] = air.fraction(gas);
      double ratio = gas.diffusivity(293, SEA_LEVEL) / Gas.OXYGEN.diffusivity(293, SEA_LEVEL);
      fine.exchange[0][s] = 5.3 * LITRES_PER_HOUR * ratio;
      fine.exchange[1][s] = 3 * LITRES_PER_HOUR * ratio;
    }
    fine.flow = new double[] {1 * LITRES_PER_HOUR, 0};
    fine.sink = new double[] {2.2 / HEAT / 0.2095, 0};
    fine.uptake = new double[] {0, 3e-8};
    fine.respiratoryQuotient = 0.8;
    fine.wetConductance = new double[] {2e-8 * wetness, 1e-9 * wetness};
    fine.wetPressure = new double[] {700, 2200};
    for (int v = 0; v < 2; v++) {
      double whole = air.pressure() * fine.size[v] / (MoistAir.GAS_CONSTANT * fine.temperature[v]);
      for (int s = 0; s < 4; s++) {
        fine.amount[v][s] = fine.x[s] * whole;
      }
    }
    return fine;
  }

  private static GasNetwork network(FineIntegration fine, AmbientAir air) {
    GasNetwork network =
        new GasNetwork(fine.size, new int[] {0, 1}, new double[] {1, 1}, air, 293.15);
    // the cup begins colder: it gets its temperature in a step of next to no length
    network.setTemperature(1, fine.temperature[1]);
    network.step(1e-3);
    network.setRespiratoryQuotient(fine.respiratoryQuotient);
    for (int v = 0; v < 2; v++) {
      for (Gas gas : Gas.values()) {
        network.setExchange(v, gas, fine.exchange[v][gas.ordinal()]);
      }
      network.setFlow(v, fine.flow[v]);
      network.setSink(v, fine.sink[v]);
      network.setUptake(v, fine.uptake[v]);
      network.setSurface(v, fine.wetConductance[v], fine.wetPressure[v]);
    }
    return network;
  }

  /** Largest error of each mole fraction against a fine integration. */
  private static double[] errors(double step, double wetness) {
    AmbientAir air = new AmbientAir(278.15, SEA_LEVEL, 0.8);
    FineIntegration fine = climb(air, wetness);
    GasNetwork network = network(fine, air);
    FineIntegration reference = climb(air, wetness);
    double[] worst = new double[4];
    for (int i = 1; i <= Math.round(HOURS / step); i++) {
      double time = i * step;
      // humidity falls with pressure, so that the composition outside stays
      double thinning = 1 + fine.pressureRate * time / SEA_LEVEL;
      network.setOutside(new AmbientAir(278.15, SEA_LEVEL * thinning, 0.8 * thinning));
      for (int v = 0; v < 2; v++) {
        network.setTemperature(v, fine.temperature[v] + fine.warming[v] * time);
      }
      network.step(step);
      reference.run(step, (int) Math.round(step / 3));
      for (int v = 0; v < 2; v++) {
        for (int s = 0; s < 4; s++) {
          double error = reference.fraction(v, s) - network.fraction(v, Gas.values()[s]);
          worst[s] = Math.max(worst[s], Math.abs(error));
        }
      }
    }
    return worst;
  }

  /** Oxygen at 300 s within 0.02 %-points, at 60 s within 0.0005. */
  @ParameterizedTest
  @CsvSource({"300, 1, 2e-4", "300, 0.1, 2e-4", "900, 0.1, 5e-4", "60, 0.1, 5e-6"})
  void agreesWithAFineIntegration(double step, double wetness, double tolerance) {
    double[] errors = errors(step, wetness);
    assertEquals(0, errors[Gas.OXYGEN.ordinal()], tolerance);
    assertEquals(0, errors[Gas.CARBON_DIOXIDE.ordinal()], tolerance);
  }

  @Test
  void isOfSecondOrderOrBetter() {
    double[] coarse = errors(240, 0.1);
    double[] fine = errors(120, 0.1);
    for (int s = 0; s < 4; s++) {
      assertTrue(coarse[s] > 3.9 * fine[s], s + ": " + coarse[s] + " and " + fine[s]);
    }
  }

  /**
   * Evaporation from a wet floor through a tube into dry air, against Stefan's law G c ln(1 / (1 -
   * x)), x at the water. Here vapour that the make-up carries leaves with the full x instead of the
   * profile's: half of x more, which is 1.2 % at 20 °C.
   */
  @ParameterizedTest
  @CsvSource({"278.15", "293.15", "308.15"})
  void stefansEvaporatingTube(double temperature) {
    AmbientAir air = new AmbientAir(temperature, SEA_LEVEL, 0);
    GasNetwork tube =
        new GasNetwork(new double[] {1e-5}, new int[] {0}, new double[] {1}, air, temperature);
    double diffusivity = Gas.WATER_VAPOUR.diffusivity(temperature, SEA_LEVEL);
    double conductance = diffusivity * 1e-4 / 0.1;
    setExchange(tube, 0, conductance);
    double saturation = MoistAir.saturationPressure(temperature);
    tube.setSurface(0, 1e-6, saturation);
    run(tube, 3600, 60);
    double x = saturation / SEA_LEVEL;
    double stefan =
        conductance * SEA_LEVEL / (MoistAir.GAS_CONSTANT * temperature) * -Math.log1p(-x);
    assertEquals(stefan * (1 + x / 2), tube.evaporation(0), x * x * stefan);
    double before = tube.entered(Gas.WATER_VAPOUR);
    tube.step(60);
    double left = (before - tube.entered(Gas.WATER_VAPOUR)) / 60;
    assertEquals(tube.evaporation(0), left, 1e-5 * stefan);
  }

  /** A wet towel in a cup and a cold wall outside it: what evaporates there condenses here. */
  @Test
  void waterGoesFromTheTowelToTheColdWall() {
    AmbientAir air = new AmbientAir(278.15, SEA_LEVEL, 0.5);
    GasNetwork parcel =
        new GasNetwork(
            new double[] {0.0025, 0.0003},
            new int[] {1, 0, 0},
            new double[] {0.5, 0, 0},
            air,
            293.15);
    for (Gas gas : Gas.values()) {
      parcel.setExchange(1, gas, 3 * LITRES_PER_HOUR);
    }
    double towel = MoistAir.saturationPressure(295.15);
    double cold = MoistAir.saturationPressure(280.15);
    parcel.setSurface(0, 1e-8, towel);
    parcel.setSurface(1, 1e-8, cold);
    parcel.setSurface(2, 1e-8, MoistAir.saturationPressure(295.15));
    run(parcel, 24 * 3600, 60);
    assertEquals(parcel.evaporation(0), -parcel.evaporation(1), 1e-3 * parcel.evaporation(0));
    assertEquals(0, parcel.evaporation(2), 0);
    assertTrue(parcel.vapourPressure(0) > cold && parcel.vapourPressure(1) < towel);
    // resistances in series; what make-up carries adds the mole fraction in the cup, some 2 %
    double molar = SEA_LEVEL / (MoistAir.GAS_CONSTANT * 293.15);
    double through = 3 * LITRES_PER_HOUR * molar / SEA_LEVEL;
    double series = (towel - cold) / (2 / 1e-8 + 1 / through);
    assertEquals(1.02 * series, parcel.evaporation(0), 0.01 * series);
    // then the wall warms and the towel is taken away: the wall gives back what it holds, no more
    double held = parcel.water(1);
    assertTrue(held > 0.9 * (0.5 - parcel.water(0)), held + " mol");
    parcel.setSurface(0, 0, 0);
    parcel.setSurface(1, 1e-6, MoistAir.saturationPressure(303.15));
    setExchange(parcel, 0, 100 * LITRES_PER_HOUR);
    double given = 0;
    for (int i = 0; i < 24 * 60; i++) {
      parcel.step(60);
      given += 60 * parcel.evaporation(1);
    }
    assertEquals(held, given, 1e-12);
    assertEquals(0, parcel.water(1), 0);
  }

  /** Air that leaves in a climb takes its own composition; what a descent draws is outside air. */
  @Test
  void climbAndDescent() {
    GasNetwork box = box(0.005, DRY);
    box.setSink(0, 2 / HEAT / 0.2095);
    run(box, 3600, 60);
    box.setSink(0, 0);
    double depleted = box.fraction(0, Gas.OXYGEN);
    box.setOutside(new AmbientAir(293.15, 75_300, 0));
    box.step(900);
    assertEquals(depleted, box.fraction(0, Gas.OXYGEN), 1e-12);
    box.setOutside(DRY);
    box.step(900);
    double share = 75_300 / SEA_LEVEL;
    assertEquals(share * depleted + (1 - share) * 0.2095, box.fraction(0, Gas.OXYGEN), 1e-6);
    assertEquals(moles(0.005, DRY), box.makeUp(0) * 900 / (1 - share), 1e-5);
  }

  /** Below the conforming fraction an animal takes up less; it never takes what is not there. */
  @Test
  void anAnimalWithoutAirTakesUpLess() {
    GasNetwork box = box(1e-4, DRY);
    box.setUptake(0, 1e-6);
    box.step(60);
    assertEquals(1e-6, box.oxygenToAnimals(0), 1e-11);
    run(box, 3 * 3600, 60);
    double x = box.fraction(0, Gas.OXYGEN);
    assertTrue(x > 0 && x < GasNetwork.CONFORMING_FRACTION, "x " + x);
    double expected = 1e-6 * box.meanFraction(0, Gas.OXYGEN) / GasNetwork.CONFORMING_FRACTION;
    assertEquals(expected, box.oxygenToAnimals(0), 1e-12);
  }

  @Test
  void refusesWhatIsNoBox() {
    assertThrows(InvalidInputException.class, () -> box(0, DRY));
    assertThrows(
        InvalidInputException.class,
        () -> new GasNetwork(new double[] {1}, new int[] {1}, new double[] {0}, DRY, 293));
    assertThrows(
        InvalidInputException.class,
        () -> new GasNetwork(new double[] {1}, new int[] {0}, new double[] {-1}, DRY, 293));
    assertThrows(
        InvalidInputException.class,
        () -> new GasNetwork(new double[] {1}, new int[] {0}, new double[0], DRY, 293));
    GasNetwork box = box(1, DRY);
    assertThrows(InvalidInputException.class, () -> box.step(0));
    assertThrows(InvalidInputException.class, () -> box.setTemperature(0, 20));
    assertThrows(InvalidInputException.class, () -> box.setUptake(0, -1e-9));
    assertThrows(InvalidInputException.class, () -> box.setRespiratoryQuotient(-0.1));
  }
}
