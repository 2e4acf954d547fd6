package stenotherm.warmer;

import java.util.Arrays;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;

/**
 * A warmer by itself in plain air, its breathable face up, between a support below and a room
 * above:
 *
 * <pre>
 *   C dT/dt = P - (A / R_below) (T - T_below) - ((A + A_edges) / R_above) (T - T_above)
 *   dQ/dt = P,  X = Q / (heat of all of the iron)
 * </pre>
 *
 * <p>A is one face of the pad, C the mass of the fresh contents times {@value #SPECIFIC_HEAT} J/(kg
 * K). Classical Runge-Kutta method of fourth order in steps of {@value #STEP} s at most.
 *
 * <p>Limits: one temperature for the whole pad; resistances that do not depend on temperature; the
 * resistances are assumed, and the watts that a rating stands for go with 1 over them.
 *
 * <p>A value, thus thread-safe.
 *
 * @param below what it lies on
 * @param above what is above and around it
 */
public record Bench(BenchSide below, BenchSide above) {
  /** Where the bench comes from. */
  public static final Source SOURCE =
      Source.assumed(
          "Warm support of 30 °C and a light cover as in JIS S 4100; 0.20 and 0.40 m2 K/W are"
              + " estimates of the support's cloth and of cover and air film");

  /** The bench of ratings: a support of 30 °C, a light cover, a room of 20 °C; assumed. */
  public static final Bench RATING = rating(Temperatures.fromCelsius(20));

  /**
   * By what the conductance of a bench may be off, and with it film, iron and watts that follow
   * from a rating [-]: assumed, the resistances are estimates to about a third.
   */
  public static final Range CONDUCTANCES = new Range(0.7, 1.3);

  /**
   * Specific heat of the fresh contents [J/(kg K)], as of the material "warmer mix, fresh": from
   * parts by mass, half iron, 22 % water.
   */
  static final double SPECIFIC_HEAT = 1360;

  /** Oxygen in dry air [mol/mol]. */
  static final double OXYGEN = 0.2095;

  /** Time step [s]. */
  static final double STEP = 60;

  /** No warmer works longer [s]. */
  private static final double LONGEST = Times.fromHours(240);

  private static final Range TIMES = new Range(0, LONGEST);

  /**
   * One side of a bench.
   *
   * @param resistance thermal resistance from the powder to what lies beyond, for the area [m2 K/W]
   * @param temperature temperature beyond [K], 200 to 350
   */
  public record BenchSide(double resistance, double temperature) {
    /**
     * Checks the values.
     *
     * @throws stenotherm.base.InvalidInputException if the resistance is not above 0 or the
     *     temperature out of its range
     */
    public BenchSide {
      Checks.positive("resistance of a bench", resistance, "m2 K/W");
      Checks.parcelTemperature("temperature of a bench", temperature);
    }
  }

  /**
   * The bench of ratings in another room; its support stays at 30 °C.
   *
   * @param room temperature of the room [K]
   * @return the bench
   * @throws stenotherm.base.InvalidInputException if the temperature is out of its range
   */
  public static Bench rating(double room) {
    return new Bench(new BenchSide(0.20, Temperatures.fromCelsius(30)), new BenchSide(0.40, room));
  }

  /**
   * Checks the sides.
   *
   * @throws stenotherm.base.InvalidInputException if one is missing
   */
  public Bench {
    Checks.given("underside of a bench", below);
    Checks.given("upper side of a bench", above);
  }

  /**
   * A bare table in a room: a film of 10 W/(m2 K) above and 0.20 m2 K/W below, assumed. Warmers
   * that are made to lie against a body stay lukewarm here.
   *
   * @param room temperature of room and table [K]
   * @return the bench
   * @throws stenotherm.base.InvalidInputException if the temperature is out of its range
   */
  public static Bench onTable(double room) {
    return new Bench(new BenchSide(0.20, room), new BenchSide(0.10, room));
  }

  /**
   * Wrapped in a loose cloth that lets air through, in a room: 0.40 m2 K/W on both sides as above
   * the bench of ratings, assumed.
   *
   * @param room temperature of the room [K]
   * @return the bench
   * @throws stenotherm.base.InvalidInputException if the temperature is out of its range
   */
  public static Bench wrapped(double room) {
    return new Bench(new BenchSide(0.40, room), new BenchSide(0.40, room));
  }

  /**
   * Runs a warmer from the temperature of the room until it has cooled down.
   *
   * @param warmer the warmer
   * @return what it did
   */
  public BenchRun run(WarmerClass warmer) {
    return new Marching(warmer, SPECIFIC_HEAT * warmer.mass(), above.temperature).to(LONGEST, true);
  }

  /**
   * Runs a warmer from the temperature of the room for some time, as one that is opened before a
   * parcel is sealed.
   *
   * @param warmer the warmer
   * @param time time since it was opened [s], at most 240 h
   * @return what it did
   * @throws stenotherm.base.InvalidInputException if the time is not above 0 or too long
   */
  public BenchRun opened(WarmerClass warmer, double time) {
    Checks.positive("time since opening", time, "s");
    Checks.within("time since opening", time, TIMES, "s", "No warmer works longer than 240 hours.");
    return new Marching(warmer, SPECIFIC_HEAT * warmer.mass(), above.temperature).to(time, false);
  }

