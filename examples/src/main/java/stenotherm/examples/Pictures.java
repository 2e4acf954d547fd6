package stenotherm.examples;

import java.util.ArrayList;
import java.util.List;
import stenotherm.animal.Limit;
import stenotherm.animal.Tolerance;
import stenotherm.base.Axis;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.conduction.TemperatureField;
import stenotherm.decision.Assessment;
import stenotherm.decision.Margin;
import stenotherm.decision.Side;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.journey.Journey;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.picture.Curve;
import stenotherm.picture.MarginChart;
import stenotherm.picture.Marker;
import stenotherm.picture.Outline;
import stenotherm.picture.SectionField;
import stenotherm.picture.SectionPicture;
import stenotherm.picture.Spot;
import stenotherm.picture.TemperatureBand;
import stenotherm.picture.TemperatureChart;
import stenotherm.transit.TransitResult;

/** The pictures of a report. */
final class Pictures {
  /** How much of the hold a chart shows, as a part of the planned duration. */
  private static final double SHOWN_HOLD = 0.3;

  private static final double ISOTHERM_STEP = 5;

  private Pictures() {}

  static MarginChart margins(List<Judged> rows) {
    MarginChart.Builder chart =
        MarginChart.titled("Margin on the tighter side of each packing")
            .subtitle("dot: nominal; bar: all uncertain quantities at the ends of their ranges");
    for (Judged row : rows) {
      Assessment assessment = row.assessment();
      Margin tightest = assessment.verdict().tightest();
      double nominal = assessment.verdict().nominal();
      double best = assessment.verdict().best();
      chart.margin(
          new stenotherm.picture.Margin(
              row.label(),
              nominal,
              new Range(
                  Math.min(nominal, Math.min(tightest.kelvin(), best)),
                  Math.max(nominal, Math.max(tightest.kelvin(), best))),
              tightest.side().words() + " at " + Words.clock(row.held(), tightest.time())));
    }
    return chart.build();
  }

  static int marginsHeight(List<Judged> rows) {
    return Math.max(220, 170 + 46 * rows.size());
  }

