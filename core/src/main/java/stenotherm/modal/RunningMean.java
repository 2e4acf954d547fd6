package stenotherm.modal;

import java.util.Arrays;

/** Integrals and means over time of the amplitudes in one configuration and of the inputs. */
final class RunningMean {
  private double[] amplitudes = new double[0];
  private double[] inputs = new double[0];
  private double duration;

  void restart(int modes, int inputCount) {
    if (amplitudes.length != modes || inputs.length != inputCount) {
      amplitudes = new double[modes];
      inputs = new double[inputCount];
    }
    Arrays.fill(amplitudes, 0);
    Arrays.fill(inputs, 0);
    duration = 0;
  }

  void add(double more, double[] ofAmplitudes, double[] ofInputs) {
    duration += more;
    for (int j = 0; j < amplitudes.length; j++) {
      amplitudes[j] += ofAmplitudes[j];
    }
    for (int u = 0; u < inputs.length; u++) {
      inputs[u] += ofInputs[u];
    }
  }

  boolean isEmpty() {
    return duration == 0;
  }

  /** Integral of the amplitudes; not to be changed. */
  double[] integralOfAmplitudes() {
    return amplitudes;
  }

  /** Integral of the inputs; not to be changed. */
  double[] integralOfInputs() {
    return inputs;
  }

  double[] amplitudes() {
    return mean(amplitudes);
  }

  double[] inputs() {
    return mean(inputs);
  }

  private double[] mean(double[] integrals) {
    double[] means = new double[integrals.length];
    for (int i = 0; i < means.length; i++) {
      means[i] = integrals[i] / duration;
    }
    return means;
  }
}
