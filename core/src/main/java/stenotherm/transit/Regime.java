package stenotherm.transit;

import java.util.List;

/** Where the coefficients of a run come from. Belongs to one engine. */
interface Regime {
  /** The stages, one after the other from sealing until the end. */
  List<Stage> stages();

  /** Lets the engine go on under the coefficients of a stage, which it is about to begin. */
  Coefficients enter(int stage);

  /** Tells whether a stage's coefficients stand for its leg rather than those before. */
  boolean standsForLeg(int stage);
}
