package stenotherm.transit;

import java.util.List;

/**
 * What a row of gases and warmers holds.
 *
 * @param rooms name of each room: empty for the air of the parcel, the names of lidded vessels
 * @param warmers names of the warmers of iron powder
 */
record ClimateColumns(List<String> rooms, List<String> warmers) {
  /** Oxygen, carbon dioxide, relative humidity. */
  static final int OF_ROOM = 3;

  /** Power, conversion, what limits it, gain. */
  static final int OF_WARMER = 4;

  /** Column of a quantity of the air that a vessel's animal breathes. */
  int ofRoom(String vessel, int quantity) {
    return OF_ROOM * Math.max(0, rooms.indexOf(vessel)) + quantity;
  }

  /** Column of a quantity of a warmer; -1 if it does not burn iron. */
  int ofWarmer(String warmer, int quantity) {
    int position = warmers.indexOf(warmer);
    return position < 0 ? -1 : OF_ROOM * rooms.size() + OF_WARMER * position + quantity;
  }
}
