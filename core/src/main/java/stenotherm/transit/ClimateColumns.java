package stenotherm.transit;

import java.util.List;

/**
 * What a row of gases and warmers holds.
 *
 * @param rooms name of each room: empty for the air of the parcel, the names of lidded vessels
 * @param warmers names of the warmers of iron powder
 * @param heaters names of the heaters that follow a temperature, whose power is told [W]
 * @param packs names of the packs that melt as one body, whose liquid part is told [-]
 * @param occupied names of the vessels with an animal, whose water is told that it gave off [kg]
 */
record ClimateColumns(
    List<String> rooms,
    List<String> warmers,
    List<String> heaters,
    List<String> packs,
    List<String> occupied) {
  /**
   * What is told of a room, in this order: mole fractions [-] and vapour over saturation at the
   * mean temperature of its air [-].
   */
  enum OfRoom {
    OXYGEN,
    CARBON_DIOXIDE,
    HUMIDITY
  }

  /** What is told of a warmer, in this order: [W], [-], ordinal of {@code LimitedBy}, [-]. */
  enum OfWarmer {
    POWER,
    CONVERSION,
    LIMITED_BY,
    GAIN
  }

  /** Columns of all rooms, warmers, heaters, packs and animals, and that of the pressure. */
  int count() {
    return pressure() + 1;
  }

  /** Column of the pressure over that at sea level [-]. */
  int pressure() {
    return firstPack() + packs.size() + occupied.size();
  }

  private int warmerColumn(int warmer) {
    return OfRoom.values().length * rooms.size() + OfWarmer.values().length * warmer;
  }

  /** Column of a quantity of the air that a vessel's animal breathes. */
  int of(String vessel, OfRoom quantity) {
    return OfRoom.values().length * Math.max(0, rooms.indexOf(vessel)) + quantity.ordinal();
  }

  /** Column of the water that the animal in a vessel gave off. */
  int ofWater(String vessel) {
    return firstPack() + packs.size() + occupied.indexOf(vessel);
  }

  private int firstPack() {
    return warmerColumn(warmers.size()) + heaters.size();
  }

  /** Column of the liquid part of a pack; -1 if it does not melt as one body. */
  int ofLiquid(String pack) {
    int position = packs.indexOf(pack);
    return position < 0 ? -1 : firstPack() + position;
  }

  /** Column of the power of a warmer; -1 if it is prescribed. */
  int ofPower(String warmer) {
    int heater = heaters.indexOf(warmer);
    return heater < 0 ? of(warmer, OfWarmer.POWER) : warmerColumn(warmers.size()) + heater;
  }

  /** Column of a quantity of a warmer; -1 if it does not burn iron. */
  int of(String warmer, OfWarmer quantity) {
    int position = warmers.indexOf(warmer);
    return position < 0 ? -1 : warmerColumn(position) + quantity.ordinal();
  }
}
