package stenotherm.validation.studies;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.validation.studies.Check.Expected;
import stenotherm.warmer.Warmers;

/**
 * A fact of the trade: at overnight lows between about 0 °C and 7 °C at both ends a small
 * foam-lined carton needs and tolerates one long-duration warmer; at a destination low of 20 °C the
 * same warmer overheats it. Then the thresholds for other sizes and foams, as outputs.
 */
final class WinterWarmer implements Study {
  private static final String PRACTICE =
      "common practice, no source: one long-duration warmer in a small foam-lined carton for lows"
          + " of 0 °C to 7 °C (32 °F to 45 °F) at both ends, none at 20 °C (68 °F)";

  private static final String SENTENCE =
      "no accuracy, a range: practice says 'needs', 'tolerates' or 'overheats', here by the alarm"
          + " band of 10 °C to 32 °C";

  private static final Dimensions SMALL = new Dimensions(0.15, 0.15, 0.13);
  private static final double FOAM = 0.019;

  /** Width of the sweep's cells; what they leave is below what the checks' grids show. */
  private static final double SWEEP_CELL = 3;

  @Override
  public Heading heading() {
    return new Heading(
        "trade-winter-warmer",
        "One long-duration warmer in a winter's night, and at a mild destination",
        PRACTICE,
        Kind.PRACTICE);
  }

  private static List<PlacedWarmer> one() {
    return List.of(Carton.underLid(Warmers.FORTY_HOUR));
  }

  private static Carton.Extremes send(
      List<PlacedWarmer> warmers, double lowAtOrigin, double lowAtDestination, double width) {
    return Carton.send(
        Carton.packed(SMALL, FOAM, warmers),
        Carton.overnight(lowAtOrigin, lowAtDestination),
        width);
  }

  @Override
  public Findings run(Depth depth) {
    double finest = depth == Depth.FAST ? 4 : 1.5;
    Ladder ladder =
        Ladder.steady(
            List.of(2 * finest, Math.sqrt(2) * finest, finest),
            width -> {
              Carton.Extremes noneAtZero = send(List.of(), 0, 0, width);
              Carton.Extremes noneAtSeven = send(List.of(), 7, 7, width);
              Carton.Extremes oneAtZero = send(one(), 0, 0, width);
              Carton.Extremes oneAtSeven = send(one(), 7, 7, width);
              Carton.Extremes mild = send(one(), 7, 20, width);
              return new Ladder.Grid(
                  List.of(
                      noneAtZero.coldest(),
                      noneAtSeven.coldest(),
                      oneAtZero.coldest(),
                      oneAtZero.hottest(),
                      oneAtSeven.coldest(),
                      oneAtSeven.hottest(),
                      mild.hottest()),
                  oneAtZero.cells(),
                  noneAtZero.steps()
                      + noneAtSeven.steps()
                      + oneAtZero.steps()
                      + oneAtSeven.steps()
                      + mild.steps());
            });
    List<Check> checks = new ArrayList<>();
    check(checks, ladder, "coldest part without a warmer, lows of 0 °C", 5, 5, "needs one: < 10");
    check(checks, ladder, "coldest part without a warmer, lows of 7 °C", 5, 5, "needs one: < 10");
    check(checks, ladder, "coldest part with one, lows of 0 °C", 21, 11, "tolerates: 10 to 32");
    check(checks, ladder, "hottest part with one, lows of 0 °C", 21, 11, "tolerates: 10 to 32");
    check(checks, ladder, "coldest part with one, lows of 7 °C", 21, 11, "tolerates: 10 to 32");
    check(checks, ladder, "hottest part with one, lows of 7 °C", 21, 11, "tolerates: 10 to 32");
    check(
        checks,
        ladder,
        "hottest part with one, destination low of 20 °C",
        41,
        9,
        "overheats: 32 or more");
    Findings findings = new Findings(checks, ladder.runs(), List.of());
    return depth == Depth.FAST ? findings : findings.with(sweep(), comparison(ladder));
  }

  private static void check(
      List<Check> checks,
      Ladder ladder,
      String quantity,
      double value,
      double tolerance,
      String meaning) {
    checks.add(
        new Check(
            quantity,
            ladder.output(checks.size(), 1),
            new Expected(value, tolerance, "°C", PRACTICE + "; " + meaning, SENTENCE)));
  }

