package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.AirMovement;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.Underside;
import stenotherm.animal.Exposure;
import stenotherm.base.Axis;
import stenotherm.base.End;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Outcome;
import stenotherm.base.ProgressListener;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.grid.Box;
import stenotherm.grid.MeshControl;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.parcel.WallLayer;
import stenotherm.parcel.Walls;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.WarmerClass;

class TransitTest {
  private static final double HOUR = Times.HOUR;
  private static final Place HERE = new Place("here", ZoneOffset.UTC);
  private static final MeshControl MESH = Packings.FEW_CELLS;
  private static final TransitSettings COARSE =
      new TransitSettings(MESH, HOUR, IntegratorSettings.standard());

  private static final TransitSettings QUARTERS =
      new TransitSettings(MESH, HOUR / 4, IntegratorSettings.standard());

  /** Equal steps of 20 minutes: sums of solutions are solutions to the last digits. */
  private static final TransitSettings EVEN =
      new TransitSettings(
          MESH, HOUR, IntegratorSettings.fixed(IntegratorSettings.Scheme.TR_BDF2, 1200));

  private static final FaceFilms FLOOR = FaceFilms.indoors();

  /** On a shelf in moving air. */
  private static final FaceFilms SHELF =
      new FaceFilms(new AirMovement.Moving(1.5), 0.9, new Underside.Open());

  /** Hardly any radiation, whose coefficient would change with the temperature. */
  private static final FaceFilms FOIL =
      new FaceFilms(AirMovement.STILL, 0.01, Underside.Resting.onHardFloor());

  private static Leg leg(String name, double hours, TimeFunction ambient, FaceFilms films) {
    return new Leg(name, HERE, hours * HOUR, ambient, 3, films, Source.assumed("made up"));
  }

  private static Journey journey(double start, Leg... legs) {
    return new Journey(LocalDateTime.of(2026, 1, 5, 18, 0), start, List.of(legs));
  }

  /** Steps every cell: for a single run that is several times as fast as building a model. */
  private static TransitResult run(Parcel parcel, Journey journey) {
    return Transit.run(parcel, journey, Variation.NOMINAL, COARSE.full());
  }

  private static TransitResult runReduced(Parcel parcel, Journey journey) {
    return Transit.run(parcel, journey, Variation.NOMINAL, COARSE);
  }

  private static Parcel heated(double power, Mounting mounting) {
    return Packings.warmed(List.of(Packings.pad(Packings.steady(power), Face.Z_MAX, mounting)));
  }

  private static double last(double[] values) {
    return values[values.length - 1];
  }

  private static double[] sinceEachHour(int hours) {
    double[] times = new double[hours + 1];
    Arrays.setAll(times, hour -> hour * HOUR);
    return times;
  }

  @Test
  void staysAtTheAmbientIfItStartsThere() {
    TransitResult result =
        run(
            Packings.still(0),
            journey(
                293,
                leg("one", 10, Ambient.constant(293), FLOOR),
                leg("two", 14, Ambient.constant(293), SHELF)));
    assertTrue(result.outcome().isCompleted());
    assertArrayEquals(sinceEachHour(24), result.times());
    for (double[] values : List.of(result.mean("pad"), result.hottest("pad"))) {
      for (double value : values) {
        assertEquals(293, value, 1e-6);
      }
    }
    for (Face face : Face.values()) {
      assertEquals(293, last(result.surface(face)), 1e-6);
      assertEquals(0, last(result.heatFlow(face)), 1e-6);
    }
  }

