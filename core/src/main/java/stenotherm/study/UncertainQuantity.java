package stenotherm.study;

/**
 * An uncertain quantity.
 *
 * @param words what reports call it
 * @param law how it lies in its range
 * @param effect what it does to a run
 */
record UncertainQuantity(String words, Law law, Effect effect) {
  /** What a quantity does to a run. */
  interface Effect {
    /**
     * Acts.
     *
     * @param position position in the range
     * @param draft the run that it acts on
     */
    void act(double position, Draft draft);
  }
}
