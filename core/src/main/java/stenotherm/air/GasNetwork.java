package stenotherm.air;

import java.util.Arrays;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;

/**
 * Amounts of oxygen, nitrogen, carbon dioxide and water vapour in the parcel and in each lidded
 * cup.
 *
 * <p>Volume 0 is the air of the parcel; its neighbour is the outside. Volumes 1, 2, ... are cups;
 * their neighbour is volume 0. Each is mixed and has the ambient total pressure. With x the mole
 * fraction, c the molar density and N = p V / (R T) the total amount, each gas follows
 *
 * <pre>
 *   dn/dt = (G + q) c (x_neighbour - x) + F x_(where F comes from) - sinks + breath + evaporation
 * </pre>
 *
 * where G is the conductance of diffusion, q a flow that exchanges equal amounts, and F the make-up
 * flow into the volume, by which the amounts sum to N at the end of a step: it balances what sinks,
 * breath, water, pressure, temperature and unequal diffusion would change.
 *
 * <p>Water surfaces (damp bedding, walls on which vapour condenses) hold a store of water. Each
 * evaporates g (p_surface - p_vapour), less than 0 if it condenses, but never more than its store.
 *
 * <p>A step: set what differs from the last one, then {@link #step}. Conductances, flows, sinks,
 * uptakes and surfaces are means over the step; pressure and temperatures are those at its end, and
 * change linearly. For given make-up flows each gas follows a linear system with constant
 * coefficients, for which the step replaces exp(-z) by 1 / (1 + z + z²/2 + z³/6): of third order,
 * damping stiff parts, exact at a steady state, and never negative, however long the step. (That
 * function and the two that multiply sources are positive, falling and convex. A function with
 * these properties of a star's matrix has no negative entry, since each entry is a positive
 * combination of its divided differences up to the second.) Make-up flows, uptake of animals and
 * stores that run dry are found by iteration and are means over the step, which makes the whole of
 * second order.
 *
 * <p>Mutable, not thread-safe. A step allocates nothing.
 */
public final class GasNetwork {
  /**
   * Mole fraction of oxygen below which an animal takes up in proportion to it; above, its uptake
   * does not depend on it. Assumed: half of the critical level, as many ectotherms regulate down to
   * about a quarter of normal air.
   */
  public static final double CONFORMING_FRACTION = 0.05;

  /** Steps that are meant [s]. */
  public static final Range STEPS = new Range(1e-3, 3600);

  private static final Gas[] GASES = Gas.values();
  private static final int SPECIES = GASES.length;
  private static final int OXYGEN = Gas.OXYGEN.ordinal();
  private static final int WATER = Gas.WATER_VAPOUR.ordinal();
  private static final int CARBON_DIOXIDE = Gas.CARBON_DIOXIDE.ordinal();

  /** Poles -P and -(S ± i T) of 1 / (1 + z + z²/2 + z³/6), and its residues A and B ± i C. */
  private static final double P = 1.5960716379833215;

  private static final double S = 0.7019641810083392;
  private static final double T = 1.8073394944520218;
  private static final double A = 1.4756865177957208;
  private static final double B = -0.7378432588978604;
  private static final double C = 0.36501784080102845;

  /** One over the first of the complex poles' negatives: S / (S² + T²) and -T / (S² + T²). */
  private static final double INVERSE_RE = S / (S * S + T * T);

  private static final double INVERSE_IM = -T / (S * S + T * T);

  /**
   * How nearly the amounts sum to N, relative to N: less than a parcel's pressure is known to. The
   * next step makes up for what is missing.
   */
  private static final double CLOSURE = 1e-5;

  private static final int ENTERED = 1;
  private static final int MADE = 2;
  private static final int TAKEN = 3;
  private static final int MOST_ITERATIONS = 100;

  private final int volumes;
  private final double[] size;
  private final int[] surfaceVolume;

  // state, by gas and volume where it says gas
  private final double[] amount; // gas [mol]
  private final double[] store; // [mol]
  private final double[] makeUp; // [mol/s], of the last step
  private final double[] growth; // [mol/s], of N in the last step
  private final double[] breathed; // [-], mean fraction of oxygen in the last step
  private final double[] total; // for each gas: there at first, entered, made, taken up [mol]
  private double pressure;

  // what holds over the next step
  private final double[] exchange; // gas
  private final double[] flow;
  private final double[] sink;
  private final double[] uptake;
  private double respiratoryQuotient;
  private final double[] surfaceConductance;
  private final double[] surfacePressure;
  private final double[] endTemperature;
  private double endPressure;
  private AmbientAir outside;
  private final double[] outsideFraction = new double[SPECIES];

