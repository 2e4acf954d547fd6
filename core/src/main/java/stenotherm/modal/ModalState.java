package stenotherm.modal;

import java.util.Arrays;

/** The amplitudes of the modes of one system, stepped in time. */
final class ModalState {
  /** How many step lengths are remembered; runs alternate between a few. */
  private static final int REMEMBERED = 4;

  ModalSystem system;

  /** Amplitudes [K (J/K)^(1/2)]. */
  double[] z;

  /** Integral of the amplitudes over the last step. */
  double[] integral;

  /** Forces under the inputs at the start and at the end of a step. */
  private double[] force;

  private double[] later;

  /** The inputs that the later forces belong to; NaN if there are none. */
  private final double[] laterInputs;

  private final ExponentialStep[] steps = new ExponentialStep[REMEMBERED];
  private int oldest;

  ModalState(ModalSystem system, double[] coordinates) {
    this.system = system;
    this.z = new double[system.modes];
    this.integral = new double[system.modes];
    this.force = new double[system.modes];
    this.later = new double[system.modes];
    this.laterInputs = new double[system.inputs];
    Arrays.fill(laterInputs, Double.NaN);
    system.toModes(coordinates, z);
  }

  void advance(double dt, double[] inputsAtStart, double[] inputsAtEnd) {
    double[] spare = force;
    force = later;
    later = spare;
    if (!Arrays.equals(inputsAtStart, laterInputs)) {
      system.force(inputsAtStart, force);
    }
    system.force(inputsAtEnd, later);
    System.arraycopy(inputsAtEnd, 0, laterInputs, 0, laterInputs.length);
    step(dt).take(force, later, z, integral);
  }

  private ExponentialStep step(double dt) {
    for (ExponentialStep known : steps) {
      if (known != null && known.duration == dt) {
        return known;
      }
    }
    ExponentialStep step = new ExponentialStep(system.lambda, dt);
    steps[oldest] = step;
    oldest = (oldest + 1) % REMEMBERED;
    return step;
  }

  double[] coordinates() {
    double[] coordinates = new double[system.basisSize];
    system.toBasis(z, coordinates);
    return coordinates;
  }

  /** Continues in the modes of another system: a rotation. */
  void use(ModalSystem other) {
    double[] coordinates = new double[Math.max(other.basisSize, system.basisSize)];
    system.toBasis(z, coordinates);
    changeTo(other);
    other.toModes(coordinates, z);
  }

  private void changeTo(ModalSystem other) {
    system = other;
    z = new double[other.modes];
    integral = new double[other.modes];
    force = new double[other.modes];
    later = new double[other.modes];
    Arrays.fill(laterInputs, Double.NaN);
    Arrays.fill(steps, null);
  }
}
