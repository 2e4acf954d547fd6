package stenotherm.warmer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Provenance;
import stenotherm.base.Range;
import stenotherm.base.Times;

class WarmersTest {
  private static double energy(WarmerClass warmer, double hours) {
    double end = Times.fromHours(hours);
    return warmer.power().mean(0, end) * end;
  }

  /** Trapezoids of the printed curves: 14.8875 W h and 78.0 W h. */
  @Test
  void energiesAreThoseOfTheCurves() {
    assertEquals(14.8875 * 3600, energy(Warmers.TEN_HOUR, 14), 1);
    assertEquals(78.0 * 3600, energy(Warmers.FORTY_HOUR, 60), 1);
  }

  /** 2.5 to 3 kJ per gram of 20 g and 100 g. */
  @Test
  void energiesLieWithinTheHeatOfOxidation() {
    assertTrue(new Range(50e3, 60e3).contains(energy(Warmers.TEN_HOUR, 100)));
    assertTrue(new Range(250e3, 300e3).contains(energy(Warmers.FORTY_HOUR, 100)));
  }

  @Test
  void allAreIllustrativeAndEndCold() {
    assertEquals(2, Warmers.all().size());
    for (WarmerClass warmer : Warmers.all()) {
      assertEquals(Provenance.ILLUSTRATIVE, warmer.source().provenance(), warmer.name());
      assertEquals(0, warmer.power().at(0));
      assertEquals(0, warmer.power().at(Times.fromHours(100)));
      assertTrue(warmer.strength().contains(1));
      assertTrue(warmer.size().length() >= warmer.size().width());
    }
  }

  @Test
  void areFoundByName() {
    assertEquals(Warmers.FORTY_HOUR, Warmers.named("40 hour warmer"));
    String message =
        assertThrows(InvalidInputException.class, () -> Warmers.named("40 hour warmr"))
            .getMessage();
    assertTrue(message.contains("40 hour warmer"), message);
  }

  @Test
  void badWarmersAreRefused() {
    WarmerClass good = Warmers.TEN_HOUR;
    assertThrows(InvalidInputException.class, () -> new WarmerClass.PadSize(0.1, 0, 0.01));
    assertEquals(
        "strength of x: 1.1 to 1.2 must hold 1",
        assertThrows(
                InvalidInputException.class,
                () ->
                    new WarmerClass(
                        "x", good.size(), good.power(), new Range(1.1, 1.2), good.source()))
            .getMessage());
    assertThrows(
        InvalidInputException.class,
        () -> new WarmerClass("x", good.size(), good.power(), new Range(0, 1.2), good.source()));
    assertThrows(
        InvalidInputException.class,
        () -> new WarmerClass(" ", good.size(), good.power(), good.strength(), good.source()));
  }
}
