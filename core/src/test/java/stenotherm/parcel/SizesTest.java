package stenotherm.parcel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import stenotherm.base.Axis;
import stenotherm.base.InvalidInputException;
import stenotherm.base.Lengths;
import stenotherm.base.Volumes;
import stenotherm.grid.Box;

class SizesTest {
  @Test
  void cartonsAreNamedByTheirInside() {
    BoxSize size = BoxSizes.named("8 X 8 x 7 in");
    assertEquals(0.2032, size.inside().length(), 1e-12);
    assertEquals(0.1778, size.inside().height(), 1e-12);
    Box outer = size.outer(Packings.WALLS);
    // 4 mm of board on each side; the foam lies inside
    assertEquals(0.2112, outer.size(Axis.X), 1e-12);
    assertEquals(0.1858, outer.size(Axis.Z), 1e-12);
    assertEquals(0.2032, Packings.WALLS.inside(outer, 1).size(Axis.Y), 1e-12);
    assertThrows(InvalidInputException.class, () -> BoxSizes.named("8 x 8 x 9 in"));
  }

  @Test
  void cupsHoldWhatTheirNameSays() {
    for (int ounces : new int[] {2, 4, 8, 12, 16, 24, 32}) {
      Vessel.RoundCup cup = (Vessel.RoundCup) VesselSizes.named(ounces + " fl oz").vessel();
      double volume = Math.PI / 4 * cup.diameter() * cup.diameter() * cup.height();
      assertEquals(ounces, Volumes.toFluidOunces(volume), 1e-9);
      assertTrue(cup.height() > 0.02 && cup.height() < 0.12);
    }
    Vessel.Vial vial = (Vessel.Vial) VesselSizes.named("40 dram vial").vessel();
    double volume = Math.PI / 4 * vial.diameter() * vial.diameter() * vial.length();
    assertEquals(5, Volumes.toFluidOunces(volume), 1e-9);
    assertEquals(85, Lengths.toMillimetres(vial.length()), 2);
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
