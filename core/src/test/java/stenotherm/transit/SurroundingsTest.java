package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.AirMovement;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.ambient.SolAir;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Sunshine;
import stenotherm.ambient.Underside;
import stenotherm.base.End;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.journey.Contact;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.journey.Surroundings;
import stenotherm.material.Behaviour;
import stenotherm.material.Material;
import stenotherm.material.Melting;
import stenotherm.parcel.Container;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.parcel.Vessel;

/** Sun, contacts, orientation, altitude and live coefficients of a transit. */
class SurroundingsTest {
  private static final Place HERE = new Place("here", ZoneOffset.UTC);
  private static final TransitSettings COARSE =
      new TransitSettings(Packings.FEW_CELLS, Times.HOUR, IntegratorSettings.standard());

  /** For faces that their contacts cut into parts, each of which makes cells finer. */
  private static final TransitSettings FEW_CELLS =
      new TransitSettings(Packings.FEW_CELLS, Times.HOUR, IntegratorSettings.standard());

  /** All faces alike: 4 + 4 v of moving air and next to no radiation. */
  private static final FaceFilms ALIKE =
      new FaceFilms(new AirMovement.Moving(2), 0.01, new Underside.Open());

  private static final SolarAbsorptance BROWN =
      new SolarAbsorptance(0.7, new Range(0.5, 0.8), Source.assumed("made up"));

  private static final Contact.Condition INSULATED = new Contact.Insulated();

  private static Leg leg(String name, double hours, Surroundings surroundings) {
    return new Leg(name, HERE, hours * Times.HOUR, surroundings, Source.assumed("made up"));
  }

  private static Journey journey(double start, Leg... legs) {
    return new Journey(LocalDateTime.of(2026, 7, 5, 9, 0), start, List.of(legs));
  }

  private static Surroundings air(double temperature) {
    return Surroundings.of(Ambient.constant(temperature), 3, ALIKE);
  }

  /** Steps every cell: for a single run that is several times as fast as building a model. */
  private static TransitResult run(Parcel parcel, Journey journey) {
    return Transit.run(parcel, journey, Variation.NOMINAL, COARSE.full());
  }

  private static double last(double[] values) {
    return values[values.length - 1];
  }

  private static List<Contact> insulatedBut(Face open) {
    List<Contact> contacts = new ArrayList<>();
    for (Face face : Face.values()) {
      if (face != open) {
        contacts.add(Contact.whole(face, INSULATED));
      }
    }
    return contacts;
  }

  /**
   * By hand: 900 W/m2 of sun, absorptance 0.7, 12 W/(m2 K) make 52.5 K. With only the sunlit face
   * open all of the parcel takes on that temperature in the end.
   */
  @Test
  void aParcelInTheSunTakesOnTheSolAirTemperature() {
    Sunshine noon = Sunshine.on(Face.Z_MAX, TimeFunction.constant(900), BROWN);
    Surroundings porch = air(300).under(noon).touching(insulatedBut(Face.Z_MAX));
    TransitResult result = run(Packings.still(0), journey(300, leg("porch", 240, porch)));
    double film = result.coefficients().get(0).surfaces().get("zMax");
    assertEquals(12, film, 0.1);
    assertEquals(300 + 0.7 * 900 / film, last(result.surface(Face.Z_MAX)), 0.02);
    assertEquals(352.5, last(result.mean("pad")), 0.5);
    assertEquals(last(result.mean("pad")), last(result.hottest("pad")), 0.05);
    assertEquals(0, last(result.heatFlow(Face.X_MIN)));
    assertTrue(
        result.cautions().stream().anyMatch(each -> each.contains("sunlight")),
        result.cautions().toString());
    assertTrue(result.ledger().closes());
  }

  /** A clear sky takes what the sol-air temperature says, from the face that is up. */
  @Test
  void aClearSkyCoolsTheUpperFace() {
    Sunshine night = new Sunshine(Map.of(), BROWN, SolAir.CLEAR_SKY_LOSS);
    FaceFilms board = new FaceFilms(new AirMovement.Moving(2), 0.9, new Underside.Open());
    Surroundings roof =
        Surroundings.of(Ambient.constant(280), 0, board)
            .under(night)
            .lying(Orientation.X_MIN_UP)
            .touching(insulatedBut(Face.X_MIN));
    TransitResult result = run(Packings.still(0), journey(280, leg("roof", 240, roof)));
    double film = result.coefficients().get(0).surfaces().get("xMin");
    assertEquals(280 - 0.9 * 63 / film, last(result.mean("pad")), 0.02);
  }

