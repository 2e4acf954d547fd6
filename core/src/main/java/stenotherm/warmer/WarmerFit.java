package stenotherm.warmer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Mass;
import stenotherm.base.Masses;
import stenotherm.base.Range;
import stenotherm.base.Source;

/**
 * Permeance, iron and crust of a warmer that has a rating, or a measured curve, on a bench. Least
 * squares over the logarithms of these three and of four assumed quantities, each of which pulls
 * towards its usual value:
 *
 * <pre>
 *   sum ((computed - given) / deviation)^2 + sum (ln(quantity / usual) / spread)^2 = min
 * </pre>
 *
 * <p>The assumed quantities and the ranges that hold 90 % of them: activation energy 40 (25 to 60)
 * kJ/mol, oxygen that the fresh powder would take at 40 °C over what the film lets through 8 (3 to
 * 20), wetting time 15 s for each rated hour and 800 s at most (half to double), heat capacity (0.7
 * to 1.3 times). The crust, 0.5 (0.17 to 1.5), has such a range as well, for few ratings tell it.
 * Intervals hold 90 %, for the bench as stated and a problem that is linear near its solution.
 *
 * <p>What no curve tells: film, iron and capacity in proportion to the conductance of the bench
 * give the same temperatures, so that watts and iron go with a conductance that is assumed. What
 * limits them is the iron that the mass of the contents can hold.
 *
 * <p>A value, thus thread-safe.
 *
 * @param powder the fitted law
 * @param permeance permeance of the film [mol/(s m2 Pa)]
 * @param iron mass of the iron [kg]
 * @param crust resistance of the crust [-]
 * @param watts by what factor film, iron and watts may all be off for want of the bench's
 *     conductance [-]: 0.7 to 1.3, less where the iron would be less than 30 % or more than 70 % of
 *     the contents
 * @param misfit root of the mean square of what is left between computed and given, over the
 *     deviations [-]
 * @param untold what the data do not tell, in sentences
 */
