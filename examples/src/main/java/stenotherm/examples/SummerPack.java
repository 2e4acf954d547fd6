package stenotherm.examples;

import static stenotherm.base.Temperatures.fromCelsius;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stenotherm.ambient.DailyExtremes;
import stenotherm.ambient.DiurnalShape;
import stenotherm.ambient.FaceFilms;
import stenotherm.animal.Exposure;
import stenotherm.animal.Limit;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Source;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.journey.Journey;
import stenotherm.journey.Surroundings;
import stenotherm.material.Materials;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Filling;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.PackClass;
import stenotherm.parcel.PackStart;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.Placement;
import stenotherm.parcel.Walls;
import stenotherm.transit.TransitResult;

/**
 * Which pack carries a gecko through a hot day: none, one or two, of paraffin or of frozen gel, and
 * when is it spent?
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class SummerPack {
  private static final Source INVENTED = Source.assumed("invented");
  private static final Dimensions SIZE = new Dimensions(0.15, 0.10, 0.02);

  /** 230 g of a paraffin that melts at 18 °C, bare. */
  private static final PackClass PARAFFIN =
      new PackClass("paraffin", Materials.HEXADECANE, SIZE, 0.23, 0, INVENTED);

  /** 250 g of gel that melts at 0 °C, in bubble film of 5 mm. */
  private static final PackClass GEL =
      new PackClass("gel", Materials.GEL_PACK, SIZE, 0.25, 0.1, INVENTED);

  private SummerPack() {}

  /**
   * Runs the example.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    // invented: box and packs; a day of 24 °C to 37 °C in the shade, from eight to eight
    var day = new Range(fromCelsius(24), fromCelsius(37));
    TimeFunction air =
        new DailyExtremes(-Times.fromHours(8), List.of(day, day), DiurnalShape.onClock(1));
    Journey lane = SampleParcel.wait(Surroundings.of(air, 0, FaceFilms.indoors()), 24);
    Map<String, List<PlacedPack>> choices = new LinkedHashMap<>();
    choices.put("no pack", List.of());
    choices.put("paraffin on lid", packs(PARAFFIN, 15, Face.Z_MAX));
    choices.put("paraffin, lid and floor", packs(PARAFFIN, 15, Face.Z_MAX, Face.Z_MIN));
    choices.put("gel on lid", packs(GEL, -5, Face.Z_MAX));
    choices.put("gel, lid and floor", packs(GEL, -5, Face.Z_MAX, Face.Z_MIN));
    List<TransitResult> results = new ArrayList<>();
    SampleParcel.print(
        "                         hottest  coldest  left to the alarm band  pack on lid");
    SampleParcel.print("packs                      [°C]     [°C]   hot [K]    cold [K]     melted");
    choices.forEach(
        (name, packs) -> {
          TransitResult result = SampleParcel.send(box(packs), lane);
          results.add(result);
          Exposure exposure = SampleParcel.exposure(result);
          SampleParcel.print(
              "%-23s  %6.1f   %6.1f   %6.1f     %6.1f       %s",
              name,
              SampleParcel.celsius(exposure.hottest().temperature()),
              SampleParcel.celsius(exposure.coldest().temperature()),
              exposure.hotMargin(Limit.ALARM),
              exposure.coldMargin(Limit.ALARM),
              packs.isEmpty() ? "-" : melted(result));
        });
    List<String> names = List.copyOf(choices.keySet());
    TransitResult best = Collections.max(results, Comparator.comparingDouble(SummerPack::left));
    SampleParcel.print(
        "Most is left with '%s': %.1f K on the tighter side; '%s' leaves %.1f K, '%s' %.1f K.",
        names.get(results.indexOf(best)),
        left(best),
        names.get(0),
        left(results.get(0)),
        names.get(names.size() - 1),
        left(results.get(results.size() - 1)));
    SampleParcel.printCautions(results.get(1));
  }

  /** On the tighter side of the alarm band [K]. */
  private static double left(TransitResult result) {
    Exposure exposure = SampleParcel.exposure(result);
    return Math.min(exposure.hotMargin(Limit.ALARM), exposure.coldMargin(Limit.ALARM));
  }

  private static List<PlacedPack> packs(PackClass pack, double celsius, Face... faces) {
    var start = new PackStart.AtTemperature(fromCelsius(celsius));
    return Arrays.stream(faces)
        .map(
            face ->
                new PlacedPack(
                    "pack on " + face.words(),
                    pack,
                    Placement.onFace(face, Mounting.taped()),
                    start))
        .toList();
  }

  private static Parcel box(List<PlacedPack> packs) {
    Walls walls = SampleParcel.walls(0.03);
    return new Parcel(
        "box",
        walls.around(new Dimensions(0.19, 0.16, 0.15)),
        walls,
        new Filling.Loose(Materials.SHREDDED_PAPER),
        List.of(SampleParcel.cup(0.045)),
        List.of(),
        packs);
  }

  /** When a pack has melted through, or how far. */
  private static String melted(TransitResult result) {
    double[] liquid = result.liquidFraction("pack on lid");
    for (int row = 0; row < liquid.length; row++) {
      if (liquid[row] > 0.999) {
        return String.format(Locale.ROOT, "after %.0f h", Times.toHours(result.times()[row]));
      }
    }
    return String.format(Locale.ROOT, "%.0f %%", 100 * SampleParcel.last(liquid));
  }
}
