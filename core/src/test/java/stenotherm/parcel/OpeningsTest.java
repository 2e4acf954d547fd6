package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.air.FoamPanel;
import stenotherm.air.Seam;
import stenotherm.air.StackFlow;
import stenotherm.air.VentHole;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Orientation;
import stenotherm.base.Range;
import stenotherm.grid.Box;
import stenotherm.material.Materials;

/** Where gases pass the walls of a box of 300 mm by 240 mm by 200 mm, and at which height. */
class OpeningsTest {
  private static final double FOAM = FoamPanel.EXPANDED_POLYSTYRENE;

  private static List<StackFlow.OpeningAtHeight> places(
      Openings openings, Walls walls, Orientation orientation) {
    Parcel parcel = Packings.plain().withWalls(walls).withOpenings(openings);
    return openings.places(parcel, orientation, FOAM);
  }

  private static List<StackFlow.OpeningAtHeight> seams(Orientation orientation) {
    return places(Openings.usual(), Packings.WALLS, orientation).stream()
        .filter(each -> each.opening() instanceof Seam)
        .toList();
  }

  /** Twelve edges, 4 (0.30 + 0.24 + 0.20) m in all, those that climb in halves; as deep as foam. */
  @Test
  void seamsRunAlongAllEdges() {
    for (Orientation orientation : List.of(Orientation.LID_UP, Orientation.X_MAX_UP)) {
      List<StackFlow.OpeningAtHeight> seams = seams(orientation);
      assertEquals(16, seams.size());
      double length = 0;
      double moment = 0;
      for (StackFlow.OpeningAtHeight each : seams) {
        Seam seam = (Seam) each.opening();
        assertEquals(Openings.CLOSED_GAP, seam.gap());
        assertEquals(0.020, seam.depth(), 1e-12);
        length += seam.length();
        moment += seam.length() * each.height();
      }
      assertEquals(4 * 0.74, length, 1e-12);
      assertEquals(0, moment, 1e-12, "as much above the middle as below");
    }
    // upright, four edges each of lid and floor; on its side, those of the ends of 240 by 200 mm
    assertEquals(2 * 0.54, above(seams(Orientation.LID_UP), 0.100), 1e-12);
    assertEquals(2 * 0.44, above(seams(Orientation.X_MAX_UP), 0.150), 1e-12);
  }

  /** Length of the seams at a height. */
  private static double above(List<StackFlow.OpeningAtHeight> seams, double height) {
    return seams.stream()
        .filter(each -> Math.abs(each.height() - height) < 1e-9)
        .mapToDouble(each -> ((Seam) each.opening()).length())
        .sum();
  }

  /** Taped seams and tight foam leave the holes, each through the whole wall at its face. */
  @Test
  void holesGoThroughTheWholeWallOfTheirFace() {
    Walls tight = Walls.uniform(List.of(new WallLayer(Materials.XPS, 0.03)));
    Openings holes =
        new Openings(0, List.of(new Vent(Face.Z_MAX, 2, 0.006), new Vent(Face.X_MIN, 1, 0.005)));
    List<StackFlow.OpeningAtHeight> upright = places(holes, tight, Orientation.LID_UP);
    assertEquals(3, upright.size());
    assertEquals(
        2,
        upright.stream()
            .filter(each -> each.opening().equals(new VentHole(0.006, 0.03)))
            .filter(each -> each.height() == 0.1)
            .count());
    assertEquals(
        1,
        upright.stream()
            .filter(each -> each.opening().equals(new VentHole(0.005, 0.03)))
            .filter(each -> each.height() == 0)
            .count());
    List<StackFlow.OpeningAtHeight> turned = places(holes, tight, Orientation.LID_DOWN);
    assertTrue(
        turned.stream()
            .filter(each -> each.opening().equals(new VentHole(0.006, 0.03)))
            .allMatch(each -> each.height() == -0.1));
  }

  /** Layers let gases through in series; one that is tight stops them. */
  @Test
  void wallsBreatheAsTheirLayersInSeries() {
    Openings taped = new Openings(0, List.of());
    List<StackFlow.OpeningAtHeight> panels = places(taped, Packings.WALLS, Orientation.LID_UP);
    assertEquals(6, panels.size());
    // 4 mm of board at 2e-6 m2/s and 20 mm of foam at 2e-7 m2/s
    double series = 0.024 / (0.004 / 2e-6 + 0.020 / 2e-7);
    double area = 0;
    for (StackFlow.OpeningAtHeight each : panels) {
      FoamPanel panel = (FoamPanel) each.opening();
      assertEquals(series, panel.oxygenDiffusivity(), 1e-15);
      assertEquals(0.024, panel.thickness(), 1e-12);
      area += panel.area();
    }
    assertEquals(
        2 * (0.252 * 0.192 + 0.252 * 0.152 + 0.192 * 0.152), area, 1e-12, "of the room inside");
    Walls foil =
        Walls.uniform(
            List.of(new WallLayer(Materials.EPS_20, 0.02), new WallLayer(Materials.PET, 0.0001)));
    assertEquals(List.of(), places(taped, foil, Orientation.LID_UP));
    assertTrue(Openings.isTight(Materials.XPS));
    assertFalse(Openings.isTight(Materials.EPS));
    assertFalse(Openings.isTight(Materials.WOOL_FELT));
  }

