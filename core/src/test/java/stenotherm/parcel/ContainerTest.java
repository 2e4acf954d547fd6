package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stenotherm.animal.AnimalBody;
import stenotherm.animal.Animals;
import stenotherm.animal.Proportions;
import stenotherm.base.Axis;
import stenotherm.base.HeatDirection;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Mass;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.MeshControl;
import stenotherm.grid.Shape;
import stenotherm.material.Absorbent;
import stenotherm.material.AirLayer;
import stenotherm.material.Materials;

class ContainerTest {
  private static final Position MIDDLE = Position.MIDDLE_OF_FLOOR;
  private static final Occupant SNAKE = new Occupant(Animals.CORN_SNAKE, Packings.BODY);
  private static final Bedding TOWEL = Bedding.dampTowel(0.005);
  private static final double ROOM = 288.15;

  /** 6.4 g of tissue, 40 mm long and 20 mm by 8 mm across. */
  private static final Occupant FLAT =
      new Occupant(Animals.CORN_SNAKE, new AnimalBody(0.0064, new Proportions(5, 2.5, 1)));

  private static void assertRefused(String message, Executable executable) {
    assertEquals(message, assertThrows(InvalidInputException.class, executable).getMessage());
  }

  private static Container round(double diameter) {
    return new Container(
        "cup", new Vessel.RoundCup(diameter, 0.06, Packings.CUP_WALL), MIDDLE, TOWEL, SNAKE);
  }

  private static Container lying(Axis axis, List<Bedding> bedding, Occupant who) {
    return new Container(
        "vial",
        new Vessel.Vial(0.04, 0.09, axis, Packings.CUP_WALL),
        MIDDLE,
        bedding,
        Optional.of(who));
  }

  private static Box box(Container container, String name) {
    Parcel parcel = Packings.parcel(List.of(container), List.of());
    return parcel.layout().block(name).box();
  }

  @Test
  void theCornersOfABodyMustFitARoundCup() {
    assertEquals(Shape.CYLINDER_Z, round(0.0501).vessel().shape());
    assertRefused(
        "container 'cup': the animal from corner to corner takes 50.0 mm (1.97 in) of diameter but"
            + " the container has 48.0 mm (1.88 in): 2.0 mm (0.09 in) too little. Take a larger one,"
            + " such as '4 fl oz' or '250 ml'",
        () -> round(0.048));
  }

  @Test
  void anAnimalLiesAlongTheLongerSide() {
    Container across = Packings.cup("c", new Dimensions(0.05, 0.08, 0.06), new Position(0, 0, 0));
    Box body = box(across, "c animal");
    assertEquals(0.030, body.size(Axis.X), 1e-12);
    assertEquals(0.040, body.size(Axis.Y), 1e-12);
  }

  @ParameterizedTest
  @EnumSource(
      value = Axis.class,
      names = {"X", "Y"})
  void everythingInALyingVialKeepsWithinItsRound(Axis axis) {
    Bedding towel = Bedding.dampTowel(0.006);
    Container vial = lying(axis, List.of(towel), FLAT);
    Box room = box(vial, "vial air");
    Axis across = axis == Axis.X ? Axis.Y : Axis.X;
    assertEquals(0.09, room.size(axis), 1e-12);
    for (String inside : List.of("vial towel", "vial animal")) {
      Box box = box(vial, inside);
      for (double z : new double[] {box.min().z(), box.max().z()}) {
        double up = z - room.centre().z();
        double side = box.size(across) / 2;
        assertTrue(Math.hypot(up, side) <= 0.02 + 1e-12, inside);
      }
    }
    // a body of 20 mm across rests on the round wall where the chord is 20 mm, above the towel
    double chord = 0.02 - Math.sqrt(0.02 * 0.02 - 0.01 * 0.01);
    double above = box(vial, "vial animal").min().z() - room.min().z();
    assertEquals(Math.max(chord, 0.006), above, 1e-12);
  }

  @Test
  void aLyingVialTakesOneLayerUpToItsMiddle() {
    String message =
        "container 'vial': a lying vial takes one layer of bedding, up to half its diameter";
    assertRefused(message, () -> lying(Axis.X, List.of(Bedding.dampTowel(0.021)), FLAT));
    assertRefused(message, () -> lying(Axis.X, List.of(TOWEL, Bedding.dampMoss(0.004)), FLAT));
    assertRefused(
        "container 'vial': the animal takes 30.0 mm (1.19 in) of width but the container has 25.0"
            + " mm (0.98 in): 5.0 mm (0.21 in) too little. Take a larger one, such as '2 fl oz'"
            + " or '100 ml'",
        () ->
            new Container(
                "vial",
                new Vessel.Vial(0.025, 0.09, Axis.X, Packings.CUP_WALL),
                MIDDLE,
                List.of(),
                Optional.of(SNAKE)));
  }

