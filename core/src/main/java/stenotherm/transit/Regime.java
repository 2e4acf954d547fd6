package stenotherm.transit;

import java.util.List;
import stenotherm.conduction.HeatEngine;

/** Where the coefficients of a run come from. */
interface Regime {
  /** The stages, one after the other from sealing until the end. */
  List<Stage> stages();

  /** The coefficients of a stage, which begins in the state that an engine has now. */
  Coefficients of(int stage, HeatEngine engine);

  /** Tells whether a stage's coefficients stand for its leg rather than those before. */
  boolean standsForLeg(int stage);
}
