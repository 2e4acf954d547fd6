package stenotherm.parcel;

import java.util.Optional;
import stenotherm.base.Checks;
import stenotherm.base.Radiation;
import stenotherm.base.Source;
import stenotherm.material.AirLayer;
import stenotherm.material.Material;

/**
 * What is between walls, containers, warmers and packs.
 *
 * <p>Values, thus thread-safe.
 */
public sealed interface Filling {
  /** Part of a loose fill that is air [-]: assumed; paper that is crumpled or shredded. */
  double PORES = 0.9;

  /**
   * The filling at a position in its range of conductivity.
   *
   * @param position the position [-], see {@link stenotherm.base.Range#at}
   * @return the changed filling
   */
  Filling at(double position);

  /**
   * Returns the fill.
   *
   * @return its material; nothing if there is only air
   */
  default Optional<Material> fill() {
    return Optional.empty();
  }

  /**
   * Returns the air of a cavity without fill.
   *
   * @return this filling; nothing if there is a fill
   */
  default Optional<Unfilled> air() {
    return Optional.empty();
  }

  /**
   * A fill that takes up all the room.
   *
   * @param material the fill
   */
  record Loose(Material material) implements Filling {
    /**
     * Checks the material.
     *
     * @throws stenotherm.base.InvalidInputException if it melts
     */
    public Loose {
      Checks.given("material", material);
      WallLayer.requireSolid("fill", material);
    }

    @Override
    public Loose at(double position) {
      return new Loose(material.at(position));
    }

    @Override
    public Optional<Material> fill() {
      return Optional.of(material);
    }
  }

  /**
   * Nothing but air, which convects and lets radiation through. It is taken as a solid that has the
   * resistance of an air layer across the typical gap, twice the free volume over the surface of
   * walls and contents.
   *
   * <p>Limits: between things that are much farther apart than the typical gap the real air hinders
   * heat less than this solid, and it does not carry heat from one wall along to the next. The ends
   * of the range are an air layer with all heat downward (low) and all heat upward (high). They do
   * not cover what a solid gets wrong, see {@link #error}.
   *
   * @param emissivity emissivity of the inner surfaces [-], 0.01 to 1: 0.9 for board, foam and
   *     plastics, about 0.05 for foil
   * @param position position in the range [-]; 0 for the directions that the heat takes
   */
  record Unfilled(double emissivity, double position) implements Filling {
    /** Why an animal may be off by {@link #error}. */
    public static final Source ERROR_SOURCE =
        Source.assumed(
            "a cavity of gray surfaces around one node of air kept an animal 1.4 K to 1.7 K warmer"
                + " than the solid that stands for them, 1.9 K between foil; other places of a"
                + " warmer may cool it");

    /** Between ordinary surfaces [K], {@link #ERROR_SOURCE}. */
    private static final double ORDINARY_ERROR = 1.7;

    /** Between foil [K], {@link #ERROR_SOURCE}. */
    private static final double FOIL_ERROR = 1.9;

    /** Surfaces that mirror more than they take up count as foil. */
    private static final double FOIL = 0.5;

    /**
     * Checks the emissivity.
     *
     * @throws stenotherm.base.InvalidInputException if it is not within 0.01 and 1
     */
    public Unfilled {
      Radiation.emissivity(emissivity);
    }

    /**
     * Returns how far the temperature of an animal may be off, to either side, because a solid
     * stands for air and radiation.
     *
     * @return the error [K]; for its reason see {@link #ERROR_SOURCE}
     */
    public double error() {
      return emissivity < FOIL ? FOIL_ERROR : ORDINARY_ERROR;
    }

    @Override
    public Unfilled at(double other) {
      return new Unfilled(emissivity, other);
    }

    @Override
    public Optional<Unfilled> air() {
      return Optional.of(this);
    }
  }

  /**
   * Air between ordinary surfaces of emissivity 0.9.
   *
   * @return the filling
   */
  static Unfilled none() {
    return new Unfilled(AirLayer.ORDINARY_EMISSIVITY, 0);
  }
}
