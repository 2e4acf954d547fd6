package stenotherm.transit;

import java.util.ArrayList;
import java.util.List;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.Stowage;
import stenotherm.base.Checks;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Surroundings;

/**
 * The temperature that a parcel meets during a leg: that of the air, or of the parcels around it,
 * which have come with it and follow the air late. A pile begins at what its parcels met last.
 *
 * @param course temperature over time, without the shift [K against s]
 * @param shift by how much the air is warmer than stated; added to it [K]
 */
record MetAir(TimeFunction course, double shift) {
  /** What a parcel meets leg by leg under a variation. */
  static List<MetAir> of(Journey journey, Variation variation) {
    double depth = Stowage.depth((1 + variation.of(Factor.STOWAGE)) / 2);
    List<MetAir> all = new ArrayList<>();
    for (int number = 0; number < journey.legs().size(); number++) {
      Leg leg = journey.legs().get(number);
      Surroundings around = leg.surroundings();
      double shift =
          variation.of(Factor.AMBIENT) * around.spread().total()
              + variation.offset(number, leg.place().name());
      if (shift < 0) {
        requireAir(number, journey, shift);
      }
      double lag = around.stowage().lag(depth);
      double start = journey.start(number);
      if (lag == 0) {
        all.add(new MetAir(around.ambient(), shift));
        continue;
      }
      // the first leg finds the pile at the temperature of its air
      double met =
          number == 0 ? around.ambient().at(start) + shift : all.get(number - 1).before(start);
      TimeFunction others =
          Ambient.lagging(
              around.ambient(), new Range(start, journey.start(number + 1)), met - shift, lag);
      all.add(new MetAir(others, shift));
    }
    return all;
  }

  /**
   * Refuses colder air than any parcel meets: gases know none, and a run would end somewhere inside
   * by a temperature that nobody wrote. They take hotter air as the hottest that they know.
   */
  private static void requireAir(int number, Journey journey, double shift) {
    Leg leg = journey.legs().get(number);
    TimeFunction ambient = leg.surroundings().ambient();
    double start = journey.start(number);
    double coldest = ambient.at(start);
    for (double time : ambient.breakpoints(start, start + leg.lasting())) {
      coldest = Math.min(coldest, Math.min(ambient.before(time), ambient.at(time)));
    }
    if (coldest + shift < Checks.PARCEL_TEMPERATURES.low()) {
      Checks.within(
          "ambient temperature of leg "
              + number
              + ", '"
              + leg.name()
              + "', with an offset of "
              + Checks.show(shift, "K"),
          coldest + shift,
          Checks.PARCEL_TEMPERATURES,
          "K",
          "It is stated as " + Checks.show(coldest, "K") + ".");
    }
  }

  double before(double time) {
    return course.before(time) + shift;
  }
}