  // of the last step
  private final double[] mean; // gas [-], mole fraction
  private final double[] link; // gas [mol/s]
  private final double[] evaporation; // [mol/s]
  private final double[] uptakeFactor; // [mol/s]
  private final boolean[] isEmptied;
  private final boolean[] hasRunDry;
  private final double[] whole; // [mol], N at the end
  private final double[] middle; // [mol]
  private final double[] end; // gas [mol]

  // of one gas
  private final double[] lossOut;
  private final double[] toHub;
  private final double[] fromHub;
  private final double[] gain;

  /**
   * Volumes filled with outside air.
   *
   * @param sizes free volume of the air in the parcel, then of that in each lidded cup [m3], in the
   *     order of their numbers
   * @param surfaceVolumes for each surface of water the volume that it meets
   * @param surfaceWater for each surface the water that it holds [mol], 0 for a dry wall
   * @param air the outside air
   * @param temperature initial temperature of all volumes [K]
   * @throws InvalidInputException if a size is not above 0, water is negative, a surface's volume
   *     does not exist or the arrays of surfaces differ in length
   */
  public GasNetwork(
      double[] sizes,
      int[] surfaceVolumes,
      double[] surfaceWater,
      AmbientAir air,
      double temperature) {
    volumes = sizes.length;
    if (volumes == 0) {
      throw new InvalidInputException("volumes of air", "must not be empty");
    }
    size = sizes.clone();
    for (double each : size) {
      Checks.positive("volume of air", each, "m3");
    }
    surfaceVolume = surfaceVolumes.clone();
    int surfaces = surfaceVolume.length;
    if (surfaceWater.length != surfaces) {
      throw new InvalidInputException(
          "water on surfaces", surfaceWater.length + " values for " + surfaces + " surfaces");
    }
    store = surfaceWater.clone();
    for (int i = 0; i < surfaces; i++) {
      volumeIndex(surfaceVolume[i]);
      Checks.notNegative("water on a surface", store[i], "mol");
    }
    outside = Checks.given("outside air", air);
    pressure = air.pressure();
    endPressure = pressure;
    amount = new double[SPECIES * volumes];
    makeUp = new double[volumes];
    growth = new double[volumes];
    breathed = new double[volumes];
    endTemperature = new double[volumes];
    total = new double[4 * SPECIES];
    exchange = new double[SPECIES * volumes];
    flow = new double[volumes];
    sink = new double[volumes];
    uptake = new double[volumes];
    surfaceConductance = new double[surfaces];
    surfacePressure = new double[surfaces];
    mean = new double[SPECIES * volumes];
    link = new double[SPECIES * volumes];
    evaporation = new double[surfaces];
    uptakeFactor = new double[volumes];
    isEmptied = new boolean[surfaces];
    hasRunDry = new boolean[surfaces];
    whole = new double[volumes];
    middle = new double[volumes];
    end = new double[SPECIES * volumes];
    lossOut = new double[volumes];
    toHub = new double[volumes];
    fromHub = new double[volumes];
    gain = new double[volumes];
    Arrays.fill(endTemperature, Checks.parcelTemperature("temperature of air", temperature));
    setOutside(air);
    Arrays.fill(breathed, outsideFraction[OXYGEN]);
    for (int s = 0; s < SPECIES; s++) {
      for (int v = 0; v < volumes; v++) {
        amount[s * volumes + v] = outsideFraction[s] * amountOfAir(v, pressure, temperature);
      }
      total[4 * s] = stored(GASES[s]);
    }
  }

  private double amountOfAir(int volume, double p, double t) {
    return p * size[volume] / (MoistAir.GAS_CONSTANT * t);
  }

  private int volumeIndex(int volume) {
    if (volume < 0 || volume >= volumes) {
      throw new InvalidInputException(
          "volume of air", volume + " must lie between 0 and " + (volumes - 1));
    }
    return volume;
  }

  // ---- what holds over the next step

  /**
   * Sets the outside air, whose pressure all volumes have at the end of the next step.
   *
   * @param air the air
   */
  public void setOutside(AmbientAir air) {
    outside = Checks.given("outside air", air);
    endPressure = air.pressure();
    air.fractions(outsideFraction);
  }