  /** Segment of a circle by its angle, another form than the code's. */
  @Test
  void massOfALyingVialByHand() {
    Bedding towel = Bedding.dampTowel(0.01);
    Container vial = lying(Axis.X, List.of(towel), FLAT);
    double angle = 2 * Math.PI / 3;
    double segment = 0.02 * 0.02 / 2 * (angle - Math.sin(angle));
    double bedding = segment * 0.09 * Materials.DAMP_PAPER_TOWEL.density();
    double wall = (2 * Math.PI / 4 * 0.04 * 0.04 + Math.PI * 0.04 * 0.09) * 0.0004 * 1370;
    assertEquals(bedding + wall + 0.0064, vial.mass(), 1e-12);
    assertEquals(0.75 * bedding, vial.waterMass(), 1e-12);
    // its block holds the heat of the whole segment
    Parcel parcel = Packings.parcel(List.of(vial), List.of());
    Block.Solid block = (Block.Solid) parcel.layout().block("vial towel");
    assertEquals(bedding, block.box().volume() * block.material().density(), 1e-12);
  }

  @Test
  void beddingLiesInLayers() {
    Container cup =
        new Container(
            "cup",
            new Vessel.BoxCup(new Dimensions(0.1, 0.08, 0.06), Packings.CUP_WALL),
            MIDDLE,
            List.of(Bedding.dampCoir(0.01), TOWEL),
            Optional.of(SNAKE));
    assertEquals(0.01, box(cup, "cup coir").size(Axis.Z), 1e-12);
    assertEquals(box(cup, "cup coir").max().z(), box(cup, "cup towel").min().z(), 1e-12);
    assertEquals(box(cup, "cup towel").max().z(), box(cup, "cup animal").min().z(), 1e-12);
    double coir = 0.1 * 0.08 * 0.01 * Materials.DAMP_COIR.density();
    double towel = 0.1 * 0.08 * 0.005 * 240;
    assertEquals(0.75 * (coir + towel), cup.waterMass(), 1e-12);
    assertRefused(
        "container 'cup': the bedding takes 70.0 mm (2.76 in) of height but the container has 60.0"
            + " mm (2.36 in): 10.0 mm (0.40 in) too little. Take a larger one, such as 'large lidded"
            + " box', or at most 60.0 mm (2.36 in) of bedding",
        () ->
            new Container(
                "cup", cup.vessel(), MIDDLE, List.of(Bedding.dampMoss(0.07)), Optional.empty()));
  }

  @Test
  void beddingTellsItsWater() {
    Bedding moss =
        Bedding.moist("moss", new Absorbent(Materials.SPHAGNUM_DRY, Materials.PAPER), 0.02, 5);
    assertEquals(Materials.DAMP_SPHAGNUM.conductivity(), moss.material().conductivity(), 1e-12);
    assertEquals(Materials.DAMP_SPHAGNUM.density(), moss.material().density(), 1e-9);
    assertThrows(
        InvalidInputException.class, () -> new Bedding("towel", Materials.PAPER, 0.01, -1));
    assertThrows(InvalidInputException.class, () -> Bedding.dampTowel(0));
  }

  @Test
  void anEmptyContainerHasNoAnimal() {
    Container empty = Container.empty("cup", round(0.1).vessel(), MIDDLE);
    Parcel parcel = Packings.parcel(List.of(empty), List.of());
    assertEquals(List.of(), parcel.occupied());
    assertFalse(parcel.layout().blocks().stream().anyMatch(b -> b.name().equals("cup animal")));
    parcel.network(MeshControl.graded(0.04, 0.02));
  }

  @Test
  void onlyABagIsOpen() {
    assertTrue(new Vessel.Bag(new Dimensions(0.1, 0.1, 0.05), Packings.CUP_WALL).isOpen());
    assertFalse(round(0.1).vessel().isOpen());
  }

