package stenotherm.modal;

import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Range;

/**
 * All that moves a body under one configuration, in its modes by their rates: inputs within their
 * spans, blocks that start apart, and what is left of all that was before. Only {@link #lower}
 * changes it, before any bound is looked for.
 */
final class Causes {
  /** Ratio of one time to that before. */
  private static final double GROWTH = 1.06;

  /** The same where a history falls into two configurations: there are many more to look at. */
  private static final double GROWTH_OF_RECENT = 1.25;

  private final ModalSystem system;

  /** Modes, by their rates. */
  private final int[] order;

  final double[] lambda;
  final Decays ever;

  /** The times since a configuration began, as long as each lasts at least. */
  final Decays recent;

  /** exp(-lambda s) at the end of these. */
  final double[] left;

  /** What an input, or a block that starts apart, does to the modes for 1, and its range. */
  @SuppressWarnings("ArrayRecordComponent") // internal; never compared or printed
  record Cause(double[] ofModes, Range range) {
    /** Largest effect of a positive and a negative response; the range holds 0. */
    double most(double positive, double negative) {
      return range.high() * positive - range.low() * negative;
    }

    double magnitude() {
      return Math.max(range.high(), -range.low());
    }
  }

  /** The most that each mode may be at any time; found once all configurations are known. */
  final double[] mostEver;

  final List<Cause> inputs = new ArrayList<>();
  final List<Cause> starts = new ArrayList<>();

  /**
   * Takes a configuration up.
   *
   * @param drives ranges of the drives, each of which holds 0
   * @param apart ranges of the blocks that start apart, likewise
   * @param shortest how long a configuration lasts at least [s]
   */
  Causes(ModalSystem system, Body body, List<Range> drives, List<Range> apart, double shortest) {
    this.system = system;
    order = new int[system.modes];
    for (int j = 0; j < order.length; j++) {
      int at = j;
      while (at > 0 && system.lambda[order[at - 1]] > system.lambda[j]) {
        order[at] = order[at - 1];
        at--;
      }
      order[at] = j;
    }
    lambda = sorted(system.lambda);
    ever = Decays.ever(lambda, GROWTH);
    recent = Decays.until(shortest, lambda, GROWTH_OF_RECENT);
    mostEver = new double[lambda.length];
    left = new double[lambda.length];
    for (int j = 0; j < left.length; j++) {
      left[j] = Math.exp(-lambda[j] * shortest);
    }
    double[] unit = new double[system.inputs];
    double[] force = new double[order.length];
    for (int drive = 0; drive < drives.size(); drive++) {
      for (int input : body.drives.members(drive)) {
        unit[input] = 1;
      }
      system.force(unit, force);
      for (int input : body.drives.members(drive)) {
        unit[input] = 0;
      }
      inputs.add(new Cause(sorted(force), drives.get(drive)));
    }
    for (int block = 0; block < apart.size(); block++) {
      starts.add(new Cause(row(body.apart().get(block)), apart.get(block)));
    }
  }

  private double[] sorted(double[] ofModes) {
    double[] sorted = new double[order.length];
    for (int j = 0; j < sorted.length; j++) {
      sorted[j] = ofModes[order[j]];
    }
    return sorted;
  }

  int modes() {
    return order.length;
  }

  /** What is linear in the coordinates of the basis, in the modes. */
  double[] row(double[] coordinates) {
    double[] z = new double[order.length];
    system.toModes(coordinates, z);
    return sorted(z);
  }

  /**
   * The modes here in those of another configuration, a row for each: what is linear in the state
   * goes from here to there as a state goes from there to here.
   */
  double[][] in(Causes other) {
    double[][] rows = new double[order.length][];
    for (int j = 0; j < order.length; j++) {
      double[] z = new double[order.length];
      z[order[j]] = 1;
      double[] coordinates = new double[Math.max(system.basisSize, other.system.basisSize)];
      system.toBasis(z, coordinates);
      rows[j] = other.row(coordinates);
    }
    return rows;
  }

  /**
   * How much of a state may be there at most: the root of its square in the product of the heat
   * capacities. Between surroundings all within their spans no temperature leaves these (maximum
   * principle; it is one of the whole field, and the reduced one may overshoot by its error, which
   * is small beside spans of some kelvins and is left out). What a power adds under one
   * configuration is at most as long as its steady state; of what was there when that began, no
   * more is left when it ends than the slowest rate lets over.
   *
   * @param kept the most that any configuration leaves of a state, 0 to 1
   */
  double reach(Body body, double kept) {
    double temperatures = 0;
    double reach = 0;
    for (int drive = 0; drive < inputs.size(); drive++) {
      Cause cause = inputs.get(drive);
      if (body.drives.unit(drive).equals("K")) {
        temperatures = Math.max(temperatures, cause.magnitude());
      } else if (cause.magnitude() > 0) {
        double[] steady = cause.ofModes.clone();
        for (int j = 0; j < steady.length; j++) {
          steady[j] /= lambda[j];
        }
        reach += cause.magnitude() * length(steady) * (1 + 1 / (1 - kept));
      }
    }
    for (Cause start : starts) {
      reach += start.magnitude() * length(start.ofModes);
    }
    return reach + temperatures * Math.sqrt(body.capacity);
  }

  /**
   * Lowers the most that each mode may be to the largest of what others may bring along and what
   * inputs may make of it here: on the way from the one to the other it lies between the two.
   */
  void lower(List<Passage> before) {
    for (int j = 0; j < mostEver.length; j++) {
      double most = 0;
      for (Cause cause : inputs) {
        most += cause.magnitude() * Math.abs(cause.ofModes[j]) / lambda[j];
      }
      for (Passage passage : before) {
        most = Math.max(most, passage.ofMode(j));
      }
      for (Cause start : starts) {
        most += start.magnitude() * Math.abs(start.ofModes[j]);
      }
      mostEver[j] = Math.min(mostEver[j], most);
    }
  }

  /**
   * What is left in a sum of modes of all that was there the shortest time ago.
   *
   * @param reach the most of a state that may be there
   */
  double ofEarlier(double[] ofModes, double reach) {
    double square = 0;
    double sum = 0;
    for (int j = ever.decaying; j < ofModes.length; j++) {
      double much = Math.abs(ofModes[j]) * left[j];
      square += much * much;
      sum += much * mostEver[j];
    }
    return Math.min(reach * Math.sqrt(square), sum);
  }

  private static double length(double[] values) {
    return Math.sqrt(Columns.product(values, values));
  }
}
