package stenotherm.modal;

/** The amplitudes of the modes of one system, stepped in time. */
final class ModalState {
  ModalSystem system;
  private ExponentialStep step;

  /** Amplitudes [K (J/K)^(1/2)]. */
  double[] z;

  /** Integral of the amplitudes over the last step. */
  double[] integral;

  ModalState(ModalSystem system, double[] coordinates) {
    this.system = system;
    this.step = new ExponentialStep(system.lambda);
    this.z = new double[system.modes];
    this.integral = new double[system.modes];
    system.toModes(coordinates, z);
  }

  void advance(double dt, double[] inputsAtStart, double[] inputsAtEnd) {
    step.prepare(dt);
    int inputs = system.inputs;
    double[] drive = system.drive;
    for (int j = 0; j < z.length; j++) {
      double force = 0;
      double change = 0;
      for (int u = 0; u < inputs; u++) {
        double b = drive[j * inputs + u];
        force += b * inputsAtStart[u];
        change += b * (inputsAtEnd[u] - inputsAtStart[u]);
      }
      double before = z[j];
      integral[j] =
          dt * (step.phi1[j] * before + dt * (step.phi2[j] * force + step.phi3[j] * change));
      z[j] = step.decay[j] * before + dt * (step.phi1[j] * force + step.phi2[j] * change);
    }
  }

  double[] coordinates() {
    double[] coordinates = new double[system.basisSize];
    system.toBasis(z, coordinates);
    return coordinates;
  }

  /** Goes on in the modes of another system: a rotation, or more vectors that start from zero. */
  void use(ModalSystem other) {
    double[] coordinates = new double[Math.max(other.basisSize, system.basisSize)];
    system.toBasis(z, coordinates);
    system = other;
    step = new ExponentialStep(other.lambda);
    z = new double[other.modes];
    integral = new double[other.modes];
    other.toModes(coordinates, z);
  }

  /** Goes back to amplitudes in a system that it was in. */
  void restore(ModalSystem earlier, double[] amplitudes) {
    if (earlier != system) {
      system = earlier;
      step = new ExponentialStep(earlier.lambda);
      z = new double[earlier.modes];
      integral = new double[earlier.modes];
    }
    System.arraycopy(amplitudes, 0, z, 0, z.length);
  }
}