  /** In the end all that the warmer gives leaves through the faces. */
  @Test
  void inTheSteadyStateTheFacesCarryThePower() {
    TransitSettings daily = new TransitSettings(MESH, Times.DAY, IntegratorSettings.standard());
    TransitResult result =
        Transit.run(
            Packings.still(3),
            journey(283, leg("long", 240, Ambient.constant(283), FLOOR)),
            Variation.NOMINAL,
            daily);
    double sum = 0;
    for (Face face : Face.values()) {
      double flow = last(result.heatFlow(face));
      assertTrue(flow < 0, face.label());
      sum += flow;
      // all heat of a face crosses its film
      double film =
          result.coefficients().get(0).surfaces().get(face.label()) * Packings.OUTER.area(face);
      assertEquals(283 - flow / film, last(result.surface(face)), 1e-6, face.label());
    }
    assertEquals(-3, sum, 0.003);
    assertTrue(result.ledger().closes());
    assertEquals(3 * 240 * HOUR, result.ledger().sources().get("pad"), 1);
    assertTrue(last(result.hottest("pad")) > last(result.mean("pad")));
    assertTrue(last(result.mean("pad")) > 283);
  }

  /**
   * A well stirred content in 60 mm of foam: time constant from capacity and shape factors of
   * walls, edges (0.54 per length) and corners (0.15 per thickness), films in series. The walls'
   * own capacity, 6 % of the content's, counts by a third. The estimate is good to 1 % on a fine
   * grid and to 4 % on this one, three cells across a wall.
   */
  @Test
  void coolsWithTheTimeConstantOfItsCapacityAndItsWalls() {
    Material stirred = Material.of("stirred content", 20, 800, 3000);
    double thickness = 0.06;
    double[] inner = {0.2, 0.16, 0.14};
    Box outer = Box.ofSize(0.32, 0.28, 0.26);
    Material foam = Materials.EPS_20;
    PlacedWarmer thermometer =
        new PlacedWarmer(
            "pad", Packings.steady(0), new Placement.InCavity(new Position(0, 0, 0.1), Axis.Z), 0);
    Parcel parcel =
        new Parcel(
                "stirred",
                outer,
                Walls.uniform(List.of(new WallLayer(foam, thickness))),
                stirred,
                Packings.still(0).containers(),
                List.of(thermometer))
            .withOpenings(new Openings(0, List.of()));
    double shape = 0.54 * 4 * (inner[0] + inner[1] + inner[2]) + 8 * 0.15 * thickness;
    double films = 0;
    for (Face face : Face.values()) {
      double area = inner[0] * inner[1] * inner[2] / inner[face.axis().ordinal()];
      shape += area / thickness;
      films += FLOOR.coefficient(face, 303, 283) * outer.area(face);
    }
    double conductance = 1 / (1 / (foam.conductivity() * shape) + 1 / films);
    double cupVolume = 0.1 * 0.08 * 0.06;
    double content = inner[0] * inner[1] * inner[2] - cupVolume;
    double walls = outer.volume() - inner[0] * inner[1] * inner[2];
    double capacity =
        content * 800 * 3000
            + 0.0386 * Materials.WARMER_MIX_FRESH.specificHeat()
            + walls / 3 * 20 * 1450;
    TransitSettings finer =
        new TransitSettings(MeshControl.graded(0.04, 0.02), HOUR, IntegratorSettings.standard());
    TransitResult result =
        Transit.run(
            parcel,
            journey(303, leg("cooling", 96, Ambient.constant(283), FLOOR)),
            Variation.NOMINAL,
            finer.full());
    double[] mean = result.mean("pad");
    double measured = 72 * HOUR / Math.log((mean[24] - 283) / (mean[96] - 283));
    assertEquals(1, measured / (capacity / conductance), 0.04);
  }

  private static double coefficient(TransitResult result, Face face, int row, double ambient) {
    double area = Packings.OUTER.area(face);
    return result.heatFlow(face)[row] / (area * (ambient - result.surface(face)[row]));
  }