  /**
   * Sets the temperature of a volume at the end of the next step.
   *
   * @param volume number of the volume
   * @param value the temperature [K], 200 to 350
   * @throws InvalidInputException if it is out of its range
   */
  public void setTemperature(int volume, double value) {
    endTemperature[volume] = Checks.parcelTemperature("temperature of air", value);
  }

  /**
   * Sets the conductance of diffusion between a volume and its neighbour: the sum of its openings.
   *
   * @param volume number of the volume
   * @param gas the gas
   * @param conductance the conductance [m3/s]
   * @throws InvalidInputException if it is negative or not finite
   */
  public void setExchange(int volume, Gas gas, double conductance) {
    exchange[gas.ordinal() * volumes + volume] =
        Checks.notNegative("conductance of openings", conductance, "m3/s");
  }

  /**
   * Sets the flow of air between a volume and its neighbour that comes and goes in equal amounts.
   *
   * @param volume number of the volume
   * @param value the flow one way [m3/s], at the mean density of both sides
   * @throws InvalidInputException if it is negative or not finite
   */
  public void setFlow(int volume, double value) {
    flow[volume] = Checks.notNegative("exchange of air", value, "m3/s");
  }

  /**
   * Sets what takes up oxygen in proportion to its mole fraction, as warmers do.
   *
   * @param volume number of the volume
   * @param rate the rate in pure oxygen [mol/s]
   * @throws InvalidInputException if it is negative or not finite
   */
  public void setSink(int volume, double rate) {
    sink[volume] = Checks.notNegative("sink of oxygen", rate, "mol/s");
  }

  /**
   * Sets what animals take up, which does not depend on oxygen above {@link #CONFORMING_FRACTION}.
   *
   * @param volume number of the volume
   * @param rate oxygen [mol/s]
   * @throws InvalidInputException if it is negative or not finite
   */
  public void setUptake(int volume, double rate) {
    uptake[volume] = Checks.notNegative("uptake of oxygen", rate, "mol/s");
  }

  /**
   * Sets how much carbon dioxide animals breathe out for the oxygen that they took up.
   *
   * @param quotient the respiratory quotient [-], 0 to begin with
   * @throws InvalidInputException if it is negative or not finite
   */
  public void setRespiratoryQuotient(double quotient) {
    respiratoryQuotient = Checks.notNegative("respiratory quotient", quotient, "");
  }

  /**
   * Sets how a surface of water exchanges vapour with its volume.
   *
   * @param surface number of the surface
   * @param conductance evaporation over the difference of vapour pressures [mol/(s Pa)]
   * @param vapourPressure vapour pressure at the surface: saturation pressure at its temperature
   *     times its activity of water [Pa]
   * @throws InvalidInputException if a value is negative or not finite
   */
  public void setSurface(int surface, double conductance, double vapourPressure) {
    surfaceConductance[surface] =
        Checks.notNegative("vapour conductance of a surface", conductance, "mol/(s Pa)");
    surfacePressure[surface] =
        Checks.notNegative("vapour pressure of a surface", vapourPressure, "Pa");
  }

  // ---- the step

  /**
   * Advances all volumes.
   *
   * @param duration length of the step [s], 0.001 to 3600, meant for 10 to 900
   * @throws InvalidInputException if the duration is out of its range
   * @throws IllegalStateException if the make-up flows are not found
   */
  public void step(double duration) {
    Checks.within(
        "time step of the air", duration, STEPS, "s", "Balances of gases take 10 s to 900 s.");
    double meanPressure = (pressure + endPressure) / 2;
    prepare(meanPressure, duration);
    int iterations = 0;
    do {
      if (iterations++ == MOST_ITERATIONS) {
        throw new IllegalStateException("make-up flows of the air not found");
      }
      for (int s = 0; s < SPECIES; s++) {
        coefficients(s, meanPressure, duration);
        solve(s, duration);
      }
    } while (!isConsistent(meanPressure, duration));
    book(meanPressure, duration);
  }

