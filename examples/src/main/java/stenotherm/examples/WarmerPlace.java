package stenotherm.examples;

import static stenotherm.base.Temperatures.fromCelsius;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.Face;
import stenotherm.grid.Box;
import stenotherm.journey.Journey;
import stenotherm.journey.Surroundings;
import stenotherm.material.Materials;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Walls;
import stenotherm.transit.TransitResult;

/**
 * Does a warmer do more on the lid, on a side wall or on the floor, and where does its heat go?
 * Where it does most it may do harm: below a cup an animal lies on what it heats, and an animal
 * that cannot leave a warmer is burnt by it.
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class WarmerPlace {
  /** What one place came to. */
  private record Row(String place, TransitResult result) {
    double coldest() {
      return SampleParcel.last(result.coldest(SampleParcel.CUP));
    }

    double out(Face face) {
      return -SampleParcel.last(result.heatFlow(face));
    }

    double outTogether() {
      return Arrays.stream(Face.values()).mapToDouble(this::out).sum();
    }
  }

  private WarmerPlace() {}

  /**
   * Runs the example.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    // invented: 40 mm of fill on every side of the cup, a day in a room at 5 °C
    Walls walls = SampleParcel.walls(0.03);
    Box outer = walls.around(new Dimensions(0.19, 0.16, 0.14));
    Surroundings room = Surroundings.of(Ambient.constant(fromCelsius(5)), 0, FaceFilms.indoors());
    Journey day = SampleParcel.wait(room, 24);
    List<Row> rows = new ArrayList<>();
    SampleParcel.print("after 24 h   animal [°C]       heat out by [W]        warmer");
    SampleParcel.print("warmer on    coldest  hottest   lid  sides  floor    gives [W]");
    for (Face face : List.of(Face.Z_MAX, Face.Y_MIN, Face.Z_MIN)) {
      PlacedWarmer warmer = SampleParcel.warmer(face);
      var parcel =
          new Parcel(
              "box",
              outer,
              walls,
              Materials.SHREDDED_PAPER,
              List.of(SampleParcel.cup(0.04)),
              List.of(warmer));
      Row row = new Row(face.words(), SampleParcel.send(parcel, day));
      rows.add(row);
      double lid = row.out(Face.Z_MAX);
      double floor = row.out(Face.Z_MIN);
      SampleParcel.print(
          "%-11s  %7.1f  %7.1f  %4.2f   %4.2f   %4.2f         %4.2f",
          row.place(),
          SampleParcel.celsius(row.coldest()),
          SampleParcel.celsius(SampleParcel.last(row.result().hottest(SampleParcel.CUP))),
          lid,
          row.outTogether() - lid - floor,
          floor,
          SampleParcel.last(row.result().power(warmer.name())));
    }
    Row best = rows.stream().max(Comparator.comparingDouble(Row::coldest)).orElseThrow();
    Row worst = rows.stream().min(Comparator.comparingDouble(Row::coldest)).orElseThrow();
    SampleParcel.print(
        "The coldest part of the gecko is warmest with the warmer on the %s, %.1f K above the %s;"
            + " that is no advice to put it there: an animal above a warmer, or in reach of it, can"
            + " be burnt.",
        best.place(), best.coldest() - worst.coldest(), worst.place());
    SampleParcel.printCautions(best.result());
  }
}