  /** Wider seams are no wider than a gap can be. */
  @Test
  void seamsWidenToTheWidestGap() {
    assertEquals(0.001, Openings.usual().widened(2).seamGap(), 1e-15);
    assertEquals(
        Openings.GAPS.high(), new Openings(Openings.LOOSE_GAP, List.of()).widened(2).seamGap());
    Range measured = new Range(0.9, 1.1);
    Openings own = new Openings(0.0003, List.of(), measured);
    assertEquals(measured, own.widened(0.9).gapFactors());
    assertEquals(List.of(), own.widened(0.9).vents());
  }

  /** A quarter of what is free of a wall, and no more. */
  @Test
  void holesNeedAFreePlace() {
    PlacedWarmer pad = Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped());
    for (Parcel parcel : List.of(Packings.plain(), Packings.warmed(List.of(pad)))) {
      double lid = parcel.cavity().area(Face.Z_MAX);
      double covered =
          parcel.warmers().isEmpty() ? 0 : parcel.layout().block(pad.name()).box().area(Face.Z_MAX);
      int most = (int) Math.floor((lid - covered) / 4 / (Math.PI / 4 * 0.05 * 0.05));
      parcel.withOpenings(new Openings(0, List.of(new Vent(Face.Z_MAX, most, 0.05))));
      Openings more = new Openings(0, List.of(new Vent(Face.Z_MAX, most + 1, 0.05)));
      String told =
          assertThrows(InvalidInputException.class, () -> parcel.withOpenings(more)).problem();
      assertTrue(told.contains("the holes on the lid take "), told);
    }
  }

  /** What covers a face wholly needs no place for holes that are not there. */
  @Test
  void aWallThatIsCoveredNeedsNoHoles() {
    for (double wide : new double[] {0.07, 0.11, 0.13}) {
      Dimensions half = new Dimensions(wide, 0.1, 0.06);
      Parcel parcel =
          new Parcel(
              "full",
              Box.ofSize(2 * wide + 0.06, 0.16, 0.2),
              Walls.uniform(List.of(new WallLayer(Materials.XPS, 0.03))),
              Materials.SHREDDED_PAPER,
              List.of(
                  Packings.cup("left", half, new Position(-wide / 2, 0, 0)),
                  Packings.cup("right", half, new Position(wide / 2, 0, 0))),
              List.of());
      Openings floor = new Openings(0, List.of(new Vent(Face.Z_MIN, 1, 0.005)));
      assertThrows(InvalidInputException.class, () -> parcel.withOpenings(floor));
    }
  }

  /** Who lays a pad on a hole closes it, which the model does not know. */
  @Test
  void holesBesideAWarmerAreWorthACaution() {
    PlacedWarmer pad = Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped());
    Parcel warmed = Packings.warmed(List.of(pad));
    Openings lid = new Openings(0, List.of(new Vent(Face.Z_MAX, 2, 0.006)));
    Openings left = new Openings(0, List.of(new Vent(Face.X_MIN, 2, 0.006)));
    assertTrue(
        warmed.withOpenings(lid).cautions().stream()
            .anyMatch(each -> each.startsWith("Make the holes on the lid beside '" + pad.name())),
        warmed.withOpenings(lid).cautions().toString());
    for (Parcel parcel :
        List.of(warmed, warmed.withOpenings(left), Packings.plain().withOpenings(lid))) {
      assertFalse(parcel.cautions().stream().anyMatch(each -> each.startsWith("Make the holes")));
    }
  }

  /** Openings at one height exchange next to nothing. */
  @Test
  void holesInOneFaceAloneAreWorthACaution() {
    Vent lid = new Vent(Face.Z_MAX, 2, 0.006);
    Vent front = new Vent(Face.Y_MIN, 2, 0.006);
    String caution =
        "Holes in one face alone, here the front, let little air through: it passes between holes at"
            + " two heights, such as lid and side.";
    assertTrue(cautions(front, front).contains(caution), cautions(front, front).toString());
    for (List<String> others : List.of(cautions(lid, front), cautions())) {
      assertFalse(others.stream().anyMatch(each -> each.startsWith("Holes in one face")));
    }
  }

  private static List<String> cautions(Vent... vents) {
    return Packings.plain()
        .withOpenings(new Openings(Openings.CLOSED_GAP, List.of(vents)))
        .cautions();
  }

  @Test
  void badGapsAreRefused() {
    for (double gap : new double[] {-1e-6, 0.0021, Double.NaN}) {
      assertEquals(
          "gap of the seams",
          assertThrows(InvalidInputException.class, () -> new Openings(gap, List.of())).field());
    }
    for (Range factors : List.of(new Range(0, 2), new Range(1.1, 2), new Range(0.4, 0.9))) {
      assertThrows(InvalidInputException.class, () -> new Openings(0.0005, List.of(), factors));
    }
  }
}
