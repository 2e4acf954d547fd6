package stenotherm.transit;

/**
 * What a {@link ParcelModel} is for. The less it must do, the sooner it is built: reading extremes
 * and surfaces takes a good part of the work, and so do properties other than the nominal ones.
 *
 * <p>Experimental. Thread-safe.
 */
public enum ModelScope {
  /** Whole results of any run. */
  ALL(false, false),
  /** Whole results, nominal but for air and warmers. */
  NOMINAL(false, true),
  /** {@link ParcelModel#means Means} of any run. */
  MEANS(true, false),
  /** Means, nominal but for air and warmers. */
  NOMINAL_MEANS(true, true),
  /**
   * The same to some tenths of a kelvin, built in a third of the time: to compare packings with
   * each other.
   */
  ROUGH_MEANS(true, true);

  private final boolean meansAlone;
  private final boolean nominalAlone;

  ModelScope(boolean meansAlone, boolean nominalAlone) {
    this.meansAlone = meansAlone;
    this.nominalAlone = nominalAlone;
  }

  boolean isMeansAlone() {
    return meansAlone;
  }

  boolean isNominalAlone() {
    return nominalAlone;
  }
}