  /**
   * The films of each leg are recovered from the stored heat and surface temperatures; they are
   * those at the mean surface temperature of the leg.
   */
  @Test
  void everyLegHasItsAmbientAndItsFilms() {
    TransitResult result =
        Transit.run(
            Packings.plain(),
            journey(
                295,
                leg("room", 6, Ambient.constant(285), FLOOR),
                leg("hot truck", 6, Ambient.constant(308), SHELF)),
            Variation.NOMINAL,
            QUARTERS);
    for (Face face : Face.values()) {
      // legs of 6 h are split at 1 h and 4 h
      for (int[] stage : new int[][] {{0, 4}, {4, 16}, {16, 24}}) {
        int row = stage[1];
        double inRoom = FLOOR.coefficient(face, mean(result.surface(face), stage[0], row), 285);
        double inTruck =
            SHELF.coefficient(face, mean(result.surface(face), 24 + stage[0], 24 + row), 308);
        // the mean over stored values; what the search leaves is less
        assertEquals(inRoom, coefficient(result, face, row, 285), 0.02 * inRoom, face.label());
        double truck = coefficient(result, face, 24 + row, 308);
        assertEquals(inTruck, truck, 0.02 * inTruck, face.label());
      }
      assertEquals(
          coefficient(result, face, 48, 308),
          result.coefficients().get(1).surfaces().get(face.label()),
          1e-6);
    }
    double film = (mean(result.surface(Face.Z_MAX), 0, 24) + 285) / 2;
    double radiation = 4 * 5.670374419e-8 * 0.92 * Math.pow(film, 3);
    assertEquals(5.0 + radiation, coefficient(result, Face.Z_MAX, 1, 285), 0.02);
    assertEquals(2.5 + radiation, coefficient(result, Face.X_MIN, 1, 285), 0.02);
    assertEquals(1 / 0.08, coefficient(result, Face.Z_MIN, 3, 285), 1e-6);
    assertTrue(result.surface(Face.Z_MAX)[28] > result.surface(Face.Z_MAX)[24] + 5);
    assertTrue(result.ledger().closes());
  }

  /** Mean from one stored value to another, by the trapezoidal rule. */
  private static double mean(double[] values, int from, int to) {
    double sum = 0;
    for (int row = from; row < to; row++) {
      sum += (values[row] + values[row + 1]) / 2;
    }
    return sum / (to - from);
  }

  /** A jump within a leg's own record acts as one between legs with the same coefficients. */
  @Test
  void aJumpWithinALegIsTaken() {
    double[] times = {0, 5.5 * HOUR, 5.5 * HOUR, 12 * HOUR};
    TimeFunction jump = Ambient.series(times, new double[] {295, 295, 275, 275});
    TransitResult result =
        runReduced(Packings.still(0), journey(295, leg("jump", 12, jump, FLOOR)));
    assertEquals(295, result.surface(Face.X_MIN)[5], 1e-6);
    assertEquals(0, result.heatFlow(Face.X_MIN)[5], 1e-6);
    assertTrue(result.surface(Face.X_MIN)[6] < 285);
    assertTrue(result.heatFlow(Face.X_MIN)[6] < -0.1);
    // a leg of 12 h is split at 1 h and 4 h; films are those at the mean ambient of the rest
    double mean = (1.5 * 295 + 6.5 * 275) / 8;
    double surface = mean(result.surface(Face.Z_MAX), 4, 12);
    // the trapezoidal rule from one hour to the next misses the mean of the surface by some 0.5 K
    assertEquals(
        FLOOR.coefficient(Face.Z_MAX, surface, mean),
        coefficient(result, Face.Z_MAX, 8, 275),
        0.05);
    assertArrayEquals(sinceEachHour(12), result.times());
  }

