package stenotherm.examples;

import static stenotherm.base.Temperatures.fromCelsius;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.base.Face;
import stenotherm.base.Times;
import stenotherm.grid.Box;
import stenotherm.journey.Journey;
import stenotherm.journey.Surroundings;
import stenotherm.material.Materials;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Walls;
import stenotherm.picture.HistoryChart;
import stenotherm.transit.TransitResult;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/**
 * What does tape over a warmer's film do, and what a short hot pouch instead of a long one, or two
 * of them?
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class FilmAndPouch {
  private static final Placement LID = Placement.onFace(Face.Z_MAX, Mounting.taped());

  /** What one box came to. */
  private record Row(String name, TransitResult result) {
    /** Of all warmers together [W]. */
    double[] power() {
      double[] sum = new double[result.times().length];
      for (PlacedWarmer warmer : result.parcel().warmers()) {
        double[] one = result.power(warmer.name());
        Arrays.setAll(sum, at -> sum[at] + one[at]);
      }
      return sum;
    }

    double hottestSurface() {
      return result.parcel().warmers().stream()
          .flatMapToDouble(warmer -> Arrays.stream(result.hottest(warmer.name())))
          .max()
          .orElseThrow();
    }

    double leastOxygen() {
      return 100 * Arrays.stream(result.oxygen(SampleParcel.CUP)).min().orElseThrow();
    }

    double last() {
      return SampleParcel.celsius(SampleParcel.last(result.mean(SampleParcel.CUP)));
    }
  }

  private FilmAndPouch() {}

  /**
   * Runs the example.
   *
   * @param args a file for the picture; none if empty
   */
  public static void main(String[] args) {
    Walls walls = SampleParcel.walls(0.03);
    Box outer = walls.around(new Dimensions(0.19, 0.18, 0.14));
    Surroundings room = Surroundings.of(Ambient.constant(fromCelsius(5)), 0, FaceFilms.indoors());
    Journey day = SampleParcel.wait(room, 24);
    List<Row> rows = new ArrayList<>();
    SampleParcel.print(
        "warmer on the lid                  power [W]     hottest      least       animal");
    SampleParcel.print(
        "                                 most  at end  surface [°C]  oxygen [%%]  at end [°C]");
    List<List<PlacedWarmer>> all =
        List.of(
            List.of(warmer(Warmers.FORTY_HOUR, FilmCover.FREE, LID)),
            List.of(warmer(Warmers.FORTY_HOUR, FilmCover.HALF_TAPED, LID)),
            List.of(warmer(Warmers.FORTY_HOUR, FilmCover.TAPED_OVER, LID)),
            List.of(warmer(Warmers.TEN_HOUR, FilmCover.FREE, LID)),
            List.of(warmer(Warmers.SEVENTY_TWO_HOUR, FilmCover.FREE, LID)),
            two());
    for (List<PlacedWarmer> warmers : all) {
      PlacedWarmer first = warmers.get(0);
      String name =
          (warmers.size() > 1 ? "two, " : "")
              + first.warmer().name()
              + ", "
              + first.cover().words();
      var parcel =
          new Parcel(
              "box",
              outer,
              walls,
              Materials.SHREDDED_PAPER,
              List.of(SampleParcel.cup(0.02)),
              warmers);
      Row row = new Row(name, SampleParcel.send(parcel, day));
      rows.add(row);
      SampleParcel.print(
          "%-32s %4.2f    %4.2f      %5.1f         %4.1f        %5.1f",
          name,
          Arrays.stream(row.power()).max().orElseThrow(),
          SampleParcel.last(row.power()),
          SampleParcel.celsius(row.hottestSurface()),
          row.leastOxygen(),
          row.last());
    }
    SampleParcel.print(
        "After a day the gecko has %.1f °C with the film free, %.1f °C half taped, %.1f °C taped"
            + " over; %.1f °C with a %s, %.1f °C with two of 40 hours.",
        rows.get(0).last(),
        rows.get(1).last(),
        rows.get(2).last(),
        rows.get(3).last(),
        Warmers.TEN_HOUR.name(),
        rows.get(5).last());
    SampleParcel.printCautions(rows.get(0).result());
    HistoryChart.Builder chart = HistoryChart.titled("Power of the warmers", "power [W]");
    rows.forEach(row -> chart.line(SampleParcel.line(row.name(), row.result(), row.power(), 1)));
    SampleParcel.draw(chart.build(), args);
  }

  /** Opened half an hour before the box was sealed. */
  private static PlacedWarmer warmer(WarmerClass kind, FilmCover cover, Placement placement) {
    return new PlacedWarmer(SampleParcel.WARMER, kind, placement, -Times.fromHours(0.5), cover);
  }

  /** Side by side. */
  private static List<PlacedWarmer> two() {
    Placement front = new Placement.OnFace(Face.Z_MAX, 0, -0.044, Mounting.taped());
    Placement back = new Placement.OnFace(Face.Z_MAX, 0, 0.044, Mounting.taped());
    return List.of(
        warmer(Warmers.FORTY_HOUR, FilmCover.FREE, front),
        new PlacedWarmer(
            "second", Warmers.FORTY_HOUR, back, -Times.fromHours(0.5), FilmCover.FREE));
  }
}
