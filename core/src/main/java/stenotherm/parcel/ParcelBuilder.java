package stenotherm.parcel;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Length;
import stenotherm.base.Times;
import stenotherm.grid.Box;
import stenotherm.material.Material;
import stenotherm.warmer.WarmerClass;

/**
 * Packs a parcel piece by piece. Without a fill its hollows hold air; its flaps are closed and not
 * taped unless {@linkplain #openings said otherwise}.
 *
 * <p>Experimental. Not thread-safe.
 */
public final class ParcelBuilder {
  private final String name;
  private final Box outer;
  private final List<WallLayer> layers = new ArrayList<>();
  private final List<Container> containers = new ArrayList<>();
  private final List<PlacedWarmer> warmers = new ArrayList<>();
  private final List<PlacedPack> packs = new ArrayList<>();
  private Filling filling = Filling.none();
  private Openings openings = Openings.usual();

  private ParcelBuilder(String name, Box outer) {
    this.name = Checks.given("name", name);
    this.outer = outer;
  }

  /**
   * Starts with an empty box.
   *
   * @param name name of the packing
   * @param length outer length, along x
   * @param width outer width, along y
   * @param height outer height, along z
   * @return a builder
   * @throws InvalidInputException if an extent is not above 0
   */
  public static ParcelBuilder box(String name, Length length, Length width, Length height) {
    return new ParcelBuilder(
        name,
        Box.ofSize(extent("length", length), extent("width", width), extent("height", height)));
  }

  private static double extent(String field, Length given) {
    return Checks.extent(field, Checks.given(field, given).metres());
  }

  /**
   * Adds a layer to all six faces, inside those added before.
   *
   * @param material what it is made of
   * @param thickness how thick
   * @return this builder
   * @throws InvalidInputException if the thickness is not above 0
   */
  public ParcelBuilder layer(Material material, Length thickness) {
    layers.add(new WallLayer(material, Checks.given("thickness", thickness).metres()));
    return this;
  }

  /**
   * Fills the room between walls, cups and warmers.
   *
   * @param fill with what
   * @return this builder
   */
  public ParcelBuilder fill(Material fill) {
    filling = new Filling.Loose(fill);
    return this;
  }

  /**
   * Adds a cup, a bag or a vial.
   *
   * @param container with all that is in it
   * @return this builder
   */
  public ParcelBuilder with(Container container) {
    containers.add(Checks.given("container", container));
    return this;
  }

  /**
   * Tapes a warmer to the middle of an inner face, its film free.
   *
   * @param warmer its name
   * @param kind which
   * @param face where
   * @param opened when it was opened, in time since sealing; negative if before
   * @return this builder
   * @throws InvalidInputException if the name is blank
   */
  public ParcelBuilder warmer(String warmer, WarmerClass kind, Face face, Duration opened) {
    return warmer(warmer, kind, face, opened, FilmCover.FREE);
  }

  /**
   * Tapes a warmer to the middle of an inner face.
   *
   * @param warmer its name
   * @param kind which
   * @param face where
   * @param opened when it was opened, in time since sealing; negative if before
   * @param cover what covers the film through which it takes its air
   * @return this builder
   * @throws InvalidInputException if the name is blank
   */
  public ParcelBuilder warmer(
      String warmer, WarmerClass kind, Face face, Duration opened, FilmCover cover) {
    double seconds = Times.seconds(Checks.given("opened", opened));
    Placement placement = Placement.onFace(face, Mounting.taped());
    return with(new PlacedWarmer(warmer, kind, placement, seconds, cover));
  }

  /**
   * Adds a warmer in its place.
   *
   * @param warmer the warmer
   * @return this builder
   */
  public ParcelBuilder with(PlacedWarmer warmer) {
    warmers.add(Checks.given("warmer", warmer));
    return this;
  }

  /**
   * Adds a cold pack or another one that stores heat.
   *
   * @param pack the pack in its place
   * @return this builder
   */
  public ParcelBuilder with(PlacedPack pack) {
    packs.add(Checks.given("pack", pack));
    return this;
  }

  /**
   * Adds holes in a face, beside what lies against it. Other holes and the seams stay as they are.
   *
   * @param face through which
   * @param count how many, 1 to 1000
   * @param diameter diameter of each, 0.5 mm to 50 mm
   * @return this builder
   * @throws InvalidInputException if a number is out of its range
   */
  public ParcelBuilder holes(Face face, int count, Length diameter) {
    openings = openings.with(new Vent(face, count, Checks.given("diameter", diameter).metres()));
    return this;
  }

  /**
   * Says where air passes the walls, instead of what was said before.
   *
   * @param other all holes, and how the seams are closed
   * @return this builder
   */
  public ParcelBuilder openings(Openings other) {
    openings = Checks.given("openings", other);
    return this;
  }

  /**
   * Returns the parcel.
   *
   * @return the parcel
   * @throws InvalidInputException if there is no layer or no container, or things do not fit; the
   *     message names both and gives by how many millimetres
   */
  public Parcel build() {
    return new Parcel(
        name, outer, Walls.uniform(layers), filling, containers, warmers, packs, openings);
  }
}
