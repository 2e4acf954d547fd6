package stenotherm.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.parcel.Parcel;
import stenotherm.scenario.ScenarioReader;
import stenotherm.words.Figures;

class HolePlacesTest {
  /** Inside 240 by 200 by 180 mm; walls of 24 mm. */
  private static Parcel parcel(String packing) {
    return ScenarioReader.read(
            "holes.yaml",
            """
            format: 1
            title: Holes
            animal: leopard gecko, 40 g
            cup: 100 x 80 x 60 mm
            journey: overnight by air, 28 to 45 °F
            packings:
              - {name: box, box: {inner: 240 x 200 x 180 mm}, foam: EPS 20 20 mm, fill: shredded paper, %s}
            """
                .formatted(packing))
        .packings()
        .get(0);
  }

  private static List<String> words(Parcel parcel) {
    HolePlaces places = new HolePlaces(parcel, Figures.METRIC);
    return places.rows().stream().map(places::words).toList();
  }

  /** Beside the warmer, and beside the container far below it. */
  @Test
  void holesLieBesideWhatIsOnTheirFaceAndBehindIt() {
    Parcel parcel =
        parcel(
            "warmer: 40 hour warmer on lid, holes: [2 x 6 mm on lid, 1 x 6 mm on front, 3 x 6 mm on"
                + " left]");
    assertEquals(
        List.of(
            "both 64 mm from front, one 84 mm from left and one 84 mm from right",
            "at half the height, half-way between left and right",
            "in a row at half the height, the outer ones 57 mm from front and back, all equally"
                + " apart"),
        words(parcel));
  }

  /** Two kinds of holes on one face do not fall together. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "warmer: 40 hour warmer on lid, holes: [2 x 6 mm on lid, 2 x 6 mm on lid, 12 x 5 mm on right]",
        "warmer: 40 hour warmer on front, holes: [4 x 6 mm on front, 3 x 8 mm on back, 2 x 6 mm on floor]",
        "packs: [{pack: gel pack on left, size: 120 x 80 x 20 mm, start: 5 °C}], holes: [5 x 4 mm on left, 1 x 6 mm on lid]",
      })
  void rimsAreFreeAndSidesHaveTheirHolesAtHalfTheHeight(String packing) {
    Parcel parcel = parcel(packing);
    Box cavity = parcel.cavity();
    List<HolePlaces.Row> rows = new HolePlaces(parcel, Figures.METRIC).rows();
    assertEquals(parcel.openings().vents(), rows.stream().map(HolePlaces.Row::vent).toList());
    for (HolePlaces.Row row : rows) {
      Face face = row.vent().face();
      assertEquals(row.vent().count(), row.middles().size());
      double height = 0;
      for (Point middle : row.middles()) {
        assertEquals(cavity.at(face), middle.along(face.axis()), 1e-12);
        assertTrue(cavity.contains(middle));
        height += middle.z() / row.vent().count();
        for (HolePlaces.Row other : rows) {
          assertEquals(
              row == other ? 1 : 0, other.middles().stream().filter(middle::equals).count());
        }
        parcel
            .warmers()
            .forEach(each -> assertClear(parcel, face, middle, row.vent().diameter(), each.name()));
        parcel
            .packs()
            .forEach(each -> assertClear(parcel, face, middle, row.vent().diameter(), each.name()));
      }
      if (face.axis() != Axis.Z) {
        assertEquals(parcel.outer().centre().z(), height, 1e-9);
      }
    }
  }

  /** What lies on the face lies nowhere within 8 mm of a rim. */
  private static void assertClear(
      Parcel parcel, Face face, Point middle, double diameter, String name) {
    Box box = parcel.layout().block(name).box();
    if (box.at(face) != parcel.cavity().at(face)) {
      return;
    }
    double reach = diameter / 2 + 0.008;
    double[] low = {middle.x() - reach, middle.y() - reach, middle.z() - reach};
    double[] high = {middle.x() + reach, middle.y() + reach, middle.z() + reach};
    Box around = new Box(new Point(low[0], low[1], low[2]), new Point(high[0], high[1], high[2]));
    assertTrue(box.overlap(around) <= 1e-9, name + " " + middle);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "floor: EPS 20 60 mm, holes: 2 x 6 mm on right|both at half the height, one 44 mm from front and one 44 mm from back",
        "packs: [{pack: gel pack on right, size: 195 x 40 x 20 mm, start: 5 °C}], holes: 1 x 6 mm on right|73 mm from bottom, half-way between front and back (the air is computed for half the height)",
        "packs: [{pack: gel pack on lid, size: 225 x 185 x 20 mm, start: 5 °C}], holes: 2 x 6 mm on lid|spread beside what is inside, for no row along an edge has room for them",
        "holes: 1000 x 1 mm on lid|spread beside what is inside, for no row along an edge has room for them",
      })
  void whatIsNotAsComputedOrHasNoPlaceSaysSo(String packing, String told) {
    assertEquals(List.of(told), words(parcel(packing)));
  }
}
