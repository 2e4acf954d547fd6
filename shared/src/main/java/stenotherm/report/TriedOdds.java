package stenotherm.report;

import java.util.Optional;
import stenotherm.study.Odds;

/** Odds of something that was tried, which may have none. */
final class TriedOdds {
  private TriedOdds() {}

  /** So many of a hundred, for example "87". */
  static String share(Optional<Odds> within) {
    return within.map(odds -> Words.inHundred(odds.within())).orElse(Tables.NOTHING);
  }

  /** The same for a column. */
  static String inColumn(Optional<Odds> within) {
    return within.map(odds -> Words.percent(odds.within())).orElse(Tables.NOTHING);
  }

  /** What so many do, for example " go well". */
  static String goWell(Optional<Odds> within) {
    return Words.goWell(within.map(Odds::within).orElse(1.0));
  }
}
