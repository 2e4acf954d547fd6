package stenotherm.study;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import stenotherm.transit.Factor;
import stenotherm.transit.Variation;

/** A run that is put together quantity by quantity. Not thread-safe. */
final class Draft {
  private final Map<Factor, Double> positions = new EnumMap<>(Factor.class);
  private final Map<String, Double> warmers = new LinkedHashMap<>();
  private final Map<Integer, Double> legs = new LinkedHashMap<>();
  private double shift;

  void place(Factor factor, double position) {
    positions.put(factor, position);
  }

  void placeWarmer(String warmer, double position) {
    warmers.put(warmer, position);
  }

  /** Makes a leg warmer [K]. */
  void warmLeg(int leg, double kelvin) {
    legs.merge(leg, kelvin, Double::sum);
  }

  /** Makes all animals warmer than the run tells, once they are on their way [K]. */
  void warmAnimals(double kelvin) {
    shift += kelvin;
  }

  Variation variation() {
    return new Variation(positions, warmers, 0, Map.of(), legs);
  }

  /** By how much all animals are warmer than the run tells [K]. */
  double shift() {
    return shift;
  }
}
