package stenotherm.transit;

import java.util.List;

/** Where the coefficients of a run come from. Belongs to one engine. */
interface Regime {
  /** The stages, one after the other from sealing until the end. */
  List<Stage> stages();

  /** Gives the engine the coefficients of the stage that it is about to begin. */
  Coefficients enter(int stage);

  /**
   * Tells whether a stage's coefficients are to be reported for its leg, instead of those of
   * earlier stages.
   */
  boolean standsForLeg(int stage);
}
