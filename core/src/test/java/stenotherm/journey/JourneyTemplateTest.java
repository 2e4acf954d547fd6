package stenotherm.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Stowage;
import stenotherm.ambient.Sunshine;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Provenance;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;

class JourneyTemplateTest {
  private static final Place EAST = new Place("east", ZoneOffset.ofHours(-5));
  private static final Place WEST = new Place("west", ZoneOffset.ofHours(-8));
  private static final LocalDateTime SEALED = LocalDateTime.of(2026, 3, 3, 15, 0);
  private static final Sunshine SUN =
      Sunshine.on(Face.Z_MAX, TimeFunction.constant(500), SolarAbsorptance.KRAFT_BOARD);

  private static Outdoors outdoors(Place place, double temperature) {
    return new Outdoors(place, Ambient.constant(temperature), 2, SUN);
  }

  private static Journey journey(JourneyTemplate template) {
    return template.journey(
        new JourneyTemplate.Start(SEALED, 295),
        outdoors(EAST, 280),
        outdoors(WEST, 270),
        Times.DAY);
  }

  @Test
  void overnightByAirArrivesNextDay() {
    Journey journey = journey(JourneyTemplates.OVERNIGHT_BY_AIR);
    assertEquals(11, journey.legs().size());
    assertEquals(SEALED, journey.sealing());
    assertEquals(Times.fromHours(2), journey.legs().get(0).duration());
    // in the depot of the west by 03:00 of its clock, out at 08:00, four hours to the end
    assertEquals(LocalDateTime.of(2026, 3, 4, 8, 0), journey.localClock(journey.start(9), 9));
    assertEquals(LocalDateTime.of(2026, 3, 4, 12, 0), journey.localClock(journey.duration()));
    assertEquals(Times.fromHours(24), journey.duration());
    Leg van = journey.legs().get(1);
    assertEquals(283, van.surroundings().ambient().at(journey.start(1)), 1e-9);
    assertEquals(new AmbientSpread(4, 2), van.surroundings().spread());
    assertEquals(Stowage.ALONE, van.surroundings().stowage());
    assertSame(Sunshine.NONE, van.surroundings().sunshine());
    assertSame(SUN, journey.legs().get(3).surroundings().sunshine());
    assertTrue(journey.legs().get(4).surroundings().pressure() < 76_000);
    // the hub is heated: an error of the weather does not reach it
    assertEquals(289.15, journey.legs().get(5).surroundings().ambient().at(journey.start(5)), 1e-9);
    assertEquals(AmbientSpread.ofItsOwn(4), journey.legs().get(5).surroundings().spread());
    // the hold does not follow the weather
    assertEquals(AmbientSpread.ofItsOwn(7), journey.legs().get(4).surroundings().spread());
    assertEquals(Stowage.AMONG_OTHERS, journey.legs().get(4).surroundings().stowage());
    assertEquals(270, journey.legs().get(10).surroundings().ambient().at(journey.duration()));
  }

  @Test
  void roadTakesTwoDays() {
    Journey journey = journey(JourneyTemplates.TWO_DAYS_BY_ROAD);
    assertEquals(2, Times.toHours(journey.duration()) / 24, 0.25);
    Journey held = journey(JourneyTemplates.HELD_FOR_PICKUP);
    assertEquals(
        LocalDateTime.of(2026, 3, 4, 17, 0), held.localClock(held.duration()), "counter closes");
  }

  @Test
  void delaysStayWithinTheWeather() {
    Journey journey = journey(JourneyTemplates.OVERNIGHT_BY_AIR);
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      Journey late = journey.delayed(leg, Times.DAY);
      int last = late.legs().size() - 1;
      late.legs().get(last).surroundings().ambient().at(late.duration());
    }
  }

  @Test
  void durationsAreTheJourneys() {
    for (JourneyTemplate template : JourneyTemplates.all()) {
      assertEquals(
          journey(template).legs().stream().map(Leg::duration).toList(),
          template.durations(SEALED, EAST, WEST));
      assertEquals(Provenance.PRACTICE, template.source().provenance());
      assertSame(template, JourneyTemplates.named(template.name()));
    }
    String message =
        assertThrows(InvalidInputException.class, () -> JourneyTemplates.named("overnight by hair"))
            .getMessage();
    assertTrue(message.contains("Did you mean \"overnight by air\"?"), message);
  }

  @Test
  void aLegEndsWhenTheClockSaysSo() {
    TemplateLeg.Timing eight = new TemplateLeg.UntilClock(LocalTime.of(8, 0), 3600);
    LocalDateTime day = LocalDateTime.of(2026, 3, 3, 0, 0);
    assertEquals(5 * 3600, eight.duration(day.plusHours(3)));
    assertEquals(3600, eight.duration(day.plusHours(7)));
    // an hour just missed is not waited for
    assertEquals(3600, eight.duration(day.plusHours(9)));
    assertEquals(11 * 3600, eight.duration(day.plusHours(21)));
    assertThrows(InvalidInputException.class, () -> new TemplateLeg.Lasting(0));
  }

  @Test
  void waitsThatSurpriseAreTold() {
    JourneyTemplate air = JourneyTemplates.OVERNIGHT_BY_AIR;
    LocalDateTime day = LocalDateTime.of(2026, 3, 3, 0, 0);
    assertEquals(List.of(), air.unusualWaits(day.plusHours(15), EAST, EAST));
    assertEquals(
        List.of(
            "'waiting for collection' begins at 01:30 and would end at 17:00: the parcel is taken"
                + " to wait 15.5 h for it."),
        air.unusualWaits(day.plusMinutes(90), EAST, EAST));
    // an evening late, the parcel misses one hour after the other
    assertEquals(
        List.of(
            "'waiting for collection' begins at 20:00 and would end at 17:00, which it misses: the"
                + " parcel is taken to go on after 0.25 h.",
            "'depot at the origin' begins at 22:15 and would end at 21:00, which it misses: the"
                + " parcel is taken to go on after 0.5 h.",
            "'depot at the destination' begins at 07:45 and would end at 08:00, which it misses:"
                + " the parcel is taken to go on after 1 h."),
        air.unusualWaits(day.plusHours(20), EAST, EAST));
  }

  @Test
  void clocksConvert() {
    LocalDateTime noon = LocalDateTime.of(2026, 3, 4, 12, 0);
    assertEquals(Times.fromHours(24), WEST.timeOf(noon, SEALED, EAST));
    assertEquals(noon, WEST.clockAt(Times.fromHours(24), SEALED, EAST));
    assertEquals(Times.fromHours(21), EAST.timeOf(noon, SEALED, EAST));
  }

  @Test
  void contactsLieOnTheirFace() {
    Contact.Condition insulated = new Contact.Insulated();
    assertEquals(new Range(0, 1), Contact.whole(Face.X_MIN, insulated).first());
    Range half = new Range(0, 0.5);
    assertThrows(
        InvalidInputException.class,
        () -> new Contact(Face.X_MIN, half, new Range(0.5, 1.2), insulated));
    assertThrows(
        InvalidInputException.class,
        () -> new Contact(Face.X_MIN, half, new Range(0.5, 0.5), insulated));
    assertThrows(
        InvalidInputException.class, () -> new Contact.Neighbour(TimeFunction.constant(290), 0));
  }
}
