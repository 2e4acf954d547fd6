package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stenotherm.base.Face;
import stenotherm.base.HeatDirection;
import stenotherm.base.Orientation;
import stenotherm.base.Source;
import stenotherm.grid.Block;
import stenotherm.grid.MeshControl;
import stenotherm.material.AirLayer;
import stenotherm.material.Material;
import stenotherm.material.Materials;

class FillingTest {
  private static final double MEAN = 288.15;
  private static final PlacedWarmer PAD =
      Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped());

  private static Parcel with(Filling filling, List<PlacedWarmer> warmers) {
    return new Parcel(
        "sample",
        Packings.OUTER,
        Packings.WALLS,
        filling,
        List.of(Packings.cup("cup", Position.MIDDLE_OF_FLOOR)),
        warmers,
        List.of());
  }

  private static double conductivity(Parcel parcel, Orientation orientation, String block) {
    return Objects.requireNonNull(parcel.conductivities(orientation, MEAN).get(block));
  }

  private static double ofFill(Parcel parcel) {
    return parcel.layout().blocks().stream()
        .filter(block -> block.name().equals("fill"))
        .map(block -> ((Block.Solid) block).material())
        .mapToDouble(Material::conductivity)
        .sum();
  }

  /** Cavity 252 x 192 x 152 mm around a cup of 100 x 80 x 60 mm. */
  @Test
  void airHasTheResistanceOfTheTypicalGap() {
    double volume = 0.252 * 0.192 * 0.152 - 0.1 * 0.08 * 0.06;
    double surface =
        2 * (0.252 * 0.192 + 0.252 * 0.152 + 0.192 * 0.152)
            + 2 * (0.1 * 0.08 + 0.1 * 0.06 + 0.08 * 0.06);
    double gap = 2 * volume / surface;
    assertEquals(
        AirLayer.ordinary(HeatDirection.HORIZONTAL, gap).effectiveConductivity(MEAN),
        ofFill(with(Filling.none(), List.of())),
        1e-12);
    assertTrue(gap > 0.05 && gap < 0.06);
  }

  @Test
  void withoutFillHeatPassesFaster() {
    MeshControl mesh = MeshControl.graded(0.03, 0.015);
    double[] conditions = {295.15, 275.15, 2 * 3600};
    double filled = Runs.mean(Packings.plain(), "cup animal", mesh, conditions);
    double bare = Runs.mean(with(Filling.none(), List.of()), "cup animal", mesh, conditions);
    Filling foiled = new Filling.Unfilled(0.05, 0);
    double foil = Runs.mean(with(foiled, List.of()), "cup animal", mesh, conditions);
    assertTrue(bare + 1 < filled, bare + " < " + filled);
    assertTrue(bare + 0.2 < foil, bare + " < " + foil);
  }

  @Test
  void aCavityWithoutFillSaysHowFarItsAnimalMayBeOff() {
    String caution = with(Filling.none(), List.of()).cautions().get(0);
    assertTrue(caution.contains("may be 1.7 K warmer or colder"), caution);
    String foil = with(new Filling.Unfilled(0.05, 0), List.of()).cautions().get(0);
    assertTrue(foil.contains("may be 1.9 K warmer or colder"), foil);
    assertEquals(List.of(), Packings.plain().cautions());
  }

  @Test
  void theEndsOfAirAreHeatDownwardAndUpward() {
    Parcel parcel = with(Filling.none(), List.of());
    double low = ofFill(parcel.at(0, -1));
    double high = ofFill(parcel.at(0, 1));
    assertTrue(low < ofFill(parcel) && ofFill(parcel) < high);
    double between = ofFill(parcel.at(0, 0.5));
    assertTrue(ofFill(parcel) < between && between < high);
    for (Orientation orientation : Orientation.values()) {
      for (PlacedWarmer pad : List.of(PAD)) {
        double nominal = conductivity(with(Filling.none(), List.of(pad)), orientation, "fill");
        double least = conductivity(with(Filling.none().at(-1), List.of(pad)), orientation, "fill");
        double most = conductivity(with(Filling.none().at(1), List.of(pad)), orientation, "fill");
        assertTrue(least <= nominal && nominal <= most, orientation.name());
      }
    }
  }

  @Test
  void aWarmerBelowMovesMoreAirThanOneAbove() {
    Parcel parcel = with(Filling.none(), List.of(PAD));
    for (String block : List.of("fill", "cup air")) {
      double above = conductivity(parcel, Orientation.LID_UP, block);
      double beside = conductivity(parcel, Orientation.X_MAX_UP, block);
      double below = conductivity(parcel, Orientation.LID_DOWN, block);
      assertTrue(above < beside && beside < below, block);
    }
    Parcel filled = Packings.warmed(List.of(PAD));
    assertEquals(Set.of("cup air"), filled.conductivities(Orientation.LID_UP, MEAN).keySet());
  }

  /** Before it is opened and once it is spent a warmer sends no heat downward. */
  private static double ofBlock(Map<String, Double> conductivities, String block) {
    return Objects.requireNonNull(conductivities.get(block));
  }

  @Test
  void withoutWarmerOrPackTheLayoutsOwnValuesHold() {
    Parcel parcel = with(Filling.none(), List.of());
    for (Orientation orientation : Orientation.values()) {
      Map<String, Double> air = parcel.conductivities(orientation, MEAN);
      assertEquals(ofFill(parcel), Objects.requireNonNull(air.get("fill")), 1e-12);
    }
    assertTrue(
        conductivity(parcel, Orientation.LID_UP, "fill")
            < Objects.requireNonNull(
                parcel.conductivities(Orientation.LID_UP, 313.15).get("fill")));
  }

  @Test
  void aColdPackAboveMovesAirLikeAWarmerBelow() {
    PackClass ice =
        new PackClass(
            "ice",
            Materials.ICE_PACK,
            new Dimensions(0.09, 0.055, 0.006),
            0.028,
            0,
            Source.assumed("made up"));
    PlacedPack cold =
        new PlacedPack(
            "pack",
            ice,
            Placement.onFace(Face.Z_MAX, Mounting.taped()),
            new PackStart.PartlyMelted(0));
    Parcel parcel = with(Filling.none(), List.of()).withPacks(List.of(cold));
    assertEquals(
        conductivity(with(Filling.none(), List.of(PAD)), Orientation.LID_DOWN, "fill"),
        conductivity(parcel, Orientation.LID_UP, "fill"),
        1e-12);
  }

  @Test
  void aFillConvectsIfItIsWarmerBelow() {
    Parcel loose = with(new Filling.Loose(Materials.LOOSE_NEWSPAPER), List.of());
    List<String> warnings = loose.convectionWarnings(Orientation.LID_UP, 50, MEAN);
    assertEquals(1, warnings.size());
    assertTrue(
        warnings
            .get(0)
            .startsWith(
                "The loosely crumpled newspaper is warmer below than above: air will seep through it in"
                    + " circles and carry more heat than computed (50.0 K over 152 mm; Darcy-Rayleigh"
                    + " number "),
        warnings.get(0));
    assertEquals(2, loose.convectionWarnings(Orientation.LID_UP, 100, MEAN).size());
    assertEquals(List.of(), loose.convectionWarnings(Orientation.LID_UP, -60, MEAN));
    assertEquals(List.of(), loose.convectionWarnings(Orientation.LID_UP, 0.1, MEAN));
    Parcel tight = with(new Filling.Loose(Materials.LOOSE_CELLULOSE), List.of());
    assertEquals(List.of(), tight.convectionWarnings(Orientation.LID_UP, 30, MEAN));
    Parcel unknown = with(new Filling.Loose(Materials.EPS_20), List.of());
    assertEquals(
        List.of(
            "The EPS 20 is warmer below than above: whether its air moves is not known, as its voids"
                + " are not stated (30.0 K over 252 mm)."),
        unknown.convectionWarnings(Orientation.X_MIN_UP, 30, MEAN));
    assertEquals(
        List.of(),
        with(Filling.none(), List.of()).convectionWarnings(Orientation.LID_UP, 30, MEAN));
  }
}