  /** The animal is 40 mm by 30 mm by 20 mm: its gaps are 28.75 mm aside, 35 mm above. */
  @Test
  void theAirHasTheResistanceOfItsGap() {
    Container cup = Packings.cup("cup", MIDDLE);
    double gap = (0.0275 + 0.035) / 2;
    double level = AirLayer.ordinary(HeatDirection.HORIZONTAL, gap).effectiveConductivity(ROOM);
    assertEquals(level, cup.airConductivity(HeatDirection.HORIZONTAL, Axis.Z, ROOM), 1e-12);
    double down = cup.airConductivity(HeatDirection.DOWNWARD, Axis.Z, ROOM);
    double up = cup.airConductivity(HeatDirection.UPWARD, Axis.Z, ROOM);
    assertTrue(down < level && level < up);
    // 1200 mm2 of 4000 mm2 look up, the rest aside
    double share = 1200.0 / (1200 + 2 * 600 + 2 * 800);
    double fully = AirLayer.ordinary(HeatDirection.UPWARD, gap).effectiveConductivity(ROOM);
    assertEquals(share * fully + (1 - share) * level, up, 1e-12);
  }

  @Test
  void stackedAndSideBySide() {
    Container cup = Packings.cup("a", new Position(0.01, 0, 0.002));
    Container other = Packings.cup("b", new Dimensions(0.06, 0.05, 0.04), MIDDLE);
    List<Container> stack = Arrangement.stacked(0.005, List.of(cup, other));
    assertEquals(new Position(0.01, 0, 0.002), stack.get(0).position());
    assertEquals(0.067, stack.get(1).position().aboveFloor(), 1e-12);
    List<Container> row = Arrangement.sideBySide(Axis.X, 0.004, List.of(cup, other));
    // 100 + 4 + 60 mm around 10 mm
    assertEquals(0.01 - 0.032, row.get(0).position().alongX(), 1e-12);
    assertEquals(0.01 + 0.052, row.get(1).position().alongX(), 1e-12);
    Packings.parcel(row, List.of());
    Packings.parcel(stack, List.of());
    assertThrows(
        InvalidInputException.class, () -> Arrangement.sideBySide(Axis.Z, 0, List.of(cup)));
    assertThrows(InvalidInputException.class, () -> Arrangement.stacked(-0.1, List.of(cup)));
    assertThrows(InvalidInputException.class, () -> Arrangement.stacked(0, List.of()));
  }

  /** Twelve of 50 mm, 10 mm apart, are 710 mm long; on 250 x 180 mm they stand in three rows. */
  @Test
  void whatIsTooLongForARowStandsInRows() {
    Dimensions small = new Dimensions(0.05, 0.05, 0.06);
    List<Container> twelve =
        IntStream.rangeClosed(1, 12)
            .mapToObj(number -> Packings.cup("cup " + number, small, MIDDLE))
            .toList();
    List<Container> rows = Arrangement.inRows(0.25, 0.18, 0.01, twelve);
    for (int number = 0; number < 12; number++) {
      Position at = rows.get(number).position();
      assertEquals(-0.09 + 0.06 * (number % 4), at.alongX(), 1e-12);
      assertEquals(-0.06 + 0.06 * (number / 4), at.alongY(), 1e-12);
    }
    assertEquals(
        Arrangement.sideBySide(Axis.X, 0.01, twelve), Arrangement.inRows(0.8, 0.15, 0.01, twelve));
    assertEquals(
        Arrangement.sideBySide(Axis.Y, 0.01, twelve), Arrangement.inRows(0.15, 0.8, 0.01, twelve));
    // 3 x 2 on the floor, and as many on top
    List<Container> layers = Arrangement.inRows(0.18, 0.12, 0.01, twelve);
    for (int number : new int[] {5, 11}) {
      Position at = layers.get(number).position();
      assertEquals(0.06, at.alongX(), 1e-12);
      assertEquals(0.03, at.alongY(), 1e-12);
      assertEquals(number == 5 ? 0 : 0.06, at.aboveFloor(), 1e-12);
    }
    // of two sizes they are not stacked: of all numbers of rows three stick out least
    List<Container> unlike = new ArrayList<>(twelve);
    unlike.set(0, Packings.cup("high", new Dimensions(0.05, 0.05, 0.07), MIDDLE));
    Position last = Arrangement.inRows(0.15, 0.1, 0.01, unlike).get(11).position();
    assertEquals(0.09, last.alongX(), 1e-12);
    assertEquals(0.06, last.alongY(), 1e-12);
  }

