package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stenotherm.animal.Animals;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Range;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.FacePatch;
import stenotherm.grid.Layout;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Point;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.warmer.Warmers;

class ParcelTest {
  private static final Position MIDDLE = Position.MIDDLE_OF_FLOOR;

  private static void assertRefused(String message, Executable executable) {
    assertEquals(message, assertThrows(InvalidInputException.class, executable).getMessage());
  }

  /** What is said first; after it comes what size would do. */
  private static void assertRefusedFirst(String message, Executable executable) {
    String told = refusal(executable);
    assertTrue(told.startsWith(message + ". "), told);
  }

  private static Container shifted(String name, double alongX) {
    return Packings.cup(name, new Position(alongX, 0, 0));
  }

  private static Box box(Layout layout, String name) {
    return layout.block(name).box();
  }

  private static void assertBox(Box expected, Box actual) {
    for (Face face : Face.values()) {
      assertEquals(expected.at(face), actual.at(face), 1e-12, face.label());
    }
  }

  private static Box box(double[] min, double[] max) {
    return new Box(new Point(min[0], min[1], min[2]), new Point(max[0], max[1], max[2]));
  }

  /** The block painted last wins. */
  private static String blockAt(Layout layout, double x, double y, double z) {
    String found = "";
    for (Block block : layout.blocks()) {
      if (block.box().contains(new Point(x, y, z))) {
        found = block.name();
      }
    }
    return found;
  }

  @Test
  void whatSticksOutIsNamedWithItsMillimetres() {
    assertRefusedFirst(
        "packing 'sample': 'a' sticks out of the cavity at the right by 12.0 mm (0.47 in)"
            + "; the cavity is 252.0 x 192.0 x 152.0 mm (9.92 x 7.56 x 5.98 in)",
        () -> Packings.parcel(List.of(shifted("a", 0.088)), List.of()));
    assertRefusedFirst(
        "packing 'sample': 'a' sticks out of the cavity at the front by 4.5 mm (0.18 in)"
            + "; the cavity is 252.0 x 192.0 x 152.0 mm (9.92 x 7.56 x 5.98 in)",
        () -> Packings.parcel(List.of(Packings.cup("a", new Position(0, -0.0605, 0))), List.of()));
    assertRefusedFirst(
        "packing 'sample': 'a' sticks out of the cavity at the lid by 8.0 mm (0.31 in)"
            + "; the cavity is 252.0 x 192.0 x 152.0 mm (9.92 x 7.56 x 5.98 in)",
        () -> Packings.parcel(List.of(Packings.cup("a", new Position(0, 0, 0.1))), List.of()));
    PlacedWarmer far =
        Packings.pad(Packings.steady(1), Face.Z_MIN, Mounting.standingOff(0.152 - 0.005));
    assertRefusedFirst(
        "packing 'sample': 'pad' sticks out of the cavity at the lid by 1.0 mm (0.04 in)"
            + "; the cavity is 252.0 x 192.0 x 152.0 mm (9.92 x 7.56 x 5.98 in)",
        () -> Packings.parcel(List.of(Packings.cup("a", MIDDLE)), List.of(far)));
  }

