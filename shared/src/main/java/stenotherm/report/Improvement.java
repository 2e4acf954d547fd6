package stenotherm.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stenotherm.base.Checks;
import stenotherm.decision.ChangesTried;

/**
 * What was tried where no packing likely holds.
 *
 * <p>Experimental. Immutable, thus thread-safe.
 *
 * @param row the packing that the change which helps most is made on; the best one if none helps
 * @param tried the changes tried on it
 * @param count how many were tried, those on another packing counted in
 */
public record Improvement(Judged row, ChangesTried tried, int count) {
  /** Checks the parts. */
  public Improvement {
    Checks.given("row", row);
    Checks.given("changes", tried);
  }

  static Improvement of(Judged row, ChangesTried tried) {
    return new Improvement(row, tried, tried.changes().size());
  }

  /** This, or another one where a change surely leads farther. */
  Improvement or(Improvement other) {
    double here = tried.best().map(Improvement::low).orElse(row.verdict().within().within());
    boolean isBetter = other.tried.best().filter(change -> low(change) > here).isPresent();
    Improvement better = isBetter ? other : this;
    return new Improvement(better.row, better.tried, count + other.count);
  }

  private static double low(ChangesTried.TriedChange change) {
    return change.within().orElseThrow().low();
  }

  /**
   * The packing to try changes on beside the best one: where that has no warmer and is too cold,
   * the best one with a warmer, unless it is as much too cold. It takes less heat, or a larger box.
   */
  static Optional<Judged> warmedBeside(Judged best, List<Judged> rows) {
    return best.hasWarmer() || !best.isCold()
        ? Optional.empty()
        : rows.stream()
            .filter(row -> row.hasWarmer() && !row.isCold())
            .max(Comparator.comparingDouble(row -> row.verdict().within().low()));
  }
}