  /**
   * Five idle hours before everything shift everything by five hours, but for what two models of
   * other legs differ by, and coefficients that are found within 0.2 %: of a rise of 60 K at the
   * warmer some hundredths.
   */
  @Test
  void aShiftInTimeChangesNothing() {
    double[] hours = {0, 4, 8, 8, 12};
    double[] kelvin = {295, 280, 285, 300, 290};
    double[] times = Arrays.stream(hours).map(Times::fromHours).toArray();
    double[] later = Arrays.stream(hours).map(hour -> Times.fromHours(hour + 5)).toArray();
    TransitResult early =
        Transit.run(
            opened(HOUR),
            journey(295, leg("day", 12, Ambient.series(times, kelvin), FLOOR)),
            Variation.NOMINAL,
            EVEN);
    TransitResult late =
        Transit.run(
            opened(6 * HOUR),
            journey(
                295,
                leg("idle", 5, Ambient.constant(295), SHELF),
                leg("day", 12, Ambient.series(later, kelvin), FLOOR)),
            Variation.NOMINAL,
            EVEN);
    for (int hour = 0; hour <= 12; hour++) {
      assertEquals(early.mean("pad")[hour], late.mean("pad")[hour + 5], 0.05, "hour " + hour);
      assertEquals(early.hottest("pad")[hour], late.hottest("pad")[hour + 5], 0.05);
      assertEquals(early.heatFlow(Face.Z_MAX)[hour], late.heatFlow(Face.Z_MAX)[hour + 5], 0.01);
    }
    assertTrue(early.hottest("pad")[4] > 295 + 5);
  }

  /** A pad that rises within an hour, opened at some time. */
  private static Parcel opened(double time) {
    WarmerClass steady = Packings.steady(1);
    TimeFunction curve =
        TimeFunction.table(
            new double[] {0, HOUR / 4, HOUR, 4 * HOUR, 8 * HOUR, 14 * HOUR},
            new double[] {0, 0.6, 1.7, 1.7, 1.1, 0});
    WarmerClass measured =
        new WarmerClass(
            "measured pad",
            steady.size(),
            steady.mass(),
            new PrescribedPower(curve),
            steady.strength(),
            steady.source());
    return Packings.still(0)
        .withWarmers(
            List.of(new PlacedWarmer("pad", measured, Face.X_MIN, Mounting.taped(), time)));
  }

  @Test
  void aListenerStopsARun() {
    Journey journey = journey(295, leg("room", 12, Ambient.constant(285), FLOOR));
    TransitResult whole = runReduced(Packings.plain(), journey);
    TransitResult part =
        Transit.run(
            Packings.plain(),
            journey,
            Variation.NOMINAL,
            COARSE,
            (done, total) -> {
              assertEquals(12 * HOUR, total);
              return done >= 4 * HOUR
                  ? ProgressListener.Signal.STOP
                  : ProgressListener.Signal.CONTINUE;
            });
    Outcome.Stopped stopped = assertInstanceOf(Outcome.Stopped.class, part.outcome());
    assertEquals(4 * HOUR, stopped.lastTime());
    assertEquals("stopped by the listener after 4 h of 12 h", stopped.reason());
    assertFalse(part.outcome().isCompleted());
    assertArrayEquals(sinceEachHour(4), part.times());
    assertArrayEquals(Arrays.copyOf(whole.mean("cup"), 5), part.mean("cup"));
    assertTrue(part.ledger().closes());
  }

  /** An interrupt ends a run at the last value that belongs to its time. */
  @Test
  void anInterruptStopsARun() {
    Journey journey = journey(295, leg("room", 12, Ambient.constant(285), FLOOR));
    TransitResult whole = runReduced(Packings.plain(), journey);
    TransitResult part =
        Transit.run(
            Packings.plain(),
            journey,
            Variation.NOMINAL,
            COARSE,
            (done, total) -> {
              if (done >= 3 * HOUR) {
                Thread.currentThread().interrupt();
              }
              return ProgressListener.Signal.CONTINUE;
            });
    assertTrue(Thread.interrupted(), "the interrupt must stay visible");
    Outcome.Stopped stopped = assertInstanceOf(Outcome.Stopped.class, part.outcome());
    assertEquals(3 * HOUR, stopped.lastTime());
    assertEquals("interrupted after 3 h of 12 h", stopped.reason());
    assertArrayEquals(sinceEachHour(3), part.times());
    assertArrayEquals(Arrays.copyOf(whole.mean("cup"), 4), part.mean("cup"));
  }