  @Test
  void whatOverlapsIsNamedTwiceWithItsMillimetres() {
    assertRefusedFirst(
        "packing 'sample': 'b' overlaps 'a' by 10.0 mm (0.39 in)"
            + "; the cavity is 252.0 x 192.0 x 152.0 mm (9.92 x 7.56 x 5.98 in)",
        () -> Packings.parcel(List.of(shifted("a", -0.045), shifted("b", 0.045)), List.of()));
    Container tall = Packings.cup("tall", new Dimensions(0.1, 0.08, 0.15), MIDDLE);
    PlacedWarmer pad = Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped());
    assertRefusedFirst(
        "packing 'sample': 'pad' overlaps 'tall' by 4.0 mm (0.16 in)"
            + "; the cavity is 252.0 x 192.0 x 152.0 mm (9.92 x 7.56 x 5.98 in)",
        () -> Packings.parcel(List.of(tall), List.of(pad)));
  }

  /** What is said to do does, and a millimetre less along any axis does not. */
  @Test
  void theSmallestCavityHasRoomAndNoMore() {
    PlacedWarmer pad = Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped());
    List<Container> cups = List.of(shifted("a", -0.05), shifted("b", 0.05));
    Walls walls = Packings.WALLS;
    String told = refusal(() -> inside(walls, new Dimensions(0.2, 0.05, 0.05), cups, pad));
    Matcher size = Pattern.compile("would fit into (\\d+) x (\\d+) x (\\d+) mm ").matcher(told);
    assertTrue(size.find(), told);
    double[] least = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      least[axis] = Integer.parseInt(size.group(axis + 1)) / 1000.0;
    }
    inside(walls, new Dimensions(least[0], least[1], least[2]), cups, pad);
    for (int axis = 0; axis < 3; axis++) {
      double[] less = least.clone();
      less[axis] -= 0.001;
      refusal(() -> inside(walls, new Dimensions(less[0], less[1], less[2]), cups, pad));
    }
  }

  /** The cartons that are offered have room, those of the list that are smaller have not. */
  @Test
  void theSmallestUsualCartonsAreOffered() {
    PlacedWarmer pad = Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped());
    List<Container> cups = List.of(Packings.cup("a", MIDDLE));
    Walls walls = Packings.WALLS;
    String told = refusal(() -> inside(walls, new Dimensions(0.05, 0.05, 0.05), cups, pad));
    for (List<BoxSize> sizes : List.of(BoxSizes.all(), BoxSizes.metric())) {
      BoxSize offered =
          sizes.stream()
              .filter(
                  each ->
                      told.matches(
                          ".* of (.* or )?" + each.name().replace(" carton", "") + "( or .*)?"))
              .findFirst()
              .get();
      inCarton(walls, offered, cups, pad);
      sizes.stream()
          .filter(each -> each.inside().volume() < offered.inside().volume())
          .forEach(each -> refusal(() -> inCarton(walls, each, cups, pad)));
    }
    Walls bare = Walls.uniform(List.of(new WallLayer(Materials.EPS_20, 0.02)));
    String size = refusal(() -> inside(bare, new Dimensions(0.05, 0.05, 0.05), cups, pad));
    assertTrue(size.contains("would fit into") && !size.contains("carton of"), size);
  }

  @Test
  void noBoxIsOfferedForWhatOverlapsInAny() {
    List<Container> cups = List.of(shifted("a", 0), shifted("b", 0.01));
    String told = refusal(() -> Packings.parcel(cups, List.of()));
    assertTrue(told.endsWith("No larger box helps: move what does not fit"), told);
  }

  /** What does not fit under a lid may stand beside the cup. */
  @Test
  void anotherWallIsOfferedForAWarmerWithoutRoom() {
    Container tall = Packings.cup("tall", new Dimensions(0.1, 0.08, 0.15), MIDDLE);
    PlacedWarmer pad = Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped());
    String told = refusal(() -> Packings.parcel(List.of(tall), List.of(pad)));
    assertTrue(told.contains(" in). Here 'pad' has room on front or back. It would fit"), told);
  }

  private static String refusal(Executable executable) {
    return assertThrows(InvalidInputException.class, executable).getMessage();
  }

  private static Parcel inCarton(
      Walls walls, BoxSize size, List<Container> cups, PlacedWarmer pad) {
    return new Parcel(
        "sample", size.outer(walls), walls, Materials.SHREDDED_PAPER, cups, List.of(pad));
  }

  private static Parcel inside(
      Walls walls, Dimensions cavity, List<Container> cups, PlacedWarmer pad) {
    return new Parcel(
        "sample", walls.around(cavity), walls, Materials.SHREDDED_PAPER, cups, List.of(pad));
  }

  @Test
  void whatTouchesIsFine() {
    Parcel parcel = Packings.parcel(List.of(shifted("a", -0.05), shifted("b", 0.05)), List.of());
    assertEquals(2, parcel.containers().size());
  }

  @Test
  void aNameOccursOnce() {
    assertRefused(
        "packing 'sample': 'a' occurs twice; everything needs a name of its own",
        () -> Packings.parcel(List.of(shifted("a", -0.06), shifted("a", 0.06)), List.of()));
    PlacedWarmer pad = Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped());
    assertRefused(
        "packing 'sample': 'pad' occurs twice; everything needs a name of its own",
        () -> Packings.parcel(List.of(Packings.cup("pad", MIDDLE)), List.of(pad)));
    assertRefused(
        "containers of packing 'sample': must not be empty",
        () -> Packings.parcel(List.of(), List.of()));
  }

  @Test
  void namesOfThePartsOfAParcelAreTaken() {
    for (String taken : List.of("fill", "wall 1", "wall 2", "xMin", "zMax")) {
      assertRefused(
          "packing 'sample': '"
              + taken
              + "' is the name of a part of the parcel; choose another one",
          () -> Packings.parcel(List.of(Packings.cup("a", MIDDLE)), List.of(named(taken))));
    }
    assertRefused(
        "packing 'sample': 'a air' occurs twice; everything needs a name of its own",
        () -> Packings.parcel(List.of(Packings.cup("a", MIDDLE)), List.of(named("a air"))));
  }

  private static PlacedWarmer named(String name) {
    return new PlacedWarmer(name, Packings.steady(1), Face.Z_MAX, Mounting.taped(), 0);
  }

  /** Two cups of 80 mm whose boxes share a corner of 12 mm by 12 mm. */
  @Test
  void roundThingsMayShareTheCornersOfTheirBoxes() {
    Container one = round("one", -0.034, -0.034);
    Parcel parcel = Packings.parcel(List.of(one, round("two", 0.034, 0.034)), List.of());
    assertEquals(2, parcel.containers().size());
    // 60 mm and 45 mm apart: 75 mm, of 80 mm
    assertRefusedFirst(
        "packing 'sample': 'two' overlaps 'one' by 5.0 mm (0.20 in)"
            + "; the cavity is 252.0 x 192.0 x 152.0 mm (9.92 x 7.56 x 5.98 in)",
        () ->
            Packings.parcel(List.of(round("one", -0.03, 0), round("two", 0.03, 0.045)), List.of()));
    // the corner of a box cup is 30 mm and 25 mm from the middle of a round one
    Container box = Packings.cup("box", new Position(0.046, 0.031, 0));
    assertRefusedFirst(
        "packing 'sample': 'box' overlaps 'one' by 0.9 mm (0.04 in)"
            + "; the cavity is 252.0 x 192.0 x 152.0 mm (9.92 x 7.56 x 5.98 in)",
        () -> Packings.parcel(List.of(one, box), List.of()));
  }

  private static Container round(String name, double alongX, double alongY) {
    return Container.empty(
        name, new Vessel.RoundCup(0.08, 0.05, Packings.CUP_WALL), new Position(alongX, alongY, 0));
  }

  @Test
  void patchesArePortsAfterTheFaces() {
    FacePatch patch =
        FacePatch.part("sunny", Face.Z_MAX, Packings.OUTER, new Range(0, 0.5), new Range(0, 1));
    assertEquals(
        List.of("xMin", "xMax", "yMin", "yMax", "zMin", "zMax", "sunny"),
        Packings.plain()
            .network(MeshControl.graded(0.04, 0.02), List.of(patch))
            .boundaryPorts()
            .stream()
            .map(port -> port.name())
            .toList());
  }

  @Test
  void whatDoesNotFitInItsCupIsRefused() {
    assertRefused(
        "container 'a': the animal takes 40.0 mm (1.58 in) of length but the container has 35.0 mm"
            + " (1.37 in): 5.0 mm (0.21 in) too little. Take a larger one, such as 'small lidded box'",
        () -> Packings.cup("a", new Dimensions(0.035, 0.03, 0.06), MIDDLE));
    assertRefused(
        "container 'a': the animal takes 30.0 mm (1.19 in) of width but the container has 29.5 mm"
            + " (1.16 in): 0.5 mm (0.03 in) too little. Take a larger one, such as 'small lidded box'",
        () -> Packings.cup("a", new Dimensions(0.1, 0.0295, 0.06), MIDDLE));
    assertRefused(
        "container 'a': the animal on its bedding takes 25.0 mm (0.99 in) of height but the"
            + " container has 22.0 mm (0.86 in): 3.0 mm (0.13 in) too little. Take a larger one, such"
            + " as 'small lidded box', or at most 2.0 mm (0.07 in) of bedding",
        () -> Packings.cup("a", new Dimensions(0.1, 0.08, 0.022), MIDDLE));
  }

  @Test
  void noParcelIsLongerThanTwoMetres() {
    assertRefused(
        "packing 'sample': outer box 2100.0 x 300.0 x 200.0 mm (82.68 x 11.81 x 7.87 in) is longer"
            + " than 2000.0 mm (78.74 in) along X",
        () ->
            new Parcel(
                "sample",
                Box.ofSize(2.1, 0.3, 0.2),
                Packings.WALLS,
                Filling.none(),
                List.of(Packings.cup("cup", MIDDLE)),
                List.of(),
                List.of()));
  }

  @Test
  void onlyPacksMelt() {
    String reason = "'gel pack' melts, which only a pack may";
    assertRefused("layer of gel pack: " + reason, () -> new WallLayer(Materials.GEL_PACK, 0.02));
    assertRefused("fill: " + reason, () -> new Filling.Loose(Materials.GEL_PACK));
    assertRefused("bedding: " + reason, () -> new Bedding("gel", Materials.GEL_PACK, 0.01, 0));
  }

  @Test
  void noJointIsNarrowerThanItsRoughness() {
    assertRefused(
        "gap between panels: 1.00000e-12 m is narrower than any joint; write 0 for none, or at"
            + " least 1.00000e-05 m",
        () -> new Joints(Joints.NONE.overlap(), 0, 1e-12));
  }

  @Test
  void wallsMustLeaveRoom() {
    assertRefusedFirst(
        "packing 'sample': walls leave no room inside along the width, where they take 48.0 mm"
            + " (1.89 in) of 48.0 mm (1.89 in)",
        () ->
            new Parcel(
                "sample",
                Box.ofSize(0.3, 0.048, 0.2),
                Packings.WALLS,
                Materials.SHREDDED_PAPER,
                List.of(Packings.cup("a", MIDDLE)),
                List.of()));
    assertRefused("wall at the left: has no layer", () -> Walls.uniform(List.of()));
    assertRefused(
        "wall at the lid: has no layer", () -> Packings.WALLS.with(Face.Z_MAX, List.of()));
  }

  @Test
  void badNumbersAreRefused() {
    assertThrows(InvalidInputException.class, () -> new Dimensions(0.1, 0, 0.1));
    assertThrows(InvalidInputException.class, () -> new Position(0, 0, -0.001));
    assertThrows(InvalidInputException.class, () -> new WallLayer(Materials.XPS, 0));
    assertThrows(InvalidInputException.class, () -> new Mounting(0, -1));
    assertThrows(InvalidInputException.class, () -> Mounting.standingOff(0));
    assertThrows(InvalidInputException.class, () -> new Mounting(0.01, 0.02));
  }

  @Test
  void uniformWallsAreTwoNestedBoxes() {
    Layout layout = Packings.plain().layout();
    assertEquals(
        List.of("wall 1", "wall 2", "fill", "cup air", "cup towel", "cup animal"),
        layout.blocks().stream().map(Block::name).toList());
    assertBox(Packings.OUTER, box(layout, "wall 1"));
    assertBox(
        box(new double[] {0.004, 0.004, 0.004}, new double[] {0.296, 0.236, 0.196}),
        box(layout, "wall 2"));
    Box cavity = box(new double[] {0.024, 0.024, 0.024}, new double[] {0.276, 0.216, 0.176});
    assertBox(cavity, box(layout, "fill"));
    assertBox(cavity, Packings.plain().cavity());
    assertBox(
        box(new double[] {0.1, 0.08, 0.024}, new double[] {0.2, 0.16, 0.084}),
        box(layout, "cup air"));
    assertBox(
        box(new double[] {0.1, 0.08, 0.024}, new double[] {0.2, 0.16, 0.029}),
        box(layout, "cup towel"));
    assertBox(
        box(new double[] {0.13, 0.105, 0.029}, new double[] {0.17, 0.135, 0.049}),
        box(layout, "cup animal"));
    assertEquals("cup animal", Packings.plain().containers().get(0).animalBlock());
    assertEquals(0.024, Packings.WALLS.thickness(Face.Y_MIN), 1e-12);
  }

  @Test
  void aCupStandsWhereItsPositionSays() {
    Container cup = Packings.cup("c", new Position(0.05, -0.02, 0.03));
    Layout layout = Packings.parcel(List.of(cup), List.of()).layout();
    assertBox(
        box(new double[] {0.15, 0.06, 0.054}, new double[] {0.25, 0.14, 0.114}),
        box(layout, "c air"));
  }

  /** A lid of one thick panel on a box of board and foam. */
  @Test
  void aLidOfItsOwnReachesOverTheSides() {
    Walls walls = Packings.WALLS.with(Face.Z_MAX, List.of(new WallLayer(Materials.PIR, 0.030)));
    Parcel parcel =
        new Parcel(
            "lidded",
            Packings.OUTER,
            walls,
            Materials.SHREDDED_PAPER,
            List.of(Packings.cup("cup", MIDDLE)),
            List.of());
    Layout layout = parcel.layout();
    assertBox(
        box(new double[] {0.024, 0.024, 0.024}, new double[] {0.276, 0.216, 0.17}),
        parcel.cavity());
    assertBox(
        box(new double[] {0, 0, 0.17}, new double[] {0.3, 0.24, 0.2}), box(layout, "wall 1 zMax"));
    assertBox(
        box(new double[] {0.004, 0.004, 0.004}, new double[] {0.296, 0.236, 0.024}),
        box(layout, "wall 2 zMin"));
    // lid over sides, floor over sides, y sides over x sides; then the inner shell
    assertEquals("wall 1 zMax", blockAt(layout, 0.001, 0.001, 0.199));
    assertEquals("wall 1 zMax", blockAt(layout, 0.15, 0.001, 0.171));
    assertEquals("wall 1 zMin", blockAt(layout, 0.001, 0.12, 0.001));
    assertEquals("wall 1 yMin", blockAt(layout, 0.001, 0.001, 0.1));
    assertEquals("wall 1 xMin", blockAt(layout, 0.001, 0.12, 0.1));
    assertEquals("wall 2 yMax", blockAt(layout, 0.01, 0.23, 0.1));
    assertEquals("wall 2 zMin", blockAt(layout, 0.01, 0.23, 0.01));
    assertEquals("wall 2 xMax", blockAt(layout, 0.29, 0.12, 0.169));
    assertEquals("fill", blockAt(layout, 0.03, 0.03, 0.169));
    assertEquals(Materials.PIR, material(layout, "wall 1 zMax"));
    assertEquals(Materials.CORRUGATED_BOARD, material(layout, "wall 1 xMin"));
    assertEquals(Materials.EPS_20, material(layout, "wall 2 xMin"));
    assertEquals(0.030, walls.thickness(Face.Z_MAX), 1e-12);
  }

  private static Material material(Layout layout, String name) {
    Block block = layout.block(name);
    return ((Block.Solid) block).material();
  }

  @Test
  void layersOfOneMaterialMayDifferInThickness() {
    Walls walls =
        Packings.WALLS.with(
            Face.X_MIN,
            List.of(
                new WallLayer(Materials.CORRUGATED_BOARD, 0.008),
                new WallLayer(Materials.EPS_20, 0.030)));
    Parcel parcel =
        new Parcel(
            "skew",
            Packings.OUTER,
            walls,
            Materials.SHREDDED_PAPER,
            List.of(Packings.cup("cup", MIDDLE)),
            List.of());
    assertEquals(0.038, parcel.cavity().at(Face.X_MIN), 1e-12);
    assertEquals(0.008, box(parcel.layout(), "wall 2").at(Face.X_MIN), 1e-12);
    assertEquals("wall 1", parcel.layout().blocks().get(0).name());
  }

  @ParameterizedTest
  @EnumSource(Face.class)
  void aTapedWarmerTouchesItsWall(Face face) {
    Box pad = padOn(face, Mounting.taped());
    Box cavity = Packings.plain().cavity();
    assertEquals(cavity.at(face), pad.at(face));
    assertCentredAlong(face, pad, cavity);
  }

  @ParameterizedTest
  @EnumSource(Face.class)
  void aWarmerStandsOffByItsGap(Face face) {
    Box pad = padOn(face, Mounting.standingOff(0.011));
    Box cavity = Packings.plain().cavity();
    assertEquals(0.011, Math.abs(cavity.at(face) - pad.at(face)), 1e-12);
    assertTrue(cavity.contains(pad.min()) && cavity.contains(pad.max()));
    assertCentredAlong(face, pad, cavity);
  }

  private static Box padOn(Face face, Mounting mounting) {
    // out of the way of a pad on the floor
    Container aside =
        Packings.cup("cup", new Dimensions(0.06, 0.06, 0.03), new Position(0, 0, 0.05));
    return box(
        Packings.parcel(List.of(aside), List.of(Packings.pad(Packings.steady(1), face, mounting)))
            .layout(),
        "pad");
  }

  private static void assertCentredAlong(Face face, Box pad, Box cavity) {
    assertEquals(0.006, pad.size(face.axis()), 1e-12);
    for (Axis axis : Axis.values()) {
      if (axis != face.axis()) {
        assertEquals(cavity.centre().along(axis), pad.centre().along(axis), 1e-12);
      }
    }
    // the longer side lies along the longer extent: x before y before z in this cavity
    Axis longer = face.axis() == Axis.X ? Axis.Y : Axis.X;
    Axis shorter = face.axis() == Axis.Z ? Axis.Y : Axis.Z;
    assertEquals(0.090, pad.size(longer), 1e-12);
    assertEquals(0.055, pad.size(shorter), 1e-12);
  }

  @Test
  void warmersAreSourcesOfTheNetwork() {
    Parcel parcel =
        Packings.warmed(List.of(Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped())));
    MeshControl mesh = MeshControl.graded(0.04, 0.02);
    assertEquals("pad", parcel.network(mesh).sourcePorts().get(0).name());
    assertEquals(
        List.of("xMin", "xMax", "yMin", "yMax", "zMin", "zMax"),
        parcel.network(mesh).boundaryPorts().stream().map(port -> port.name()).toList());
    Parcel bare = parcel.withoutWarmers();
    assertEquals(Packings.plain(), bare);
    assertEquals(List.of(), bare.network(mesh).sourcePorts());
  }

  @Test
  void wallsAndFillGoToTheEndsOfTheirRanges() {
    Layout layout = Packings.plain().at(-1, 1).layout();
    assertEquals(0.05, material(layout, "wall 1").conductivity());
    assertEquals(
        Materials.EPS_20.conductivityRange().low(), material(layout, "wall 2").conductivity());
    assertEquals(0.055, material(layout, "fill").conductivity());
    assertEquals(Animals.CORN_SNAKE.tissue(), material(layout, "cup animal"));
    assertEquals(Materials.DAMP_PAPER_TOWEL, material(layout, "cup towel"));
    Layout nominal = Packings.plain().at(0, 0).layout();
    assertEquals(0.06, material(nominal, "wall 1").conductivity());
    assertEquals(0.048, material(nominal, "fill").conductivity());
    // between them by equal ratios
    Layout between = Packings.plain().at(-0.5, 0.5).layout();
    assertEquals(Math.sqrt(0.05 * 0.06), material(between, "wall 1").conductivity(), 1e-12);
    assertEquals(Math.sqrt(0.055 * 0.048), material(between, "fill").conductivity(), 1e-12);
  }

  /** What a warmer stores is its own mass times its specific heat, not that of a full pad. */
  @Test
  void warmerStoresTheHeatOfItsOwnMass() {
    Parcel parcel =
        Packings.warmed(
            List.of(new PlacedWarmer("pad", Warmers.FORTY_HOUR, Face.Z_MAX, Mounting.taped(), 0)));
    double volume = 0.128 * 0.082 * 0.012;
    assertEquals(
        0.1 * 1360, volume * material(parcel.layout(), "pad").volumetricHeatCapacity(), 1e-9);
  }

  /** Foam of 20 mm around 260 mm by 200 mm by 160 mm, one cup, one pad. */
  @Test
  void massByHand() {
    Parcel parcel =
        new Parcel(
            "foam box",
            Packings.OUTER,
            Walls.uniform(List.of(new WallLayer(Materials.EPS_20, 0.02))),
            Materials.SHREDDED_PAPER,
            List.of(Packings.cup("cup", MIDDLE)),
            List.of(Packings.pad(Packings.steady(1), Face.Z_MAX, Mounting.taped())));
    double walls = (0.3 * 0.24 * 0.2 - 0.26 * 0.2 * 0.16) * 20;
    double cup = 0.1 * 0.08 * 0.06;
    double pad = 0.09 * 0.055 * 0.006;
    double fill = (0.26 * 0.2 * 0.16 - cup - pad) * 45;
    double towel = 0.1 * 0.08 * 0.005 * 240;
    double shell = 2 * (0.1 * 0.08 + 0.1 * 0.06 + 0.08 * 0.06) * 0.0004 * 1370;
    assertEquals(walls + fill + towel + shell + 0.024 + 0.0386, parcel.mass(), 1e-9);
    assertEquals(0.0144, parcel.outerVolume(), 1e-12);
  }
}