  /** Sun and sky are above, whatever face of the parcel is up; the other faces see neither. */
  @Test
  void theFaceThatIsUpMeetsSunAndSky() {
    Sunshine noon = Sunshine.on(Face.Z_MAX, TimeFunction.constant(300), BROWN);
    Surroundings sunny = air(280).under(noon).lying(Orientation.LID_DOWN);
    TransitResult day = run(Packings.still(0), journey(280, leg("roof", 4, sunny)));
    FaceFilms board = new FaceFilms(new AirMovement.Moving(2), 0.9, new Underside.Open());
    Surroundings clear =
        Surroundings.of(Ambient.constant(280), 0, board)
            .under(new Sunshine(Map.of(), BROWN, SolAir.CLEAR_SKY_LOSS))
            .lying(Orientation.LID_DOWN);
    TransitResult night = run(Packings.still(0), journey(280, leg("roof", 4, clear)));
    for (Face face : Face.values()) {
      boolean isUp = face == Face.Z_MIN;
      assertEquals(isUp, last(day.surface(face)) > 285, face.label());
      assertEquals(isUp, last(night.surface(face)) < 278, face.label());
    }
  }

  /** What lies beside a parcel is as much warmer than stated as the air is. */
  @Test
  void aNeighbourIsWarmerWithTheAir() {
    double[] stated = besideANeighbour(280, Variation.NOMINAL.withOffset(2));
    double[] warmer = besideANeighbour(282, Variation.NOMINAL);
    assertArrayEquals(warmer, stated, 1e-9);
  }

  private static double[] besideANeighbour(double kelvin, Variation variation) {
    Contact.Condition neighbour = new Contact.Neighbour(TimeFunction.constant(kelvin + 15), 0.01);
    Surroundings pile = air(kelvin).touching(List.of(Contact.whole(Face.X_MIN, neighbour)));
    Journey journey = journey(290, leg("pile", 4, pile));
    return Transit.run(Packings.still(0), journey, variation, COARSE.full()).mean("pad");
  }

  @Test
  void theAbsorptanceVaries() {
    Sunshine noon = Sunshine.on(Face.X_MAX, TimeFunction.constant(60), BROWN);
    Journey journey = journey(295, leg("porch", 4, air(295).under(noon)));
    TransitResult low = absorbing(journey, End.LOW);
    TransitResult nominal = absorbing(journey, End.NOMINAL);
    TransitResult high = absorbing(journey, End.HIGH);
    double rise = last(nominal.mean("pad")) - 295;
    assertTrue(rise > 0.05);
    // a weak sun: all that changes are the sunlit film and the conductivities by a little
    assertEquals(0.5 / 0.7, (last(low.mean("pad")) - 295) / rise, 2e-3);
    assertEquals(0.8 / 0.7, (last(high.mean("pad")) - 295) / rise, 2e-3);
  }

  private static TransitResult absorbing(Journey journey, End end) {
    return Transit.run(
        Packings.still(0),
        journey,
        Variation.NOMINAL.with(Factor.SOLAR_ABSORPTANCE, end),
        COARSE.full());
  }

  /** A sunlit half beside the face's own sun, against two sunlit halves: one grid, one answer. */
  @Test
  void partsOfAFaceAddUp() {
    TimeFunction sun = TimeFunction.constant(500);
    Range half = new Range(0, 0.5);
    Range rest = new Range(0.5, 1);
    Range all = new Range(0, 1);
    Contact.Condition sunlit = new Contact.Sunlit(sun);
    Surroundings plain = air(295).under(Sunshine.on(Face.Z_MAX, sun, BROWN));
    Contact left = new Contact(Face.Z_MAX, half, all, sunlit);
    Contact right = new Contact(Face.Z_MAX, rest, all, sunlit);
    TransitResult one =
        run(Packings.still(0), journey(295, leg("a", 4, plain.touching(List.of(left)))));
    TransitResult two =
        run(Packings.still(0), journey(295, leg("a", 4, plain.touching(List.of(left, right)))));
    assertArrayEquals(one.mean("pad"), two.mean("pad"), 1e-5);
    assertArrayEquals(one.surface(Face.Z_MAX), two.surface(Face.Z_MAX), 1e-5);
    assertArrayEquals(one.heatFlow(Face.Z_MAX), two.heatFlow(Face.Z_MAX), 1e-5);
    Contact shade =
        new Contact(Face.Z_MAX, half, all, new Contact.Sunlit(TimeFunction.constant(0)));
    TransitResult shaded =
        run(Packings.still(0), journey(295, leg("a", 4, plain.touching(List.of(shade)))));
    double rise = last(one.mean("pad")) - 295;
    assertEquals(0.5, (last(shaded.mean("pad")) - 295) / rise, 0.02, "the middle gets half");
  }