  private void prepare(double meanPressure, double duration) {
    double ambient = meanPressure / (MoistAir.GAS_CONSTANT * outside.temperature());
    for (int v = volumes - 1; v >= 0; v--) {
      double now = sum(amount, v);
      whole[v] = endPressure * size[v] / (MoistAir.GAS_CONSTANT * endTemperature[v]);
      middle[v] = (now + whole[v]) / 2;
      // make-up begins as in the last step but for how N grows, a cup's coming through the parcel
      double faster = (whole[v] - now) / duration - growth[v];
      growth[v] += faster;
      makeUp[v] += faster;
      if (v > 0) {
        makeUp[0] += faster;
      }
      double expected = 2 * amount[OXYGEN * volumes + v] / now - breathed[v];
      uptakeFactor[v] = uptake[v] / Math.max(expected, CONFORMING_FRACTION);
    }
    for (int v = 0; v < volumes; v++) {
      double neighbour = v == 0 ? ambient : middle[0] / size[0];
      double density = (middle[v] / size[v] + neighbour) / 2;
      for (int s = 0; s < SPECIES; s++) {
        int i = s * volumes + v;
        link[i] = (exchange[i] + flow[v]) * density;
      }
    }
    for (int i = 0; i < store.length; i++) {
      hasRunDry[i] = false;
      isEmptied[i] = store[i] == 0 && surfacePressure[i] >= vapourPressure(surfaceVolume[i]);
    }
  }

  private double sum(double[] amounts, int volume) {
    double sum = 0;
    for (int s = 0; s < SPECIES; s++) {
      sum += amounts[s * volumes + volume];
    }
    return sum;
  }

  /** Rates of one gas [1/s] and what does not depend on its amounts [mol/s]. */
  private void coefficients(int gas, double meanPressure, double duration) {
    for (int v = 0; v < volumes; v++) {
      int i = gas * volumes + v;
      double in = link[i] + Math.max(makeUp[v], 0);
      double out = link[i] + Math.max(-makeUp[v], 0);
      // that of oxygen was found before
      gain[v] = gas == CARBON_DIOXIDE ? breathedOut(v) : 0;
      lossOut[v] = gas == OXYGEN ? (sink[v] + uptakeFactor[v]) / middle[v] : 0;
      if (v == 0) {
        gain[0] += in * outsideFraction[gas];
        lossOut[0] += out / middle[0];
      } else {
        toHub[v] = out / middle[v];
        fromHub[v] = in / middle[0];
      }
    }
    if (gas == WATER) {
      for (int i = 0; i < store.length; i++) {
        int v = surfaceVolume[i];
        if (isEmptied[i]) {
          gain[v] += store[i] / duration;
        } else {
          gain[v] += surfaceConductance[i] * surfacePressure[i];
          lossOut[v] += surfaceConductance[i] * meanPressure / middle[v];
        }
      }
    }
  }

  /**
   * Amounts at the end and their means. With h the step, M the matrix of rates, b the gains and c
   * the residue of a pole -p, they are the sums over the poles of c y and c y / p, where (p + h M)
   * y = n + h b / p. Cups are eliminated into the parcel's equation without a difference.
   */
  private void solve(int gas, double h) {
    int offset = gas * volumes;
    // the real pole, and of the pair of complex ones twice the real part of the first
    double factor = P + h * lossOut[0];
    double right = amount[offset] + h * gain[0] / P;
    double factorRe = S + h * lossOut[0];
    double factorIm = T;
    double rightRe = amount[offset] + h * gain[0] * INVERSE_RE;
    double rightIm = h * gain[0] * INVERSE_IM;
    for (int v = 1; v < volumes; v++) {
      double n = amount[offset + v];
      double b = h * gain[v];
      double inner = P + h * lossOut[v];
      double all = 1 / (inner + h * toHub[v]);
      factor += h * fromHub[v] * inner * all;
      right += h * toHub[v] * (n + b / P) * all;
      double innerRe = S + h * lossOut[v];
      double allRe = innerRe + h * toHub[v];
      double inverse = 1 / (allRe * allRe + T * T);
      factorRe += h * fromHub[v] * inverse * (innerRe * allRe + T * T);
      factorIm += h * fromHub[v] * inverse * T * (allRe - innerRe);
      double re = n + b * INVERSE_RE;
      double im = b * INVERSE_IM;
      rightRe += h * toHub[v] * inverse * (re * allRe + im * T);
      rightIm += h * toHub[v] * inverse * (im * allRe - re * T);
    }
    double hub = right / factor;
    double inverse = 1 / (factorRe * factorRe + factorIm * factorIm);
    double hubRe = (rightRe * factorRe + rightIm * factorIm) * inverse;
    double hubIm = (rightIm * factorRe - rightRe * factorIm) * inverse;
    put(offset, hub, hubRe, hubIm, middle[0]);
    for (int v = 1; v < volumes; v++) {
      double n = amount[offset + v];
      double b = h * gain[v];
      double all = h * (lossOut[v] + toHub[v]);
      double fromParcel = h * fromHub[v];
      double real = (n + b / P + fromParcel * hub) / (P + all);
      double re = n + b * INVERSE_RE + fromParcel * hubRe;
      double im = b * INVERSE_IM + fromParcel * hubIm;
      double allRe = S + all;
      double scale = 1 / (allRe * allRe + T * T);
      put(
          offset + v,
          real,
          (re * allRe + im * T) * scale,
          (im * allRe - re * T) * scale,
          middle[v]);
    }
  }

