package stenotherm.validation.studies;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stenotherm.parcel.Dimensions;
import stenotherm.validation.studies.Check.Expected;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/**
 * A fact of the trade: about 50 mm of fill between a long-duration warmer and the cup keep the
 * animal below its upper limit where contact does not.
 */
final class WarmerSpacing implements Study {
  private static final String PRACTICE =
      "common practice, no source: about 50 mm (two inches) of fill between a long-duration warmer"
          + " and the cup";

  private static final String SENTENCE =
      "no accuracy, a range: practice gives no number but 'below the limit' or 'above it'";

  private static final double FOAM = 0.019;
  private static final double[] GAPS = {0, 0.010, 0.025, 0.050};
  private static final double WARM_ROOM = 20;
  private static final double COLD_ROOM = 5;

  /** Width of the table's cells; what they leave is below what the checks' grids show. */
  private static final double COARSE = 3;

  @Override
  public Heading heading() {
    return new Heading(
        "trade-warmer-gap", "Fill between a warmer and the cup below it", PRACTICE, Kind.PRACTICE);
  }

  private static Carton.Extremes send(WarmerClass warmer, double gap, double room, double width) {
    // the same carton for all gaps, just high enough for 75 mm
    double height = Carton.FILL_UNDER_CUP + Carton.CUP_HEIGHT + 0.075 + 0.015;
    return Carton.send(
        Carton.packed(
            new Dimensions(0.19, 0.16, height), FOAM, List.of(Carton.overCup(warmer, gap))),
        Carton.room(room),
        width);
  }

  /** The narrowest gap that keeps the hottest part at the limit [mm]; NaN if the widest is not. */
  private static double enough(List<Double> hottest) {
    double limit = Carton.BAND.high();
    if (hottest.get(0) <= limit) {
      return 0;
    }
    for (int index = 1; index < GAPS.length; index++) {
      double wide = hottest.get(index);
      if (wide <= limit) {
        double narrow = hottest.get(index - 1);
        double part = (narrow - limit) / (narrow - wide);
        return 1000 * (GAPS[index - 1] + part * (GAPS[index] - GAPS[index - 1]));
      }
    }
    return Double.NaN;
  }

  private static List<Double> hottest(WarmerClass warmer, double room, double width) {
    List<Double> values = new ArrayList<>();
    for (double gap : GAPS) {
      values.add(send(warmer, gap, room, width).hottest());
    }
    return values;
  }

  @Override
  public Findings run(Depth depth) {
    double finest = depth == Depth.FAST ? 4 : 1.5;
    Ladder ladder =
        Ladder.steady(
            List.of(2 * finest, Math.sqrt(2) * finest, finest),
            width -> {
              Carton.Extremes contact = send(Warmers.FORTY_HOUR, 0, WARM_ROOM, width);
              Carton.Extremes half = send(Warmers.FORTY_HOUR, 0.025, WARM_ROOM, width);
              Carton.Extremes apart = send(Warmers.FORTY_HOUR, 0.050, WARM_ROOM, width);
              double part =
                  (half.hottest() - Carton.BAND.high()) / (half.hottest() - apart.hottest());
              Carton.Extremes cold = send(Warmers.SEVENTY_TWO_HOUR, 0, COLD_ROOM, width);
              return new Ladder.Grid(
                  List.of(contact.hottest(), apart.hottest(), 25 + 25 * part, cold.hottest()),
                  contact.cells(),
                  contact.steps() + half.steps() + apart.steps() + cold.steps());
            });
    List<Check> checks =
        List.of(
            new Check(
                "hottest part of the animal, warmer on the cup, room at 20 °C",
                ladder.output(0, 1.5),
                new Expected(
                    51, 19, "°C", PRACTICE + ": above the upper limit of 32 °C", SENTENCE)),
            new Check(
                "the same with 50 mm of fill",
                ladder.output(1, 1),
                new Expected(21, 11, "°C", PRACTICE + ": within 10 °C to 32 °C", SENTENCE)),
            new Check(
                "fill that is just enough at 20 °C",
                ladder.output(2, 5),
                new Expected(25, 25, "mm", PRACTICE + ": more than none, at most 50", SENTENCE)),
            new Check(
                "hottest part of the animal, warmer for 72 hours on the cup, room at 5 °C",
                ladder.output(3, 1.5),
                new Expected(
                    51, 19, "°C", PRACTICE + ": above the upper limit of 32 °C", SENTENCE)));
    Findings findings = new Findings(checks, ladder.runs(), List.of());
    return depth == Depth.FAST ? findings : findings.with(table(), text(ladder));
  }

  private static Findings.Exhibit table() {
    List<List<String>> rows =
        List.of(Warmers.FORTY_HOUR, Warmers.SEVENTY_TWO_HOUR).stream()
            .flatMap(
                warmer -> List.of(5.0, 15.0, 20.0).stream().map(room -> new Setting(warmer, room)))
            .toList()
            .parallelStream()
            .map(WarmerSpacing::row)
            .toList();
    return new Findings.Exhibit.Tabulation(
        List.of(
            "warmer",
            "room [°C]",
            "hottest part: contact [°C]",
            "10 mm",
            "25 mm",
            "50 mm",
            "fill just enough for 32 °C [mm]"),
        rows);
  }

  private record Setting(WarmerClass warmer, double room) {}

  private static List<String> row(Setting setting) {
    List<Double> hottest = hottest(setting.warmer(), setting.room(), COARSE);
    List<String> row = new ArrayList<>();
    row.add(setting.warmer().name());
    row.add(String.format(Locale.ROOT, "%.0f", setting.room()));
    hottest.forEach(value -> row.add(String.format(Locale.ROOT, "%.1f", value)));
    double enough = enough(hottest);
    row.add(Double.isNaN(enough) ? "above 50" : String.format(Locale.ROOT, "%.0f", enough));
    return row;
  }

  private static Findings.Exhibit text(Ladder ladder) {
    return new Findings.Exhibit.Paragraph(
        String.format(
            Locale.ROOT,
            "Nominal values only. Model and practice agree in rooms of 15 °C and above: on the cup"
                + " either warmer is too hot, 50 mm of fill are enough; at 20 °C %.0f mm would do"
                + " under the warmer for 40 hours. They do not agree in the cold: at 5 °C a few"
                + " millimetres are enough under the warmer for 40 hours; the one for 72 hours,"
                + " lying on the cup,"
                + " leaves the animal at %.1f °C at most, which is the finding above; and the full"
                + " 50 mm cost the animal warmth that it needs. Practice gives one number for all"
                + " weathers, and it packs by hand: fill settles, and single warmers differ by a"
                + " quarter from their curve. The curves of these warmers are illustrative; so are"
                + " the millimetres. The checks are weak: words give only ranges, here 22 K to 38"
                + " K wide."
                + " The parcel starts at 22 °C, so the hottest part is never below that.",
            ladder.finest(2),
            ladder.finest(3)));
  }
}
