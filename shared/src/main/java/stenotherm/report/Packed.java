package stenotherm.report;

import stenotherm.parcel.Parcel;

/**
 * A packing to judge.
 *
 * @param parcel the packing
 * @param stripped whether warmers that the scenario gives it were left out
 */
record Packed(Parcel parcel, boolean stripped) {
  /** The packing's name and, if it is judged both ways, whether a warmer is in it. */
  String label() {
    if (stripped) {
      return parcel.name() + ", no warmer";
    }
    return switch (parcel.warmers().size()) {
      case 0 -> parcel.name();
      case 1 -> parcel.name() + ", with warmer";
      default -> parcel.name() + ", with warmers";
    };
  }
}
