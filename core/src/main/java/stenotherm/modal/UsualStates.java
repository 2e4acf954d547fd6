package stenotherm.modal;

import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * States that a body meets: mixtures of its answers to inputs of usual strength. An entry is a
 * coordinate in the basis; those of the inputs follow.
 */
final class UsualStates {
  private static final double TEMPERATURE = 20;
  private static final double FLUX = 100;
  private static final double POWER = 2;
  private static final double START = 5;

  /** The least amplitude of an entry, as part of the largest. */
  private static final double LEAST = 1e-4;

  /** Amplitude of each entry. */
  final double[] amplitude;

  /** Answers to the inputs, then states in which one block starts apart. */
  private final double[][] answer;

  UsualStates(ModalSystem system, Drives drives, double[] rates, List<double[]> apart) {
    int length = system.basisSize + system.inputs;
    amplitude = new double[length];
    answer = new double[drives.count() * rates.length + apart.size()][length];
    double largest = 0;
    for (int drive = 0; drive < drives.count(); drive++) {
      double strength =
          switch (drives.unit(drive)) {
            case "K" -> TEMPERATURE;
            case "W" -> POWER;
            default -> FLUX;
          };
      for (int r = 0; r < rates.length; r++) {
        double[] coordinates = answer[drive * rates.length + r];
        system.answer(drives.members(drive), rates[r], coordinates);
        for (int input : drives.members(drive)) {
          coordinates[system.basisSize + input] = r == 0 ? 1 : 0;
        }
        for (int i = 0; i < length; i++) {
          coordinates[i] *= strength;
        }
      }
    }
    for (int start = 0; start < apart.size(); start++) {
      double[] coordinates = answer[drives.count() * rates.length + start];
      for (int i = 0; i < system.basisSize; i++) {
        coordinates[i] = START * apart.get(start)[i];
      }
    }
    for (double[] each : answer) {
      for (int i = 0; i < length; i++) {
        amplitude[i] += each[i] * each[i];
      }
    }
    for (int i = 0; i < length; i++) {
      amplitude[i] = Math.sqrt(amplitude[i]);
      largest = Math.max(largest, amplitude[i]);
    }
    for (int i = 0; i < length; i++) {
      amplitude[i] = Math.max(amplitude[i], LEAST * largest);
    }
  }

  /** Draws a state, each entry in units of its amplitude. */
  void draw(Random random, double[] state) {
    Arrays.fill(state, 0);
    for (double[] each : answer) {
      double normal = random.nextGaussian();
      double weight = normal * normal * normal;
      for (int i = 0; i < state.length; i++) {
        state[i] += weight * each[i];
      }
    }
    for (int i = 0; i < state.length; i++) {
      state[i] /= amplitude[i];
    }
  }
}
