package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.warmer.Warmers;

class PlacedWarmerTest {
  private static TimeFunction opened(double hours) {
    return new PlacedWarmer(
            "pad", Warmers.TEN_HOUR, Face.Z_MAX, Mounting.taped(), Times.fromHours(hours))
        .power();
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
        new PlacedWarmer("pad", Packings.steady(3), Face.Z_MAX, Mounting.taped(), 500).power();
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
    assertArrayEquals(hours, java.util.Arrays.stream(found).map(Times::toHours).toArray(), 1e-12);
    assertArrayEquals(
        new double[] {Times.fromHours(3)},
        opened(2).breakpoints(Times.fromHours(2.25), Times.fromHours(6)),
        1e-9);
    assertArrayEquals(new double[0], opened(30).breakpoints(0, Times.fromHours(20)));
  }

  @Test
  void theEnergyDoesNotDependOnTheOpening() {
    double day = Times.fromHours(24);
    assertEquals(14.8875 * 3600, opened(3).mean(0, day) * day, 1);
  }

  @Test
  void badPlacesAreRefused() {
    assertThrows(InvalidInputException.class, () -> opened(Double.NaN));
    assertThrows(
        InvalidInputException.class,
        () -> new PlacedWarmer(" ", Warmers.TEN_HOUR, Face.Z_MAX, Mounting.taped(), 0));
  }
}
