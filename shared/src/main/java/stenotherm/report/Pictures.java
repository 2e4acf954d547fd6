package stenotherm.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import stenotherm.air.BreathingLimits;
import stenotherm.animal.Limit;
import stenotherm.animal.Tolerance;
import stenotherm.base.Axis;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.base.TimeFunction;
import stenotherm.base.Times;
import stenotherm.conduction.TemperatureField;
import stenotherm.decision.Assessment;
import stenotherm.decision.Side;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.grid.Shape;
import stenotherm.journey.Journey;
import stenotherm.parcel.Bedding;
import stenotherm.parcel.Container;
import stenotherm.parcel.PlacedPack;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.picture.AirChart;
import stenotherm.picture.ChartLeg;
import stenotherm.picture.Curve;
import stenotherm.picture.HeatChart;
import stenotherm.picture.HistoryChart;
import stenotherm.picture.Marker;
import stenotherm.picture.Outline;
import stenotherm.picture.SectionField;
import stenotherm.picture.SectionPicture;
import stenotherm.picture.SectionSheet;
import stenotherm.picture.ShadedBand;
import stenotherm.picture.Spot;
import stenotherm.picture.TemperatureChart;
import stenotherm.transit.Snapshot;
import stenotherm.words.Units;

/** The pictures of a report, in the reader's units. */
final class Pictures {
  /** How much of the hold a chart shows, as a part of the planned duration. */
  private static final double SHOWN_HOLD = 0.3;

  /** Distances of isotherms that are worth drawing, in degrees of the reader's scale. */
  private static final double[] ISOTHERM_STEPS = {1, 2, 5, 10, 20};

  private static final int MOST_ISOTHERMS = 6;

  private final Words words;
  private final VerdictWords verdicts;

  Pictures(Words words) {
    this.words = words;
    this.verdicts = new VerdictWords(words);
  }

