package stenotherm.parcel;

import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.InitialState;
import stenotherm.grid.Box;
import stenotherm.material.Behaviour;

/**
 * A pack in its place.
 *
 * <p>Experimental. A value, thus thread-safe.
 *
 * @param name name, unique in a parcel
 * @param pack which pack
 * @param placement where it lies
 * @param start its state at sealing
 */
public record PlacedPack(String name, PackClass pack, Placement placement, PackStart start) {
  /**
   * Checks name and start.
   *
   * @throws InvalidInputException if the name is blank, a pack that does not melt is said to be
   *     partly melted, or the start temperature lies within the melting range
   */
  public PlacedPack {
    Checks.name("pack name", name);
    if (start instanceof PackStart.PartlyMelted && !pack.melts()) {
      throw new InvalidInputException(
          "start of pack '" + name + "'",
          "'" + pack.contents().name() + "' does not melt; give its temperature");
    }
    if (start instanceof PackStart.At at
        && pack.contents().behaviour() instanceof Behaviour.Melts melts
        && melts.melting().range().contains(at.temperature())) {
      throw new InvalidInputException(
          "start of pack '" + name + "'",
          Checks.show(at.temperature(), "K")
              + " is where '"
              + pack.contents().name()
              + "' melts; say which part of it is liquid");
    }
  }

  Item item(Box cavity) {
    return new Item(name, placement.box(pack.size(), cavity));
  }

  /** Adds the pack's own state to that of the parcel. */
  InitialState addTo(InitialState state) {
    if (start instanceof PackStart.PartlyMelted partly) {
      return state.partlyMelted(name, partly.liquidFraction());
    }
    return state.with(name, ((PackStart.At) start).temperature());
  }

  /** Whether a pack that could melt has nothing left to melt. */
  boolean liquidAtSealing() {
    if (!(pack.contents().behaviour() instanceof Behaviour.Melts melts)) {
      return false;
    }
    return start instanceof PackStart.At at
        ? at.temperature() > melts.melting().range().high()
        : ((PackStart.PartlyMelted) start).liquidFraction() == 1;
  }

  /** Temperature at sealing [K]; of a partly melted pack the middle of its melting range. */
  double startTemperature() {
    if (start instanceof PackStart.At at) {
      return at.temperature();
    }
    var range = ((Behaviour.Melts) pack.contents().behaviour()).melting().range();
    return (range.low() + range.high()) / 2;
  }
}