  static TemperatureChart temperatures(Judged row) {
    Assessment assessment = row.assessment();
    TransitResult nominal = assessment.nominal();
    Journey journey = row.held();
    String cup = row.cup().name();
    double planned = assessment.plannedEnd();
    double end = Math.min(journey.duration(), planned * (1 + SHOWN_HOLD));
    Tolerance tolerance = row.cup().occupant().orElseThrow().animal().tolerance();
    Margin tightest = assessment.nominalMargin(row.side());
    TemperatureChart.Builder chart =
        TemperatureChart.titled(row.label() + ": " + row.side().words() + " is tightest")
            .subtitle("animal in '" + cup + "'; band: its coldest and hottest part over the ranges")
            .curve(curve("animal, mean", nominal.times(), nominal.mean(cup), end))
            .curve(ambient(journey, nominal.times(), end))
            .uncertainty(
                new TemperatureBand(
                    "coldest to hottest part, worse ends",
                    curve(
                        "low",
                        assessment.coldEnd().times(),
                        assessment.coldEnd().coldest(cup),
                        end),
                    curve(
                        "high",
                        assessment.hotEnd().times(),
                        assessment.hotEnd().hottest(cup),
                        end)))
            .comfortable(tolerance.band(Limit.COMFORTABLE).range())
            .alarm(tolerance.band(Limit.ALARM).range())
            .marker(
                new Marker(
                    (row.side() == Side.COLD ? "coldest: " : "hottest: ")
                        + Words.temperature(tightest.temperature())
                        + " at "
                        + Words.clock(journey, tightest.time()),
                    new Curve.Point(tightest.time(), tightest.temperature())))
            .clock(time -> Words.clock(journey, time));
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      double to = Math.min(planned, journey.start(leg + 1));
      chart.leg(
          new stenotherm.picture.Leg(
              journey.legs().get(leg).name(), new Range(journey.start(leg), to)));
    }
    chart.leg(new stenotherm.picture.Leg("if late", new Range(planned, end)));
    return chart.build();
  }

  private static Curve curve(String name, double[] times, double[] values, double end) {
    List<Curve.Point> points = new ArrayList<>();
    for (int i = 0; i < times.length && times[i] <= end; i++) {
      points.add(new Curve.Point(times[i], values[i]));
    }
    return new Curve(name, points);
  }

  /** The ambient temperature leg by leg, so that a change of legs is a jump. */
  private static Curve ambient(Journey journey, double[] times, double end) {
    List<Curve.Point> points = new ArrayList<>();
    for (int leg = 0; leg < journey.legs().size(); leg++) {
      double from = journey.start(leg);
      double to = journey.start(leg + 1);
      for (double time : times) {
        if (time >= from && time <= to && time <= end) {
          var function = journey.legs().get(leg).surroundings().ambient();
          double value = time == to ? function.before(time) : function.at(time);
          points.add(new Curve.Point(time, value));
        }
      }
    }
    return new Curve("ambient", points);
  }

  static SectionPicture section(Judged row) {
    Box animal = box(row, row.cup().animalBlock());
    Axis normal = normal(row, animal);
    double at = animal.centre().along(normal);
    TemperatureField field = row.tightest().field();
    TemperatureField.Section section = field.section(normal, at);
    SectionPicture.Builder picture =
        SectionPicture.titled(
                row.label()
                    + ": "
                    + row.side().words()
                    + ", nominal run, tightest at "
                    + Words.dayAndClock(row.held(), row.tightest().time()),
                fieldOf(section))
            .subtitle("nominal run, upright section through the middle of the animal")
            .axes(section.across() == Axis.X ? "x" : "y", "height");
    for (Block block : row.parcel().layout().blocks()) {
      String name = nameInPicture(row, block);
      if (!name.isEmpty() && cuts(block.box(), normal, at)) {
        picture.outline(outline(name, block.box(), section));
      }
    }
    isotherms(section.values()).forEach(picture::isotherm);
    picture.spot(extreme(row, animal, section.across()));
    return picture.build();
  }

  private static Box box(Judged row, String block) {
    var layout = row.parcel().layout();
    return layout.blocks().get(layout.indexOf(block)).box();
  }

  /** Across the parcel's length, unless only a cut along its width meets a warmer. */
  private static Axis normal(Judged row, Box animal) {
    boolean byLength = false;
    boolean byWidth = false;
    for (PlacedWarmer warmer : row.parcel().warmers()) {
      Box pad = box(row, warmer.name());
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
    String cup = row.cup().name();
    if (block.equals(row.parcel().layout().blocks().get(0))) {
      return "outer side of the wall";
    }
    if (name.equals("fill")) {
      return "inner side of the wall";
    }
    if (name.equals(row.cup().airBlock())) {
      return cup;
    }
    if (name.equals(row.cup().animalBlock())) {
      return "animal";
    }
    if (name.equals(cup + " towel")) {
      return "damp towel";
    }
    return name.startsWith("wall ") ? "" : name;
  }

  private static Outline outline(String name, Box box, TemperatureField.Section section) {
    return new Outline(name, range(box, section.across()), range(box, section.up()));
  }

  private static Range range(Box box, Axis axis) {
    return new Range(box.min().along(axis), box.max().along(axis));
  }

  private static SectionField fieldOf(TemperatureField.Section section) {
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

  private static List<Double> isotherms(double[] values) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    List<Double> all = new ArrayList<>();
    double first = Math.ceil(Temperatures.toCelsius(low) / ISOTHERM_STEP) * ISOTHERM_STEP;
    for (double celsius = first; celsius < Temperatures.toCelsius(high); celsius += ISOTHERM_STEP) {
      all.add(Temperatures.fromCelsius(celsius));
    }
    return all;
  }

  /** Where in the section the animal is coldest or hottest. */
  private static Spot extreme(Judged row, Box animal, Axis across) {
    int parts = 8;
    boolean cold = row.side() == Side.COLD;
    double sign = cold ? 1 : -1;
    double least = Double.POSITIVE_INFINITY;
    double bestAcross = 0;
    double bestUp = 0;
    for (int i = 0; i <= parts; i++) {
      for (int j = 0; j <= parts; j++) {
        double a = animal.min().along(across) + animal.size(across) * i / parts;
        double z = animal.min().z() + animal.size(Axis.Z) * j / parts;
        Point point =
            across == Axis.X
                ? new Point(a, animal.centre().y(), z)
                : new Point(animal.centre().x(), a, z);
        double value = sign * row.tightest().field().at(point);
        if (value < least) {
          least = value;
          bestAcross = a;
          bestUp = z;
        }
      }
    }
    return new Spot(
        (cold ? "coldest in this section: " : "hottest in this section: ")
            + Words.temperature(sign * least),
        bestAcross,
        bestUp);
  }
}
