package stenotherm.parcel;

import java.util.Optional;
import stenotherm.base.Checks;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.InitialState;
import stenotherm.grid.Box;
import stenotherm.material.Melting;

/**
 * A pack in its place.
 *
 * <p>A value, thus thread-safe.
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
    Checks.given("name", name);
    Checks.given("pack", pack);
    Checks.given("placement", placement);
    Checks.given("start", start);
    Checks.name("pack name", name);
    start.requireFits("start of pack '" + name + "'", pack);
  }

  /**
   * Another pack in the same place.
   *
   * @param other which pack
   * @return the changed pack
   * @throws InvalidInputException if it cannot start as this one does
   */
  public PlacedPack with(PackClass other) {
    return new PlacedPack(name, other, placement, start);
  }

  /**
   * The same pack elsewhere.
   *
   * @param other where it lies
   * @return the changed pack
   */
  public PlacedPack at(Placement other) {
    return new PlacedPack(name, pack, other, start);
  }

  /**
   * The same pack in another state.
   *
   * @param other its state at sealing
   * @return the changed pack
   * @throws InvalidInputException if it cannot start like that
   */
  public PlacedPack starting(PackStart other) {
    return new PlacedPack(name, pack, placement, other);
  }

  /**
   * Tells what of it can melt after sealing.
   *
   * @return how its contents melt; empty if they do not, or are all liquid by then
   */
  public Optional<Melting> leftToMelt() {
    return pack.contents().behaviour().fusion().filter(melting -> !start.isLiquid(melting));
  }

  Item item(Box cavity) {
    return new Item(name, placement.box(pack.size(), cavity));
  }

  /** Adds the pack's own state to that of the parcel. */
  InitialState addTo(InitialState state) {
    return oneBody()
        .map(body -> state.with(name, body.curve().temperature(body.atSealing())))
        .orElseGet(() -> start.addTo(state, name));
  }

  /** The same pack, which melts as one body where it melts. */
  PlacedPack asOneBody() {
    return with(pack.asOneBody());
  }

  /**
   * Tells how it melts as one body.
   *
   * @return how; empty if it does not melt, or part by part
   */
  public Optional<OneBody> oneBody() {
    return OneBody.of(this);
  }

  /** Whether a pack that could melt has nothing left to melt. */
  boolean liquidAtSealing() {
    return pack.contents().behaviour().fusion().filter(start::isLiquid).isPresent();
  }

  /** Temperature at sealing [K]; of a partly melted pack the middle of its melting range. */
  double startTemperature() {
    return start.temperatureOf(pack);
  }
}
