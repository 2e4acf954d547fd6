package stenotherm.study;

/** How an uncertain quantity lies in its stated range, whose ends are the positions -1 and 1. */
enum Law {
  /** Normal on either side of the nominal value; the range is the central 90 %. */
  NORMAL {
    @Override
    double position(double share, double widening) {
      return widening * NormalScores.of(LEAST + share * (1 - 2 * LEAST)) / NINETY;
    }
  },
  /** Evenly between ends that are assumed both. */
  EVEN {
    @Override
    double position(double share, double widening) {
      return widening * (2 * share - 1);
    }
  },
  /**
   * Evenly from the low end, where the effect is absent, to the high end. That it may be absent is
   * no assumption: only the high end moves if ranges are widened.
   */
  ONE_SIDED {
    @Override
    double position(double share, double widening) {
      return 2 * widening * share - 1;
    }
  },
  /** Evenly between ends that nothing can lie beyond. */
  BOUNDED {
    @Override
    double position(double share, double widening) {
      return 2 * share - 1;
    }
  };

  /** Standard deviations between the middle of a normal distribution and its 95 % point. */
  static final double NINETY = 1.6448536269514722;

  /** Positions farther than 3 are left out: so much on either side. */
  private static final double LEAST = 4.0e-7;

  /**
   * The position in the range.
   *
   * @param share share of all cases that lie lower, above 0 and below 1
   * @param widening by how much all assumed ranges are wider than stated
   */
  abstract double position(double share, double widening);
}
