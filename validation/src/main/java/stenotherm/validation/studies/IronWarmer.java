package stenotherm.validation.studies;

import static stenotherm.base.Temperatures.fromCelsius;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stenotherm.base.Face;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
import stenotherm.parcel.Dimensions;
import stenotherm.parcel.FilmCover;
import stenotherm.parcel.Mounting;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.parcel.Placement;
import stenotherm.transit.TransitResult;
import stenotherm.validation.studies.Check.Computed;
import stenotherm.validation.studies.Check.Expected;
import stenotherm.warmer.Bench;
import stenotherm.warmer.BenchCurve;
import stenotherm.warmer.WarmerClass;
import stenotherm.warmer.Warmers;

/**
 * What keepers know of warmers of iron powder: how hot the pouch gets in a usual filled carton, how
 * soon it feels warm, and that it stays cold with its film taped over. Without a source.
 */
final class IronWarmer implements Study {
  private static final String PRACTICE = "common practice, no source";
  private static final String SENTENCE = "no accuracy, a range that keepers state";
  private static final Dimensions CUBE = new Dimensions(0.15, 0.15, 0.15);
  private static final double FOAM = 0.019;
  private static final double ROOM = 20;

  @Override
  public Heading heading() {
    return new Heading(
        "trade-iron-warmer",
        "A warmer of iron powder in a usual carton and on a table",
        PRACTICE,
        Kind.PRACTICE);
  }

  @Override
  public Findings run(Depth depth) {
    double finest = depth == Depth.FAST ? 3 : 1.5;
    Ladder ladder =
        Ladder.steady(
            List.of(2 * finest, Math.sqrt(2) * finest, finest),
            width -> {
              TransitResult cold = pouch(FilmCover.FREE, 0, width);
              TransitResult warm = pouch(FilmCover.FREE, 25, width);
              TransitResult taped = pouch(FilmCover.TAPED_OVER, 25, width);
              return new Ladder.Grid(
                  List.of(hottest(cold), hottest(warm), hottest(taped) - 25),
                  cold.cells(),
                  cold.work().steps() + warm.work().steps() + taped.work().steps());
            });
    List<Check> checks = new ArrayList<>();
    checks.add(surface("hottest surface of the pouch, air at 0 °C", ladder.output(0, 1.5)));
    checks.add(surface("hottest surface of the pouch, air at 25 °C", ladder.output(1, 1.5)));
    checks.add(
        new Check(
            "taped over: hottest surface over air at 25 °C",
            ladder.output(2, 0.5),
            new Expected(0, 2, "K", PRACTICE + ": stays cold", SENTENCE)));
    for (WarmerClass warmer :
        List.of(Warmers.FORTY_HOUR, Warmers.SIXTY_HOUR, Warmers.SEVENTY_TWO_HOUR)) {
      double warm = Bench.wrapped(fromCelsius(ROOM)).run(warmer).curve().reaches(BenchCurve.WARM);
      checks.add(
          new Check(
              warmer.name() + ", loosely wrapped: warm to the touch after",
              Computed.closed(Times.toMinutes(warm)),
              new Expected(32.5, 12.5, "min", PRACTICE + ": 20 to 45 minutes", SENTENCE)));
    }
    return new Findings(checks, ladder.runs(), List.of());
  }

  private static Check surface(String quantity, Computed computed) {
    return new Check(
        quantity,
        computed,
        new Expected(55, 20, "°C", PRACTICE + ": hot, not burning, 35 to 75", SENTENCE));
  }

  private static TransitResult pouch(FilmCover cover, double celsius, double width) {
    PlacedWarmer warmer =
        new PlacedWarmer(
            "warmer",
            Warmers.FORTY_HOUR,
            Placement.onFace(Face.Z_MAX, Mounting.taped()),
            -Times.fromHours(0.5),
            cover);
    return Carton.run(Carton.packed(CUBE, FOAM, List.of(warmer)), Carton.room(celsius), width);
  }

  /** Highest temperature of the pouch's surface [°C]. */
  private static double hottest(TransitResult result) {
    return Temperatures.toCelsius(Arrays.stream(result.hottest("warmer")).max().orElseThrow());
  }
}
