package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperature;
import stenotherm.base.TimeFunction;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.journey.Journey;
import stenotherm.journey.JourneyBuilder;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.warmer.IronPowder;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/** What is uncertain of all warmers at once: the bench behind their ratings, and their powder. */
class WarmerFactorsTest {
  private static final TransitSettings CELLS =
      new TransitSettings(Packings.FEW_CELLS, 3600, IntegratorSettings.standard()).full();

  private static Parcel with(WarmerClass warmer) {
    return Packings.warmed(List.of(Packings.pad(warmer, Face.Z_MAX, Mounting.taped())));
  }

  private static Journey at(double kelvin) {
    Temperature room = Temperature.celsius(kelvin - 273.15);
    return JourneyBuilder.sealed(LocalDateTime.of(2026, 1, 5, 18, 0), room)
        .leg("room", Duration.ofHours(6), room)
        .build();
  }

  private static TransitResult run(Parcel parcel, double kelvin, Variation variation) {
    return Transit.run(parcel, at(kelvin), variation, CELLS);
  }

  private static double meanPower(Parcel parcel, double kelvin, Variation variation) {
    String name = parcel.warmers().get(0).name();
    return Arrays.stream(run(parcel, kelvin, variation).power(name)).average().orElseThrow();
  }

  /** A bench that conducts more is a stronger warmer: power, film and iron in proportion. */
  @Test
  void theBenchActsAsTheStrengthDoes() {
    Parcel parcel = with(Warmers.FORTY_HOUR);
    String pad = parcel.warmers().get(0).name();
    Range strength = Warmers.FORTY_HOUR.strength();
    assertEquals(1.3, Warmers.FORTY_HOUR.bench().high(), 1e-12);
    double position = Math.log(1.3) / Math.log(strength.high());
    TransitResult bench = run(parcel, 288, Variation.NOMINAL.with(Factor.RATING_BENCH, 1));
    TransitResult strong = run(parcel, 288, Variation.NOMINAL.withWarmer(pad, position));
    double[] powers = bench.power(pad);
    double[] alike = strong.power(pad);
    double[] burnt = bench.conversion(pad);
    double[] burntAlike = strong.conversion(pad);
    for (int row = 0; row < powers.length; row++) {
      assertEquals(alike[row], powers[row], 1e-9);
      assertEquals(burntAlike[row], burnt[row], 1e-12);
    }
    assertTrue(powers[4] > 1.1 * run(parcel, 288, Variation.NOMINAL).power(pad)[4]);
    TransitResult both =
        run(parcel, 288, Variation.NOMINAL.with(Factor.RATING_BENCH, 1).withWarmer(pad, -position));
    assertTrue(both.power(pad)[4] < powers[4], "strength and bench multiply");
  }

  /** In the cold a powder of high activation energy lags, in warmth that of a low one. */
  @Test
  void theActivationEnergyActsByTheTemperature() {
    Parcel parcel = with(Warmers.FORTY_HOUR);
    Variation low = Variation.NOMINAL.with(Factor.ACTIVATION_ENERGY, -1);
    Variation high = Variation.NOMINAL.with(Factor.ACTIVATION_ENERGY, 1);
    double cold = meanPower(parcel, 263, low) - meanPower(parcel, 263, high);
    double warm = meanPower(parcel, 313, low) - meanPower(parcel, 313, high);
    assertTrue(cold > 0.05, "W in the cold: " + cold);
    assertTrue(warm < -0.005, "W in warmth: " + warm);
  }

  /**
   * The gain of the loop: in the cold a powder that reacts the more by its temperature tips over,
   * the usual one does not. Steady, it is the growth of the uptake times the rise of the pouch.
   */
  @Test
  void theGainTellsWhatMayTipOver() {
    Parcel usual = with(Warmers.FORTY_HOUR);
    String pad = usual.warmers().get(0).name();
    IronPowder slow = ((IronPowder) Warmers.FORTY_HOUR.heat()).reacting(0.5).withActivation(75e3);
    WarmerClass kind = Warmers.FORTY_HOUR;
    Parcel steep =
        with(
            new WarmerClass(
                "steep", kind.size(), kind.mass(), slow, kind.strength(), kind.source()));
    TransitResult calm = run(usual, 288, Variation.NOMINAL);
    TransitResult near = run(steep, 288, Variation.NOMINAL);
    double most = Arrays.stream(calm.gain(pad)).max().orElseThrow();
    assertTrue(most > 0 && most < 0.5, "gain " + most);
    assertTrue(Arrays.stream(near.gain(pad)).max().orElseThrow() > 2 * most);
    int last = calm.times().length - 1;
    double conversion = calm.conversion(pad)[last];
    double mean = calm.mean(pad)[last];
    IronPowder.Supply supply = new IronPowder.Supply(1, 101_325, mean);
    double growth = ((IronPowder) kind.heat()).growth(conversion, calm.times()[last], supply);
    double rise = calm.gain(pad)[last] / growth;
    assertTrue(rise > 5 && rise < mean - 288, "rise over the filling " + rise);
  }

  @Test
  void theyMatterWhereARatingOrIronIs() {
    Parcel iron = with(Warmers.FORTY_HOUR);
    WarmerClass usual = Warmers.FORTY_HOUR;
    Parcel known = with(usual.measured(0.9, new Range(0.85, 0.95)));
    WarmerClass watts =
        new WarmerClass(
            "watts",
            usual.size(),
            usual.mass(),
            new PrescribedPower(TimeFunction.constant(2)),
            usual.strength(),
            Source.assumed("made up"));
    Journey journey = at(288);
    assertTrue(Factor.RATING_BENCH.matters(iron, journey));
    assertFalse(Factor.RATING_BENCH.matters(known, journey), "measured whatever the bench");
    assertFalse(Factor.RATING_BENCH.matters(with(watts), journey));
    assertTrue(Factor.ACTIVATION_ENERGY.matters(iron, journey));
    assertTrue(Factor.ACTIVATION_ENERGY.matters(known, journey));
    assertFalse(Factor.ACTIVATION_ENERGY.matters(with(watts), journey));
    assertFalse(Factor.RATING_BENCH.matters(Packings.plain(), journey));
    assertEquals(
        2,
        run(with(watts), 288, Variation.NOMINAL.with(Factor.RATING_BENCH, 1))
            .power(with(watts).warmers().get(0).name())[3]);
  }
}
