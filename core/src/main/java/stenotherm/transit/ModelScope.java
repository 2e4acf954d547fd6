package stenotherm.transit;

/**
 * What a {@link ParcelModel} is for. The less it must do, the sooner it is built, and the sooner
 * each run is done: reading extremes and surfaces takes a good part of the work, and so do walls,
 * fill and films other than the nominal ones. What a model was not built for it refuses with an
 * {@link IllegalStateException}.
 *
 * <p>Which to take: {@link #NOMINAL} for whole results where only the air, the warmers and what
 * leaks, reacts, evaporates and breathes inside differ from run to run, such as colder and warmer
 * journeys; {@link #ALL} only where insulation, {@link Factor#SURFACE_FILM}, sun, stowage or the
 * air in cups vary as well; means where nobody asks for extremes, surfaces or heat flows, as for
 * odds.
 *
 * <p>Costs were measured once, for a box with a cup and a warmer on the eleven legs of an overnight
 * journey, on one thread. To build, ALL takes about 5 times as long as NOMINAL, MEANS about 0.7
 * times, NOMINAL_MEANS about 0.4 times and ROUGH_MEANS about a seventh; a run takes about 3, 0.7,
 * 0.5 and 0.3 times as long. The coldest that an animal got differed by less than 0.03 K between
 * ALL and NOMINAL. Where every cell is stepped, all are alike.
 *
 * <p>Experimental. Thread-safe.
 */
public enum ModelScope {
  /** Whole results, {@link ParcelModel#run}, of any run. */
  ALL(false, false),
  /**
   * Whole results, with walls, fill, films, sun, stowage and the air in cups nominal. Offsets of
   * the air, {@link Factor#AMBIENT}, the strength of warmers and all else may differ from run to
   * run.
   */
  NOMINAL(false, true),
  /**
   * Means alone of any run, {@link ParcelModel#means}, places in an animal's reach, {@link
   * ParcelModel#hotterInReach}, and what a {@link CondensedModel} needs.
   */
  MEANS(true, false),
  /** As {@link #MEANS}, with the same nominal as in {@link #NOMINAL}. */
  NOMINAL_MEANS(true, true),
  /**
   * As {@link #NOMINAL_MEANS} without places, but only to some tenths of a kelvin, built in a third
   * of the time: to compare packings with each other.
   */
  ROUGH_MEANS(true, true);

  private final boolean meansAlone;
  private final boolean nominalAlone;

  ModelScope(boolean meansAlone, boolean nominalAlone) {
    this.meansAlone = meansAlone;
    this.nominalAlone = nominalAlone;
  }

  /** Whether outputs of a kind are read. */
  boolean reads(TransitOutput.OutputQuantity quantity) {
    return !meansAlone
        || quantity == TransitOutput.OutputQuantity.MEAN
        || (quantity == TransitOutput.OutputQuantity.PLACE && this != ROUGH_MEANS);
  }

  boolean isMeansAlone() {
    return meansAlone;
  }

  boolean isNominalAlone() {
    return nominalAlone;
  }
}
