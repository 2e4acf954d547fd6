package stenotherm.decision;

import stenotherm.base.Range;
import stenotherm.journey.Journey;
import stenotherm.study.Fate;
import stenotherm.study.JourneyStudy;
import stenotherm.study.StudyResult;
import stenotherm.transit.Factor;
import stenotherm.transit.ParcelModel;
import stenotherm.transit.Variation;

/**
 * A cold and a hot journey, beside a typical one, by which packings are looked at: a typical
 * journey would tell nothing of what makes journeys differ less.
 *
 * @param cold what differs on the cold one
 * @param hot what differs on the hot one
 */
record TwoJourneys(Variation cold, Variation hot) {
  /**
   * How far towards the ends of their ranges weather and warmers lie in the usual two. That the
   * margins are then about those of one journey in twenty is assumed.
   */
  private static final double TOWARDS_ENDS = 0.6;

  /** Those of a first look lie no nearer to the typical one, and no farther out. */
  private static final Range POSITIONS = new Range(0.1, 1);

  /** One journey in twenty. */
  private static final double SELDOM = 0.05;

  /** Two for packings of which no odds are known. */
  static final TwoJourneys USUAL = new TwoJourneys(towards(-TOWARDS_ENDS), towards(TOWARDS_ENDS));

  /** Two on which a packing whose odds are known has the margins of one journey in twenty. */
  static TwoJourneys of(ParcelModel unchanged, Journey journey, StudyResult odds) {
    Fate typical = fate(unchanged, journey, Variation.NOMINAL);
    RoughOdds.Margins seldom = USUAL.margins(unchanged, journey);
    double cold =
        position(
            odds.coldMargin(0.5) - odds.coldMargin(SELDOM),
            typical.cold().margin() - seldom.cold());
    double hot =
        position(
            odds.hotMargin(0.5) - odds.hotMargin(SELDOM), typical.hot().margin() - seldom.hot());
    return new TwoJourneys(towards(-cold), towards(hot));
  }

  /** Where a margin has moved as far as on one journey in twenty, if it moves in proportion. */
  private static double position(double seldom, double moved) {
    double part = moved > 0 ? seldom / moved : 1;
    return Math.max(POSITIONS.low(), Math.min(POSITIONS.high(), part * TOWARDS_ENDS));
  }

  private static Variation towards(double position) {
    return Variation.NOMINAL
        .with(Factor.AMBIENT, position)
        .with(Factor.WARMER_STRENGTH, position)
        .with(Factor.RATING_BENCH, position);
  }

  /** Looks at a packing that was made ready roughly. */
  RoughOdds.Look look(ParcelModel model, Journey journey) {
    return look(model, journey, fate(model, journey, Variation.NOMINAL));
  }

  /** The same where it is known how it fares on a typical journey. */
  RoughOdds.Look look(ParcelModel model, Journey journey, Fate typical) {
    return new RoughOdds.Look(
        new RoughOdds.Margins(typical.cold().margin(), typical.hot().margin()),
        margins(model, journey));
  }

  private RoughOdds.Margins margins(ParcelModel model, Journey journey) {
    return new RoughOdds.Margins(
        fate(model, journey, cold).cold().margin(), fate(model, journey, hot).hot().margin());
  }

  /** How animals fare on a journey; of places in reach nothing is known. */
  static Fate fate(ParcelModel model, Journey journey, Variation variation) {
    return JourneyStudy.fate(
        model.parcel(),
        model.storedTimes(journey),
        model.journeyMeans(journey, variation),
        journey.duration());
  }
}
