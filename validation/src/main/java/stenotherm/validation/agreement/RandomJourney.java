package stenotherm.validation.agreement;

import static stenotherm.base.Temperatures.fromCelsius;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stenotherm.ambient.AirMovement;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.DailyExtremes;
import stenotherm.ambient.DiurnalShape;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Sunshine;
import stenotherm.ambient.Underside;
import stenotherm.base.Face;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.journey.Contact;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;

/**
 * A journey drawn at random: two to six legs of all in all 6 to 72 h in air of -15 to 40 Celsius,
 * still or moving, some of them in the sun, on a side, beside something warm or cold, in an
 * aircraft, or late.
 */
final class RandomJourney {
  private static final Source INVENTED = Source.assumed("drawn at random");
  private static final Place CLOCK = new Place("somewhere", ZoneOffset.UTC);
  private static final LocalDateTime SEALING = LocalDateTime.of(2026, 3, 2, 18, 0);
  private static final double LONGEST = 72;
  private static final double COLDEST = -15;
  private static final double HOTTEST = 40;

  private final Draws draws;
  private final double mostHours;

  private RandomJourney(Draws draws, double mostHours) {
    this.draws = draws;
    this.mostHours = mostHours;
  }

  /**
   * Draws a journey.
   *
   * @param mostHours no leg begins later, 6 to 72
   */
  static Journey of(Draws draws, double mostHours) {
    return new RandomJourney(draws, mostHours).journey();
  }

  private Journey journey() {
    int count = draws.of(List.of(2, 3, 3, 4, 5, 6));
    double longest = draws.of(List.of(6.0, 12.0, 12.0, 20.0, LONGEST / 2));
    double start = fromCelsius(draws.within(18, 26));
    List<Leg> legs = new ArrayList<>();
    double left = mostHours;
    for (int number = 0; number < count && left > 4; number++) {
      double quarters = Math.rint(4 * draws.within(1, Math.min(longest, left)));
      double hours = number == 0 ? Math.max(3, quarters / 4) : Math.max(3.0 / count, quarters / 4);
      Leg leg =
          new Leg("leg " + (number + 1), CLOCK, Times.fromHours(hours), surroundings(), INVENTED);
      double late = draws.chance(0.15) ? draws.within(0.25, 3) : 0;
      legs.add(late > 0 ? leg.delayed(Times.fromHours(late)) : leg);
      left -= hours + late;
    }
    return new Journey(SEALING, start, legs);
  }

  private Surroundings surroundings() {
    Surroundings air = Surroundings.of(ambient(), 2, films());
    if (draws.chance(0.25)) {
      air = air.lying(draws.of(List.of(Orientation.values())));
    }
    if (draws.chance(0.2)) {
      air = air.under(sun());
    }
    if (draws.chance(0.2)) {
      air = air.atAltitude(draws.within(500, 2500));
    }
    return draws.chance(0.15) ? air.touching(List.of(contact())) : air;
  }

  private TimeFunction ambient() {
    double mean = draws.within(COLDEST, HOTTEST);
    double low = Math.max(COLDEST, mean - draws.within(0, 8));
    double high = Math.min(HOTTEST, mean + draws.within(0, 8));
    return switch (draws.of(List.of(0, 1, 2))) {
      case 0 -> Ambient.constant(fromCelsius(mean));
      case 1 ->
          new DailyExtremes(
              Times.fromHours(-18),
              java.util.Collections.nCopies(5, new Range(fromCelsius(low), fromCelsius(high))),
              DiurnalShape.SOLAR_TIME);
      default -> hourly(low, high);
    };
  }

  /** Readings that wander between two temperatures. */
  private TimeFunction hourly(double low, double high) {
    double[] kelvin = new double[(int) LONGEST + 25];
    double phase = draws.within(0, 24);
    double period = draws.within(9, 31);
    for (int hour = 0; hour < kelvin.length; hour++) {
      double part =
          0.5
              + 0.35 * Math.sin(2 * Math.PI * (hour + phase) / 24)
              + 0.15 * Math.sin(2 * Math.PI * (hour * hour + phase) / period);
      kelvin[hour] = fromCelsius(low + (high - low) * part);
    }
    return Ambient.hourly(0, kelvin);
  }

  private FaceFilms films() {
    AirMovement movement =
        draws.chance(0.6) ? new AirMovement.Moving(draws.within(0, 6)) : AirMovement.STILL;
    Underside underside =
        draws.chance(0.3) ? new Underside.Open() : Underside.Resting.onHardFloor();
    return new FaceFilms(movement, FaceFilms.BOARD_EMISSIVITY, underside);
  }

  /** Some hours of sun from above and from a side, that come and go during the journey. */
  private Sunshine sun() {
    double begins = draws.within(0, 20);
    double strength = draws.within(100, 900);
    TimeFunction above = course(begins, strength);
    TimeFunction aside = course(begins + 2, draws.within(0, 0.6) * strength);
    Face side = draws.of(List.of(Face.X_MIN, Face.Y_MIN, Face.X_MAX));
    return new Sunshine(
        Map.of(Face.Z_MAX, above, side, aside), SolarAbsorptance.KRAFT_BOARD, draws.within(0, 60));
  }

  private static TimeFunction course(double begins, double strength) {
    double[] hours = {begins, begins + 2, begins + 4, begins + 7, begins + 9};
    double[] parts = {0, 0.6, 1, 0.7, 0};
    double[] times = new double[2 * hours.length];
    double[] values = new double[2 * hours.length];
    for (int row = 0; row < times.length; row++) {
      int knot = row % hours.length;
      times[row] = Times.fromHours(hours[knot] + (row < hours.length ? 0 : 24));
      values[row] = strength * parts[knot];
    }
    return TimeFunction.table(times, values);
  }

  private Contact contact() {
    Face face = draws.of(List.of(Face.Y_MAX, Face.X_MAX, Face.X_MIN));
    Range whole = new Range(0, 1);
    Range first = draws.chance(0.5) ? new Range(0, 0.5) : whole;
    if (draws.chance(0.25)) {
      return new Contact(face, first, whole, new Contact.Insulated());
    }
    TimeFunction neighbour = Ambient.constant(fromCelsius(draws.within(COLDEST, HOTTEST)));
    double resistance = draws.within(0.02, 0.3);
    return new Contact(face, first, whole, new Contact.Neighbour(neighbour, resistance));
  }
}