  /** 0.1 + 0.2 is more than 0.3 in binary: what lies between is no part of a face. */
  @Test
  void contactsThatMeetButForRoundOffLeaveNothingBetween() {
    Range all = new Range(0, 1);
    List<Contact> meeting =
        List.of(
            new Contact(Face.X_MIN, new Range(0, 0.1 + 0.2), all, INSULATED),
            new Contact(
                Face.X_MIN,
                new Range(0.3, 1),
                all,
                new Contact.Neighbour(Ambient.constant(300), 0.1)));
    TransitResult result =
        run(Packings.plain(), journey(290, leg("hour", 1, air(290).touching(meeting))));
    Map<String, Double> surfaces = result.coefficients().get(0).surfaces();
    assertEquals(0, surfaces.get("part 1 of xMin"));
    assertEquals(10, surfaces.get("part 2 of xMin"), 1e-9);
    assertEquals(7, surfaces.size());
  }

  /** Contacts that overlap in different legs; without any, the parts are the face. */
  @Test
  void contactsChangeFromLegToLeg() {
    Contact cold =
        new Contact(
            Face.Z_MIN,
            new Range(0, 0.6),
            new Range(0, 1),
            new Contact.Neighbour(TimeFunction.constant(275), 0.02));
    Contact tight = new Contact(Face.Z_MIN, new Range(0.4, 1), new Range(0.2, 1), INSULATED);
    Journey journey =
        journey(
            295,
            leg("cold floor", 2, air(295).touching(List.of(cold))),
            leg("stack", 2, air(295).touching(List.of(tight))),
            leg("both", 2, air(295).touching(List.of(cold, tight))),
            leg("free", 2, air(295)));
    ParcelModel model =
        ParcelModel.of(Packings.plain(), List.of(journey), FEW_CELLS, ModelScope.NOMINAL);
    TransitResult result = model.run(journey, Variation.NOMINAL);
    Map<String, Double> first = result.coefficients().get(0).surfaces();
    Map<String, Double> free = result.coefficients().get(3).surfaces();
    double touched =
        first.entrySet().stream()
            .filter(part -> part.getValue() == 50)
            .mapToDouble(part -> 1)
            .sum();
    assertTrue(touched >= 2, "the overlap has a part of its own");
    assertTrue(result.coefficients().get(1).surfaces().containsValue(0.0));
    assertEquals(
        result.coefficients().get(1).surfaces().values().stream().filter(h -> h == 0).count(),
        result.coefficients().get(2).surfaces().values().stream().filter(h -> h == 0).count(),
        "later contacts override earlier ones");
    for (Map.Entry<String, Double> part : free.entrySet()) {
      if (part.getKey().endsWith("zMin")) {
        assertEquals(free.get("xMin"), part.getValue(), 0.02, part.getKey());
      }
    }
    assertTrue(result.surface(Face.Z_MIN)[2] < 285);
    assertTrue(result.ledger().closes());
    assertTrue(result.engine().startsWith("reduced model, "), result.engine());
    String cells = String.format(Locale.ROOT, "%,d cells", result.cells());
    assertTrue(result.engine().endsWith(" modes for " + cells), result.engine());

    TransitResult full = model.runEveryCell(journey, Variation.NOMINAL);
    assertEquals("full solver, " + cells, full.engine());
    assertFalse(full.reduction().isPresent());
    assertEquals(result.coefficients(), full.coefficients());
    // of both together: 0.02 K of the reduction, 0.005 K of the steps
    assertArrayEquals(result.mean("cup"), full.mean("cup"), 0.025);
  }

