package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

class PlacedWarmerTest {
  /** Up to 1.7 W within an hour, on until 4 h, down to nothing at 14 h [W against s]. */
  private static final TimeFunction CURVE =
      TimeFunction.table(
          Arrays.stream(new double[] {0, 0.25, 1, 4, 8, 10, 14}).map(Times::fromHours).toArray(),
          new double[] {0, 0.6, 1.7, 1.7, 1.1, 0.6, 0});

  private static final WarmerClass MEASURED =
      new WarmerClass(
          "measured pad",
          Packings.steady(1).size(),
          Packings.steady(1).mass(),
          new PrescribedPower(CURVE),
          new Range(0.75, 1.25),
          Source.assumed("made up"));

  private static TimeFunction opened(double hours) {
    return new PlacedWarmer("pad", MEASURED, Face.Z_MAX, Mounting.taped(), Times.fromHours(hours))
        .prescribedPower();
  }

  @Test
  void givesNothingBeforeItIsOpened() {
    TimeFunction power = opened(2);
    assertEquals(0, power.at(-1000));
    assertEquals(0, power.at(Times.fromHours(1.9)));
    assertEquals(0, power.at(Times.fromHours(2)));
    assertEquals(1.7, power.at(Times.fromHours(3)), 1e-12);
    assertEquals(1.7, power.before(Times.fromHours(3)), 1e-12);
  }

  @Test
  void aWarmerOpenedBeforeSealingIsUnderWay() {
    TimeFunction power = opened(-1);
    assertEquals(1.7, power.at(0), 1e-12);
    assertEquals(1.1, power.at(Times.fromHours(7)), 1e-12);
  }

  /** A warmer that is at full power at once jumps when it is opened. */
  @Test
  void anOpeningIsAJump() {
    TimeFunction power =
        new PlacedWarmer("pad", Packings.steady(3), Face.Z_MAX, Mounting.taped(), 500)
            .prescribedPower();
    assertEquals(0, power.before(500));
    assertEquals(3, power.at(500));
    assertArrayEquals(new double[] {500}, power.breakpoints(0, 1000));
    assertEquals(1.5, power.mean(0, 1000), 1e-12);
    assertArrayEquals(new double[0], power.breakpoints(500, 1000));
    assertArrayEquals(new double[0], power.breakpoints(0, 500));
  }

  @Test
  void breakpointsMoveWithTheOpening() {
    double[] hours = {2, 2.25, 3, 6, 10, 12, 16};
    double[] found = opened(2).breakpoints(0, Times.fromHours(20));
    assertArrayEquals(hours, Arrays.stream(found).map(Times::toHours).toArray(), 1e-12);
    assertArrayEquals(
        new double[] {Times.fromHours(3)},
        opened(2).breakpoints(Times.fromHours(2.25), Times.fromHours(6)),
        1e-9);
    assertArrayEquals(new double[0], opened(30).breakpoints(0, Times.fromHours(20)));
  }

  @Test
  void theEnergyDoesNotDependOnTheOpening() {
    double day = Times.fromHours(24);
    assertEquals(14.5375 * 3600, opened(3).mean(0, day) * day, 1);
  }

  /** What iron gives depends on air and temperature, which a curve does not know. */
  @Test
  void ironHasNoPrescribedPower() {
    PlacedWarmer iron =
        new PlacedWarmer("pad", Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped(), 0);
    assertEquals(0, iron.prescribedPower().at(Times.fromHours(5)));
    assertEquals(FilmCover.FREE, iron.cover());
  }

  @Test
  void badPlacesAreRefused() {
    assertThrows(InvalidInputException.class, () -> opened(Double.NaN));
    assertThrows(
        InvalidInputException.class,
        () -> new PlacedWarmer(" ", Warmers.TEN_HOUR, Face.Z_MAX, Mounting.taped(), 0));
  }
}
