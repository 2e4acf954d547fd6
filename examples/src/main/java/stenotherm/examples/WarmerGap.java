package stenotherm.examples;

import static stenotherm.base.Temperatures.fromCelsius;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stenotherm.ambient.Ambient;
import stenotherm.ambient.FaceFilms;
import stenotherm.animal.Limit;
import stenotherm.base.Axis;
import stenotherm.base.Lengths;
import stenotherm.base.Times;
import stenotherm.grid.Box;
import stenotherm.journey.Journey;
import stenotherm.journey.Surroundings;
import stenotherm.material.Materials;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Position;
import stenotherm.parcel.Walls;
import stenotherm.transit.TransitResult;
import stenotherm.warmer.Warmers;

/**
 * How much fill between a warmer and the cup below it does the animal need?
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class WarmerGap {
  private static final double[] GAPS = {0, 0.010, 0.025, 0.050, 0.075};

  private WarmerGap() {}

  /**
   * Runs the example.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    // invented: half a day in a room at 15 °C; at the widest gap the warmer lies under the lid
    Walls walls = SampleParcel.walls(0.03);
    double top = 0.02 + SampleParcel.CUP_SIZE.height();
    double pad = Warmers.FORTY_HOUR.size().thickness();
    Box outer = walls.around(new Dimensions(0.19, 0.16, top + GAPS[GAPS.length - 1] + pad));
    Surroundings room = Surroundings.of(Ambient.constant(fromCelsius(15)), 0, FaceFilms.indoors());
    Journey wait = SampleParcel.wait(room, 12);
    List<TransitResult> results = new ArrayList<>();
    SampleParcel.print("fill between  hottest part  left to the  hottest part");
    SampleParcel.print("   [mm]       [°C]          alarm band   of the warmer [°C]");
    for (double gap : GAPS) {
      var place = new Placement.InCavity(new Position(0, 0, top + gap), Axis.Z);
      var warmer =
          new PlacedWarmer(SampleParcel.WARMER, Warmers.FORTY_HOUR, place, -Times.fromHours(0.5));
      var parcel =
          new Parcel(
              "box",
              outer,
              walls,
              Materials.SHREDDED_PAPER,
              List.of(SampleParcel.cup(0.02)),
              List.of(warmer));
      TransitResult result = SampleParcel.send(parcel, wait);
      results.add(result);
      SampleParcel.print(
          "%7.0f       %4.1f          %5.1f K      %4.1f",
          Lengths.toMillimetres(gap),
          SampleParcel.celsius(SampleParcel.exposure(result).hottest().temperature()),
          left(result),
          SampleParcel.celsius(
              Arrays.stream(result.hottest(SampleParcel.WARMER)).max().orElseThrow()));
    }
    int enough = 0;
    while (enough < GAPS.length - 1 && left(results.get(enough)) < 0) {
      enough++;
    }
    SampleParcel.print(
        "Lying on the cup the warmer brings the gecko's hottest part to a margin of %.1f K;"
            + " %.0f mm of fill between them leave %.1f K.",
        left(results.get(0)), Lengths.toMillimetres(GAPS[enough]), left(results.get(enough)));
    SampleParcel.printCautions(results.get(0));
  }

  private static double left(TransitResult result) {
    return SampleParcel.exposure(result).hotMargin(Limit.ALARM);
  }
}
