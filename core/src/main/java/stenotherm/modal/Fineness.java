package stenotherm.modal;

/** How much a model is to know of its body. */
enum Fineness {
  /** All that the error estimate stands for. */
  WHOLE(new int[] {0, 1, 2, 3, 4, 5}, 1e-9, 1e-4, new int[] {4, 5}),
  /** Mean fields over an hour or more, to some tenths of a kelvin. */
  SCOUTING(new int[] {0, 1, 2, 5}, 1e-4, Double.POSITIVE_INFINITY, new int[0]);

  /** Numbers of the rates at which the answers to the inputs enter the basis. */
  final int[] rates;

  /** Tolerance of an answer, as part of the mean rise that the input's heat would cause. */
  final double accuracy;

  /** The same of a network that is not of those the model was built for, for a basis that fits. */
  final double fits;

  /**
   * Numbers of the rates that the coarser models go without, one each: of those of minutes, where
   * most of the error lies.
   */
  final int[] leftOut;

  Fineness(int[] rates, double accuracy, double fits, int[] leftOut) {
    this.rates = rates;
    this.accuracy = accuracy;
    this.fits = fits;
    this.leftOut = leftOut;
  }
}