  /** Sums over the poles. */
  private void put(int index, double real, double re, double im, double middleAmount) {
    double weightedRe = 2 * (B * re - C * im);
    double weightedIm = 2 * (B * im + C * re);
    end[index] = A * real + weightedRe;
    mean[index] = (A / P * real + weightedRe * INVERSE_RE - weightedIm * INVERSE_IM) / middleAmount;
  }

  /**
   * Tells whether the make-up flows give the total amounts, and if so whether each surface gave or
   * took what it can. If not it corrects the flows and what the animals take up, or the surfaces.
   */
  private boolean isConsistent(double meanPressure, double duration) {
    boolean isClosed = true;
    for (int v = 0; v < volumes; v++) {
      isClosed &= Math.abs(whole[v] - sum(end, v)) <= CLOSURE * whole[v];
      double factor = uptake[v] / Math.max(mean[OXYGEN * volumes + v], CONFORMING_FRACTION);
      isClosed &= Math.abs(factor - uptakeFactor[v]) <= CLOSURE * factor;
    }
    if (!isClosed) {
      correctMakeUp(duration);
      return false;
    }
    boolean holds = true;
    for (int i = 0; i < store.length; i++) {
      double lost = wanted(i, meanPressure) * duration;
      if (isEmptied[i] ? lost < store[i] && !hasRunDry[i] : lost > store[i]) {
        // having run dry it stays so to the end of the step, lest it goes to and fro
        hasRunDry[i] = !isEmptied[i];
        isEmptied[i] = hasRunDry[i];
        holds = false;
      }
    }
    return holds;
  }

  /**
   * With m what the totals lack, corrects what enters each volume by (1 + 0.75 h M) m / h: within a
   * quarter the inverse of how totals respond, for exchange pulls them towards the neighbour's.
   */
  private void correctMakeUp(double duration) {
    double parcelLacks = whole[0] - sum(end, 0);
    double intoParcel = parcelLacks / duration;
    int nitrogen = Gas.NITROGEN.ordinal() * volumes;
    double weight = 0.75;
    double parcelLoss = (link[nitrogen] + Math.max(-makeUp[0], 0)) / middle[0];
    for (int v = 1; v < volumes; v++) {
      double lacks = whole[v] - sum(end, v);
      double up = (link[nitrogen + v] + Math.max(makeUp[v], 0)) / middle[0];
      double down = (link[nitrogen + v] + Math.max(-makeUp[v], 0)) / middle[v];
      double into = lacks / duration + weight * (down * lacks - up * parcelLacks);
      parcelLoss += up;
      intoParcel += into - weight * down * lacks;
      makeUp[v] += into;
    }
    makeUp[0] += intoParcel + weight * parcelLoss * parcelLacks;
    for (int v = 0; v < volumes; v++) {
      uptakeFactor[v] = uptake[v] / Math.max(mean[OXYGEN * volumes + v], CONFORMING_FRACTION);
    }
  }

  /** Carbon dioxide of animals [mol/s]. */
  private double breathedOut(int volume) {
    return respiratoryQuotient * uptakeFactor[volume] * mean[OXYGEN * volumes + volume];
  }

  private double wanted(int surface, double meanPressure) {
    double vapour = mean[WATER * volumes + surfaceVolume[surface]] * meanPressure;
    return surfaceConductance[surface] * (surfacePressure[surface] - vapour);
  }

  private void book(double meanPressure, double duration) {
    for (int i = 0; i < store.length; i++) {
      evaporation[i] = isEmptied[i] ? store[i] / duration : wanted(i, meanPressure);
      store[i] = isEmptied[i] ? 0 : store[i] - evaporation[i] * duration;
    }
    for (int s = 0; s < SPECIES; s++) {
      double parcel = link[s * volumes];
      double inflow =
          (parcel + Math.max(makeUp[0], 0)) * outsideFraction[s]
              - (parcel + Math.max(-makeUp[0], 0)) * mean[s * volumes];
      total[4 * s + ENTERED] += inflow * duration;
    }
    for (int v = 0; v < volumes; v++) {
      total[4 * CARBON_DIOXIDE + MADE] += breathedOut(v) * duration;
      double x = mean[OXYGEN * volumes + v];
      total[4 * OXYGEN + TAKEN] += (sink[v] + uptakeFactor[v]) * x * duration;
      breathed[v] = x;
    }
    System.arraycopy(end, 0, amount, 0, amount.length);
    pressure = endPressure;
  }

