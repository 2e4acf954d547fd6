package stenotherm.examples;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import stenotherm.base.Face;
import stenotherm.base.Provenance;
import stenotherm.base.Times;
import stenotherm.base.Volumes;
import stenotherm.conduction.DiscretisationEstimate;
import stenotherm.decision.Assessment;
import stenotherm.decision.DelayMargin;
import stenotherm.decision.Level;
import stenotherm.decision.Side;
import stenotherm.decision.Verdict;
import stenotherm.journey.Journey;
import stenotherm.words.Figures;

/** Numbers and sentences as people read them: rounded to what they are worth. */
final class Words {
  /** What a warmer's curve is worth. */
  static final String ILLUSTRATIVE =
      "Warmer curves are illustrative: no measured power of a real warmer stands behind them.";

  private Words() {}

  static String temperature(double kelvin) {
    return Figures.METRIC.temperature(kelvin);
  }

  /** One decimal with its sign. */
  static String change(double value) {
    return String.format(Locale.ROOT, "%+.1f", Math.rint(10 * value) / 10 + 0.0);
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

  /** For example {@code 2.5 (1.1 to 4.0)}. */
  static String margin(Assessment assessment, Side side) {
    return Figures.tenth(assessment.nominalMargin(side).kelvin())
        + " ("
        + Figures.tenth(assessment.worstMargin(side).kelvin())
        + " to "
        + Figures.tenth(assessment.bestMargin(side).kelvin())
        + ")";
  }

  static String difference(double kelvin) {
    return Figures.METRIC.difference(kelvin);
  }

  static String gridError(Assessment assessment) {
    DiscretisationEstimate cold = assessment.coldGrid();
    DiscretisationEstimate hot = assessment.hotGrid();
    // rounded up: an error estimate must not round to nothing
    double error = Math.ceil(10 * Math.max(cold.error(), hot.error())) / 10;
    boolean regular = !Double.isNaN(cold.order()) && !Double.isNaN(hot.order());
    return Figures.tenth(error) + (regular ? "" : ", not converged");
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

  static String litres(double cubicMetres) {
    return Figures.tenth(Volumes.toLitres(cubicMetres));
  }

  static String kilograms(double mass) {
    return String.format(Locale.ROOT, "%.2f", mass);
  }

  static String face(Face face) {
    return switch (face) {
      case Z_MAX -> "lid";
      case Z_MIN -> "floor";
      default -> "side " + face.label();
    };
  }

  /** The answer before everything else. */
  static String headline(List<Judged> rows) {
    Judged best = Judged.best(rows);
    Level level = best.assessment().verdict().level();
    String which = best.label();
    return switch (level) {
      case OUTSIDE ->
          "No packing keeps the alarm band over the whole range; closest is '"
              + which
              + "', "
              + difference(-best.worst())
              + " beyond it at the worse end: "
              + level.words()
              + ".";
      case TIGHT ->
          "The most that any packing has left at the worse end is "
              + difference(best.worst())
              + ", with '"
              + which
              + "': "
              + level.words()
              + ".";
      case INSIDE ->
          "'"
              + which
              + "' has most left at the worse end, "
              + difference(best.worst())
              + ": "
              + level.words()
              + ".";
    };
  }

  /** What the warmer changes, for a packing that was run both ways. */
  static List<String> warmerEffects(List<Judged> rows) {
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

  private static String warmerEffect(Judged with, Judged without) {
    return with.parcel().name()
        + ": the warmer moves the worse end of the cold margin from "
        + Figures.tenth(without.assessment().worstMargin(Side.COLD).kelvin())
        + " K to "
        + Figures.tenth(with.assessment().worstMargin(Side.COLD).kelvin())
        + " K, and that of the hot margin from "
        + Figures.tenth(without.assessment().worstMargin(Side.HOT).kelvin())
        + " K to "
        + Figures.tenth(with.assessment().worstMargin(Side.HOT).kelvin())
        + " K.";
  }

  /** All cautions, each once; the one that defers to others comes last. */
  static List<String> cautions(List<Judged> rows) {
    Set<String> all = new LinkedHashSet<>();
    for (Judged row : rows) {
      all.addAll(row.assessment().verdict().cautions());
      if (isIllustrative(row)) {
        all.add(ILLUSTRATIVE);
      }
    }
    all.remove(Verdict.DEFER);
    all.add(Verdict.DEFER);
    return List.copyOf(all);
  }

  private static boolean isIllustrative(Judged row) {
    return row.parcel().warmers().stream()
        .anyMatch(warmer -> warmer.warmer().source().provenance() == Provenance.ILLUSTRATIVE);
  }
}
