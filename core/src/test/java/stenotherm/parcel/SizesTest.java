package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.base.Orientation;
import stenotherm.base.Volumes;
import stenotherm.conduction.HeatNetwork;
import stenotherm.grid.Box;
import stenotherm.grid.MeshControl;
import stenotherm.material.Materials;

class SizesTest {
  @Test
  void cartonsAreNamedByTheirInside() {
    BoxSize size = BoxSizes.named("8 X 8 x 7 in carton");
    assertEquals(0.2032, size.inside().length(), 1e-12);
    assertEquals(0.1778, size.inside().height(), 1e-12);
    Box outer = size.outer(Packings.WALLS);
    // 4 mm of board on each side; the foam lies inside
    assertEquals(0.2112, outer.size(Axis.X), 1e-12);
    assertEquals(0.1858, outer.size(Axis.Z), 1e-12);
    assertEquals(0.2032, Packings.WALLS.inside(outer, 1).size(Axis.Y), 1e-12);
    assertThrows(InvalidInputException.class, () -> BoxSizes.named("8 x 8 x 9 in carton"));
    BoxSize any = BoxSize.carton("flat", new Dimensions(0.3, 0.2, 0.05));
    assertEquals(0.058, any.outer(Packings.WALLS).size(Axis.Z), 1e-12);
  }

  @Test
  void cupsHoldWhatTheirNameSays() {
    for (int ounces : new int[] {2, 4, 8, 12, 16, 24, 32}) {
      Vessel.RoundCup cup = (Vessel.RoundCup) VesselSizes.named(ounces + " fl oz").vessel();
      double volume = Math.PI / 4 * cup.diameter() * cup.diameter() * cup.height();
      assertEquals(Volumes.fromFluidOunces(ounces), volume, 3e-14);
      assertTrue(cup.height() > 0.02 && cup.height() < 0.12);
    }
    Vessel.Vial vial = (Vessel.Vial) VesselSizes.named("40 dram vial").vessel();
    double volume = Math.PI / 4 * vial.diameter() * vial.diameter() * vial.length();
    assertEquals(Volumes.fromFluidOunces(5), volume, 3e-14);
    assertEquals(85, Lengths.toMillimetres(vial.length()), 2);
  }

  @Test
  void cupsAreFoundByTheWordsOfTheirUsers() {
    VesselSize cup = VesselSizes.named("16 fl oz");
    for (String words :
        List.of(
            "16 fl oz cup",
            " 16 oz deli cup",
            "16oz",
            "16 OZ Tub",
            "16 ounce container ",
            "16-oz cup",
            "16 fl. oz.",
            "16 fluid ounces",
            "16 oz plastic deli cup",
            "16 oz insect cup")) {
      assertEquals(cup, VesselSizes.named(words), words);
    }
    for (String other : List.of("17 oz jar", "16 oz jar", "16 fl cup", "oz")) {
      String message =
          assertThrows(InvalidInputException.class, () -> VesselSizes.named(other)).getMessage();
      assertTrue(message.contains("there is no \"" + other + "\""), message);
    }
  }

  @Test
  void cupsAreFoundByAnyVolumeInFluidOunces() {
    VesselSize size = VesselSizes.named("5.5 oz deli cup");
    assertEquals("5.5 fl oz", size.name());
    assertEquals(Volumes.fromFluidOunces(5.5), size.vessel().volume(), 1e-15);
    for (String other : List.of("0.5 oz", "170 oz")) {
      String message =
          assertThrows(InvalidInputException.class, () -> VesselSizes.named(other)).getMessage();
      assertTrue(message.contains(other + " must lie between 20 ml and 5 l (0.7 and"), message);
    }
  }

  @Test
  void cupsAreFoundByTheirMetricVolume() {
    for (String words :
        List.of("500 ml", "500ml cup", " 0.5 l", "0.5 litre tub", ".5 L deli cup")) {
      VesselSize size = VesselSizes.named(words);
      assertEquals("500 ml", size.name(), words);
      Vessel.RoundCup cup = (Vessel.RoundCup) size.vessel();
      assertEquals(0.0005, Math.PI / 4 * cup.diameter() * cup.diameter() * cup.height(), 1e-15);
      // between the cups of 16 and of 24 fl oz
      assertTrue(cup.diameter() > 0.1 && cup.diameter() < 0.102);
    }
    Vessel.RoundCup ounces = (Vessel.RoundCup) VesselSizes.named("32 fl oz").vessel();
    Vessel.RoundCup larger = (Vessel.RoundCup) VesselSizes.named("4 l").vessel();
    assertEquals(larger.diameter() / ounces.diameter(), larger.height() / ounces.height(), 1e-12);
    for (String wrong : List.of("10 ml", "6 l")) {
      assertTrue(
          refused(wrong).contains(wrong + " must lie between 20 ml and 5 l"), refused(wrong));
    }
    assertTrue(refused("0,5 l").contains("write a point as the decimal mark"), refused("0,5 l"));
  }