public record WarmerFit(
    IronPowder powder,
    Fitted permeance,
    Fitted iron,
    Fitted crust,
    Range watts,
    double misfit,
    List<String> untold) {
  /** Where the bounds of the iron in the contents come from. */
  public static final Source IRON_SOURCE =
      Source.derived(
          "Patents on body warmers, US 5,918,590", "30 to 80 % iron, at most 70 % beside water");

  /** Locator of what a fit gives. */
  static final String HOW =
      "film and iron fitted on a bench whose resistances are assumed; powder and crust assumed";

  /** The iron that a fit begins with is within a third of what it finds; this is far more [-]. */
  private static final double FAR_OFF = 3;

  /** A curve further off than this misfit, 5 K, is that of something else [-]. */
  private static final double FAR = 10;

  /** Half of the width that holds 90 % of a normal distribution, in standard deviations. */
  private static final double NINETY = 1.6449;

  private static final OxidationProduct PRODUCT = OxidationProduct.LEPIDOCROCITE;

  /** More rows of a curve would cost time and tell nothing new. */
  private static final int ROWS = 60;

  /** Fewer do not tell three quantities and their own noise. */
  private static final int LEAST_ROWS = 10;

  /** A rating further off than this misfit contradicts itself [-]. */
  private static final double CONTRADICTORY = 2;

  private static final String DATA = "rating or curve of a warmer";
  private static final String NONE =
      "no warmer of iron powder has it. Check peak, mean, hours, mass and size";

  /** Position of each quantity among those that are fitted. */
  private static final int PERMEANCE = 0;

  private static final int IRON = 1;
  private static final int CRUST = 2;
  private static final int ACTIVATION = 3;
  private static final int SURPLUS = 4;
  private static final int WETTING = 5;
  private static final int CAPACITY = 6;
  private static final int QUANTITIES = 7;

  /** Spreads of the assumed quantities from the crust on: half of the logarithm of their range. */
  private static final double[] SPREADS = {
    spread(0.17, 1.5),
    spread(PowderKinetics.ACTIVATIONS.low(), PowderKinetics.ACTIVATIONS.high()),
    spread(3, 20),
    spread(0.5, 2),
    spread(0.7, 1.3)
  };

  private static double spread(double low, double high) {
    return Math.log(high / low) / 2 / NINETY;
  }

  /**
   * A fitted quantity.
   *
   * @param value most likely value [unit of the quantity]
   * @param interval interval that holds it with 90 %
   */
  public record Fitted(double value, Range interval) {}

  /**
   * Fits a rating on the bench of {@link Bench#RATING}. Deviations: 0.5 K of peak and mean, 2 % of
   * the hours, 10 % of the rise time.
   *
   * @param rating the rating
   * @param size extent of the pad
   * @param mass mass of the fresh contents
   * @return the fit
   * @throws InvalidInputException if no iron powder of that mass has that rating
   */
  public static WarmerFit of(Rating rating, WarmerClass.PadSize size, Mass mass) {
    Checks.given("rating", rating);
    double duration = rating.duration();
    double room = Bench.RATING.above().temperature();
    return fitted(
        new Guess(rating.peak(), duration, room),
        pad(Bench.RATING, size, mass),
        run -> {
          BenchCurve curve = run.untilCold();
          List<Double> off = new ArrayList<>();
          off.add((curve.peak() - rating.peak()) / 0.5);
          off.add((curve.duration() / duration - 1) / 0.02);
          rating.mean().ifPresent(mean -> off.add((worked(curve) - mean) / 0.5));
          rating
              .rise()
              .ifPresent(
                  rise -> off.add(Math.log(Math.min(curve.rise(), curve.end()) / rise) / 0.1));
          return off;
        },
        false);
  }

  /** Mean while at or above 40 °C, the peak of a curve that never is. */
  private static double worked(BenchCurve curve) {
    return curve.peak() > BenchCurve.USEFUL ? curve.mean() : curve.peak();
  }

  /**
   * Fits a measured curve. Deviation: 0.5 K of each of 60 rows at most, more if the curve lies
   * further from all that the law can give.
   *
   * @param measured temperature since opening, best until it is below 40 °C again
   * @param bench the bench on which it was measured
   * @param size extent of the pad
   * @param mass mass of the fresh contents
   * @return the fit
   * @throws InvalidInputException if the curve never reaches 40 °C or has fewer than 11 rows, or no
   *     iron powder of that mass has it: all lie 5 K or more off, as the root of the mean square
   */
  public static WarmerFit of(
      BenchCurve measured, Bench bench, WarmerClass.PadSize size, Mass mass) {
    Checks.given("curve", measured);
    double duration = measured.duration();
    if (duration == 0) {
      throw new InvalidInputException(
          "curve", "never reaches 40 °C: it tells no iron, wrap the warmer");
    }
    double[] times = measured.sampled(ROWS);
    if (times.length < LEAST_ROWS) {
      throw new InvalidInputException(
          "curve", "has too few rows: " + LEAST_ROWS + " beside the first are needed");
    }
    WarmerFit fit =
        fitted(
            new Guess(measured.peak(), duration, measured.at(0)),
            pad(bench, size, mass),
            run -> {
              BenchCurve curve = run.to(measured.end());
              List<Double> off = new ArrayList<>();
              for (double time : times) {
                off.add((curve.at(time) - measured.at(time)) / 0.5);
              }
              return off;
            },
            true);
    return measured.at(measured.end()) < BenchCurve.USEFUL ? fit : fit.cutShort();
  }

  /** Tells that its hours lie beyond the data. */
  private WarmerFit cutShort() {
    List<String> sentences = new ArrayList<>(untold);
    sentences.add(
        "The curve ends while the warmer still has 40 °C: how long it lasts is guessed from how it"
            + " begins.");
    return new WarmerFit(powder, permeance, iron, crust, watts, misfit, List.copyOf(sentences));
  }

  private static Pad pad(Bench bench, WarmerClass.PadSize size, Mass mass) {
    Checks.given("bench", bench);
    Checks.given("size of a warmer", size);
    return new Pad(bench, size, Checks.given("mass of a warmer", mass).kilograms());
  }

  private record Pad(Bench bench, WarmerClass.PadSize size, double mass) {}

  /** What a fit starts from. */
  private record Guess(double peak, double duration, double start) {}

  /** Off by how much, each over its deviation. */
  private interface Comparison {
    List<Double> off(Trial run);
  }

  /** A warmer that is tried, on its bench. */
  private record Trial(Pad pad, IronPowder powder, double capacity, double start) {
    BenchCurve untilCold() {
      return pad.bench.run(pad.size, powder, capacity, start).curve();
    }

    BenchCurve to(double time) {
      return pad.bench.run(pad.size, powder, capacity, start, time).curve();
    }
  }

  /** The quantities at their usual or guessed values, and the law for factors on them. */
  private static final class Model {
    private final Pad pad;
    private final Guess guess;
    private final double[] usual = new double[QUANTITIES];

    Model(Pad pad, Guess guess) {
      this.pad = pad;
      this.guess = guess;
      double power = pad.bench.conductance(pad.size) * (guess.peak - pad.bench.rest(pad.size));
      if (!(power > 0)) {
        throw new InvalidInputException(
            "peak of the warmer", "is below what the bench alone gives it");
      }
      double pressure = Bench.OXYGEN * AirFilm.SEA_LEVEL;
      usual[PERMEANCE] = 1.2 * power / PRODUCT.heatPerOxygen() / pressure / pad.size.face();
      usual[IRON] = 0.9 * power * guess.duration / PRODUCT.heatPerIron();
      // far off, no fit would mend it, and look long for one
      requireRoom(usual[IRON], pad.mass, FAR_OFF);
      usual[CRUST] = 0.5;
      usual[ACTIVATION] = PowderKinetics.ACTIVATION;
      usual[SURPLUS] = PowderKinetics.SURPLUS;
      usual[WETTING] = PowderKinetics.usualWetting(guess.duration);
      usual[CAPACITY] = Bench.SPECIFIC_HEAT * pad.mass;
    }

    private double value(int quantity, double[] logarithms) {
      return usual[quantity] * Math.exp(logarithms[quantity]);
    }

    IronPowder powder(double[] logarithms) {
      AirFilm film =
          new AirFilm(value(PERMEANCE, logarithms), pad.size.face(), AirFilm.Transport.KNUDSEN);
      double iron = value(IRON, logarithms);
      return new IronPowder(
          iron,
          film,
          value(CRUST, logarithms),
          new PowderKinetics(
              value(SURPLUS, logarithms) * film.conductance(1, AirFilm.SEA_LEVEL) / iron,
              value(ACTIVATION, logarithms),
              value(WETTING, logarithms)),
          PRODUCT);
    }

    Trial trial(double[] logarithms) {
      return new Trial(pad, powder(logarithms), value(CAPACITY, logarithms), guess.start);
    }
  }

  private static WarmerFit fitted(
      Guess guess, Pad pad, Comparison comparison, boolean noiseIsUnknown) {
    Model model = new Model(pad, guess);
    UnaryOperator<double[]> residuals =
        logarithms -> {
          List<Double> off = comparison.off(model.trial(logarithms));
          double[] all = new double[off.size() + SPREADS.length];
          for (int row = 0; row < off.size(); row++) {
            all[row] = off.get(row);
          }
          for (int prior = 0; prior < SPREADS.length; prior++) {
            all[off.size() + prior] = logarithms[CRUST + prior] / SPREADS[prior];
          }
          return all;
        };
    Optimum best = least(residuals);
    double[] found = best.getPoint().toArray();
    int rows = best.getResiduals().getDimension() - SPREADS.length;
    double square =
        Arrays.stream(best.getResiduals().toArray()).limit(rows).map(off -> off * off).sum();
    // three quantities are free: a rating of as many numbers tells nothing of its own noise
    double noise = noiseIsUnknown ? Math.max(1, Math.sqrt(square / (rows - 3))) : 1;
    RealMatrix covariance = best.getCovariances(1e-14);
    double[] deviations = new double[QUANTITIES];
    for (int quantity = 0; quantity < QUANTITIES; quantity++) {
      deviations[quantity] = noise * Math.sqrt(covariance.getEntry(quantity, quantity));
    }
    Fitted iron = interval(model, IRON, found, deviations);
    double misfit = Math.sqrt(square / rows);
    if (misfit > (noiseIsUnknown ? FAR : CONTRADICTORY)) {
      throw new InvalidInputException(DATA, NONE);
    }
    requireRoom(iron.value(), pad.mass, 1);
    Range watts = watts(iron.value(), pad.mass);
    return new WarmerFit(
        model.powder(found),
        interval(model, PERMEANCE, found, deviations),
        iron,
        interval(model, CRUST, found, deviations),
        watts,
        misfit,
        untold(watts, deviations));
  }

  /**
   * Refuses iron that is not what contents hold.
   *
   * @param slack by what factor it may lie beyond [-], 1 or more
   */
  private static void requireRoom(double iron, double mass, double slack) {
    double part = iron / mass;
    if (part < WarmerClass.IRON.low() / slack || part > slack * WarmerClass.IRON.high()) {
      throw new InvalidInputException(
          "mass of a warmer",
          String.format(
              Locale.ROOT,
              "%.1f g of contents would hold %.1f g of iron: 30 to 70 %% is usual. Check mass,"
                  + " size, hours and peak",
              Masses.toGrams(mass),
              Masses.toGrams(iron)));
    }
  }

  /**
   * By what factor film, iron and watts may be off together: no bench's conductance is known, but
   * the iron has to have room in the contents.
   *
   * @param iron mass of the iron [kg]
   * @param mass mass of the fresh contents [kg]
   */
  static Range watts(double iron, double mass) {
    double part = iron / mass;
    return new Range(
        Math.max(Bench.CONDUCTANCES.low(), WarmerClass.IRON.low() / part),
        Math.min(Bench.CONDUCTANCES.high(), WarmerClass.IRON.high() / part));
  }

  private static Fitted interval(Model model, int quantity, double[] found, double[] deviations) {
    double value = model.value(quantity, found);
    double factor = Math.exp(NINETY * deviations[quantity]);
    return new Fitted(value, new Range(value / factor, value * factor));
  }

  private static List<String> untold(Range watts, double[] deviations) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        String.format(
            Locale.ROOT,
            "The watts are those of an assumed bench: film, iron and watts may all be %.2f to %.2f"
                + " times as large with the same temperatures.",
            watts.low(),
            watts.high()));
    List<String> assumed = new ArrayList<>();
    String[] names = {"crust", "activation energy", "speed of the powder", "wetting time"};
    for (int prior = 0; prior < names.length; prior++) {
      if (deviations[CRUST + prior] > 0.7 * SPREADS[prior]) {
        assumed.add(names[prior]);
      }
    }
    if (!assumed.isEmpty()) {
      sentences.add(
          "Assumed rather than told by the data: "
              + String.join(", ", assumed)
              + ". A second curve in the cold or in thin air would tell more.");
    }
    return List.copyOf(sentences);
  }

  /** Levenberg-Marquardt from the usual values, with central differences. */
  private static Optimum least(UnaryOperator<double[]> residuals) {
    int rows = residuals.apply(new double[QUANTITIES]).length;
    try {
      return new LevenbergMarquardtOptimizer()
          .withInitialStepBoundFactor(1)
          .optimize(
              new LeastSquaresBuilder()
                  .start(new double[QUANTITIES])
                  .target(new double[rows])
                  .model(point -> linearised(residuals, point.toArray()))
                  .maxEvaluations(200)
                  .maxIterations(60)
                  .build());
    } catch (MathIllegalStateException | InvalidInputException e) {
      InvalidInputException none = new InvalidInputException(DATA, NONE);
      none.initCause(e);
      throw none;
    }
  }

  private static Pair<RealVector, RealMatrix> linearised(
      UnaryOperator<double[]> residuals, double[] point) {
    double step = 1e-3;
    double[] centre = residuals.apply(point);
    double[][] slopes = new double[centre.length][QUANTITIES];
    for (int quantity = 0; quantity < QUANTITIES; quantity++) {
      double[] shifted = point.clone();
      shifted[quantity] = point[quantity] + step;
      double[] above = residuals.apply(shifted);
      shifted[quantity] = point[quantity] - step;
      double[] below = residuals.apply(shifted);
      for (int row = 0; row < centre.length; row++) {
        slopes[row][quantity] = (above[row] - below[row]) / (2 * step);
      }
    }
    return new Pair<>(new ArrayRealVector(centre), new Array2DRowRealMatrix(slopes));
  }
}
