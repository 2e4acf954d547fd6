package stenotherm.picture;

import static stenotherm.base.Temperatures.fromCelsius;

import java.time.LocalDateTime;
import java.util.function.DoubleUnaryOperator;
import stenotherm.base.Range;
import stenotherm.base.Times;

/** Pictures of invented data, crowded enough to show where labels could collide. */
final class Demo {
  private static final double HOURS = 19;

  private Demo() {}

  private static Range hours(double from, double to) {
    return new Range(Times.fromHours(from), Times.fromHours(to));
  }

  private static Range celsius(double low, double high) {
    return new Range(fromCelsius(low), fromCelsius(high));
  }

  private static Curve curve(String name, DoubleUnaryOperator celsiusOfHour) {
    int count = 400;
    double[] times = new double[count + 1];
    double[] temperatures = new double[count + 1];
    for (int i = 0; i <= count; i++) {
      double hour = HOURS * i / count;
      times[i] = Times.fromHours(hour);
      temperatures[i] = fromCelsius(celsiusOfHour.applyAsDouble(hour));
    }
    return Curve.of(name, times, temperatures);
  }

  private static double cup(double hour) {
    return 11.2 + 9 * Math.exp(-hour / 6) + 0.09 * Math.pow(Math.max(0, hour - 11.5), 2);
  }

  private static double outdoor(double hour) {
    return hour > 3 && hour < 9 ? 16 : 3 - 5 * Math.cos((hour - 23.5) / 24 * 2 * Math.PI);
  }

  static TemperatureChart.Builder temperatureBuilder() {
    return TemperatureChart.titled(
            "Cold side is tightest: 2.5 K left at 05:30 on the porch (8 °C alarm edge)")
        .subtitle("EPS 19 mm, one warmer, overnight by air; lows -2 °C (28 °F)")
        .curve(curve("frog, mean", Demo::cup))
        .curve(curve("outdoor air", Demo::outdoor))
        .curve(
            curve(
                "warmer, surface",
                hour -> 14 + 20 * (1 - Math.exp(-hour / 0.7)) * Math.exp(-hour / 14)))
        .uncertainty(
            new TemperatureBand(
                "range of foam, fill and outdoor air",
                curve("low", hour -> cup(hour) - 0.13 * Math.min(hour, 9)),
                curve("high", hour -> cup(hour) + 0.2 * Math.min(hour, 9))))
        .comfortable(celsius(15, 24))
        .alarm(celsius(8, 30))
        .leg(new Leg("home", hours(0, 1)))
        .leg(new Leg("van to hub", hours(1, 3)))
        .leg(new Leg("sorting hall", hours(3, 5)))
        .leg(new Leg("aircraft", hours(5, 8)))
        .leg(new Leg("hub", hours(8, 9)))
        .leg(new Leg("delivery van", hours(9, 11)))
        .leg(new Leg("porch", hours(11, HOURS)))
        .marker(
            new Marker(
                "coldest: 12.5 °C (54 °F) at 05:30",
                new Curve.Point(Times.fromHours(11.5), fromCelsius(cup(11.5)))))
        .sealedAt(LocalDateTime.of(2013, 12, 12, 18, 0));
  }

  static TemperatureChart temperature() {
    return temperatureBuilder().build();
  }

  static TemperatureChart plainTemperature() {
    return TemperatureChart.titled("A cold frog room with nothing but one curve")
        .curve(curve("frog", hour -> 18 - 0.2 * hour))
        .build();
  }

  static MarginChart margins() {
    return MarginChart.titled("The small box with thick foam is the only packing that stays inside")
        .subtitle("overnight by air, lows −2 °C (28 °F); dot: as stated, bar: ends of the ranges")
        .margin(
            new Margin(
                "small box, foam 38 mm, 1 warmer", 4.2, new Range(1.1, 6.0), "cold side at 05:30"))
        .margin(
            new Margin(
                "large box, foam 38 mm, 1 warmer", 2.5, new Range(-0.8, 4.4), "cold side at 05:30"))
        .margin(
            new Margin(
                "large box, foam 19 mm, 2 warmers taped to the lid, loose paper fill",
                0.6,
                new Range(-2.9, 3.0),
                "warm side at 13:00, sorting hall"))
        .margin(new Margin("mailing bag", -6.4, new Range(-8.2, -4.9), "cold side at 04:00"))
        .build();
  }

  static SectionField field() {
    double[] xEdges = graded(0.30);
    double[] zEdges = graded(0.20);
    double[][] temperatures = new double[xEdges.length - 1][zEdges.length - 1];
    for (int i = 0; i < temperatures.length; i++) {
      for (int j = 0; j < temperatures[i].length; j++) {
        double x = (xEdges[i] + xEdges[i + 1]) / 2;
        double z = (zEdges[j] + zEdges[j + 1]) / 2;
        double inside = Math.min(1, Math.min(Math.min(x, 0.30 - x), Math.min(z, 0.20 - z)) / 0.025);
        double warmer = Math.exp(-(Math.pow(x - 0.15, 2) + Math.pow((z - 0.165) * 1.8, 2)) / 0.004);
        temperatures[i][j] = fromCelsius(-2 + 14 * inside + 24 * warmer * inside);
      }
    }
    return new SectionField(xEdges, zEdges, temperatures);
  }

  /** Cells of 2 mm at the walls and 6 mm inside. */
  private static double[] graded(double length) {
    int walls = 12;
    int inner = (int) Math.round((length - 0.048) / 0.006);
    double[] edges = new double[2 * walls + inner + 1];
    for (int i = 1; i < edges.length; i++) {
      double width = i <= walls || i > walls + inner ? 0.002 : (length - 0.048) / inner;
      edges[i] = edges[i - 1] + width;
    }
    return edges;
  }

  static SectionPicture section() {
    return SectionPicture.titled(
            "The frog's lower side is coldest, 2.5 K above its alarm edge", field())
        .subtitle("through the middle at 05:30, the worst moment")
        .axes("length", "height")
        .outline(new Outline("box", new Range(0, 0.30), new Range(0, 0.20)))
        .outline(new Outline("foam, inner face", new Range(0.019, 0.281), new Range(0.019, 0.181)))
        .outline(new Outline("warmer", new Range(0.10, 0.20), new Range(0.160, 0.175)))
        .outline(new Outline("cup", new Range(0.12, 0.18), new Range(0.05, 0.13)))
        .outline(new Outline("damp moss", new Range(0.122, 0.178), new Range(0.052, 0.062)))
        .outline(new Outline("frog", new Range(0.135, 0.165), new Range(0.062, 0.082)))
        .spot(new Spot("coldest: 12.5 °C (54 °F)", 0.15, 0.062))
        .isotherm(fromCelsius(5))
        .isotherm(fromCelsius(10))
        .isotherm(fromCelsius(15))
        .isotherm(fromCelsius(20))
        .build();
  }
}
