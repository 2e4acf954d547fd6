package stenotherm.validation.cases;

import java.util.function.Consumer;

/** A case that can be run, from a file or from code. */
interface ValidationCase {
  /** The name that messages show before the case is run. */
  String name();

  /**
   * Runs the case; one that cannot be read becomes a refused case.
   *
   * @param limits where it ends
   * @param refine how many more grids are solved after the values are accurate enough
   * @param progress told a line now and then
   */
  CaseResult run(Limits limits, int refine, Consumer<String> progress);
}
