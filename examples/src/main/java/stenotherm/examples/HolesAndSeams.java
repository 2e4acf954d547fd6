package stenotherm.examples;

import static stenotherm.base.Temperatures.fromCelsius;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.Face;
import stenotherm.grid.Box;
import stenotherm.journey.Journey;
import stenotherm.journey.Surroundings;
import stenotherm.material.Material;
import stenotherm.material.Materials;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Openings;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.Vent;
import stenotherm.parcel.Walls;
import stenotherm.picture.HistoryChart;
import stenotherm.transit.TransitResult;

/**
 * How many holes does a box with a warmer need, and where, if its seams are taped or not, and if
 * its foam breathes or not?
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class HolesAndSeams {
  private static final double TAPED = 0;

  /** What one box came to. */
  private record Row(String name, TransitResult result) {
    double leastOxygen() {
      return 100 * Arrays.stream(result.oxygen(SampleParcel.CUP)).min().orElseThrow();
    }

    double coldest() {
      return SampleParcel.celsius(SampleParcel.exposure(result).coldest().temperature());
    }
  }

  private HolesAndSeams() {}

  /**
   * Runs the example.
   *
   * @param args a file for the picture; none if empty
   */
  public static void main(String[] args) {
    Map<String, Openings> openings = new LinkedHashMap<>();
    openings.put("taped, no hole", new Openings(TAPED, List.of()));
    openings.put("taped, 2 holes in the lid", lid(TAPED, 2));
    openings.put("taped, 2 in lid, 2 in floor", lidAndFloor(2));
    openings.put("taped, 4 holes in the lid", lid(TAPED, 4));
    openings.put("not taped, no hole", Openings.usual());
    openings.put("not taped, 4 in the lid", lid(Openings.CLOSED_GAP, 4));
    Surroundings room = Surroundings.of(Ambient.constant(fromCelsius(5)), 0, FaceFilms.indoors());
    Journey day = SampleParcel.wait(room, 24);
    List<Row> rows = new ArrayList<>();
    SampleParcel.print(
        "foam, seams, holes of 6 mm           least oxygen  warmer at end  animal's");
    SampleParcel.print(
        "                                          [%%]           [W]       coldest [°C]");
    for (Material foam : List.of(Materials.EPS_20, Materials.XPS)) {
      Walls walls = SampleParcel.walls(foam, 0.03);
      Box outer = walls.around(new Dimensions(0.19, 0.16, 0.14));
      openings.forEach(
          (name, ways) -> {
            Parcel parcel =
                new Parcel(
                        "box",
                        outer,
                        walls,
                        Materials.SHREDDED_PAPER,
                        List.of(SampleParcel.cup(0.02)),
                        List.of(SampleParcel.warmer(Face.Z_MAX)))
                    .withOpenings(ways);
            Row row = new Row(foam.name() + ", " + name, SampleParcel.send(parcel, day));
            rows.add(row);
            SampleParcel.print(
                "%-36s   %5.1f         %5.2f          %5.1f",
                row.name(),
                row.leastOxygen(),
                SampleParcel.last(row.result().power(SampleParcel.WARMER)),
                row.coldest());
          });
    }
    Row breathes = rows.get(0);
    Row tight = rows.get(openings.size());
    Row holes = rows.get(openings.size() + 2);
    SampleParcel.print(
        "With all seams taped and no hole %s leaves %.1f %% oxygen, %s %.1f %%; two holes of 6 mm"
            + " above and two below keep %.1f %% in %s.",
        Materials.EPS_20.name(),
        breathes.leastOxygen(),
        Materials.XPS.name(),
        tight.leastOxygen(),
        holes.leastOxygen(),
        Materials.XPS.name());
    SampleParcel.printCautions(holes.result());
    HistoryChart.Builder chart = HistoryChart.titled("Oxygen in the cup", "oxygen [%]");
    List.of(breathes, tight, holes)
        .forEach(
            row ->
                chart.line(
                    SampleParcel.line(
                        row.name(), row.result(), row.result().oxygen(SampleParcel.CUP), 100)));
    SampleParcel.draw(chart.build(), args);
  }

  private static Openings lid(double seams, int holes) {
    return new Openings(seams, List.of(new Vent(Face.Z_MAX, holes, 0.006)));
  }

  private static Openings lidAndFloor(int each) {
    return new Openings(
        TAPED, List.of(new Vent(Face.Z_MAX, each, 0.006), new Vent(Face.Z_MIN, each, 0.006)));
  }
}
