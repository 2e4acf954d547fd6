package stenotherm.ambient;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import stenotherm.base.Range;
import stenotherm.base.Times;

class DailyExtremesProperties {
  @Provide
  Arbitrary<List<Range>> days() {
    Arbitrary<Double> lows = Arbitraries.doubles().between(230, 310);
    Arbitrary<Double> spans = Arbitraries.doubles().between(0, 25);
    return Combinators.combine(lows, spans)
        .as((low, span) -> new Range(low, low + span))
        .list()
        .ofMinSize(1)
        .ofMaxSize(5);
  }

  @Provide
  Arbitrary<DiurnalShape> shapes() {
    Arbitrary<Double> lows = Arbitraries.doubles().between(0, 11);
    Arbitrary<Double> spans = Arbitraries.doubles().between(2.1, 12.9);
    return Combinators.combine(lows, spans).as((low, span) -> new DiurnalShape(low, low + span));
  }

  @Property(seed = "20260121", tries = 300)
  void staysWithinTheEndsOfItsLimb(
      @ForAll("days") List<Range> days,
      @ForAll("shapes") DiurnalShape shape,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    DailyExtremes extremes = new DailyExtremes(0, days, shape);
    double time = share * days.size() * Times.DAY;
    int day = (int) Math.floor(time / Times.DAY - shape.hourOfLow() / 24);
    Range today = days.get(Math.min(Math.max(day, 0), days.size() - 1));
    double sinceLow = Times.toHours(time) - 24 * day - shape.hourOfLow();
    double otherEnd =
        sinceLow <= shape.hourOfHigh() - shape.hourOfLow()
            ? today.low()
            : days.get(Math.min(day + 1, days.size() - 1)).low();
    double value = extremes.at(time);
    assertTrue(value >= Math.min(today.high(), otherEnd) - 1e-9);
    assertTrue(value <= Math.max(today.high(), otherEnd) + 1e-9);
  }

  @Property(seed = "20260122", tries = 300)
  void meetsEveryLowAndHigh(
      @ForAll("days") List<Range> days, @ForAll("shapes") DiurnalShape shape) {
    DailyExtremes extremes = new DailyExtremes(0, days, shape);
    for (int day = 0; day < days.size(); day++) {
      double low = day * Times.DAY + Times.fromHours(shape.hourOfLow());
      double high = day * Times.DAY + Times.fromHours(shape.hourOfHigh());
      assertEquals(days.get(day).low(), extremes.at(low), 1e-6);
      assertEquals(days.get(day).high(), extremes.at(high), 1e-6);
    }
  }

  @Property(seed = "20260123", tries = 300)
  void followsItsShapeAmongEqualDays(
      @ForAll("shapes") DiurnalShape shape, @ForAll @DoubleRange(min = 0, max = 24) double hour) {
    DailyExtremes extremes = new DailyExtremes(0, List.of(new Range(280, 290)), shape);
    double expected = 290 - 10 * shape.fractionBelowHigh(hour);
    assertEquals(expected, extremes.at(Times.fromHours(hour)), 1e-6);
  }

  @Property(seed = "20260124", tries = 200)
  void breakpointsAscendWithinTheInterval(
      @ForAll("days") List<Range> days, @ForAll("shapes") DiurnalShape shape) {
    double end = days.size() * Times.DAY;
    double[] breakpoints = new DailyExtremes(0, days, shape).breakpoints(0, end);
    double last = 0;
    for (double time : breakpoints) {
      assertTrue(time > last && time < end);
      last = time;
    }
  }
}
