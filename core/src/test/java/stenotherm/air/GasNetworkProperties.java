package stenotherm.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must hold for the air of every parcel. */
class GasNetworkProperties {
  private static final double SEA_LEVEL = StandardAtmosphere.SEA_LEVEL_PRESSURE;
  private static final AmbientAir AIR = new AmbientAir(278.15, SEA_LEVEL, 0.7);

  private static double logarithmic(Random random, double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  /** A parcel with some cups, a towel in each and four walls. */
  private static GasNetwork parcel(Random random, int cups) {
    double[] sizes = new double[cups + 1];
    sizes[0] = logarithmic(random, 5e-4, 2e-2);
    int[] surfaces = new int[cups + 4];
    double[] water = new double[cups + 4];
    for (int v = 1; v <= cups; v++) {
      sizes[v] = logarithmic(random, 2e-5, 1e-3);
      surfaces[v - 1] = v;
      water[v - 1] = random.nextBoolean() ? 1 : 1e-4;
    }
    return new GasNetwork(sizes, surfaces, water, AIR, 293.15);
  }

  private static void open(GasNetwork network, int volume, double conductance, boolean isEqual) {
    for (Gas gas : Gas.values()) {
      double ratio =
          isEqual ? 1 : gas.diffusivity(293, SEA_LEVEL) / Gas.OXYGEN.diffusivity(293, SEA_LEVEL);
      network.setExchange(volume, gas, conductance * ratio);
    }
  }

  /**
   * Amounts stay above 0 and ledgers close, however leaky, hungry or wet, and however long a step.
   */
  @Property(tries = 300, seed = "20260901")
  void amountsStayAboveZeroAndLedgersClose(
      @ForAll @IntRange(min = 0, max = 4) int cups, @ForAll long seed) {
    Random random = new Random(seed);
    GasNetwork network = parcel(random, cups);
    double[] turnover = new double[4];
    for (Gas gas : Gas.values()) {
      turnover[gas.ordinal()] = network.stored(gas);
    }
    for (int i = 0; i < 60; i++) {
      if (i % 10 == 0) {
        for (int v = 0; v <= cups; v++) {
          open(network, v, logarithmic(random, 1e-12, 1e-3), false);
          network.setFlow(v, random.nextBoolean() ? 0 : logarithmic(random, 1e-9, 1e-3));
          network.setSink(v, random.nextBoolean() ? 0 : logarithmic(random, 1e-9, 1e-2));
          network.setUptake(v, random.nextBoolean() ? 0 : logarithmic(random, 1e-10, 1e-5));
          network.setTemperature(v, 265 + 50 * random.nextDouble());
        }
        for (int s = 0; s < cups + 4; s++) {
          double vapour = MoistAir.saturationPressure(265 + 45 * random.nextDouble());
          network.setSurface(s, logarithmic(random, 1e-11, 1e-5), vapour);
        }
        double pressure = 75_000 + 26_000 * random.nextDouble();
        network.setOutside(new AmbientAir(250 + 55 * random.nextDouble(), pressure, 0.6));
      }
      double[] before = Arrays.stream(Gas.values()).mapToDouble(network::entered).toArray();
      network.setRespiratoryQuotient(0.7 + 0.3 * random.nextDouble());
      network.step(logarithmic(random, 10, 900));
      for (Gas gas : Gas.values()) {
        for (int v = 0; v <= cups; v++) {
          assertTrue(network.amount(v, gas) >= 0, gas + " " + network.amount(v, gas));
          assertTrue(network.meanFraction(v, gas) >= 0, gas + " mean");
        }
        turnover[gas.ordinal()] += Math.abs(network.entered(gas) - before[gas.ordinal()]);
        assertEquals(0, network.residual(gas), 1e-9 * turnover[gas.ordinal()]);
      }
      for (int s = 0; s < cups + 4; s++) {
        assertTrue(network.water(s) >= 0, "water " + network.water(s));
      }
    }
  }

  /** Without sources and sinks no mole fraction leaves what was inside and outside before. */
  @Property(tries = 200, seed = "20260902")
  void withoutSourcesFractionsStayBetweenInsideAndOutside(
      @ForAll @IntRange(min = 0, max = 4) int cups,
      @ForAll long seed,
      @ForAll @DoubleRange(min = 10, max = 3600) double duration) {
    Random random = new Random(seed);
    GasNetwork network = parcel(random, cups);
    for (int v = 0; v <= cups; v++) {
      open(network, v, logarithmic(random, 1e-9, 1e-5), true);
      network.setSink(v, logarithmic(random, 1e-9, 1e-4));
    }
    network.step(600);
    for (int v = 0; v <= cups; v++) {
      open(network, v, logarithmic(random, 1e-9, 1e-2), true);
      network.setSink(v, 0);
    }
    double low = AIR.fraction(Gas.OXYGEN);
    double high = low;
    for (int v = 0; v <= cups; v++) {
      low = Math.min(low, network.fraction(v, Gas.OXYGEN));
      high = Math.max(high, network.fraction(v, Gas.OXYGEN));
    }
    for (int i = 0; i < 20; i++) {
      network.step(duration);
      for (int v = 0; v <= cups; v++) {
        double x = network.fraction(v, Gas.OXYGEN);
        // the totals are met to 1e-5
        assertTrue(x >= low - 1e-5 && x <= high + 1e-5, low + " " + x + " " + high);
      }
    }
  }

  private static GasNetwork steady(long seed, int cups, double opening, double flow) {
    Random random = new Random(seed);
    GasNetwork network = parcel(random, cups);
    double sink = logarithmic(random, 1e-7, 5e-5);
    for (int v = 0; v <= cups; v++) {
      open(network, v, logarithmic(random, 1e-8, 1e-5) * opening, false);
      network.setUptake(v, v == 0 ? 0 : 1e-8);
    }
    network.setFlow(0, flow);
    network.setSink(0, sink);
    for (int i = 0; i < 2000; i++) {
      network.step(3600);
    }
    return network;
  }

  /** At steady state more opening never means less oxygen. */
  @Property(tries = 100, seed = "20260903")
  void moreOpeningNeverMeansLessOxygen(
      @ForAll @IntRange(min = 0, max = 3) int cups,
      @ForAll long seed,
      @ForAll @DoubleRange(min = 1, max = 3) double more,
      @ForAll @IntRange(min = 0, max = 10) int flow) {
    GasNetwork tight = steady(seed, cups, 1, 0);
    GasNetwork open = steady(seed, cups, more, flow * 1e-6);
    for (int v = 0; v <= cups; v++) {
      assertTrue(
          open.fraction(v, Gas.OXYGEN) >= tight.fraction(v, Gas.OXYGEN) - 1e-9,
          tight.fraction(v, Gas.OXYGEN) + " then " + open.fraction(v, Gas.OXYGEN));
    }
  }
}
