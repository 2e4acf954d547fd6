package stenotherm.examples;

import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Orientation;
import stenotherm.base.Provenance;
import stenotherm.base.Times;
import stenotherm.conduction.DiscretisationEstimate;
import stenotherm.decision.DelayMargin;
import stenotherm.decision.Level;
import stenotherm.decision.Margin;
import stenotherm.decision.Sensitivity;
import stenotherm.decision.Side;
import stenotherm.decision.Verdict;
import stenotherm.journey.Journey;
import stenotherm.journey.Leg;
import stenotherm.words.Figures;

/**
 * Numbers and sentences as people read them: in their units, rounded to what they are worth.
 *
 * @param figures writes numbers in the reader's units
 */
record Words(Figures figures) {
  /** What a warmer's curve is worth. */
  static final String ILLUSTRATIVE =
      "Warmer curves are illustrative: no measured power of a real warmer stands behind them.";

  /** A change of a margin that is worth a sentence [K]. */
  private static final double WORTH_SAYING = 0.1;

  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm 'on' d MMMM", Locale.ENGLISH);

  String temperature(double kelvin) {
    return figures.temperature(kelvin);
  }

  String difference(double kelvin) {
    return figures.difference(kelvin);
  }

  /** A change of a margin, one decimal with its sign. */
  String change(double kelvin) {
    String text = figures.degrees(kelvin);
    return text.startsWith("-") || text.equals("0.0") ? text : "+" + text;
  }

  static String hours(double seconds) {
    return Figures.tenth(Times.toHours(seconds));
  }

  static String clock(Journey journey, double time) {
    return Figures.clock(journey.localClock(time));
  }

  static String dayAndClock(Journey journey, double time) {
    return Figures.dayAndClock(journey.localClock(time));
  }

  /** The clock of a moment that was stored: at a change of legs that of the one that ends. */
  static String moment(Journey journey, double time) {
    return Figures.dayAndClock(journey.localClock(time, journey.legUntil(time)));
  }

  /** For example {@code 2.5 (1.1 to 4.0)}. */
  String margin(Spread margin) {
    return figures.degrees(margin.nominal().kelvin())
        + " ("
        + figures.degrees(margin.worst().kelvin())
        + " to "
        + figures.degrees(margin.best().kelvin())
        + ")";
  }

  /** Error of computing: that of the grid and that of the reduction. */
  String error(Judged row) {
    return errorFigure(row) + remark(row);
  }

  /** The same as a sentence has it, with its unit. */
  String errorWithUnit(Judged row) {
    return errorFigure(row) + " " + figures.differenceUnit() + remark(row);
  }

  private String errorFigure(Judged row) {
    double error = Math.max(row.assessment().error(Side.COLD), row.assessment().error(Side.HOT));
    // rounded up: an error estimate must not round to nothing
    return figures.degrees(Math.ceil(10 * error) / 10);
  }

  private static String remark(Judged row) {
    DiscretisationEstimate cold = row.assessment().coldGrid();
    DiscretisationEstimate hot = row.assessment().hotGrid();
    boolean regular = !Double.isNaN(cold.order()) && !Double.isNaN(hot.order());
    return regular ? "" : ", not converged";
  }

  static String delay(DelayMargin delay) {
    if (delay instanceof DelayMargin.AlreadyOutside already) {
      return "none, outside " + hours(already.before()) + " h before opening";
    }
    if (delay instanceof DelayMargin.Until until) {
      return hours(until.hold()) + " h";
    }
    return "at least " + hours(((DelayMargin.AtLeast) delay).hold()) + " h";
  }

  static String face(Face face) {
    return switch (face) {
      case Z_MAX -> "lid";
      case Z_MIN -> "floor";
      default -> "side " + face.label();
    };
  }

  /** The boundary of a face or of a part of one, in words; the upright faces together. */
  static String sides(String boundary) {
    for (Face face : Face.values()) {
      if (boundary.equals(face.label()) || boundary.endsWith(" of " + face.label())) {
        return face.axis() == Axis.Z ? face(face) : "four sides";
      }
    }
    return boundary;
  }

  /** The answer before everything else. */
  String headline(List<Judged> rows) {
    Judged best = Judged.best(rows);
    Level level = best.assessment().verdict().level();
    String which = "'" + best.label() + "'";
    return switch (level) {
      case OUTSIDE ->
          "No packing keeps the alarm band over the whole range; closest is "
              + which
              + ", "
              + (best.worst() < 0 ? difference(-best.worst()) + " beyond it" : "just at its edge")
              + " at the worse end: "
              + level.words()
              + ".";
      case TIGHT ->
          "The most that any packing has left at the worse end is "
              + difference(best.worst())
              + ", with "
              + which
              + ": "
              + level.words()
              + ".";
      case INSIDE ->
          which
              + " has most left at the worse end, "
              + difference(best.worst())
              + ": "
              + level.words()
              + ".";
    };
  }