  /**
   * Runs a pad whose capacity and start are given, until it has cooled down.
   *
   * @param capacity heat capacity [J/K]
   * @param start temperature at the opening [K]
   */
  BenchRun run(WarmerClass.PadSize size, HeatRelease heat, double capacity, double start) {
    return new Marching(size, heat, capacity, start).to(LONGEST, true);
  }

  /** The same, for a time [s]. */
  BenchRun run(
      WarmerClass.PadSize size, HeatRelease heat, double capacity, double start, double time) {
    return new Marching(size, heat, capacity, start).to(time, false);
  }

  /**
   * Returns the thermal conductance from a pad to both sides.
   *
   * @param size extent of the pad
   * @return conductance [W/K]
   */
  public double conductance(WarmerClass.PadSize size) {
    return downwards(size) + upwards(size);
  }

  /** Temperature that a pad without heat takes on [K]. */
  double rest(WarmerClass.PadSize size) {
    double down = downwards(size);
    double up = upwards(size);
    return (down * below.temperature + up * above.temperature) / (down + up);
  }

  private double downwards(WarmerClass.PadSize size) {
    return size.face() / below.resistance;
  }

  private double upwards(WarmerClass.PadSize size) {
    return (size.face() + size.edges()) / above.resistance;
  }

  /** One run: temperature and heat given so far, in steps. */
  private final class Marching {
    private final HeatRelease release;
    private final double capacity;
    private final double conductance;
    private final double rest;
    private double[] times = new double[1024];
    private double[] temperatures = new double[1024];
    private double[] heats = new double[1024];
    private int last;

    Marching(WarmerClass warmer, double capacity, double start) {
      this(warmer.size(), warmer.heat(), capacity, start);
    }

    Marching(WarmerClass.PadSize size, HeatRelease release, double capacity, double start) {
      this.release = release;
      this.capacity = capacity;
      this.conductance = conductance(size);
      this.rest = rest(size);
      temperatures[0] = start;
    }

    BenchRun to(double end, boolean untilCold) {
      double highest = 0;
      while (times[last] < end && !(untilCold && isOver())) {
        step(Math.min(longestStep(), end - times[last]));
        highest = Math.max(highest, power(times[last], temperatures[last], heats[last]));
      }
      int rows = last + 1;
      BenchCurve curve =
          new BenchCurve(Arrays.copyOf(times, rows), Arrays.copyOf(temperatures, rows));
      double[] given = Arrays.copyOf(heats, rows);
      double rise = curve.rise();
      double fall = curve.falls();
      double mean =
          rise < fall
              ? (curve.interpolated(given, fall) - curve.interpolated(given, rise)) / (fall - rise)
              : Double.NaN;
      BenchRun.BenchState state =
          new BenchRun.BenchState(temperatures[last], heats[last], conversion(heats[last]));
      return new BenchRun(curve, highest, mean, state);
    }

    /** Shorter where the iron runs out, so that no step takes more than is left [s]. */
    private double longestStep() {
      double power = power(times[last], temperatures[last], heats[last]);
      return release instanceof IronPowder powder && power > 0
          ? Math.min(STEP, (powder.heat() - heats[last]) / power / 4)
          : STEP;
    }

    /** Well below 40 °C again and cooling. */
    private boolean isOver() {
      return last > 1
          && temperatures[last] < BenchCurve.USEFUL - 2
          && temperatures[last] < temperatures[last - 1]
          && temperatures[last - 1] < temperatures[last - 2]
          && times[last] > Times.HOUR;
    }

    private void step(double step) {
      if (last + 1 == times.length) {
        times = Arrays.copyOf(times, 2 * times.length);
        temperatures = Arrays.copyOf(temperatures, times.length);
        heats = Arrays.copyOf(heats, times.length);
      }
      double time = times[last];
      double temperature = temperatures[last];
      double heat = heats[last];
      double middle = time + step / 2;
      double power1 = power(time, temperature, heat);
      double slope1 = slope(power1, temperature);
      double temperature2 = temperature + step / 2 * slope1;
      double power2 = power(middle, temperature2, heat + step / 2 * power1);
      double slope2 = slope(power2, temperature2);
      double temperature3 = temperature + step / 2 * slope2;
      double power3 = power(middle, temperature3, heat + step / 2 * power2);
      double slope3 = slope(power3, temperature3);
      double temperature4 = temperature + step * slope3;
      double power4 = power(time + step, temperature4, heat + step * power3);
      double slope4 = slope(power4, temperature4);
      last++;
      times[last] = time + step;
      temperatures[last] = temperature + step / 6 * (slope1 + 2 * (slope2 + slope3) + slope4);
      heats[last] = heat + step / 6 * (power1 + 2 * (power2 + power3) + power4);
    }

    private double slope(double power, double temperature) {
      return (power - conductance * (temperature - rest)) / capacity;
    }

    private double power(double time, double temperature, double heat) {
      if (release instanceof PrescribedPower prescribed) {
        return prescribed.power().at(time);
      }
      IronPowder powder = (IronPowder) release;
      IronPowder.Supply at = new IronPowder.Supply(1, AirFilm.SEA_LEVEL, temperature);
      return powder.uptake(conversion(heat), time, at)
          * OXYGEN
          * AirFilm.SEA_LEVEL
          * powder.product().heatPerOxygen();
    }

    private double conversion(double heat) {
      return release instanceof IronPowder powder ? heat / powder.heat() : 0;
    }
  }
}