  /** The round surface is right on any grid, so heat capacities and cooling are too. */
  @Test
  void aRoundCupCoolsLikeABoxOfItsBase() {
    double side = 0.08 * Math.sqrt(Math.PI) / 2;
    Container square = Packings.cup("cup", new Dimensions(side, side, 0.06), MIDDLE);
    MeshControl mesh = MeshControl.graded(0.02, 0.005);
    double[] conditions = {295.15, 275.15, 3600};
    Parcel ofRound = Packings.parcel(List.of(round(0.08)), List.of());
    Parcel ofSquare = Packings.parcel(List.of(square), List.of());
    assertEquals(ofSquare.mass(), ofRound.mass(), 0.002 * ofRound.mass());
    assertEquals(
        ofSquare.network(mesh).totalCapacity(),
        ofRound.network(mesh).totalCapacity(),
        1e-6 * ofRound.network(mesh).totalCapacity());
    double round = Runs.mean(ofRound, "cup animal", mesh, conditions);
    double boxed = Runs.mean(ofSquare, "cup animal", mesh, conditions);
    // the cup is a small part of the way from the animal to the outside
    assertEquals(boxed, round, 0.1);
    assertTrue(round < 293 && round > 277, "on its way: " + round);
  }

  /** Half a metre is half a millimetre without its unit. */
  @Test
  void aVesselHasAThinWall() {
    Dimensions inner = new Dimensions(0.1, 0.1, 0.06);
    WallLayer metres = new WallLayer(Materials.POLYPROPYLENE, 0.5);
    for (Executable thick :
        List.<Executable>of(
            () -> new Vessel.BoxCup(inner, metres),
            () -> new Vessel.RoundCup(0.1, 0.06, metres),
            () -> new Vessel.Bag(inner, metres),
            () -> new Vessel.Vial(0.03, 0.08, Axis.Z, metres))) {
      assertEquals(
          "wall of a vessel: 0.5 m must lie between 0 m and 0.01 m. Is it in millimetres?",
          assertThrows(InvalidInputException.class, thick).getMessage());
    }
    assertEquals(
        "wall of a vessel: 0.02 m must lie between 0 m and 0.01 m. It is taken as a resistance"
            + " alone.",
        assertThrows(
                InvalidInputException.class,
                () -> new Vessel.Bag(inner, new WallLayer(Materials.EPS, 0.02)))
            .getMessage());
    WallLayer thickest = new WallLayer(Materials.EPS, 0.01);
    assertEquals(thickest, new Vessel.BoxCup(inner, thickest).wall());
  }

  /** A frog of 5 g on 20 mm of moss: what is said to have room has it. */
  @Test
  void whatHasRoomIsNamed() {
    Vessel cup = VesselSizes.named("8 fl oz").vessel();
    Occupant frog = Occupant.of(Animals.named("dyeing poison frog"), Mass.grams(5));
    assertRefused(
        "container 'cup': the animal on its bedding takes 35.0 mm (1.38 in) of height but the"
            + " container has 33.3 mm (1.31 in): 1.7 mm (0.07 in) too little. Take a larger one, such"
            + " as '12 fl oz' or '250 ml', or at most 18.4 mm (0.72 in) of bedding",
        () -> new Container("cup", cup, MIDDLE, Bedding.dampMoss(0.02), frog));
    new Container(
        "cup", VesselSizes.named("12 fl oz").vessel(), MIDDLE, Bedding.dampMoss(0.02), frog);
    new Container("cup", cup, MIDDLE, Bedding.dampMoss(0.0184), frog);
  }

  @Test
  void whatNoKnownContainerHoldsNeedsASizeOfItsOwn() {
    Vessel cup = VesselSizes.named("large lidded box").vessel();
    Occupant boa = Occupant.of(Animals.named("boa constrictor"), Mass.grams(10_000));
    assertRefused(
        "container 'cup': the animal takes 310.8 mm (12.24 in) of length but the container has 180.0"
            + " mm (7.08 in): 130.8 mm (5.16 in) too little. No larger container known by name has"
            + " room: write a size of your own, at least 311 x 311 x 104 mm",
        () -> new Container("cup", cup, MIDDLE, List.of(), Optional.of(boa)));
    Vessel own = new Vessel.BoxCup(new Dimensions(0.311, 0.311, 0.104), Packings.CUP_WALL);
    new Container("cup", own, MIDDLE, List.of(), Optional.of(boa));
  }
}
