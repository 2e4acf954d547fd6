package stenotherm.warmer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Provenance;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;

class WarmersTest {
  /** What each class is rated at, by common practice: peak, hours, grams of contents. */
  @ParameterizedTest
  @CsvSource({
    "10 hour warmer, 66, 10, 20",
    "20 hour warmer, 58, 20, 50",
    "40 hour warmer, 55, 40, 100",
    "60 hour warmer, 51, 60, 140",
    "72 hour warmer, 48, 72, 160"
  })
  void classesHaveTheirRatingOnTheBench(String name, double peak, double hours, double grams) {
    WarmerClass warmer = Warmers.named(name);
    BenchCurve curve = Bench.RATING.run(warmer).curve();
    assertEquals(peak, Temperatures.toCelsius(curve.peak()), 0.1);
    assertEquals(hours, Times.toHours(curve.duration()), 0.002 * hours);
    assertEquals(grams / 1000, warmer.mass(), 1e-12);
  }

  private static List<BenchRun> runs() {
    return Warmers.all().stream().map(Bench.RATING::run).toList();
  }

  @Test
  void longerClassesAreCoolerAndSlower() {
    List<BenchRun> runs = runs();
    for (int longer = 1; longer < runs.size(); longer++) {
      BenchCurve curve = runs.get(longer).curve();
      BenchCurve shorter = runs.get(longer - 1).curve();
      assertTrue(curve.peak() < shorter.peak() - 2);
      assertTrue(curve.mean() < shorter.mean() - 1);
      assertTrue(curve.rise() > shorter.rise());
      assertTrue(curve.peakTime() > shorter.peakTime());
      assertTrue(curve.guaranteed() > shorter.guaranteed());
    }
  }

  /** The small pad is far hotter than those for days, and cold before an overnight parcel comes. */
  @Test
  void theSmallPadIsHotAndSpentOvernight() {
    BenchCurve small = Bench.RATING.run(Warmers.TEN_HOUR).curve();
    BenchCurve usual = Bench.RATING.run(Warmers.FORTY_HOUR).curve();
    assertTrue(small.peak() > usual.peak() + 10);
    double morning = Times.fromHours(16);
    assertTrue(small.falls() < morning);
    BenchRun.BenchState state = Bench.RATING.opened(Warmers.TEN_HOUR, morning).state();
    assertTrue(state.conversion() > 0.98, "conversion " + state.conversion());
    assertTrue(usual.at(morning) > BenchCurve.USEFUL + 10);
  }

  /** A gram of contents gives 2.3 to 3.6 kJ while it has 40 °C or more, all of it half iron. */
  @Test
  void heatIsThatOfTheContents() {
    for (WarmerClass warmer : Warmers.all()) {
      BenchRun run = Bench.RATING.run(warmer);
      double working = run.meanPower() * (run.curve().falls() - run.curve().rise());
      double perGram = working / (1000 * warmer.mass());
      assertTrue(new Range(2.1e3, 3.6e3).contains(perGram), warmer.name() + ": " + perGram);
    }
    // 100 g over 128 mm by 82 mm by 12 mm
    assertEquals(794, Warmers.FORTY_HOUR.density(), 1);
  }

  @Test
  void allAreIllustrative() {
    assertEquals(5, Warmers.all().size());
    for (WarmerClass warmer : Warmers.all()) {
      assertEquals(Provenance.ILLUSTRATIVE, warmer.source().provenance(), warmer.name());
      assertTrue(warmer.strength().contains(1));
      assertTrue(warmer.size().length() >= warmer.size().width());
    }
    assertEquals(
        "rating of 66 °C at most and 10 h at or above 40 °C, 55 °C on the mean",
        Warmers.TEN_HOUR.source().work());
  }

  /** A warmer measured in its box needs no bench, and what it might be before holds both ranges. */
  @Test
  void strengthAndBenchAddInSquares() {
    WarmerClass usual = Warmers.FORTY_HOUR;
    assertEquals(1.3, usual.benchAt(1), 1e-12);
    assertEquals(1, usual.benchAt(0));
    assertTrue(usual.isRated());
    WarmerClass open = usual.unmeasured();
    assertEquals(Math.hypot(Math.log(1.1), Math.log(1.3)), Math.log(open.strength().high()), 1e-12);
    assertEquals(-Math.hypot(Math.log(0.9), Math.log(0.7)), Math.log(open.strength().low()), 1e-12);
    assertEquals(1, open.benchAt(1));
    assertEquals(open, open.unmeasured());
    assertEquals(1, usual.measured(0.9, new Range(0.8, 1)).benchAt(-1));
    // a third of the small pad is iron already: less has no room in what is usual
    assertEquals(0.3 * 20 / 6.568, Warmers.TEN_HOUR.bench().low(), 1e-9);
    assertTrue(
        assertThrows(
                InvalidInputException.class,
                () ->
                    new WarmerClass(
                        "x",
                        usual.size(),
                        usual.mass(),
                        usual.heat(),
                        1,
                        usual.strength(),
                        new Range(1.1, 1.2),
                        usual.source()))
            .getMessage()
            .startsWith("bench of x: "));
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
        "strength of x: 1.1 to 1.2 must hold the usual one, 1.0",
        assertThrows(
                InvalidInputException.class,
                () ->
                    new WarmerClass(
                        "x",
                        good.size(),
                        good.mass(),
                        good.heat(),
                        new Range(1.1, 1.2),
                        good.source()))
            .getMessage());
    assertThrows(
        InvalidInputException.class,
        () ->
            new WarmerClass(
                "x", good.size(), good.mass(), good.heat(), new Range(0, 1.2), good.source()));
    // grams for kilograms
    InvalidInputException heavy =
        assertThrows(
            InvalidInputException.class,
            () ->
                new WarmerClass("x", good.size(), 20, good.heat(), good.strength(), good.source()));
    assertEquals("mass of x", heavy.field());
    assertThrows(
        InvalidInputException.class,
        () ->
            new WarmerClass(
                " ", good.size(), good.mass(), good.heat(), good.strength(), good.source()));
    // nobody packs so much iron into 20 g
    IronPowder powder = (IronPowder) good.heat();
    InvalidInputException iron =
        assertThrows(
            InvalidInputException.class,
            () ->
                new WarmerClass(
                    "x",
                    good.size(),
                    good.mass(),
                    new IronPowder(0.015, powder.film(), 0.5, powder.kinetics(), powder.product()),
                    good.strength(),
                    good.source()));
    assertEquals("iron of x", iron.field());
  }
}