  /** Of the kinds of exceptions, too, by which a run fails or stops. */
  @Test
  void whatAListenerThrowsReachesTheCaller() {
    Journey journey = journey(295, leg("room", 2, Ambient.constant(285), FLOOR));
    List<Throwable> all =
        List.of(
            new IllegalStateException("not on this thread"),
            new CancellationException("own"),
            new InvalidInputException("own", "own"),
            new AssertionError("own"));
    for (TransitSettings settings : List.of(COARSE, COARSE.full())) {
      ParcelModel model = ParcelModel.of(Packings.plain(), journey, settings);
      for (Throwable own : all) {
        Throwable thrown =
            assertThrows(
                own.getClass(),
                () ->
                    model.run(
                        journey,
                        Variation.NOMINAL,
                        (done, total) -> {
                          if (own instanceof Error error) {
                            throw error;
                          }
                          throw (RuntimeException) own;
                        }));
        assertSame(own, thrown);
        assertNull(thrown.getCause());
      }
    }
  }

  /** There is no run yet that could return what it has. */
  @Test
  void anInterruptBeforeThereIsAModelIsThrown() {
    Journey journey = journey(295, leg("room", 12, Ambient.constant(285), FLOOR));
    for (TransitSettings settings : List.of(COARSE, COARSE.full())) {
      Thread.currentThread().interrupt();
      CancellationException stop =
          assertThrows(
              CancellationException.class,
              () -> Transit.run(Packings.plain(), journey, Variation.NOMINAL, settings));
      assertTrue(Thread.interrupted(), "the interrupt must stay visible");
      assertEquals("interrupted while making a grid", stop.getMessage());
    }
  }

  @Test
  void anInterruptBeforehandLeavesTheStartOnly() {
    Journey journey = journey(295, leg("room", 12, Ambient.constant(285), FLOOR));
    ParcelModel model = ParcelModel.of(Packings.plain(), journey, COARSE);
    Thread.currentThread().interrupt();
    TransitResult part = model.run(journey, Variation.NOMINAL);
    assertTrue(Thread.interrupted());
    assertEquals(0, assertInstanceOf(Outcome.Stopped.class, part.outcome()).lastTime());
    assertArrayEquals(new double[] {0}, part.times());
  }

  @Test
  void aRecordThatEndsTooEarlyIsRefused() {
    double[] readings = new double[11];
    Arrays.fill(readings, 285);
    Journey journey = journey(295, leg("night", 12, Ambient.hourly(0, readings), FLOOR));
    String message =
        assertThrows(InvalidInputException.class, () -> run(Packings.plain(), journey))
            .getMessage();
    assertTrue(message.contains("must lie between 0 s and 36000 s"), message);
    assertTrue(message.contains("The record covers no other times"), message);
  }

  private static TimeFunction swing(double by) {
    return Ambient.series(
        new double[] {0, 6 * HOUR, 15 * HOUR, 24 * HOUR},
        new double[] {290 + by, 279 + by, 294 + by, 284 + by});
  }

  private static TransitResult at(ParcelModel model, Journey journey, Factor factor, End end) {
    return model.run(journey, Variation.NOMINAL.with(factor, end));
  }

  @Test
  void theSpreadShiftsTheAmbient() {
    Parcel parcel = Packings.plain();
    Journey journey = journey(292, leg("day", 24, swing(0), FLOOR));
    ParcelModel model = ParcelModel.of(parcel, journey, EVEN);
    for (End end : List.of(End.LOW, End.HIGH)) {
      double by = end == End.LOW ? -3 : 3;
      TransitResult varied = model.run(journey, Variation.NOMINAL.with(Factor.AMBIENT, end));
      TransitResult moved =
          model.run(journey(292, leg("day", 24, swing(by), FLOOR)), Variation.NOMINAL);
      assertArrayEquals(moved.mean("cup"), varied.mean("cup"), 1e-6);
      assertEquals(end.position(), varied.variation().of(Factor.AMBIENT));
    }
  }

