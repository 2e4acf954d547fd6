package stenotherm.validation.cases;

/**
 * The unit of a reference value, and how it follows from SI: shown = SI / divisor - offset.
 *
 * @param label the unit as reports show it
 * @param divisor SI value of one unit, above 0; for heat flows per metre or per area, the length or
 *     the area
 * @param offset where the scale of the unit starts
 */
record ReferenceUnit(String label, double divisor, double offset) {
  static final ReferenceUnit KELVIN = new ReferenceUnit("K", 1, 0);
  static final ReferenceUnit CELSIUS = new ReferenceUnit("°C", 1, 273.15);
  static final ReferenceUnit WATT = new ReferenceUnit("W", 1, 0);

  /** A value in this unit. */
  double shown(double si) {
    return si / divisor - offset;
  }

  /** A difference in this unit. */
  double shownDifference(double si) {
    return si / divisor;
  }

  /** The unit of differences: kelvin for temperatures. */
  String differenceLabel() {
    return this.equals(CELSIUS) ? "K" : label;
  }
}
