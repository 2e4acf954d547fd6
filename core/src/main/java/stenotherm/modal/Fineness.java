package stenotherm.modal;

/** How much a model is to know of its body. */
enum Fineness {
  /** All that the error estimate stands for. */
  WHOLE(
      new int[] {0, 5, 3, 7, 1, 4, 2, 8, 6},
      new int[] {6, 7, 8},
      1e-9,
      1e-6,
      3e-4,
      true,
      new int[] {8, 6}),
  /** Mean fields over an hour or more, to some tenths of a kelvin. */
  SCOUTING(new int[] {0, 1, 3, 4}, new int[0], 1e-4, 1e-4, 1e-1, false, new int[0]);

  /** Part of the usual error that a body with one heat alone may have. */
  private static final double ALONE = 0.1;

  /** Error of a new answer as a part of what need not be added at all. */
  private static final double GROWN = 0.1;

  /**
   * Numbers of the rates at which the answers to the inputs enter the basis: first those at the
   * ends, then those between, of which a basis then knows most. In ascending order bodies that took
   * up other properties came to a tenth more vectors.
   */
  final int[] rates;

  /** The same of the answers to what changes as a run passes to the next configuration. */
  final int[] passages;

  /** Tolerance of a steady answer, as part of the mean rise that the input's heat would cause. */
  private final double steady;

  /** The same of the others: errors of the vectors of a basis are not those of its model. */
  private final double passing;

  /**
   * Error of an answer that a basis found for other configurations may leave; parts as above. It is
   * one in the energy norm of the whole body, and that of a light cup may be many times as large:
   * on 60 random parcels and journeys means were off by 0.19 K with a hundredth, by 0.03 K with a
   * thousandth, by 0.01 K with two of ten thousand, but on one of 75 others, with one heat alone,
   * by 0.06 K.
   */
  private final double fits;

  /** Whether a basis grows for configurations that the model was not built for. */
  final boolean grows;

  /**
   * Numbers of the rates that the coarser models go without, one each: of the last to enter, at
   * which the basis finds most from the answers around, as it does between all rates.
   */
  final int[] leftOut;

  Fineness(
      int[] rates,
      int[] passages,
      double steady,
      double passing,
      double fits,
      boolean grows,
      int[] leftOut) {
    this.rates = rates;
    this.passages = passages;
    this.steady = steady;
    this.passing = passing;
    this.fits = fits;
    this.grows = grows;
    this.leftOut = leftOut;
  }

  /**
   * Error of an answer that a basis found for other configurations may leave.
   *
   * @param heats how many heats have answers: where there is one alone, more of its answers take
   *     little, and have no others beside them
   */
  double fits(int heats) {
    return heats == 1 ? ALONE * fits : fits;
  }

  /** Error of the answers that such a basis grows by. */
  double grown(int heats) {
    return GROWN * fits(heats);
  }

  /** Tolerance of the answers at a rate. */
  double accuracy(int rate) {
    return rate == 0 ? steady : passing;
  }
}
