package stenotherm.examples;

import static stenotherm.base.Temperatures.fromCelsius;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import stenotherm.ambient.DailyExtremes;
import stenotherm.ambient.DiurnalShape;
import stenotherm.ambient.Situations;
import stenotherm.ambient.SolarAbsorptance;
import stenotherm.ambient.Sunshine;
import stenotherm.animal.Limit;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.journey.Contact;
import stenotherm.journey.Surroundings;
import stenotherm.material.Materials;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.Parcel;
import stenotherm.parcel.Walls;
import stenotherm.sun.FaceIrradiance;
import stenotherm.sun.OpticalDepths;
import stenotherm.sun.Sky;
import stenotherm.sun.SunSite;
import stenotherm.transit.TransitResult;

/**
 * What does a day in the sun do, on a part of the lid, on the lid or all round, to a white box and
 * to a brown one?
 *
 * <p>Experimental. Stateless, thus thread-safe.
 */
public final class DayInTheSun {
  private static final double HOURS = 10;
  private static final Range WHOLE = new Range(0, 1);

  private DayInTheSun() {}

  /**
   * Runs the example.
   *
   * @param args not used
   */
  public static void main(String[] args) {
    // invented: no loss to the sky, which is the hot side; a summer day of 18 °C to 28 °C at 40°
    // north, 75° west, x to the east, from eight
    var day = new Range(fromCelsius(18), fromCelsius(28));
    TimeFunction air =
        new DailyExtremes(-Times.fromHours(8), List.of(day), DiurnalShape.onClock(1));
    var site = new SunSite(40, -75, SampleParcel.CLOCK);
    Sky sky = Sky.cloudless(OpticalDepths.HAZY_SUMMER);
    var time = new Range(0, Times.fromHours(HOURS));
    Map<Face, TimeFunction> sun = FaceIrradiance.of(site, sky, 90, SampleParcel.MORNING, time);
    Map<Face, TimeFunction> onLid = Map.of(Face.Z_MAX, sun.get(Face.Z_MAX));
    // half a lid's width in the shadow of a wall
    // the western half of the lid lies in shadow
    var shadow =
        new Contact(
            Face.Z_MAX, new Range(0, 0.5), WHOLE, new Contact.Sunlit(TimeFunction.constant(0)));
    Surroundings shade = Surroundings.of(air, 0, Situations.PORCH_IN_SUN.films());
    Map<String, Function<SolarAbsorptance, Surroundings>> places = new LinkedHashMap<>();
    places.put("nothing", paint -> shade);
    places.put(
        "half of the lid",
        paint -> shade.under(new Sunshine(onLid, paint, 0)).touching(List.of(shadow)));
    places.put("the lid", paint -> shade.under(new Sunshine(onLid, paint, 0)));
    places.put("lid and sides", paint -> shade.under(new Sunshine(sun, paint, 0)));
    List<TransitResult> brownBoxes = new ArrayList<>();
    SampleParcel.print(
        "                 hottest part [°C]   to the alarm band [K]   hottest lid [°C]");
    SampleParcel.print(
        "sun on            white   brown         white    brown        white   brown");
    places.forEach(
        (name, under) -> {
          TransitResult white =
              SampleParcel.send(
                  box(), SampleParcel.wait(under.apply(SolarAbsorptance.WHITE_PAINT), HOURS));
          TransitResult brown =
              SampleParcel.send(
                  box(), SampleParcel.wait(under.apply(SolarAbsorptance.KRAFT_BOARD), HOURS));
          brownBoxes.add(brown);
          SampleParcel.print(
              "%-15s  %6.1f  %6.1f        %6.1f   %6.1f       %6.1f  %6.1f",
              name,
              SampleParcel.celsius(hottest(white)),
              SampleParcel.celsius(hottest(brown)),
              left(white),
              left(brown),
              SampleParcel.celsius(lid(white)),
              SampleParcel.celsius(lid(brown)));
        });
    TransitResult all = brownBoxes.get(3);
    SampleParcel.print(
        "Sun on the lid makes the hottest part of a gecko in a brown box %.1f K hotter than shade"
            + " does, sun on lid and sides %.1f K: the margin falls from %.1f K to %.1f K.",
        hottest(brownBoxes.get(2)) - hottest(brownBoxes.get(0)),
        hottest(all) - hottest(brownBoxes.get(0)),
        left(brownBoxes.get(0)),
        left(all));
    SampleParcel.printCautions(all);
  }

  private static double hottest(TransitResult result) {
    return SampleParcel.exposure(result).hottest().temperature();
  }

  private static double left(TransitResult result) {
    return SampleParcel.exposure(result).hotMargin(Limit.ALARM);
  }

  private static double lid(TransitResult result) {
    return Arrays.stream(result.surface(Face.Z_MAX)).max().orElseThrow();
  }

  private static Parcel box() {
    Walls walls = SampleParcel.walls(0.03);
    return new Parcel(
        "box",
        walls.around(new Dimensions(0.19, 0.16, 0.14)),
        walls,
        Materials.SHREDDED_PAPER,
        List.of(SampleParcel.cup(0.04)),
        List.of());
  }
}