  /** The verdict of a packing as a sentence that can stand alone, in the reader's units. */
  String sentence(Judged row) {
    Verdict verdict = row.assessment().verdict();
    Margin tightest = verdict.tightest();
    Journey journey = row.held();
    // what is stored at a change of legs belongs to the one that ends
    int number = journey.legUntil(tightest.time());
    Leg leg = journey.legs().get(number);
    Orientation lying = leg.surroundings().orientation();
    String side = tightest.side().words();
    return side.substring(0, 1).toUpperCase(Locale.ROOT)
        + side.substring(1)
        + " is tightest"
        + (row.parcel().occupied().size() > 1 ? ", in '" + tightest.cup() + "': " : ": ")
        + (tightest.kelvin() < 0
            ? difference(-tightest.kelvin()) + " beyond the alarm band"
            : difference(tightest.kelvin()) + " left")
        + " at "
        + CLOCK.format(journey.localClock(tightest.time(), number))
        + " ("
        + hours(tightest.time())
        + " h after sealing), "
        + leg.name()
        + (lying == Orientation.LID_UP ? "" : ", " + lying.words())
        + "; nominal "
        + difference(verdict.nominal())
        + ", at best "
        + difference(verdict.best())
        + ".";
  }

  /**
   * Which range takes most of the margin, where little or nothing is left of it: what to know
   * better, or to guard against, first.
   */
  Optional<String> costliest(Judged row) {
    if (row.assessment().verdict().level() == Level.INSIDE) {
      return Optional.empty();
    }
    return row.assessment().sensitivities().stream()
        .max(Comparator.comparingDouble(each -> cost(each, row.side())))
        .filter(most -> cost(most, row.side()) >= WORTH_SAYING)
        .map(
            most ->
                "Of what is uncertain, "
                    + most.factor().words()
                    + " alone costs most, "
                    + difference(cost(most, row.side()))
                    + ".");
  }

  /** What a quantity takes from the margin of a side at the worse end of its range [K]. */
  private static double cost(Sensitivity sensitivity, Side side) {
    Sensitivity.Change change = side == Side.COLD ? sensitivity.cold() : sensitivity.hot();
    return -Math.min(change.atLow(), change.atHigh());
  }

  /** The verdict of a packing in a line above a picture. */
  String summary(Judged row) {
    Margin tightest = row.assessment().verdict().tightest();
    return tightest.side().words()
        + " is tightest, "
        + (tightest.kelvin() < 0
            ? difference(-tightest.kelvin()) + " beyond the alarm band"
            : difference(tightest.kelvin()) + " left")
        + " at the worse end, "
        + moment(row.held(), tightest.time());
  }

  /** What the warmer changes, for a packing that was run both ways. */
  List<String> warmerEffects(List<Judged> rows) {
    return rows.stream()
        .filter(Judged::hasWarmer)
        .flatMap(
            with ->
                rows.stream()
                    .filter(
                        row -> !row.hasWarmer() && row.parcel().name().equals(with.parcel().name()))
                    .map(without -> warmerEffect(with, without)))
        .toList();
  }

  private String warmerEffect(Judged with, Judged without) {
    return with.parcel().name()
        + ": "
        + (with.parcel().warmers().size() == 1 ? "the warmer moves" : "the warmers move")
        + " the worse end of the cold margin from "
        + worst(without, Side.COLD)
        + " to "
        + worst(with, Side.COLD)
        + ", and that of the hot margin from "
        + worst(without, Side.HOT)
        + " to "
        + worst(with, Side.HOT)
        + ".";
  }

  private String worst(Judged row, Side side) {
    return figures.degrees(row.assessment().worstMargin(side).kelvin())
        + " "
        + figures.differenceUnit();
  }

  /** All cautions, each once; the one that defers to others comes last. */
  static List<String> cautions(List<Judged> rows) {
    Set<String> all = new LinkedHashSet<>();
    for (Judged row : rows) {
      for (String caution : row.assessment().verdict().cautions()) {
        // what happens in a leg may differ from packing to packing
        boolean inAll =
            rows.stream()
                .allMatch(each -> each.assessment().verdict().cautions().contains(caution));
        all.add(isOfPacking(caution) && !inAll ? row.label() + ": " + caution : caution);
      }
      if (isIllustrative(row)) {
        all.add(ILLUSTRATIVE);
      }
    }
    all.remove(Verdict.DEFER);
    all.add(Verdict.DEFER);
    return List.copyOf(all);
  }

  /** Whether a caution names a leg or a pack, which other packings may not share. */
  private static boolean isOfPacking(String caution) {
    return caution.startsWith("In '") || caution.startsWith("'");
  }

  private static boolean isIllustrative(Judged row) {
    return row.parcel().warmers().stream()
        .anyMatch(warmer -> warmer.warmer().source().provenance() == Provenance.ILLUSTRATIVE);
  }
}
