package stenotherm.modal;

import java.util.Arrays;
import java.util.Random;
import stenotherm.base.Range;

/**
 * A state of a run that parcels may meet, drawn at random. The run began some time ago, with blocks
 * that start apart, and something changed since. At both times all ambients jumped by about the
 * same and sources went on or off. How long ago is spread evenly in the logarithm, from a minute to
 * a week.
 */
final class RandomSnapshot {
  /**
   * Jumps of the ambient, its differences around the body, and differences of blocks that start
   * apart [K].
   */
  private static final Range AMBIENT = new Range(1, 20);

  private static final Range AROUND = new Range(0.3, 5);
  private static final Range START = new Range(0.3, 6);

  /** Fluxes [W/m2] and powers [W]. */
  private static final Range FLUX = new Range(3, 200);

  private static final Range POWER = new Range(0.02, 3);

  /** How long ago something happened [s]. */
  private static final double SHORTEST = 60;

  private static final double LONGEST = 6e5;

  /** How many such times there are. */
  private static final int TIMES = 25;

  private static final int FOR_AMPLITUDES = 200;

  private final Body body;
  private final ModalSystem system;

  /** The steps from then to now, by time. */
  private final ExponentialStep[] since = new ExponentialStep[TIMES];

  /** Coordinates in the basis, then inputs. */
  final double[] state;

  private final double[] z;
  private final double[] jump;
  private final double[] force;

  RandomSnapshot(ModalSystem system, Body body) {
    this.body = body;
    this.system = system;
    this.state = new double[system.basisSize + system.inputs];
    this.z = new double[system.modes];
    this.jump = new double[system.inputs];
    this.force = new double[system.modes];
    for (int time = 0; time < TIMES; time++) {
      double ago = SHORTEST * Math.pow(LONGEST / SHORTEST, time / (TIMES - 1.0));
      since[time] = new ExponentialStep(system.lambda, ago);
    }
  }

  /** Draws a snapshot. */
  void draw(Random random) {
    Arrays.fill(state, 0);
    Arrays.fill(z, 0);
    int began = random.nextInt(TIMES);
    int changed = random.nextInt(began + 1);
    for (double[] start : body.apart()) {
      startApart(normal(random, START), since[began], start);
    }
    for (int time : new int[] {began, changed}) {
      Arrays.fill(jump, 0);
      double common = normal(random, AMBIENT);
      double around = between(random, AROUND);
      for (int group = 0; group < body.groups.count(); group++) {
        switch (body.groups.unit(group)) {
          case "K" -> set(group, common + around * random.nextGaussian());
          case "W" -> set(group, random.nextBoolean() ? power(random) : 0);
          default -> set(group, normal(random, FLUX));
        }
      }
      addJump(since[time]);
    }
    system.toBasis(z, state);
  }

  /** The root mean square of each coordinate and input over some snapshots. */
  double[] amplitude(Random random) {
    double[] amplitude = new double[state.length];
    for (int sample = 0; sample < FOR_AMPLITUDES; sample++) {
      draw(random);
      for (int i = 0; i < amplitude.length; i++) {
        amplitude[i] += state[i] * state[i];
      }
    }
    for (int i = 0; i < amplitude.length; i++) {
      amplitude[i] = Math.sqrt(amplitude[i] / FOR_AMPLITUDES);
    }
    return amplitude;
  }

  /** Mostly positive: sources give heat more often than they take it. */
  private static double power(Random random) {
    double power = between(random, POWER);
    return random.nextInt(4) == 0 ? -power : power;
  }

  /** Spread evenly in the logarithm. */
  private static double between(Random random, Range range) {
    return range.low() * Math.pow(range.high() / range.low(), random.nextDouble());
  }

  /** Of either sign, with a standard deviation from a range. */
  private static double normal(Random random, Range strength) {
    return between(random, strength) * random.nextGaussian();
  }

  private void set(int group, double value) {
    for (int input : body.groups.members(group)) {
      jump[input] = value;
    }
  }

  private void startApart(double by, ExponentialStep since, double[] start) {
    system.toModes(start, force);
    for (int j = 0; j < z.length; j++) {
      z[j] += by * since.decay[j] * force[j];
    }
  }

  /** Adds the response to a jump of the inputs. */
  private void addJump(ExponentialStep since) {
    system.force(jump, force);
    for (int j = 0; j < z.length; j++) {
      z[j] += since.duration * since.phi1[j] * force[j];
    }
    for (int u = 0; u < jump.length; u++) {
      state[system.basisSize + u] += jump[u];
    }
  }
}