  TemperatureChart temperatures(Judged row) {
    Assessment assessment = row.assessment();
    Journey journey = row.held();
    Extreme extreme = row.extreme();
    Container cup = extreme.cup();
    double planned = assessment.plannedEnd();
    double end = Math.min(journey.duration(), planned * (1 + SHOWN_HOLD));
    Tolerance tolerance = Judged.animal(cup).tolerance();
    boolean several = row.parcel().occupied().size() > 1;
    double[] times = row.odds().times();
    TemperatureChart.Builder chart =
        TemperatureChart.titled(row.label() + ": " + verdicts.summary(row))
            .units(words.figures().units())
            .subtitle(
                several
                    ? "typical journey, mean over each body; limits, shaded (nine of ten journeys)"
                        + " and dotted (worst case): those of the "
                        + inItsPlace(cup)
                    : Judged.animal(cup).name()
                        + ", mean over its body; shaded: nine of ten journeys; dotted: worst case")
            .curve(
                curve(
                    several ? inItsPlace(cup) : "typical journey",
                    times,
                    row.odds().temperatures(cup.name(), 0.5),
                    end));
    for (Container other : row.parcel().occupied()) {
      if (!other.equals(cup)) {
        chart.curve(
            curve(inItsPlace(other), times, row.odds().temperatures(other.name(), 0.5), end));
      }
    }
    chart.curve(ambient(journey, times, end));
    for (PlacedPack pack : row.parcel().packs()) {
      chart.curve(curve(pack.name(), times, assessment.nominal().mean(pack.name()), end));
    }
    chart
        .uncertainty(
            new ShadedBand(
                "nine of ten journeys",
                curve("low", times, quantile(row, cup, Words.ONE_IN_TWENTY), end),
                curve("high", times, quantile(row, cup, 1 - Words.ONE_IN_TWENTY), end)))
        .worst(
            new ShadedBand(
                "worst case",
                curve("coldest", times, row.worst(cup, Side.COLD), end),
                curve("hottest", times, row.worst(cup, Side.HOT), end)))
        .comfortable(tolerance.band(Limit.COMFORTABLE).range())
        .alarm(tolerance.band(Limit.ALARM).range())
        .marker(
            new Marker(
                extreme.words()
                    + ": "
                    + words.temperature(extreme.typical())
                    + ", "
                    + words.stored(journey, extreme.time()),
                new Curve.Reading(extreme.time(), extreme.typical())))
        .clock(
            time ->
                end > Times.DAY ? words.dayAndClock(journey, time) : Words.clock(journey, time));
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      double to = Math.min(planned, journey.start(leg + 1));
      String change = Words.clockChange(journey, leg);
      chart.leg(
          new ChartLeg(
              journey.legs().get(leg).name() + (change.isEmpty() ? "" : ", " + change),
              new Range(journey.start(leg), to)));
    }
    chart.leg(new ChartLeg("if late", new Range(planned, end)));
    return chart.build();
  }

  private static String inItsPlace(Container cup) {
    return Judged.animal(cup).name() + " in '" + cup.name() + "'";
  }

  /** Oxygen and the warmers until the planned opening, with everything as stated. */
  AirChart air(Judged row) {
    Climate climate = new Climate(row);
    Climate.Moment least = climate.leastOxygen();
    Journey journey = row.held();
    double planned = row.assessment().plannedEnd();
    double[] times = row.assessment().nominal().times();
    String clock = words.stored(journey, least.time());
    String lowest = ClimateWords.percent(least.value());
    AirChart.Builder chart =
        AirChart.titled(row.label() + ": oxygen falls to " + lowest)
            .subtitle("fresh air has 21 %; at altitude as much as the thin air counts at sea level")
            .harmful(100 * BreathingLimits.ECTOTHERMS.oxygenAlarm())
            .least(
                "least: " + lowest + ", " + clock,
                new HistoryChart.Sample(least.time(), 100 * least.value()))
            .clock(
                time ->
                    planned > Times.DAY
                        ? words.dayAndClock(journey, time)
                        : Words.clock(journey, time));
    for (Container cup : row.parcel().occupied()) {
      chart.oxygen(line(cup.name(), times, climate.oxygen(cup), 100, planned));
    }
    for (PlacedWarmer warmer : row.parcel().warmers()) {
      double[] power = row.assessment().nominal().power(warmer.name());
      chart.power(line(warmer.name(), times, power, 1, planned));
    }
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      double to = Math.min(planned, journey.start(leg + 1));
      chart.leg(new ChartLeg(journey.legs().get(leg).name(), new Range(journey.start(leg), to)));
    }
    return chart.build();
  }

  private static HistoryChart.Line line(
      String name, double[] times, double[] values, double factor, double end) {
    List<HistoryChart.Sample> samples = new ArrayList<>();
    for (int at = 0; at < times.length && times[at] <= end; at++) {
      samples.add(new HistoryChart.Sample(times[at], factor * values[at]));
    }
    return new HistoryChart.Line(name, samples);
  }

  private static double[] quantile(Judged row, Container cup, double share) {
    return row.odds().temperatures(cup.name(), share);
  }

  private static double at(double[] times, double[] values, double time) {
    return TimeFunction.table(times, values).at(time);
  }

  /** A curve up to an end, which may lie between two stored times. */
  static Curve curve(String name, double[] times, double[] values, double end) {
    List<Curve.Reading> points = new ArrayList<>();
    for (int i = 0; i < times.length && times[i] <= end; i++) {
      points.add(new Curve.Reading(times[i], values[i]));
    }
    int next = points.size();
    if (next < times.length && next > 0 && times[next - 1] < end) {
      points.add(new Curve.Reading(end, at(times, values, end)));
    }
    return new Curve(name, points);
  }

  /** The ambient temperature leg by leg, so that a change of legs is a jump. */
  private static Curve ambient(Journey journey, double[] times, double end) {
    List<Curve.Reading> points = new ArrayList<>();
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      double from = journey.start(leg);
      double to = journey.start(leg + 1);
      double last = Math.min(to, end);
      if (from >= last) {
        break;
      }
      DoubleStream within = Arrays.stream(times).filter(time -> time > from && time < last);
      for (double time :
          DoubleStream.concat(within, DoubleStream.of(from, last)).sorted().toArray()) {
        var function = journey.legs().get(leg).surroundings().ambient();
        double value = time == to ? function.before(time) : function.at(time);
        points.add(new Curve.Reading(time, value));
      }
    }
    return new Curve("air around the parcel", points);
  }

  /** From the side and from above, when the animals are coldest and when they are hottest. */
  SectionSheet sections(Judged row) {
    SectionSheet.Builder sheet =
        SectionSheet.titled(row.label() + ": where it is warm and where cold")
            .subtitle(
                "cuts through the middle of the animal"
                    + (row.parcel().occupied().size() > 1
                        ? " in '" + row.extreme().cup().name() + "'"
                        : ""));
    boolean empty = true;
    for (Side side : Side.values()) {
      // at sealing all is of one temperature: what differs there is round-off
      if (moment(row, side).time() > 0 || (empty && side == Side.HOT)) {
        empty = false;
        for (Axis normal : List.of(normal(row), Axis.Z)) {
          sheet.section(section(row, side, normal));
        }
      }
    }
    return sheet.build();
  }

  private static Snapshot moment(Judged row, Side side) {
    return side == Side.COLD ? row.planned().coldestMoment() : row.planned().hottestMoment();
  }

  private SectionPicture section(Judged row, Side side, Axis normal) {
    boolean cold = side == Side.COLD;
    Snapshot moment = moment(row, side);
    Box animal = box(row, row.extreme().cup().animalBlock());
    double at = animal.centre().along(normal);
    TemperatureField.PlaneSection section = moment.field().section(normal, at);
    String when =
        (cold ? "coldest part, " : "hottest part, ") + words.moment(row.held(), moment.time());
    SectionField field = fieldOf(section);
    SectionPicture.Builder picture =
        SectionPicture.titled(when + (normal == Axis.Z ? ", from above" : ", from the side"), field)
            .units(words.figures().units())
            .axes(axisName(section.across()), axisName(section.up()));
    for (Block block : row.parcel().layout().blocks()) {
      String name = nameInPicture(row, block);
      Shape shape = block instanceof Block.Solid solid ? solid.shape() : Shape.BOX;
      if (!name.isEmpty()) {
        Outline.of(name, block.box(), shape, normal, at).ifPresent(picture::outline);
      }
    }
    isotherms(field, row.assessment().error().total()).forEach(picture::isotherm);
    picture.spot(extreme(moment.field(), animal, normal, cold));
    return picture.build();
  }

  private static String axisName(Axis axis) {
    return switch (axis) {
      case X -> "length";
      case Y -> "width";
      case Z -> "height";
    };
  }

  /** Where a packing's heat comes from and goes to until the planned opening. */
  static HeatChart heat(Judged row) {
    HeatBalance balance = HeatBalance.of(row);
    HeatBalance.HeatShare first = balance.takers().get(0);
    HeatChart.Builder chart =
        HeatChart.titled(
                row.label()
                    + ": "
                    + Math.round(100 * first.heat() / balance.given())
                    + " % of the heat goes "
                    + first.name(),
                HeatChart.Measure.HEAT)
            .subtitle("from sealing to the planned opening, with everything as stated");
    balance.givers().forEach(part -> chart.from(part.name(), part.heat()));
    balance.takers().forEach(part -> chart.to(part.name(), part.heat()));
    return chart.build();
  }

  private static Box box(Judged row, String block) {
    return row.parcel().layout().block(block).box();
  }

  /** Across the parcel's length, unless only a cut along its width meets a warmer or a pack. */
  private static Axis normal(Judged row) {
    Box animal = box(row, row.extreme().cup().animalBlock());
    boolean byLength = false;
    boolean byWidth = false;
    List<String> names = new ArrayList<>();
    row.parcel().warmers().forEach(warmer -> names.add(warmer.name()));
    row.parcel().packs().forEach(pack -> names.add(pack.name()));
    for (String name : names) {
      Box pad = box(row, name);
      byLength |= cuts(pad, Axis.Y, animal.centre().y());
      byWidth |= cuts(pad, Axis.X, animal.centre().x());
    }
    return byWidth && !byLength ? Axis.X : Axis.Y;
  }

  private static boolean cuts(Box box, Axis normal, double at) {
    return box.min().along(normal) <= at && at <= box.max().along(normal);
  }

  /** Empty for blocks whose outline would only repeat another one's. */
  private static String nameInPicture(Judged row, Block block) {
    String name = block.name();
    if (block.equals(row.parcel().layout().blocks().get(0))) {
      return "outer side of the wall";
    }
    if (name.equals("fill")) {
      return "inner side of the wall";
    }
    if (name.startsWith("wall ")) {
      return "";
    }
    boolean several = row.parcel().containers().size() > 1;
    for (Container container : row.parcel().containers()) {
      String within = several ? " in " + container.name() : "";
      if (name.equals(container.airBlock())) {
        return container.name();
      }
      if (name.equals(container.animalBlock())) {
        return "animal" + within;
      }
      for (Bedding layer : container.bedding()) {
        if (name.equals(container.beddingBlock(layer))) {
          return layer.name() + within;
        }
      }
    }
    return name;
  }

  private static SectionField fieldOf(TemperatureField.PlaneSection section) {
    double[] across = section.acrossLines();
    double[] up = section.upLines();
    double[] values = section.values();
    int columns = across.length - 1;
    double[][] cells = new double[columns][up.length - 1];
    for (int column = 0; column < columns; column++) {
      for (int row = 0; row < up.length - 1; row++) {
        cells[column][row] = values[column + columns * row];
      }
    }
    return new SectionField(across, up, cells);
  }

  /**
   * Round temperatures on the reader's scale, not more than can be told apart, and none whose line
   * would run where numerical error puts it.
   */
  private List<Double> isotherms(SectionField field, double error) {
    double low = onScale(field.temperatureRange().low());
    double high = onScale(field.temperatureRange().high());
    double least = 2 * (onScale(field.temperatureRange().low() + error) - low);
    double step = ISOTHERM_STEPS[ISOTHERM_STEPS.length - 1];
    for (double candidate : ISOTHERM_STEPS) {
      if ((high - low) / candidate <= MOST_ISOTHERMS && candidate >= least) {
        step = candidate;
        break;
      }
    }
    List<Double> all = new ArrayList<>();
    for (double degrees = Math.ceil(low / step) * step; degrees < high; degrees += step) {
      double kelvin =
          inUsUnits() ? Temperatures.fromFahrenheit(degrees) : Temperatures.fromCelsius(degrees);
      if (field.placesIsotherm(kelvin, error)) {
        all.add(kelvin);
      }
    }
    return all;
  }

  private double onScale(double kelvin) {
    return inUsUnits() ? Temperatures.toFahrenheit(kelvin) : Temperatures.toCelsius(kelvin);
  }

  private boolean inUsUnits() {
    return words.figures().units() == Units.US;
  }

  /** Where in the section the animal is coldest or hottest. */
  private Spot extreme(TemperatureField field, Box animal, Axis normal, boolean cold) {
    int parts = 8;
    Axis across = normal == Axis.X ? Axis.Y : Axis.X;
    Axis up = normal == Axis.Z ? Axis.Y : Axis.Z;
    double sign = cold ? 1 : -1;
    double least = Double.POSITIVE_INFINITY;
    Point best = animal.centre();
    for (int i = 0; i <= parts; i++) {
      for (int j = 0; j <= parts; j++) {
        double a = animal.min().along(across) + animal.size(across) * i / parts;
        double b = animal.min().along(up) + animal.size(up) * j / parts;
        Point point =
            switch (normal) {
              case X -> new Point(animal.centre().x(), a, b);
              case Y -> new Point(a, animal.centre().y(), b);
              case Z -> new Point(a, b, animal.centre().z());
            };
        double value = sign * field.at(point);
        if (value < least) {
          least = value;
          best = point;
        }
      }
    }
    return new Spot(
        cold ? "coldest part of the animal" : "hottest part of the animal",
        best.along(across),
        best.along(up));
  }
}
