package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.conduction.ThinResistance;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.RectilinearGrid;
import stenotherm.material.Material;
import stenotherm.material.Materials;

class WallsTest {
  private static final Joints PANELS = new Joints(List.of(Axis.X, Axis.Z, Axis.Y), 1, 0.001);

  private static Parcel parcel(Walls walls) {
    return new Parcel(
        "sample",
        Packings.OUTER,
        walls,
        Materials.SHREDDED_PAPER,
        List.of(Packings.cup("cup", Position.MIDDLE_OF_FLOOR)),
        List.of());
  }

  @Test
  void panelsHaveAResistanceAtEveryEdge() {
    Walls walls = Packings.WALLS.with(PANELS);
    List<ThinResistance> joints = walls.jointResistances();
    assertEquals(12, joints.size());
    // 1 mm of air: 0.025/0.001 conducts, and about 4.4 W/(m2 K) radiate
    assertEquals(1 / 29.4, joints.get(0).resistance(), 0.001);
    assertTrue(
        joints.contains(ThinResistance.between("wall 2 xMin", "wall 2 zMax", PANELS.resistance())));
    assertEquals(List.of(), Packings.WALLS.jointResistances());
    // the outermost shell stays in one piece
    assertEquals("wall 1", parcel(walls).layout().blocks().get(0).name());
    assertEquals("wall 2 yMax", walls.innermost(Face.Y_MAX));
    parcel(walls).network(MeshControl.graded(0.04, 0.02));
  }

  /** By the panels' order x sides reach over all others here. */
  @Test
  void whoReachesOverWhomIsSaid() {
    Layout layout = parcel(Packings.WALLS.with(PANELS)).layout();
    List<String> names = layout.blocks().stream().map(Block::name).toList();
    assertTrue(names.indexOf("wall 2 xMin") > names.indexOf("wall 2 zMax"));
    assertTrue(names.indexOf("wall 2 zMax") > names.indexOf("wall 2 yMax"));
    assertThrows(
        InvalidInputException.class, () -> new Joints(List.of(Axis.X, Axis.X, Axis.Y), 0, 0));
    assertThrows(InvalidInputException.class, () -> new Joints(List.of(), 0, 0));
    assertThrows(InvalidInputException.class, () -> new Joints(List.of(Axis.values()), 0, 0.02));
    assertThrows(InvalidInputException.class, () -> new Joints(List.of(Axis.values()), -1, 0));
  }

  /** Joints hinder heat along the walls, so they change the temperature inside by little. */
  @Test
  void jointsMatterLittle() {
    MeshControl mesh = MeshControl.graded(0.02, 0.01);
    double[] conditions = {295.15, 275.15, 4 * 3600};
    double whole = Runs.mean(parcel(Packings.WALLS), "cup animal", mesh, conditions);
    double jointed = Runs.mean(parcel(Packings.WALLS.with(PANELS)), "cup animal", mesh, conditions);
    assertEquals(whole, jointed, 0.1);
    assertTrue(whole != jointed);
  }

  /** What the grid paints has the mass that the walls say, whatever their layers and order. */
  @Property(seed = "4101", tries = 60)
  void massIsThatOfThePaintedPanels(@ForAll long seed) {
    Random random = new Random(seed);
    Material[] kinds = {Materials.EPS_20, Materials.XPS, Materials.CORRUGATED_BOARD};
    Map<Face, List<WallLayer>> layers = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      layers.put(
          face,
          random
              .ints(1 + random.nextInt(2), 0, kinds.length)
              .mapToObj(k -> new WallLayer(kinds[k], 0.002 + 0.02 * random.nextDouble()))
              .toList());
    }
    List<Axis> order = new java.util.ArrayList<>(List.of(Axis.values()));
    java.util.Collections.shuffle(order, random);
    double gap = random.nextBoolean() ? 0 : 0.001;
    Walls walls = new Walls(layers, new Joints(order, random.nextInt(2), gap));
    Layout layout = parcel(walls).layout();
    RectilinearGrid grid =
        RectilinearGrid.of(layout, MeshControl.graded(0.06, 0.03), java.util.Set.of());
    double painted = 0;
    for (int cell = 0; cell < grid.cellCount(); cell++) {
      if (layout.blocks().get(grid.blockOf(cell)) instanceof Block.Solid block
          && block.name().startsWith("wall")) {
        painted += block.material().density() * grid.volume(cell);
      }
    }
    assertEquals(painted, walls.mass(Packings.OUTER), 1e-9 * painted);
  }

  @Test
  void theOuterBoxFollowsFromTheInnerSize() {
    Walls walls = Packings.WALLS.with(Face.Z_MAX, List.of(new WallLayer(Materials.PIR, 0.030)));
    Dimensions inner = new Dimensions(0.2, 0.15, 0.1);
    Box outer = walls.around(inner);
    Box cavity = walls.inside(outer, walls.shells());
    for (Axis axis : Axis.values()) {
      assertEquals(inner.along(axis), cavity.size(axis), 1e-12);
    }
    assertEquals(0.1 + 0.024 + 0.030, outer.size(Axis.Z), 1e-12);
  }

  /** 300 mm by 240 mm by 20 mm: 0.004 + 0.008 0.020 1.08 / 0.072 = 0.0064 W/(m K). */
  @Test
  void aVacuumPanelConductsAtItsEdges() {
    Material panel = VacuumPanel.METALLISED_FILM.layer(0.3, 0.24, 0.02).material();
    assertEquals(0.0064, panel.conductivity(), 1e-12);
    assertEquals(0.0064, panel.conductivityRange().low(), 1e-12);
    assertEquals(0.0224, panel.conductivityRange().high(), 1e-12);
    // whole panels are said to have 0.006 to 0.008 W/(m K)
    assertTrue(Materials.VACUUM_PANEL.conductivityRange().contains(panel.conductivity()));
    double small = VacuumPanel.METALLISED_FILM.layer(0.15, 0.12, 0.02).material().conductivity();
    assertEquals(2 * (0.0064 - 0.004), small - 0.004, 1e-12);
    assertTrue(
        VacuumPanel.ALUMINIUM_FOIL.layer(0.3, 0.24, 0.02).material().conductivity() > 0.0064);
    assertThrows(
        InvalidInputException.class, () -> VacuumPanel.METALLISED_FILM.layer(0.3, 0, 0.02));
  }

  @Test
  void vacuumPanelsLineABox() {
    List<WallLayer> board = List.of(new WallLayer(Materials.CORRUGATED_BOARD, 0.004));
    Walls walls = VacuumPanel.METALLISED_FILM.lining(Packings.OUTER, board, 0.02);
    // lid 292 x 232 mm, y sides 292 x 152 mm, x sides 192 x 152 mm
    assertEquals("vacuum panel in metallised film, 292 x 232 mm", panel(walls, Face.Z_MIN));
    assertEquals("vacuum panel in metallised film, 292 x 152 mm", panel(walls, Face.Y_MAX));
    assertEquals("vacuum panel in metallised film, 192 x 152 mm", panel(walls, Face.X_MIN));
    MeshControl mesh = MeshControl.graded(0.03, 0.015);
    double[] conditions = {295.15, 275.15, 4 * 3600};
    assertTrue(
        Runs.mean(parcel(walls), "cup animal", mesh, conditions)
            > 1 + Runs.mean(parcel(Packings.WALLS), "cup animal", mesh, conditions));
  }

  private static String panel(Walls walls, Face face) {
    List<WallLayer> layers = java.util.Objects.requireNonNull(walls.layers().get(face));
    return layers.get(1).material().name();
  }
}
