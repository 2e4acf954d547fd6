package stenotherm.parcel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stenotherm.air.FoamPanel;
import stenotherm.air.Opening;
import stenotherm.air.Seam;
import stenotherm.air.StackFlow;
import stenotherm.air.VentHole;
import stenotherm.base.Axis;
import stenotherm.base.Checks;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.grid.Box;
import stenotherm.material.Material;
import stenotherm.material.Materials;

/**
 * Where air and gases pass the walls of a parcel: the seams along its twelve edges, holes, and the
 * walls themselves as far as they let gases through.
 *
 * <p>Limits: a seam is as deep as the innermost layer, for board around foam is no tighter than its
 * flaps.
 *
 * <p>A value, thus thread-safe.
 *
 * @param seamGap width of the gap along the edges [m], 0 if all seams are taped, at most 2 mm
 * @param vents holes; may be empty
 * @param gapFactors range of what multiplies the gap, with 1 in it: {@link #GAP_FACTORS} unless the
 *     gap was measured
 */
public record Openings(double seamGap, List<Vent> vents, Range gapFactors) {
  /** Gap between panels or under a lid that fit and are not taped [m], {@link #GAP_SOURCE}. */
  public static final double CLOSED_GAP = 0.0005;

  /** Gap of panels that fit badly or a lid that lies on loosely [m], {@link #GAP_SOURCE}. */
  public static final double LOOSE_GAP = 0.0015;

  /**
   * What multiplies a gap that was not measured: flow goes with its third power, {@link
   * #GAP_SOURCE}.
   */
  public static final Range GAP_FACTORS = new Range(0.4, 2);

  /** Where the gaps come from. */
  public static final Source GAP_SOURCE =
      Source.assumed(
          "no leakage of a carton was found published: 0.5 mm between panels that fit, 1.5 mm where"
              + " they fit badly, 0.4 to 2 times as wide");

  /** Possible gaps [m]. */
  public static final Range GAPS = new Range(0, 0.002);

  /**
   * Effective diffusivity of oxygen in walls that breathe [m2/s]: expanded polystyrene see {@link
   * FoamPanel#SOURCE}; the others from the vapour resistance factors of ISO 10456 (from memory),
   * free air over 10 for board and paper, 1 for mineral wool and felt, 50 for wood, 10 for cork.
   * What is not listed counts as tight.
   */
  private static final Map<Material, Double> BREATHING =
      Map.ofEntries(
          Map.entry(Materials.CORRUGATED_BOARD, 2e-6),
          Map.entry(Materials.DOUBLE_WALL_BOARD, 2e-6),
          Map.entry(Materials.PAPERBOARD, 2e-6),
          Map.entry(Materials.PAPER, 2e-6),
          Map.entry(Materials.FIBREBOARD, 2e-6),
          Map.entry(Materials.CORK, 2e-6),
          Map.entry(Materials.PLYWOOD, 4e-7),
          Map.entry(Materials.SOFTWOOD, 4e-7),
          Map.entry(Materials.HARDWOOD, 4e-7),
          Map.entry(Materials.MINERAL_WOOL, 2e-5),
          Map.entry(Materials.WOOL_FELT, 2e-5),
          Map.entry(Materials.COTTON_CLOTH, 2e-5));

  private static final List<Material> POLYSTYRENE =
      List.of(
          Materials.EPS,
          Materials.EPS_12,
          Materials.EPS_15,
          Materials.EPS_20,
          Materials.EPS_25,
          Materials.EPS_30,
          Materials.GRAPHITE_EPS);

  /**
   * Checks the gap.
   *
   * @throws InvalidInputException if it is out of its range, or the range is not above 0 around 1
   */
  public Openings {
    Checks.within(
        "gap of the seams",
        seamGap,
        GAPS,
        "m",
        "Panels that fit leave about half a millimetre, 0.0005 m.");
    vents = List.copyOf(Checks.given("vents", vents));
    Checks.given("gap factors", gapFactors);
    if (!(gapFactors.low() > 0) || !gapFactors.contains(1)) {
      throw new InvalidInputException(
          "range of the gap of the seams", "must lie above 0 and hold the gap itself");
    }
  }

  /**
   * Openings whose gap was not measured.
   *
   * @param seamGap width of the gap along the edges [m], 0 if all seams are taped, at most 2 mm
   * @param vents holes; may be empty
   * @throws InvalidInputException if the gap is out of its range
   */
  public Openings(double seamGap, List<Vent> vents) {
    this(seamGap, vents, GAP_FACTORS);
  }

  /**
   * Panels that fit and are not taped along their edges, and no holes.
   *
   * @return the openings
   */
  public static Openings usual() {
    return new Openings(CLOSED_GAP, List.of());
  }

