package stenotherm.modal;

import java.util.Arrays;

/**
 * What a run brings along into a configuration from one that was there before, at least for the
 * shortest time: bounds of sums of the modes as the later one begins. Not thread-safe: it holds
 * what was found last.
 */
final class Passage {
  private final Causes earlier;
  private final double reach;
  private final Response recent;

  /** The modes of the later one in those of the earlier one. */
  private final double[][] rotation;

  /** What the inputs may make of each mode of the later one for 1 within the shortest time. */
  private final double[] ofInputs;

  private final double[] amplitude;
  private final double[] inModes;

  /** At least what the last sum may be, and the other way. */
  double above;

  double below;

  /**
   * Takes two configurations up.
   *
   * @param reach the most of a state that may be there when one begins
   */
  Passage(Causes earlier, Causes later, double reach) {
    this.earlier = earlier;
    this.reach = reach;
    recent = new Response(earlier.recent);
    rotation = later.in(earlier);
    amplitude = new double[earlier.modes()];
    inModes = new double[earlier.modes()];
    ofInputs = new double[later.modes()];
    for (int j = 0; j < ofInputs.length; j++) {
      System.arraycopy(rotation[j], 0, inModes, 0, inModes.length);
      boundInputs();
      ofInputs[j] = Math.max(above, below);
    }
  }

  private void boundInputs() {
    above = 0;
    below = 0;
    int last = recent.positiveUntil.length - 1;
    for (Causes.Cause cause : earlier.inputs) {
      for (int j = 0; j < amplitude.length; j++) {
        amplitude[j] = inModes[j] * cause.ofModes()[j];
      }
      recent.bound(amplitude);
      above += cause.most(recent.positiveUntil[last], recent.negativeUntil[last]);
      below += cause.most(recent.negativeUntil[last], recent.positiveUntil[last]);
    }
  }

  /** Bounds a sum of the modes of the later configuration. */
  void bound(double[] ofModes) {
    Arrays.fill(inModes, 0);
    for (int j = 0; j < ofModes.length; j++) {
      if (ofModes[j] != 0) {
        add(ofModes[j], rotation[j]);
      }
    }
    boundInputs();
    double left = earlier.ofEarlier(inModes, reach);
    above += left;
    below += left;
  }

  private void add(double much, double[] of) {
    for (int i = 0; i < of.length; i++) {
      inModes[i] += much * of[i];
    }
  }

  /** Bounds a mode of the later configuration, either way. */
  double ofMode(int mode) {
    return ofInputs[mode] + earlier.ofEarlier(rotation[mode], reach);
  }
}
