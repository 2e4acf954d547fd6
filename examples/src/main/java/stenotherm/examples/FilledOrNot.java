package stenotherm.examples;

import static stenotherm.base.Temperatures.fromCelsius;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.animal.Limit;
import stenotherm.base.Face;
import stenotherm.base.Times;
import stenotherm.grid.Box;
import stenotherm.journey.Journey;
import stenotherm.journey.Surroundings;
import stenotherm.material.Materials;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Walls;
import stenotherm.transit.TransitResult;
import stenotherm.words.Figures;

/**
 * What does the fill around the cup do, without a warmer and with one?
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class FilledOrNot {
  private FilledOrNot() {}

  /**
   * Runs the example.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    // invented: the cup on the floor of a box that is left half a day in a room at 5 °C
    Walls walls = SampleParcel.walls(0.03);
    Box outer = walls.around(new Dimensions(0.19, 0.16, 0.14));
    Surroundings room = Surroundings.of(Ambient.constant(fromCelsius(5)), 0, FaceFilms.indoors());
    Journey wait = SampleParcel.wait(room, 12);
    Map<String, Filling> fillings = new LinkedHashMap<>();
    fillings.put("shredded paper", new Filling.Loose(Materials.SHREDDED_PAPER));
    fillings.put("crumpled newspaper", new Filling.Loose(Materials.CRUMPLED_NEWSPAPER));
    fillings.put("nothing, lined with foil", new Filling.Unfilled(0.05, 0));
    fillings.put("nothing", Filling.none());
    List<TransitResult> cooled = new ArrayList<>();
    List<TransitResult> warmed = new ArrayList<>();
    SampleParcel.print(
        "                           no warmer:        warmer on the lid, after 12 h:");
    SampleParcel.print(
        "filled with                alarm band left   animal's coldest  warmer's hottest");
    fillings.forEach(
        (name, filling) -> {
          TransitResult cold = SampleParcel.send(box(outer, walls, filling, List.of()), wait);
          TransitResult warm =
              SampleParcel.send(
                  box(outer, walls, filling, List.of(SampleParcel.warmer(Face.Z_MAX))), wait);
          cooled.add(cold);
          warmed.add(warm);
          SampleParcel.print(
              "%-25s  after %.1f h       %7.1f °C        %7.1f °C",
              name,
              alarmLeft(cold),
              SampleParcel.celsius(coldest(warm)),
              SampleParcel.celsius(SampleParcel.last(warm.hottest(SampleParcel.WARMER))));
        });
    int none = fillings.size() - 1;
    SampleParcel.print(
        "Taking out the shredded paper leaves the gecko %.1f h instead of %.1f h in its alarm band,"
            + " but with a warmer on the lid its coldest part changes by %s K.",
        alarmLeft(cooled.get(none)),
        alarmLeft(cooled.get(0)),
        Figures.METRIC.change(coldest(warmed.get(none)) - coldest(warmed.get(0))));
    SampleParcel.printCautions(warmed.get(none));
  }

  private static Parcel box(Box outer, Walls walls, Filling filling, List<PlacedWarmer> warmers) {
    return new Parcel(
        "box", outer, walls, filling, List.of(SampleParcel.cup(0)), warmers, List.of());
  }

  private static double alarmLeft(TransitResult result) {
    var breach = SampleParcel.exposure(result).outside(Limit.ALARM).firstBreach();
    return Times.toHours(breach.orElse(result.journey().duration()));
  }

  private static double coldest(TransitResult result) {
    return SampleParcel.last(result.coldest(SampleParcel.CUP));
  }
}
