package stenotherm.warmer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What holds for iron powder of any kind. */
class IronPowderProperties {
  private static final WarmerClass.PadSize PAD = new WarmerClass.PadSize(0.12, 0.09, 0.01);
  private static final double AGE = 1e4;

  @Provide
  Arbitrary<IronPowder> powders() {
    return Combinators.combine(
            between(0.005, 0.1),
            between(5e-9, 1e-7),
            between(0, 3),
            between(1e-9, 5e-7),
            between(0, 90e3),
            Arbitraries.of(AirFilm.Transport.values()),
            Arbitraries.of(OxidationProduct.values()))
        .as(
            (iron, permeance, crust, speed, activation, transport, product) ->
                new IronPowder(
                    iron,
                    new AirFilm(permeance, PAD.face(), transport),
                    crust,
                    new PowderKinetics(speed, activation, 600),
                    product));
  }

  private static Arbitrary<Double> between(double low, double high) {
    return Arbitraries.integers().between(0, 1000).map(part -> low + (high - low) * part / 1000);
  }

  private static IronPowder.Supply at(double open, double pressure, double temperature) {
    return new IronPowder.Supply(open, pressure, temperature);
  }

  @Property(seed = "20261501", tries = 300)
  void uptakeFallsWithConversionAndCover(
      @ForAll("powders") IronPowder powder,
      @ForAll @DoubleRange(min = 0, max = 1) double conversion,
      @ForAll @DoubleRange(min = 0, max = 1) double more,
      @ForAll @DoubleRange(min = 0, max = 1) double open,
      @ForAll @DoubleRange(min = 250, max = 350) double temperature) {
    IronPowder.Supply there = at(open, 9e4, temperature);
    double uptake = powder.uptake(conversion, AGE, there);
    assertTrue(uptake >= 0);
    double later = conversion + more * (1 - conversion);
    assertTrue(powder.uptake(later, AGE, there) <= uptake);
    assertTrue(powder.uptake(conversion, AGE, at(open * more, 9e4, temperature)) <= uptake);
    assertTrue(powder.uptake(conversion, AGE * more, there) <= uptake);
    assertTrue(uptake <= powder.film().conductance(open, 9e4));
  }

  @Property(seed = "20261502", tries = 300)
  void uptakeGrowsWithTemperature(
      @ForAll("powders") IronPowder powder,
      @ForAll @DoubleRange(min = 0, max = 0.99) double conversion,
      @ForAll @DoubleRange(min = 250, max = 340) double temperature) {
    double step = 1e-3;
    double uptake = powder.uptake(conversion, AGE, at(1, 9e4, temperature));
    double warmer = powder.uptake(conversion, AGE, at(1, 9e4, temperature + step));
    double colder = powder.uptake(conversion, AGE, at(1, 9e4, temperature - step));
    assertTrue(warmer >= uptake && uptake >= colder);
    // growth is the logarithmic derivative
    double growth = powder.growth(conversion, AGE, at(1, 9e4, temperature));
    assertEquals(Math.log(warmer / colder) / (2 * step), growth, 1e-8);
  }

  @Property(seed = "20261503", tries = 60)
  void heatIsNeverMoreThanTheIronHas(@ForAll("powders") IronPowder powder) {
    BenchRun run = Bench.RATING.run(PAD, powder, 100, 293);
    assertTrue(run.state().conversion() >= 0 && run.state().conversion() <= 1);
    assertTrue(run.state().heat() <= powder.iron() * powder.product().heatPerIron());
    assertTrue(run.peakPower() >= 0);
  }

  /** With nothing but the film in the way, narrow pores give power with pressure, wide ones not. */
  @Property(seed = "20261504", tries = 100)
  void powerOfAFilmInThinAir(
      @ForAll @DoubleRange(min = 5, max = 100) double nanomoles,
      @ForAll @DoubleRange(min = 5e4, max = 1.05e5) double pressure) {
    for (AirFilm.Transport transport : AirFilm.Transport.values()) {
      IronPowder powder =
          new IronPowder(
              0.05,
              new AirFilm(nanomoles * 1e-9, PAD.face(), transport),
              0,
              new PowderKinetics(1, 0, 1),
              OxidationProduct.LEPIDOCROCITE);
      double thin = pressure * powder.uptake(0, AGE, at(1, pressure, 313));
      double dense = 101_325 * powder.uptake(0, AGE, at(1, 101_325, 313));
      double expected = transport == AirFilm.Transport.KNUDSEN ? pressure / 101_325 : 1;
      assertEquals(expected, thin / dense, 1e-6);
    }
  }

  /** The bound that {@link IronPowder#growth} states, in whatever steady state. */
  @Property(seed = "20261505", tries = 300)
  void noGainIsAboveAQuarterOfWhatTheFilmAllows(
      @ForAll("powders") IronPowder powder,
      @ForAll @DoubleRange(min = 250, max = 350) double temperature,
      @ForAll @DoubleRange(min = 5, max = 100) double resistance) {
    double heat = 0.2095 * 101_325 * powder.product().heatPerOxygen();
    IronPowder.Supply there = at(1, 101_325, temperature);
    double rise = resistance * heat * powder.uptake(0, AGE, there);
    double filmRise = resistance * heat * powder.film().conductance(1, 101_325);
    assertTrue(
        powder.growth(0, AGE, there) * rise
            <= filmRise * powder.kinetics().growth(temperature) / 4 + 1e-12);
  }
}