  /**
   * The same openings and more holes.
   *
   * @param more holes through one face
   * @return the openings; seams stay as they are
   */
  public Openings with(Vent more) {
    List<Vent> all = new ArrayList<>(vents);
    all.add(Checks.given("holes", more));
    return new Openings(seamGap, all, gapFactors);
  }

  /** Area of all holes on a face [m2]. */
  double holeArea(Face face) {
    return vents.stream().filter(vent -> vent.face() == face).mapToDouble(Vent::area).sum();
  }

  /**
   * The same openings with wider or narrower seams.
   *
   * @param seams factor on the gap of the seams [-]
   */
  Openings widened(double seams) {
    return new Openings(Math.min(GAPS.high(), seamGap * seams), vents, gapFactors);
  }

  /**
   * What lets gases through, each at its height above the middle of the parcel.
   *
   * @param parcel the parcel that has these openings
   * @param orientation how it lies
   * @param foam effective diffusivity of oxygen in expanded polystyrene [m2/s]
   */
  List<StackFlow.OpeningAtHeight> places(Parcel parcel, Orientation orientation, double foam) {
    List<StackFlow.OpeningAtHeight> all = new ArrayList<>();
    Box outer = parcel.outer();
    Face up = orientation.up();
    for (Face face : Face.values()) {
      List<WallLayer> layers = parcel.walls().layersOf(face);
      double resistance = 0;
      double thickness = 0;
      for (WallLayer layer : layers) {
        resistance += layer.thickness() / diffusivity(layer.material(), foam);
        thickness += layer.thickness();
      }
      double height = height(outer, face, up);
      if (Double.isFinite(resistance) && thickness > 0) {
        all.add(
            new StackFlow.OpeningAtHeight(
                new FoamPanel(parcel.cavity().area(face), thickness, thickness / resistance),
                height));
      }
      for (Vent vent : vents) {
        if (vent.face() == face) {
          Opening hole = new VentHole(vent.diameter(), thickness);
          for (int n = 0; n < vent.count(); n++) {
            all.add(new StackFlow.OpeningAtHeight(hole, height));
          }
        }
      }
    }
    if (seamGap > 0) {
      addSeams(parcel, up, all);
    }
    return all;
  }

  /** The twelve edges at which walls meet, those that climb in two halves. */
  private void addSeams(Parcel parcel, Face up, List<StackFlow.OpeningAtHeight> all) {
    for (Face one : Face.values()) {
      for (Face other : Face.values()) {
        if (one.axis().compareTo(other.axis()) >= 0) {
          continue;
        }
        Axis along = third(one.axis(), other.axis());
        double length = parcel.outer().size(along);
        double depth = Math.max(innermost(parcel, one), 2 * seamGap);
        if (along == up.axis()) {
          Seam half = new Seam(seamGap, length / 2, depth);
          all.add(new StackFlow.OpeningAtHeight(half, length / 4));
          all.add(new StackFlow.OpeningAtHeight(half, -length / 4));
        } else {
          double height = height(parcel.outer(), one, up) + height(parcel.outer(), other, up);
          all.add(new StackFlow.OpeningAtHeight(new Seam(seamGap, length, depth), height));
        }
      }
    }
  }

  private static Axis third(Axis one, Axis other) {
    return Axis.values()[3 - one.ordinal() - other.ordinal()];
  }

  /** Thickness of the innermost layer of a wall, the foam if there is any [m]. */
  private static double innermost(Parcel parcel, Face face) {
    List<WallLayer> layers = parcel.walls().layersOf(face);
    return layers.get(layers.size() - 1).thickness();
  }

  /** Height of the middle of a face over the middle of the box. */
  private static double height(Box outer, Face face, Face up) {
    if (face.axis() != up.axis()) {
      return 0;
    }
    return (face == up ? 1 : -1) * outer.size(up.axis()) / 2;
  }

  private static double diffusivity(Material material, double foam) {
    String name = material.name();
    if (POLYSTYRENE.stream().anyMatch(each -> each.name().equals(name))) {
      return foam;
    }
    return BREATHING.entrySet().stream()
        .filter(each -> each.getKey().name().equals(name))
        .mapToDouble(Map.Entry::getValue)
        .findFirst()
        .orElse(0);
  }

  /**
   * Tells whether a wall of this material keeps oxygen out altogether.
   *
   * @param material the material
   * @return true for dense foams, plastics and whatever is not known to breathe
   */
  public static boolean isTight(Material material) {
    return diffusivity(material, FoamPanel.EXPANDED_POLYSTYRENE) == 0;
  }
}
