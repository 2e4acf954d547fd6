package stenotherm.modal;

import java.util.Arrays;
import java.util.Random;

/**
 * A state as parcels meet it, drawn at random. A run began some time ago and something changed
 * since then: at both times the ambient jumped, all around by about the same; blocks that start
 * apart did so at the beginning; sources went on or off at either. The times ago are spread evenly
 * over orders of magnitude, from a minute to a week.
 */
final class UsualState {
  private static final double AMBIENT = 15;
  private static final double AMBIENT_APART = 3;
  private static final double FLUX = 100;
  private static final double MOST_POWER = 3;
  private static final double LEAST_POWER = 0.02;
  private static final double START = 5;
  private static final double SHORTEST = 60;
  private static final double LONGEST = 6e5;

  private final Body body;

  /** Coordinates in the basis. */
  final double[] coordinates;

  final double[] inputs;

  private final double[] z;
  private final double[] jump;
  private final double[] force;

  UsualState(ModalSystem system, Body body) {
    this.body = body;
    this.coordinates = new double[system.basisSize];
    this.inputs = new double[system.inputs];
    this.z = new double[system.modes];
    this.jump = new double[system.inputs];
    this.force = new double[system.modes];
  }

  /** Draws a state of a configuration of the same size. */
  void draw(Random random, ModalSystem system) {
    Arrays.fill(inputs, 0);
    Arrays.fill(z, 0);
    double began = between(random, SHORTEST, LONGEST);
    double changed = between(random, SHORTEST, began);
    for (double[] start : body.apart()) {
      startApart(START * random.nextGaussian(), began, system, start);
    }
    for (double ago : new double[] {began, changed}) {
      Arrays.fill(jump, 0);
      double common = AMBIENT * random.nextGaussian();
      for (int drive = 0; drive < body.drives.count(); drive++) {
        switch (body.drives.unit(drive)) {
          case "K" -> set(drive, common + AMBIENT_APART * random.nextGaussian());
          case "W" -> set(drive, random.nextBoolean() ? power(random) : 0);
          default -> set(drive, FLUX * random.nextGaussian());
        }
      }
      addJump(system, ago);
    }
    system.toBasis(z, coordinates);
  }

  /** Most often heat that is given. */
  private static double power(Random random) {
    double power = between(random, LEAST_POWER, MOST_POWER);
    return random.nextInt(4) == 0 ? -power : power;
  }

  /** Spread evenly in the logarithm. */
  private static double between(Random random, double low, double high) {
    return low * Math.exp(Math.log(high / low) * random.nextDouble());
  }

  private void set(int drive, double value) {
    for (int input : body.drives.members(drive)) {
      jump[input] = value;
    }
  }

  private void startApart(double by, double ago, ModalSystem system, double[] start) {
    ExponentialStep since = new ExponentialStep(system.lambda, ago);
    system.toModes(start, force);
    for (int j = 0; j < z.length; j++) {
      z[j] += by * since.decay[j] * force[j];
    }
  }

  /** Adds the response to a jump of the inputs. */
  private void addJump(ModalSystem system, double ago) {
    ExponentialStep since = new ExponentialStep(system.lambda, ago);
    system.force(jump, force);
    for (int j = 0; j < z.length; j++) {
      z[j] += ago * since.phi1[j] * force[j];
    }
    for (int u = 0; u < inputs.length; u++) {
      inputs[u] += jump[u];
    }
  }
}