  private static String refused(String vessel) {
    return assertThrows(InvalidInputException.class, () -> VesselSizes.named(vessel)).getMessage();
  }

  /** A name is what the sizes say, and finds them. */
  @Test
  void metricSizesAreFoundByTheirNames() {
    for (VesselSize size : VesselSizes.metric()) {
      assertEquals(size, VesselSizes.named(size.name()));
    }
    double before = 0;
    for (BoxSize size : BoxSizes.metric()) {
      assertEquals(size, BoxSizes.named(size.name()));
      assertTrue(size.inside().volume() >= before, size.name());
      before = size.inside().volume();
    }
  }

  /** On the coarsest grid of an assessment too; a vial lies down as well. */
  @Test
  void everyVesselIsFoundByACoarseGrid() {
    for (VesselSize size :
        Stream.concat(VesselSizes.all().stream(), VesselSizes.metric().stream())
            .distinct()
            .toList()) {
      assertTotalCapacity(size.name(), size.vessel());
      if (size.vessel() instanceof Vessel.Vial vial) {
        assertTotalCapacity(
            size.name(), new Vessel.Vial(vial.diameter(), vial.length(), Axis.Y, vial.wall()));
      }
    }
  }

  private static void assertTotalCapacity(String name, Vessel vessel) {
    Bedding towel = Bedding.dampTowel(0.003);
    Container container =
        new Container(
            "c", vessel, Position.MIDDLE_OF_FLOOR, List.of(towel), java.util.Optional.empty());
    Parcel parcel =
        new Parcel(
            name,
            Box.ofSize(0.34, 0.30, 0.24),
            Packings.WALLS,
            Filling.none(),
            List.of(container),
            List.of(),
            List.of());
    HeatNetwork network = parcel.network(MeshControl.graded(0.02, 0.01));
    double air = Materials.STILL_AIR.volumetricHeatCapacity() * parcel.cavity().volume();
    double water = container.waterMass() * 4 / 3 * Materials.DAMP_PAPER_TOWEL.specificHeat();
    double walls = Packings.WALLS.mass(parcel.outer());
    double foamAndBoard = network.totalCapacity() - water - air;
    // board has 1340, foam 1450 J/(kg K); what the towel displaces is air
    assertTrue(foamAndBoard > 1330 * walls && foamAndBoard < 1450 * walls, name);
    network.withConductivities(parcel.conductivities(Orientation.LID_DOWN, 288.15));
  }

  /** Bedding up to the lid leaves no air, and a container as large as the cavity no filling. */
  @Test
  void nothingIsLeftOfAFullVesselInAFullCavity() {
    Box cavity = Packings.plain().cavity();
    Dimensions whole =
        new Dimensions(cavity.size(Axis.X), cavity.size(Axis.Y), cavity.size(Axis.Z));
    Container full =
        new Container(
            "c",
            new Vessel.BoxCup(whole, Packings.CUP_WALL),
            Position.MIDDLE_OF_FLOOR,
            List.of(Bedding.dampCoir(whole.height())),
            java.util.Optional.empty());
    Parcel parcel =
        new Parcel(
            "full",
            Packings.OUTER,
            Packings.WALLS,
            Filling.none(),
            List.of(full),
            List.of(),
            List.of());
    HeatNetwork network = parcel.network(MeshControl.graded(0.04, 0.02));
    network.withConductivities(parcel.conductivities(Orientation.LID_UP, 288.15));
  }

  @Test
  void namesAreUnique() {
    List<String> boxes = BoxSizes.all().stream().map(BoxSize::name).toList();
    List<String> vessels = VesselSizes.all().stream().map(VesselSize::name).toList();
    assertEquals(boxes.size(), new HashSet<>(boxes).size());
    assertEquals(vessels.size(), new HashSet<>(vessels).size());
    assertTrue(boxes.size() >= 8 && vessels.size() >= 8);
  }
}
