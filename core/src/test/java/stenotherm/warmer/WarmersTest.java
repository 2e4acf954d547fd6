package stenotherm.warmer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
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

  /** Trapezoids of the printed curves, by hand. */
  @Test
  void energiesAreThoseOfTheCurves() {
    assertEquals(14.8875 * 3600, energy(Warmers.TEN_HOUR, 14), 1);
    assertEquals(30.7 * 3600, energy(Warmers.TWENTY_HOUR, 26), 1);
    assertEquals(78.0 * 3600, energy(Warmers.FORTY_HOUR, 60), 1);
    assertEquals(98.475 * 3600, energy(Warmers.SIXTY_HOUR, 90), 1);
    assertEquals(111.15 * 3600, energy(Warmers.SEVENTY_TWO_HOUR, 100), 1);
  }

  /** 2.5 to 3 kJ per gram of the contents that the source names. */
  @Test
  void energiesLieWithinTheHeatOfOxidation() {
    for (WarmerClass warmer : Warmers.all()) {
      double grams = Double.parseDouble(warmer.source().work().replaceAll("\\D", ""));
      double perGram = energy(warmer, 100) / grams;
      assertTrue(new Range(2.5e3, 3e3).contains(perGram), warmer.name() + ": " + perGram);
    }
  }

  /** The heat and the heat capacity of a warmer are those of one mass. */
  @Test
  void massesAreThoseThatTheSourcesName() {
    for (WarmerClass warmer : Warmers.all()) {
      double grams = Double.parseDouble(warmer.source().work().replaceAll("\\D", ""));
      assertEquals(grams / 1000, warmer.mass(), 1e-12, warmer.name());
    }
    // 100 g over 128 mm by 82 mm by 12 mm
    assertEquals(794, Warmers.FORTY_HOUR.density(), 1);
  }

  /** A longer class gives less at its peak, the small hand and body pads left out. */
  @Test
  void longerClassesAreLowerAndFlatter() {
    assertTrue(peak(Warmers.FORTY_HOUR) > peak(Warmers.SIXTY_HOUR));
    assertTrue(peak(Warmers.SIXTY_HOUR) > peak(Warmers.SEVENTY_TWO_HOUR));
  }

  private static double peak(WarmerClass warmer) {
    return IntStream.range(0, 100)
        .mapToDouble(hour -> warmer.power().at(Times.fromHours(hour)))
        .max()
        .orElseThrow();
  }

  @Test
  void allAreIllustrativeAndEndCold() {
    assertEquals(5, Warmers.all().size());
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
                        "x",
                        good.size(),
                        good.mass(),
                        good.power(),
                        new Range(1.1, 1.2),
                        good.source()))
            .getMessage());
    assertThrows(
        InvalidInputException.class,
        () ->
            new WarmerClass(
                "x", good.size(), good.mass(), good.power(), new Range(0, 1.2), good.source()));
    // grams for kilograms
    InvalidInputException heavy =
        assertThrows(
            InvalidInputException.class,
            () ->
                new WarmerClass(
                    "x", good.size(), 20, good.power(), good.strength(), good.source()));
    assertEquals("mass of x", heavy.field());
    assertThrows(
        InvalidInputException.class,
        () ->
            new WarmerClass(
                " ", good.size(), good.mass(), good.power(), good.strength(), good.source()));
  }
}
