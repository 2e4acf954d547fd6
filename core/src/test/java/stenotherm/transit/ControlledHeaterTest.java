package stenotherm.transit;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.IntegratorSettings;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.journey.Place;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Packings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Position;
import stenotherm.warmer.ControlledPower;
import stenotherm.warmer.HeatRelease;
import stenotherm.warmer.HeaterLaw;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.WarmerClass;

class ControlledHeaterTest {
  private static final double START = 293;
  private static final double COLD = 273;
  private static final double OPENED = Times.HOUR;

  private static final Journey DAY =
      new Journey(
          LocalDateTime.of(2026, 1, 5, 18, 0),
          START,
          List.of(
              new Leg(
                  "room",
                  new Place("home", ZoneOffset.UTC),
                  24 * Times.HOUR,
                  Ambient.constant(COLD),
                  0,
                  FaceFilms.indoors(),
                  Source.assumed("made up"))));

  private static final TransitSettings SETTINGS =
      new TransitSettings(Packings.FEW_CELLS, Times.HOUR / 4, IntegratorSettings.standard());

  private static Parcel heated(HeatRelease heat) {
    WarmerClass pad =
        new WarmerClass(
            "heater",
            new WarmerClass.PadSize(0.090, 0.055, 0.006),
            0.0386,
            heat,
            new Range(0.75, 1.25),
            Source.assumed("made up"));
    return Packings.parcel(
        List.of(Packings.cup("cup", Position.MIDDLE_OF_FLOOR)),
        List.of(new PlacedWarmer("pad", pad, Face.Z_MAX, Mounting.taped(), OPENED)));
  }

  private static TransitResult run(HeatRelease heat, TransitSettings settings) {
    return Transit.run(heated(heat), DAY, Variation.NOMINAL, settings);
  }

  private static Journey lasting(double seconds) {
    return new Journey(DAY.sealing(), START, List.of(DAY.legs().get(0).lasting(seconds)));
  }

  private static double heatOf(TransitResult result) {
    return result.ledger().sources().get("pad");
  }

  private static double last(double[] values) {
    return values[values.length - 1];
  }

  /** A law that gives in the end what a curve gives: then the parcel is as warm. */
  @Test
  void proportionalPowerComesToRestWhereTheSameSteadyPowerDoes() {
    TransitResult controlled =
        run(new ControlledPower("cup", HeaterLaw.proportional(6, 288, 10)), SETTINGS);
    double power = last(controlled.power("pad"));
    assertTrue(power > 0.5 && power < 5.5, power + " W");
    TransitResult steady = run(new PrescribedPower(TimeFunction.constant(power)), SETTINGS);
    assertEquals(last(steady.mean("cup")), last(controlled.mean("cup")), 0.1);
    assertEquals(0, controlled.power("pad")[2], "off until it is switched on");
  }

  @Test
  void bothEnginesFollowTheLaw() {
    Journey evening = lasting(2 * Times.HOUR);
    Parcel parcel = heated(new ControlledPower("cup", HeaterLaw.proportional(6, 288, 10)));
    ParcelModel model = ParcelModel.of(parcel, evening, SETTINGS);
    TransitResult modes = model.run(evening, Variation.NOMINAL);
    TransitResult cells = model.runEveryCell(evening, Variation.NOMINAL);
    assertArrayEquals(cells.mean("cup"), modes.mean("cup"), 0.02);
    assertArrayEquals(cells.power("pad"), modes.power("pad"), 0.02);
  }

  /**
   * As warm as with the mean of its power all the time. The band is 1 K; the heat in the pad
   * carries the swing beyond it.
   */
  @Test
  void aThermostatGivesInTheMeanWhatItsCupTakes() {
    ControlledPower heat = new ControlledPower("cup", HeaterLaw.thermostat(8, 288, 289));
    TransitResult modes = run(heat, SETTINGS);
    double[] power = modes.power("pad");
    assertTrue(Arrays.stream(power).allMatch(each -> each == 0 || each == 8));
    double[] animal = modes.mean("cup");
    double[] settled = Arrays.copyOfRange(animal, animal.length / 2, animal.length);
    double low = Arrays.stream(settled).min().orElseThrow();
    double high = Arrays.stream(settled).max().orElseThrow();
    assertTrue(high - low < 2, low + " to " + high);
    // the heat of the second half by the ledgers: the stored powers are moments
    Journey half = lasting(12 * Times.HOUR);
    TransitResult begun = Transit.run(heated(heat), half, Variation.NOMINAL, SETTINGS);
    double mean = (heatOf(modes) - heatOf(begun)) / half.duration();
    TransitResult steady = run(new PrescribedPower(TimeFunction.constant(mean)), SETTINGS);
    double middle = Arrays.stream(settled).average().orElseThrow();
    assertEquals(last(steady.mean("cup")), middle, 0.5);
  }

  @Test
  void aStrongerOneOfItsKindGivesMore() {
    ControlledPower heat = new ControlledPower("cup", (temperature, last) -> 2);
    Variation strong = Variation.NOMINAL.withWarmer("pad", 1);
    TransitResult run = Transit.run(heated(heat), DAY, strong, SETTINGS);
    assertEquals(2.5, last(run.power("pad")), 1e-12);
  }

  @Test
  void itRefusesWhatCannotBe() {
    ControlledPower elsewhere = new ControlledPower("pot", HeaterLaw.thermostat(8, 288, 289));
    InvalidInputException refusal =
        assertThrows(InvalidInputException.class, () -> heated(elsewhere));
    assertTrue(refusal.getMessage().contains("Known: cup."), refusal.getMessage());
    ControlledPower cooling = new ControlledPower("cup", (temperature, last) -> -1);
    assertThrows(InvalidInputException.class, () -> run(cooling, SETTINGS));
    assertThrows(InvalidInputException.class, () -> HeaterLaw.thermostat(8, 289, 289));
    assertThrows(InvalidInputException.class, () -> HeaterLaw.thermostat(0, 288, 289));
    assertThrows(InvalidInputException.class, () -> HeaterLaw.proportional(8, 288, 0));
  }

  @Test
  void aLawIsAskedByTemperature() {
    HeaterLaw thermostat = HeaterLaw.thermostat(8, 288, 289);
    assertEquals(8, thermostat.power(287.9, 0));
    assertEquals(0, thermostat.power(288.5, 0));
    assertEquals(8, thermostat.power(288.5, 8));
    assertEquals(0, thermostat.power(289.1, 8));
    HeaterLaw proportional = HeaterLaw.proportional(6, 288, 10);
    assertEquals(6, proportional.power(270, 0));
    assertEquals(3, proportional.power(283, 0), 1e-12);
    assertEquals(0, proportional.power(290, 6));
  }
}