  /** Turned by a quarter either way a parcel that is its own mirror image has the same contents. */
  @Test
  void bothSidesOfASymmetricParcelAreAlike() {
    FaceFilms floor = FaceFilms.indoors();
    Surroundings cold = Surroundings.of(Ambient.constant(275), 0, floor);
    TransitResult left =
        run(Packings.plain(), journey(295, leg("a", 6, cold.lying(Orientation.X_MIN_UP))));
    TransitResult right =
        run(Packings.plain(), journey(295, leg("a", 6, cold.lying(Orientation.X_MAX_UP))));
    TransitResult upright = run(Packings.plain(), journey(295, leg("a", 6, cold)));
    // round-off may choose other steps, whose errors are below the step tolerance
    assertArrayEquals(left.mean("cup"), right.mean("cup"), 1e-4);
    assertArrayEquals(left.heatFlow(Face.X_MIN), right.heatFlow(Face.X_MAX), 1e-4);
    assertEquals(12.5, left.coefficients().get(0).surfaces().get("xMax"), 1e-9);
    assertTrue(Math.abs(left.mean("cup")[1] - upright.mean("cup")[1]) > 0.01);
    assertTrue(
        left.cautions().stream().anyMatch(each -> each.contains("on its side, left face up")));
  }

  @Test
  void uniformFilmsDoNotCareHowAParcelLies() {
    // so low a cup that its air stands still however it lies
    Container low =
        Container.empty(
            "cup",
            new Vessel.BoxCup(new Dimensions(0.02, 0.02, 0.005), Packings.CUP_WALL),
            Position.MIDDLE_OF_FLOOR);
    Parcel parcel =
        Packings.parcel(List.of(low), Packings.still(0).warmers())
            .withOpenings(Packings.still(0).openings());
    TransitResult upright = run(parcel, journey(295, leg("a", 6, air(280))));
    for (Orientation orientation : Orientation.values()) {
      TransitResult turned = run(parcel, journey(295, leg("a", 6, air(280).lying(orientation))));
      assertArrayEquals(upright.mean("pad"), turned.mean("pad"), 1e-9, orientation.name());
      assertArrayEquals(upright.hottest("pad"), turned.hottest("pad"), 1e-9);
    }
  }

  /** Thin air insulates: a parcel cools a little later on board. */
  @Test
  void altitudeSlowsCooling() {
    FaceFilms floor = FaceFilms.indoors();
    Surroundings hold = Surroundings.of(Ambient.constant(275), 0, floor);
    TransitResult ground = run(Packings.still(0), journey(295, leg("a", 4, hold)));
    TransitResult cabin = run(Packings.still(0), journey(295, leg("a", 4, hold.atAltitude(2400))));
    double difference = cabin.mean("pad")[1] - ground.mean("pad")[1];
    assertTrue(difference > 0.01 && difference < 1, difference + " K");
  }

  /** What a later delay does must not show before it. */
  @Test
  void aHoldDoesNotChangeWhatComesBefore() {
    TimeFunction night =
        Ambient.series(
            new double[] {0, 6 * Times.HOUR, 40 * Times.HOUR}, new double[] {290, 280, 310});
    Surroundings porch = Surroundings.of(night, 0, FaceFilms.indoors());
    Journey planned = journey(295, leg("van", 2, air(285)), leg("porch", 4, porch));
    Journey longer = planned.held(30 * Times.HOUR);
    ParcelModel model = ParcelModel.of(Packings.plain(), planned, COARSE);
    double[] short0 = model.run(planned, Variation.NOMINAL).mean("cup");
    double[] held = model.run(longer, Variation.NOMINAL).mean("cup");
    double[] apart = Transit.run(Packings.plain(), longer, Variation.NOMINAL, COARSE).mean("cup");
    double[] cells = run(Packings.plain(), planned).mean("cup");
    double[] heldCells = run(Packings.plain(), longer).mean("cup");
    for (int hour = 0; hour <= 6; hour++) {
      assertEquals(cells[hour], heldCells[hour], 1e-9, "every cell, hour " + hour);
      assertEquals(short0[hour], held[hour], 2e-3, "coefficients may differ, hour " + hour);
      assertEquals(short0[hour], apart[hour], 0.02, "by what two reductions leave, hour " + hour);
    }
  }