  // ---- where things stand

  /**
   * Returns the mole fraction of a gas now.
   *
   * @param volume number of the volume
   * @param gas the gas
   * @return the fraction [-], 0 to 1
   */
  public double fraction(int volume, Gas gas) {
    return amount(volume, gas) / sum(amount, volume);
  }

  /**
   * Returns the amount of a gas now.
   *
   * @param volume number of the volume
   * @param gas the gas
   * @return the amount [mol], not negative
   */
  public double amount(int volume, Gas gas) {
    return amount[gas.ordinal() * volumes + volume];
  }

  /**
   * Returns the vapour pressure of water in a volume now.
   *
   * @param volume number of the volume
   * @return the pressure [Pa]
   */
  public double vapourPressure(int volume) {
    return fraction(volume, Gas.WATER_VAPOUR) * pressure;
  }

  /**
   * Returns the water that a surface holds now.
   *
   * @param surface number of the surface
   * @return the water [mol], not negative
   */
  public double water(int surface) {
    return store[surface];
  }

  // ---- mean rates over the last step

  /**
   * Returns the mean mole fraction of a gas over the last step.
   *
   * @param volume number of the volume
   * @param gas the gas
   * @return the fraction [-]
   */
  public double meanFraction(int volume, Gas gas) {
    return mean[gas.ordinal() * volumes + volume];
  }

  /**
   * Returns the oxygen that went to a volume's sink.
   *
   * @param volume number of the volume
   * @return mean rate over the last step [mol/s]
   */
  public double oxygenToSink(int volume) {
    return sink[volume] * meanFraction(volume, Gas.OXYGEN);
  }

  /**
   * Returns the oxygen that animals in a volume took up.
   *
   * @param volume number of the volume
   * @return mean rate over the last step [mol/s]
   */
  public double oxygenToAnimals(int volume) {
    return uptakeFactor[volume] * meanFraction(volume, Gas.OXYGEN);
  }

  /**
   * Returns the water that evaporated from a surface.
   *
   * @param surface number of the surface
   * @return mean rate over the last step [mol/s], below 0 if vapour condensed
   */
  public double evaporation(int surface) {
    return evaporation[surface];
  }

  /**
   * Returns the make-up flow into a volume from its neighbour.
   *
   * @param volume number of the volume
   * @return mean rate over the last step [mol/s], below 0 if air left
   */
  public double makeUp(int volume) {
    return makeUp[volume];
  }

  // ---- ledger

  /**
   * Returns the amount of a gas in all volumes, with water on surfaces.
   *
   * @param gas the gas
   * @return the amount [mol]
   */
  public double stored(Gas gas) {
    double sum = 0;
    for (int v = 0; v < volumes; v++) {
      sum += amount(v, gas);
    }
    if (gas == Gas.WATER_VAPOUR) {
      for (double each : store) {
        sum += each;
      }
    }
    return sum;
  }

  /**
   * Returns what entered of a gas from outside since the beginning, less what left.
   *
   * @param gas the gas
   * @return the amount [mol]
   */
  public double entered(Gas gas) {
    return total[4 * gas.ordinal() + ENTERED];
  }

  /**
   * Returns what animals breathed out of a gas since the beginning.
   *
   * @param gas the gas
   * @return the amount [mol], 0 but for carbon dioxide
   */
  public double made(Gas gas) {
    return total[4 * gas.ordinal() + MADE];
  }

  /**
   * Returns what sinks and animals took up of a gas since the beginning.
   *
   * @param gas the gas
   * @return the amount [mol], 0 but for oxygen
   */
  public double taken(Gas gas) {
    return total[4 * gas.ordinal() + TAKEN];
  }

  /**
   * Returns what is stored of a gas beyond what was there, entered, was made and not taken up.
   *
   * @param gas the gas
   * @return the residual [mol], 0 but for round-off
   */
  public double residual(Gas gas) {
    return stored(gas) - total[4 * gas.ordinal()] - entered(gas) - made(gas) + taken(gas);
  }
}
