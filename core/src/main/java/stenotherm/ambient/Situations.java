package stenotherm.ambient;

import java.util.List;
import stenotherm.base.Lengths;
import stenotherm.base.Source;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;

/**
 * Kinds of surroundings that parcels meet. Few values are measured: most are assumed or common
 * practice without a source, and say so.
 *
 * <p>Where parcels lie among others is assumed: in holds, in trailers and in the cages and
 * containers of depots and hubs. On the shelves of a van, on a counter or a porch they stand alone,
 * and on an apron too: carts there are often open.
 *
 * <p>Constants, thus thread-safe.
 */
public final class Situations {
  private static final double CABIN = Lengths.fromFeet(8000);
  private static final double FEEDER = Lengths.fromFeet(14_000);

  /** A heated room. */
  public static final Situation INDOORS =
      new Situation(
          "heated room",
          held(21),
          3,
          FaceFilms.indoors(),
          Stowage.ALONE,
          0,
          false,
          Source.practice("heated rooms have 18 °C to 24 °C"));

  /** A heated counter that holds parcels for pick-up. */
  public static final Situation COUNTER =
      new Situation(
          "pick-up counter",
          held(20),
          3,
          FaceFilms.indoors(),
          Stowage.ALONE,
          0,
          false,
          Source.practice("heated counters have 17 °C to 23 °C"));

  /** A van without windows, in shade or by night, often opened. */
  public static final Situation VAN =
      new Situation(
          "van",
          following(3, 1),
          4,
          FaceFilms.indoors(),
          Stowage.ALONE,
          0,
          false,
          Source.practice(
              "vans in shade are a few kelvin warmer than the air outside; one hour of lag is"
                  + " assumed"));

  /** A van without windows parked in the sun. */
  public static final Situation VAN_IN_SUN =
      new Situation(
          "van in the sun",
          following(10, 0.5),
          5,
          FaceFilms.indoors(),
          Stowage.ALONE,
          0,
          false,
          Source.practice(
              "cargo bodies without windows are 5 K to 15 K warmer, up to 25 K under the roof; cars"
                  + " with glass up to 28 K after an hour, Null 2003"));

  /** A closed trailer on the road. */
  public static final Situation TRAILER =
      new Situation(
          "trailer on the road",
          following(2, 2),
          4,
          FaceFilms.indoors(),
          Stowage.AMONG_OTHERS,
          0,
          false,
          Source.practice(
              "trailers follow the air outside within some hours; the sun on the roof makes the"
                  + " mean a little warmer"));

  /** An unheated depot. */
  public static final Situation DEPOT =
      new Situation(
          "unheated depot",
          following(3.5, 4),
          3,
          FaceFilms.indoors(),
          Stowage.AMONG_OTHERS,
          0,
          false,
          Source.practice(
              "unheated depots are 2 K to 5 K warmer than a night outside; four hours of lag are"
                  + " assumed"));

  /** A sorting hub: a hall with open gates, heated a little in winter and not cooled in summer. */
  public static final Situation HUB =
      new Situation(
          "sorting hub",
          new AmbientRule.HeatedWhenCold(
              new AmbientRule.Following(3.5, Times.fromHours(4)), Temperatures.fromCelsius(16)),
          4,
          FaceFilms.indoors(),
          Stowage.AMONG_OTHERS,
          0,
          false,
          Source.derived(
              "a designer of logistics halls in a public discussion, 2019 (halls are almost never"
                  + " cooled and heated to 55 °F, 12.8 °C); a packaging laboratory (sorting halls are"
                  + " near room temperature whatever the weather)",
              "heated to the middle of 12 °C and 20 °C; else as an unheated depot, assumed"));

  /** The hold of a pressurised aircraft, with some heating. */
  public static final Situation AIRCRAFT_HOLD =
      new Situation(
          "aircraft hold",
          held(13),
          7,
          FaceFilms.indoors(),
          Stowage.AMONG_OTHERS,
          CABIN,
          false,
          Source.derived(
              "loggers on single flights: 12 °C to 13 °C, at the lowest 11.5 °C, in a compartment for"
                  + " animals (Larsen 2020), at the lowest 13 °C in a suitcase; pilots in public"
                  + " forums: 10 °C to 18 °C usual, 4 °C to 29 °C by setting; ASHRAE Handbook"
                  + " Refrigeration 2006, chapter 32 (an excerpt was read): set from just above"
                  + " freezing to the temperature of rooms",
              "± 7 K assumed, most of that span; cabin altitude at most 8000 ft, 14 CFR 25.841, from"
                  + " memory"));

  /** The hold of a pressurised aircraft without heating. */
  public static final Situation COLD_HOLD =
      new Situation(
          "unheated aircraft hold",
          held(5),
          5,
          FaceFilms.indoors(),
          Stowage.AMONG_OTHERS,
          CABIN,
          false,
          Source.practice(
              "compartments without heating have 0 °C to 10 °C; cabin altitude at most 8000 ft, 14"
                  + " CFR 25.841, from memory"));

  /** A small aircraft without a pressurised cabin. */
  public static final Situation FEEDER_AIRCRAFT =
      new Situation(
          "unpressurised feeder aircraft",
          held(5),
          8,
          FaceFilms.indoors(),
          Stowage.AMONG_OTHERS,
          FEEDER,
          false,
          Source.practice(
              "14 000 ft stand for feeder aircraft in ASTM D6653, from memory; the temperature is"
                  + " assumed"));

  /** The apron beside an aircraft, open to sun and wind. */
  public static final Situation RAMP =
      new Situation(
          "airport ramp",
          following(3, 0),
          4,
          windy(3),
          Stowage.ALONE,
          0,
          true,
          Source.assumed("paved ground warms the air above it; 3 m/s of wind"));

  /** A porch or a doorstep out of the sun. */
  public static final Situation PORCH_IN_SHADE =
      new Situation(
          "porch in the shade",
          following(0, 0),
          2,
          windy(0.5),
          Stowage.ALONE,
          0,
          false,
          Source.assumed("outdoor air, 0.5 m/s of wind at a wall"));

  /** A doorstep that the sun reaches. */
  public static final Situation PORCH_IN_SUN =
      new Situation(
          "porch in the sun",
          following(0, 0),
          2,
          windy(0.5),
          Stowage.ALONE,
          0,
          true,
          Source.assumed("outdoor air, 0.5 m/s of wind at a wall"));

  private Situations() {}

  /**
   * Returns all situations.
   *
   * @return the constants of this class
   */
  public static List<Situation> all() {
    return List.of(
        INDOORS,
        COUNTER,
        VAN,
        VAN_IN_SUN,
        TRAILER,
        DEPOT,
        HUB,
        AIRCRAFT_HOLD,
        COLD_HOLD,
        FEEDER_AIRCRAFT,
        RAMP,
        PORCH_IN_SHADE,
        PORCH_IN_SUN);
  }

  private static AmbientRule held(double celsius) {
    return new AmbientRule.Held(Temperatures.fromCelsius(celsius));
  }

  private static AmbientRule following(double offset, double lagHours) {
    return new AmbientRule.Following(offset, Times.fromHours(lagHours));
  }

  private static FaceFilms windy(double speed) {
    return new FaceFilms(
        new AirMovement.Moving(speed), FaceFilms.BOARD_EMISSIVITY, Underside.Resting.onHardFloor());
  }
}