  /**
   * With the start shifted too everything shifts by the spread, but for what changes with
   * temperature: conductivities and radiation, 1 % for 3 K. They act on how far the contents lag
   * behind, at most 4 K here.
   */
  @Test
  void everythingShiftsWithAmbientAndStart() {
    Journey journey = journey(292, leg("day", 24, swing(0), FOIL));
    Journey warmer = journey(295, leg("day", 24, swing(0), FOIL));
    ParcelModel model = ParcelModel.of(Packings.still(0), journey, EVEN);
    TransitResult nominal = model.run(journey, Variation.NOMINAL);
    TransitResult high = at(model, warmer, Factor.AMBIENT, End.HIGH);
    for (int hour = 0; hour <= 24; hour++) {
      assertEquals(3, high.mean("pad")[hour] - nominal.mean("pad")[hour], 0.04);
      assertEquals(3, high.hottest("pad")[hour] - nominal.hottest("pad")[hour], 0.04);
      assertEquals(3, high.surface(Face.Y_MAX)[hour] - nominal.surface(Face.Y_MAX)[hour], 0.04);
    }
  }

  /**
   * What radiation foil leaves grows with the faces' temperature by 1e-5 of the rise,
   * conductivities by 0.5 % for each kelvin of it: at a rise of half a kelvin that is 3e-4 K.
   */
  @Test
  void theRiseAboveTheAmbientIsThatOfTheWarmersStrength() {
    Parcel parcel = Packings.still(0.01);
    Journey journey = journey(285, leg("day", 24, Ambient.constant(285), FOIL));
    ParcelModel model = ParcelModel.of(parcel, journey, EVEN);
    TransitResult nominal = at(model, journey, Factor.WARMER_STRENGTH, End.NOMINAL);
    TransitResult low = at(model, journey, Factor.WARMER_STRENGTH, End.LOW);
    TransitResult high = at(model, journey, Factor.WARMER_STRENGTH, End.HIGH);
    assertTrue(nominal.mean("pad")[12] > 285.01);
    for (int hour = 1; hour <= 24; hour++) {
      double rise = nominal.mean("pad")[hour] - 285;
      assertEquals(0.75 * rise, low.mean("pad")[hour] - 285, 1e-3);
      assertEquals(1.25 * rise, high.mean("pad")[hour] - 285, 1e-3);
    }
  }

  @Test
  void filmsAndConductivitiesVary() {
    Journey journey = journey(295, leg("room", 6, Ambient.constant(275), FLOOR));
    ParcelModel model = ParcelModel.of(Packings.plain(), journey, QUARTERS);
    TransitResult high = at(model, journey, Factor.SURFACE_FILM, End.HIGH);
    TransitResult low = at(model, journey, Factor.SURFACE_FILM, End.LOW);
    double most = FLOOR.coefficient(Face.Z_MAX, mean(high.surface(Face.Z_MAX), 16, 24), 275);
    double least = FLOOR.coefficient(Face.Z_MAX, mean(low.surface(Face.Z_MAX), 16, 24), 275);
    // in the last of its stages, from 4 h on
    assertEquals(1.4 * most, coefficient(high, Face.Z_MAX, 20, 275), 0.02);
    assertEquals(0.7 * least, coefficient(low, Face.Z_MAX, 20, 275), 0.02);
    assertTrue(last(high.mean("cup")) < last(low.mean("cup")));
    for (Factor factor : List.of(Factor.WALL_CONDUCTIVITY, Factor.FILL_CONDUCTIVITY)) {
      double fast = last(at(model, journey, factor, End.HIGH).mean("cup"));
      double slow = last(at(model, journey, factor, End.LOW).mean("cup"));
      assertTrue(fast < slow - 0.01, factor.words());
    }
  }

