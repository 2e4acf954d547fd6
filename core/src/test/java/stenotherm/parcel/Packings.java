package stenotherm.parcel;

import java.util.List;
import stenotherm.animal.AnimalBody;
import stenotherm.animal.Animals;
import stenotherm.animal.Proportions;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.grid.Box;
import stenotherm.grid.MeshControl;
import stenotherm.material.Materials;
import stenotherm.warmer.PrescribedPower;
import stenotherm.warmer.WarmerClass;

/** Small packings that several tests use. */
public final class Packings {
  /** 24 g of tissue, 40 mm long, 30 mm wide and 20 mm high. */
  public static final AnimalBody BODY = new AnimalBody(0.024, new Proportions(4, 3, 2));

  /** 4 mm of board around 20 mm of foam. */
  public static final Walls WALLS =
      Walls.uniform(
          List.of(
              new WallLayer(Materials.CORRUGATED_BOARD, 0.004),
              new WallLayer(Materials.EPS_20, 0.020)));

  /** 300 mm by 240 mm by 200 mm outside. */
  public static final Box OUTER = Box.ofSize(0.30, 0.24, 0.20);

  /** 0.4 mm of polyester. */
  public static final WallLayer CUP_WALL = new WallLayer(Materials.PET, 0.0004);

  /**
   * As few cells as the faces of the blocks allow, about 5,500 for the packings here. A mesh graded
   * at the usual growth has seven times as many beside the thin layers, whatever its largest cell.
   */
  public static final MeshControl FEW_CELLS = new MeshControl(0.08, 0.06, 16);

  /**
   * Some 16,000 cells. Those of meshes two and four times as wide, from which a verdict tells its
   * error, are still fewer: 8,000 and 6,000.
   */
  public static final MeshControl COARSE = new MeshControl(0.06, 0.04, 2);

  private Packings() {}

  public static Container cup(String name, Dimensions inner, Position position) {
    return new Container(
        name,
        new Vessel.BoxCup(inner, CUP_WALL),
        position,
        Bedding.dampTowel(0.005),
        new Occupant(Animals.CORN_SNAKE, BODY));
  }

  /** A cup of 100 mm by 80 mm by 60 mm with a corn snake. */
  public static Container cup(String name, Position position) {
    return cup(name, new Dimensions(0.10, 0.08, 0.06), position);
  }

  public static Parcel parcel(List<Container> cups, List<PlacedWarmer> warmers) {
    return new Parcel("sample", OUTER, WALLS, Materials.SHREDDED_PAPER, cups, warmers);
  }

  /** One cup in the middle of the floor. */
  public static Parcel plain() {
    return warmed(List.of());
  }

  /** One cup in the middle of the floor and warmers. */
  public static Parcel warmed(List<PlacedWarmer> warmers) {
    return parcel(List.of(cup("cup", Position.MIDDLE_OF_FLOOR)), warmers);
  }

  /**
   * Conducts heat and does nothing else: an empty, dry cup and a pad under the lid, all seams
   * taped. Its temperatures have closed forms; the pad stands for what lies inside.
   *
   * @param power steady power of the pad [W]
   */
  public static Parcel still(double power) {
    return parcel(
            List.of(
                Container.empty(
                    "cup",
                    new Vessel.BoxCup(new Dimensions(0.10, 0.08, 0.06), CUP_WALL),
                    Position.MIDDLE_OF_FLOOR)),
            List.of(pad(steady(power), Face.Z_MAX, Mounting.taped())))
        .withOpenings(new Openings(0, List.of()));
  }

  /** A pad of 90 mm by 55 mm by 6 mm with a steady power [W]. */
  public static WarmerClass steady(double power) {
    return new WarmerClass(
        "steady pad",
        new WarmerClass.PadSize(0.090, 0.055, 0.006),
        0.0386,
        new PrescribedPower(TimeFunction.constant(power)),
        new Range(0.75, 1.25),
        Source.assumed("made up"));
  }

  public static PlacedWarmer pad(WarmerClass warmer, Face face, Mounting mounting) {
    return new PlacedWarmer("pad", warmer, face, mounting, 0);
  }
}
