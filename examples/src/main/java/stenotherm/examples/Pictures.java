package stenotherm.examples;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stenotherm.animal.Limit;
import stenotherm.animal.Tolerance;
import stenotherm.base.Axis;
import stenotherm.base.Face;
import stenotherm.base.Range;
import stenotherm.base.Temperatures;
import stenotherm.base.Times;
import stenotherm.conduction.HeatLedger;
import stenotherm.conduction.TemperatureField;
import stenotherm.decision.Assessment;
import stenotherm.decision.Margin;
import stenotherm.decision.Side;
import stenotherm.grid.Block;
import stenotherm.grid.Box;
import stenotherm.grid.Point;
import stenotherm.grid.Shape;
import stenotherm.journey.Journey;
import stenotherm.parcel.PlacedWarmer;
import stenotherm.picture.Curve;
import stenotherm.picture.HeatChart;
import stenotherm.picture.MarginChart;
import stenotherm.picture.Marker;
import stenotherm.picture.Outline;
import stenotherm.picture.SectionField;
import stenotherm.picture.SectionPicture;
import stenotherm.picture.SectionSheet;
import stenotherm.picture.Spot;
import stenotherm.picture.TemperatureBand;
import stenotherm.picture.TemperatureChart;
import stenotherm.transit.Snapshot;
import stenotherm.transit.TransitResult;

/** The pictures of a report. */
final class Pictures {
  /** How much of the hold a chart shows, as a part of the planned duration. */
  private static final double SHOWN_HOLD = 0.3;

  private static final double ISOTHERM_STEP = 5;
  private static final int MANY_ISOTHERMS = 6;

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
            .clock(
                time ->
                    end > Times.DAY
                        ? Words.dayAndClock(journey, time)
                        : Words.clock(journey, time));
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

  /** From the side and from above, when the animals are coldest and when they are hottest. */
  static SectionSheet sections(Judged row) {
    Box animal = box(row, row.cup().animalBlock());
    SectionSheet.Builder sheet =
        SectionSheet.titled(row.label() + ": " + row.side().words() + " is tightest")
            .subtitle("nominal run until opening; cuts through the middle of the animal");
    for (Side side : List.of(Side.COLD, Side.HOT)) {
      for (Axis normal : List.of(normal(row, animal), Axis.Z)) {
        sheet.section(section(row, side, normal));
      }
    }
    return sheet.build();
  }

  private static SectionPicture section(Judged row, Side side, Axis normal) {
    boolean cold = side == Side.COLD;
    Snapshot moment = cold ? row.planned().coldestMoment() : row.planned().hottestMoment();
    Box animal = box(row, row.cup().animalBlock());
    double at = animal.centre().along(normal);
    TemperatureField.Section section = moment.field().section(normal, at);
    String when = (cold ? "coldest, " : "hottest, ") + Words.dayAndClock(row.held(), moment.time());
    SectionPicture.Builder picture =
        SectionPicture.titled(
                when + (normal == Axis.Z ? ", from above" : ", from the side"), fieldOf(section))
            .axes(axisName(section.across()), axisName(section.up()));
    for (Block block : row.parcel().layout().blocks()) {
      String name = nameInPicture(row, block);
      Shape shape = block instanceof Block.Solid solid ? solid.shape() : Shape.BOX;
      if (!name.isEmpty()) {
        Outline.of(name, block.box(), shape, normal, at).ifPresent(picture::outline);
      }
    }
    isotherms(section.values()).forEach(picture::isotherm);
    picture.spot(extreme(moment.field(), animal, normal, cold));
    return picture.build();
  }

  private static String axisName(Axis axis) {
    return axis == Axis.Z ? "height" : axis.name().toLowerCase(Locale.ROOT);
  }

  /** Where the heat of a packing's warmers goes until the planned opening. */
  static HeatChart heat(Judged row) {
    HeatLedger ledger = row.planned().ledger();
    Map<String, Double> takers = new LinkedHashMap<>();
    for (var boundary : ledger.boundaries().entrySet()) {
      takers.merge("through the " + sideOf(boundary.getKey()), -boundary.getValue(), Double::sum);
    }
    takers.put("into parcel and contents", ledger.stored());
    List<Map.Entry<String, Double>> largestFirst = new ArrayList<>(takers.entrySet());
    largestFirst.sort(Map.Entry.comparingByValue(Comparator.reverseOrder()));
    double given = ledger.sources().values().stream().mapToDouble(Double::doubleValue).sum();
    HeatChart.Builder chart =
        HeatChart.titled(
                row.label()
                    + ": "
                    + Math.round(100 * largestFirst.get(0).getValue() / given)
                    + " % of the warmers' heat goes "
                    + largestFirst.get(0).getKey(),
                HeatChart.Measure.HEAT)
            .subtitle("from sealing to the planned opening, nominal run");
    ledger.sources().forEach(chart::from);
    largestFirst.forEach(taker -> chart.to(taker.getKey(), taker.getValue()));
    return chart.build();
  }

  static int heatHeight(Judged row) {
    HeatLedger ledger = row.planned().ledger();
    return 190 + 30 * (ledger.sources().size() + ledger.boundaries().size());
  }

  /** The four upright faces together; patches keep their names. */
  private static String sideOf(String boundary) {
    for (Face face : Face.values()) {
      if (face.label().equals(boundary)) {
        return face.axis() == Axis.Z ? Words.face(face) : "four sides";
      }
    }
    return boundary;
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
    double step = high - low > MANY_ISOTHERMS * ISOTHERM_STEP ? 2 * ISOTHERM_STEP : ISOTHERM_STEP;
    double first = Math.ceil(Temperatures.toCelsius(low) / step) * step;
    for (double celsius = first; celsius < Temperatures.toCelsius(high); celsius += step) {
      all.add(Temperatures.fromCelsius(celsius));
    }
    return all;
  }

  /** Where in the section the animal is coldest or hottest. */
  private static Spot extreme(TemperatureField field, Box animal, Axis normal, boolean cold) {
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
        (cold ? "coldest here: " : "hottest here: ") + Words.temperature(sign * least),
        best.along(across),
        best.along(up));
  }
}