  /** A contact resistance holds heat back in the pad, by no more than its own temperature drop. */
  @Test
  void aWarmerOnALargerContactResistanceIsHotter() {
    Journey journey = journey(285, leg("days", 48, Ambient.constant(285), FLOOR));
    double none = last(run(heated(1, new Mounting(0, 0)), journey).mean("pad"));
    double some = last(run(heated(1, new Mounting(0, 0.02)), journey).mean("pad"));
    double much = last(run(heated(1, new Mounting(0, 2)), journey).mean("pad"));
    double apart = last(run(heated(1, Mounting.standingOff(0.02)), journey).mean("pad"));
    assertTrue(some > none + 0.2, none + " " + some);
    assertTrue(some < none + 0.02 / (0.090 * 0.055));
    assertTrue(much > some + 2, some + " " + much);
    assertTrue(apart > some + 0.2, some + " " + apart);
  }

  /** Intervals that no double holds exactly, and a kink next to a stored time. */
  @Test
  void allIntervalsAreStored() {
    double interval = 1000.0 / 3;
    double kink = Math.nextUp(3 * interval);
    TimeFunction ambient =
        Ambient.series(new double[] {0, kink, 2 * HOUR}, new double[] {290, 280, 285});
    TransitSettings settings = new TransitSettings(MESH, interval, IntegratorSettings.standard());
    TransitResult result =
        Transit.run(
            Packings.plain(),
            journey(290, leg("hours", 2, ambient, FLOOR)),
            Variation.NOMINAL,
            settings);
    assertTrue(result.outcome().isCompleted());
    assertEquals(23, result.times().length);
    for (int row = 0; row < 22; row++) {
      assertEquals(row * interval, result.times()[row]);
    }
    assertEquals(2 * HOUR, result.times()[22]);
  }

  /** The end of a judgement may lie between two stored values. */
  @Test
  void anExposureEndsWhenItShould() {
    TransitResult result =
        run(Packings.plain(), journey(295, leg("cold", 12, Ambient.constant(265), FLOOR)));
    Exposure exposure = result.exposure("cup", 7.25 * HOUR);
    double[] coldest = result.coldest("cup");
    assertEquals(7.25 * HOUR, exposure.coldest().time(), 1e-9);
    assertEquals(0.75 * coldest[7] + 0.25 * coldest[8], exposure.coldest().temperature(), 1e-9);
    assertEquals(7 * HOUR, result.exposure("cup", 7 * HOUR).coldest().time());
    assertEquals(12 * HOUR, result.exposure("cup", 50 * HOUR).coldest().time());
    assertEquals(0.5 * HOUR, result.exposure("cup", 0.5 * HOUR).coldest().time(), 1e-9);
    assertThrows(InvalidInputException.class, () -> result.exposure("mug", HOUR));
    assertEquals(12 * HOUR, result.coldestMoment().time());
    // a reduced model looks at points where extremes usually are
    assertEquals(last(coldest), result.coldestMoment().field().minimum("cup animal"), 1e-4);
    assertEquals(0, result.hottestMoment().time());
  }

  @Test
  void outputsAreFoundByName() {
    Journey journey = journey(290, leg("short", 1, Ambient.constant(285), FLOOR));
    TransitResult result = run(heated(1, Mounting.taped()), journey);
    assertEquals(journey, result.journey());
    assertEquals(Variation.NOMINAL, result.variation());
    assertEquals(2, result.hottest("pad").length);
    assertTrue(result.cells() > 100);
    assertTrue(result.work().steps() > 0);
    String message =
        assertThrows(InvalidInputException.class, () -> result.mean("mug")).getMessage();
    assertEquals("output: there is no \"mug mean\". Did you mean \"cup mean\"?", message);
    assertThrows(InvalidInputException.class, () -> result.coldest("pad"));
  }

  @Test
  void settingsScale() {
    assertEquals(MESH.largestCell() / 2, COARSE.meshScaled(0.5).mesh().largestCell(), 1e-12);
    assertThrows(
        InvalidInputException.class,
        () -> new TransitSettings(MESH, 0, IntegratorSettings.standard()));
    TransitSettings several = COARSE.withThreads(3);
    assertEquals(3, several.live().full().meshScaled(2).workers().threads());
    assertEquals(Solver.FULL, several.full().solver());
    assertThrows(InvalidInputException.class, () -> COARSE.withThreads(0));
  }
}