  /** Heated from the floor, loose fill is warmer below than above: a matter of its voids. */
  @Test
  void fillHeatedFromBelowIsLookedAt() {
    Parcel below =
        Packings.warmed(List.of(Packings.pad(Packings.steady(6), Face.Z_MAX, Mounting.taped())));
    Surroundings room = air(280);
    TransitResult upside = run(below, journey(280, leg("a", 12, room.lying(Orientation.LID_DOWN))));
    TransitResult upright = run(below, journey(280, leg("a", 12, room)));
    assertTrue(
        upside.cautions().stream().anyMatch(each -> each.contains("warmer below than above")),
        upside.cautions().toString());
    assertTrue(
        upright.cautions().stream().noneMatch(each -> each.contains("warmer below than above")),
        upright.cautions().toString());
  }

  /**
   * Live coefficients against frozen ones. In a room as warm as the parcel there is nothing to
   * follow; on a night that swings by 20 K the difference is small beside the swing.
   */
  @Test
  void liveCoefficientsFollow() {
    Journey still = journey(293, leg("a", 3, Surroundings.of(Ambient.constant(293), 0, ALIKE)));
    double[] rest =
        Transit.run(Packings.still(0), still, Variation.NOMINAL, COARSE.live()).mean("pad");
    for (double value : rest) {
      assertEquals(293, value, 1e-6);
    }
    TimeFunction swing =
        Ambient.series(
            new double[] {0, 8 * Times.HOUR, 16 * Times.HOUR}, new double[] {283, 263, 283});
    Journey night = journey(295, leg("night", 16, Surroundings.of(swing, 0, FaceFilms.indoors())));
    TransitResult frozen = run(Packings.plain(), night);
    TransitResult live = Transit.run(Packings.plain(), night, Variation.NOMINAL, COARSE.live());
    double largest = 0;
    for (int row = 0; row < frozen.times().length; row++) {
      largest = Math.max(largest, Math.abs(frozen.mean("cup")[row] - live.mean("cup")[row]));
    }
    assertTrue(largest > 0.01 && largest < 1, largest + " K");
    assertTrue(live.ledger().closes());
  }

  /** A frozen pack starts in its own state and melts on the way. */
  @Test
  void aPackStartsInItsOwnState() {
    Placement lid = new Placement.OnFace(Face.Z_MAX, 0, 0, Mounting.taped());
    Material ice =
        Material.of("gel", 0.6, 1000, 4000)
            .withBehaviour(
                new Behaviour.Melts(new Melting(new Range(273.15, 274.15), 300_000, 0.6, 4200)));
    PackClass gel =
        new PackClass(
            "gel pack",
            ice,
            new Dimensions(0.1, 0.08, 0.02),
            0.15,
            0.01,
            Source.assumed("made up"));
    Parcel cooled =
        Packings.plain()
            .withPacks(
                List.of(new PlacedPack("pack", gel, lid, new PackStart.AtTemperature(258.15))));
    TransitResult result = run(cooled, journey(298, leg("summer", 30, air(303))));
    double[] liquid = result.liquidFraction("pack");
    assertEquals(0, liquid[0]);
    assertEquals(258.15, result.mean("pack")[0], 1e-3);
    assertEquals(1, last(liquid), 1e-9);
    assertTrue(result.ledger().closes());
    assertTrue(last(result.mean("cup")) > 290);
  }

  @Test
  void noSunReachesTheFaceThatRestsOnTheFloor() {
    Surroundings indoors = Surroundings.of(Ambient.constant(293.15), 0, FaceFilms.indoors());
    Contact.Condition sun = new Contact.Sunlit(TimeFunction.constant(500));
    assertThrows(
        InvalidInputException.class,
        () -> indoors.touching(List.of(Contact.whole(Face.Z_MIN, sun))));
    assertThrows(
        InvalidInputException.class,
        () ->
            indoors.touching(List.of(Contact.whole(Face.X_MAX, sun))).lying(Orientation.X_MIN_UP));
    indoors.touching(List.of(Contact.whole(Face.X_MIN, sun))).lying(Orientation.X_MIN_UP);
  }
}