  /** Inner edge of a cube and foam [m]. */
  private record Size(double edge, double foam) {}

  private static Findings.Exhibit sweep() {
    List<Size> sizes = new ArrayList<>();
    for (double edge : new double[] {0.15, 0.2, 0.25, 0.3}) {
      for (double foam : new double[] {0.012, 0.019, 0.038}) {
        sizes.add(new Size(edge, foam));
      }
    }
    return new Findings.Exhibit.Tabulation(
        List.of(
            "inner edge [mm]",
            "foam [mm]",
            "no warmer: lows down to [°C]",
            "one warmer: lows down to",
            "one warmer: lows up to",
            "one warmer: origin 7 °C, destination low up to"),
        sizes.parallelStream().map(WinterWarmer::thresholds).toList());
  }

  private static List<String> thresholds(Size size) {
    double cold = Carton.BAND.low();
    double hot = Carton.BAND.high();
    return List.of(
        String.format(Locale.ROOT, "%.0f", 1000 * size.edge()),
        String.format(Locale.ROOT, "%.0f", 1000 * size.foam()),
        degrees(crossing(cold, 0, 8, low -> extremes(size, List.of(), low, low).coldest())),
        degrees(crossing(cold, -6, 4, low -> extremes(size, one(), low, low).coldest())),
        degrees(crossing(hot, 14, 22, low -> extremes(size, one(), low, low).hottest())),
        degrees(crossing(hot, 16, 24, low -> extremes(size, one(), 7, low).hottest())));
  }

  private static Carton.Extremes extremes(
      Size size, List<PlacedWarmer> warmers, double lowAtOrigin, double lowAtDestination) {
    return Carton.send(
        Carton.packed(new Dimensions(size.edge(), size.edge(), size.edge()), size.foam(), warmers),
        Carton.overnight(lowAtOrigin, lowAtDestination),
        SWEEP_CELL);
  }

  /** Low at which a temperature has a value, on the line through two lows. */
  private static double crossing(
      double value, double first, double second, ToDoubleFunction<Double> temperature) {
    double atFirst = temperature.applyAsDouble(first);
    double atSecond = temperature.applyAsDouble(second);
    return first + (second - first) * (value - atFirst) / (atSecond - atFirst);
  }

  private static String degrees(double celsius) {
    return String.format(Locale.ROOT, "%.0f", celsius);
  }

  private static Findings.Exhibit comparison(Ladder ladder) {
    return new Findings.Exhibit.Paragraph(
        String.format(
            Locale.ROOT,
            "Nominal values only. Where model and practice agree: the small carton (150 mm by 150"
                + " mm by 130 mm inside, 19 mm of foam) falls to %.1f °C without a warmer at lows"
                + " of 0 °C and needs one; with one the animal stays between %.1f °C and %.1f °C at"
                + " lows of 0 °C and of 7 °C; at a destination low of 20 °C it reaches %.1f °C and"
                + " is overheated. Where they do not: at lows of 7 °C the model keeps it at %.1f °C"
                + " without a warmer, %.1f K above the cold end of its alarm band: by that band"
                + " none is needed, and the check is a finding, not a pass; by the comfortable band"
                + " (18 °C) one would be. Which of the two is right is not known. Practice may plan"
                + " for comfort and for the delay that may come; the template's heated legs (hub,"
                + " hold) warm the parcel more than a cold vehicle would, and the animal's own heat"
                + " is left out on the other side. And practice names no size: by the table above,"
                + " the warmer of a large box hardly warms the animal, because it lies far from the"
                + " cup and heats the walls; there one warmer is too weak at 0 °C and harmless at"
                + " 20 °C. Thresholds come from straight lines between two lows and are worth a"
                + " degree or two; extrapolated ones, beyond -6 °C or 24 °C, less. The checks are"
                + " weak: words became ranges 10 K to 22 K wide, so they would notice a wrong"
                + " warmer or a missing wall, not an error of a few kelvin. The warmer's curve is"
                + " illustrative; bands are practice too; every warmer is assumed to get enough"
                + " air.",
            ladder.finest(0),
            Math.min(ladder.finest(2), ladder.finest(4)),
            Math.max(ladder.finest(3), ladder.finest(5)),
            ladder.finest(6),
            ladder.finest(1),
            ladder.finest(1) - Carton.BAND.low()));
  }
}
